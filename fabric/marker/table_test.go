package marker

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"text/tabwriter"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
)

var update = flag.Bool("update", false, "write the golden files anew")

func TestRows(t *testing.T) {
	for name, c := range map[string]struct {
		plan    lay.Plan
		options Options
	}{
		"open_cm":   {openPlan(), Options{}},
		"folded_cm": {foldedPlan(), Options{}},
		"open_in":   {openPlan(), Options{Inches: true}},
	} {
		t.Run(name, func(t *testing.T) {
			var text strings.Builder
			w := tabwriter.NewWriter(&text, 0, 0, 2, ' ', 0)
			for _, row := range append([][]string{Headings(c.plan, c.options)}, Rows(c.plan, c.options)...) {
				_, _ = w.Write([]byte(strings.Join(row, "\t") + "\n"))
			}
			require.NoError(t, w.Flush())
			golden(t, filepath.Join("testdata", name+".txt"), text.String())
		})
	}
}

// TestRowsByHand reckons three rows: the selvedge of 10 mm counts, since the
// tape lies at the edge of the cloth; on a fold it does not.
func TestRowsByHand(t *testing.T) {
	open := Rows(openPlan(), Options{})
	// front: 600 long, the grain 300 in its middle, 400 wide from y = 0.
	assert.Equal(t, []string{"1", "front", "smock", "1 of 1", "1", "face up", "15", "21", "21", "away from the cut end"},
		open[0])
	// back: the same, 420 up, the other way round.
	assert.Equal(t, []string{"2", "back", "smock", "1 of 1", "1", "face up", "15", "63", "63", "to the cut end"}, open[1])
	// belt on the cross grain: 900 from y = 20, the grain 450 in its middle.
	assert.Equal(t, []string{"3", "belt", "smock", "1 of 1", "1", "face up", "65", "25.5", "70.5",
		"away from the selvedge"}, open[2])
	folded := Rows(foldedPlan(), Options{})
	assert.Equal(t, []string{"1", "front", "smock", "1 of 1", "1, on the fold", "face up", "15", "10", "10",
		"away from the cut end"}, folded[0])
}

func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "run the test with -update to make the file")
	assert.Equal(t, string(want), got)
}

// TestLongNamesAreBroken, not cut, in the table.
func TestLongNamesAreBroken(t *testing.T) {
	plan := openPlan()
	plan.Pieces[0].Garment = "waistcoat, the remnant from the green skirt of Mrs Barrocal-Johansson last spring"
	text := textOf(t, written(t, plan, Options{}))
	_, table, _ := strings.Cut(text, "How to lay it with a tape measure")
	for _, want := range []string{"waistcoat", "Barrocal-Johansson", "spring"} {
		assert.Contains(t, table, want)
	}
	assert.NotContains(t, table, "…")
}
