package app

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

const settledJob = `
job: Bags
units: cm
currency: EUR
garments:
  - {name: bag, quantity: 2, pieces: [{name: side, width: 43, height: 37, cut: 3},
      {name: strap, width: 8, height: 61, cut: 2}]}
  - {name: purse, pieces: [{name: side, width: 23, height: 17, cut: 4}, {name: base, width: 21, height: 34, cut: 3}]}
cloths:
  - name: shell
    offers: [{name: A, width: 90, price: 10}, {name: B, width: 92, price: 10}, {name: C, width: 115, price: 12},
      {name: D, width: 118, price: 12}]
`

func writtenJob(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "job.yaml")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// Each width is paired with the next narrower one of its cloth.
func TestWidthsInPairs(t *testing.T) {
	shell, lining := cloth.Cloth{Name: "shell"}, cloth.Cloth{Name: "lining"}
	of := func(c cloth.Cloth, width float64) cloth.Cloth {
		c.Width = width
		return c
	}
	pairs := widthsInPairs([]cloth.Cloth{of(shell, 1500), of(lining, 1200), of(shell, 1150), of(shell, 1400)})
	assert.ElementsMatch(t, []pair{{easier: 3, harder: 2}, {easier: 0, harder: 3}}, pairs)
}

// Every command gives the same lengths with an empty store, whichever is asked first; a
// wider cloth never takes more than a narrower one, and all garments together never more
// than one by one, be the search as short as it may.
func TestAllCommandsGiveTheSame(t *testing.T) {
	path := writtenJob(t, settledJob)
	work, err := ReadJob(t.Context(), path)
	require.NoError(t, err)
	for passes := 1; passes <= 5; passes += 2 {
		search := Search{Passes: passes, Seed: 3, Workers: 1, Anew: true}
		cloths, err := Cloths(work, nil)
		require.NoError(t, err)
		estimates, err := Estimate(t.Context(), work, cloths, search, Watch{})
		require.NoError(t, err)
		compared, err := Compare(t.Context(), work, work.Cloths, search, Watch{})
		require.NoError(t, err)
		narrower := estimates[0]
		for _, e := range estimates {
			assert.LessOrEqual(t, least(e.Requirement), least(narrower.Requirement)+plan.SameLength)
			narrower = e
			for _, option := range compared.Cloths[0].Options {
				if option.Offer.Cloth.Width != e.Cloth.Width {
					continue
				}
				assert.InDelta(t, e.Length, option.Amount.Taken, 1e-6, "%d passes, %.0f mm", passes, e.Cloth.Width)
				assert.Equal(t, e.Lays[e.Chosen].Mark, option.Amount.Mark)
				var alone float64
				for _, single := range option.Alone {
					alone += quote.AmountOf(option.Offer, single).Buy
				}
				assert.LessOrEqual(t, option.Amount.Buy, alone+1e-6)
			}
		}
	}
}

const sizedJob = `
job: Skirt
units: cm
size: 12
table: women
garments: [{name: skirt, skirt: {}}]
cloths: [{name: shell, widths: [115, 118, 150]}]
`

// Amounts of a table never fall with a larger size, a narrower cloth or a nap; and an
// estimate made after it gives the same, from the store.
func TestTablesAreMonotone(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	path := writtenJob(t, sizedJob)
	search := Search{Passes: 2, Seed: 1, Workers: 2}
	rows, err := ReadTableRows(t.Context(), path, []string{"16", "12", "14"})
	require.NoError(t, err)
	asked, err := TableOf(rows, nil)
	require.NoError(t, err)
	table, err := asked.Reckon(t.Context(), search, Watch{})
	require.NoError(t, err)
	buy := map[string]float64{}
	key := func(size string, nap cloth.Nap, width float64) string {
		return size + " " + nap.String() + quote.Units{}.Short(width)
	}
	for _, row := range table.Cloths[0].Rows {
		for i, cell := range row.Cells {
			require.Empty(t, cell.Impossible)
			buy[key(row.Name, row.Nap, table.Cloths[0].Widths[i])] = cell.Amount.Buy
		}
	}
	sizes, widths := []string{"size 12", "size 14", "size 16"}, table.Cloths[0].Widths
	for s, size := range sizes {
		for w, width := range widths {
			for _, nap := range []cloth.Nap{cloth.EitherWay, cloth.OneWay} {
				this := buy[key(size, nap, width)]
				require.Positive(t, this)
				assert.LessOrEqual(t, buy[key(size, cloth.EitherWay, width)], this)
				if s > 0 {
					assert.LessOrEqual(t, buy[key(sizes[s-1], nap, width)], this, "%s, %v, %.0f", size, nap, width)
				}
				if w > 0 {
					assert.LessOrEqual(t, this, buy[key(size, nap, widths[w-1])], "%s, %v, %.0f", size, nap, width)
				}
			}
		}
	}
	work, err := ReadJob(t.Context(), path) // size 12
	require.NoError(t, err)
	cloths, err := Cloths(work, nil)
	require.NoError(t, err)
	estimates, err := Estimate(t.Context(), work, cloths, search, Watch{})
	require.NoError(t, err)
	for _, e := range estimates {
		assert.InDelta(t, buy[key("size 12", e.Cloth.Nap, e.Cloth.Width)], e.Buy, 1e-6, "%.0f", e.Cloth.Width)
		assert.Zero(t, e.Work.Due, "%.0f", e.Cloth.Width)
	}
}

// A large table of which the search was ended has amounts for what was laid, and says of
// the rest that it is not known, not that it is not possible.
func TestALargeTableEndsSoon(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	var job strings.Builder
	job.WriteString("job: Many\nunits: cm\ncloths: [{name: shell, width: 90}]\ngarments:\n")
	for i := range mostAfterEnd {
		fmt.Fprintf(&job, "  - {name: apron %d, pieces: [{name: apron, width: 58, height: %d}]}\n", i, 50+i)
	}
	rows, err := ReadTableRows(t.Context(), writtenJob(t, job.String()), nil)
	require.NoError(t, err)
	asked, err := TableOf(rows, nil)
	require.NoError(t, err)
	ended, end := context.WithCancel(t.Context())
	end()
	table, err := asked.Reckon(ended, Search{Passes: 2, Seed: 1, Workers: 2}, Watch{})
	require.NoError(t, err)
	known := 0
	for _, row := range table.Cloths[0].Rows {
		cell := row.Cells[0]
		assert.NotEqual(t, cell.IsLeftOut, cell.Amount.Buy > 0)
		assert.NotEqual(t, "not possible", cell.Refusal())
		if !cell.IsLeftOut {
			known++
		}
	}
	assert.Equal(t, mostAfterEnd, known)
	assert.True(t, table.Ended.Early)
	assert.Contains(t, table.Cloths[0].LeftOut(), "50 of 100 amounts are not known")
	var written strings.Builder
	require.NoError(t, table.WriteCSV(&written))
	assert.Contains(t, written.String(), "not laid")
	assert.NotContains(t, written.String(), "not possible")
}

// The hardest comes first, and each cell begins from those that differ in one thing.
func TestPairsOfATable(t *testing.T) {
	rows, err := ReadTableRows(t.Context(), writtenJob(t, sizedJob), []string{"12", "14"})
	require.NoError(t, err)
	asked, err := TableOf(rows, nil)
	require.NoError(t, err)
	pairs := asked.pairs()
	assert.Len(t, pairs, 2*2*2+2*3+3*2, "widths, naps, sizes")
	done := map[int]bool{}
	for _, p := range pairs {
		assert.False(t, done[p.harder] && !done[p.easier] && p.easier == p.harder)
		done[p.easier] = true
		easier, harder := asked.cells[p.easier], asked.cells[p.harder]
		_, ok := easier.easierIn(harder)
		assert.True(t, ok)
	}
}
