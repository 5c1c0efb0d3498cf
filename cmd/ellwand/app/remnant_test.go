package app

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	outside "ellwand/testdata/check"
)

// leastHarmFirst are the kinds of changes, the least harm first (common
// practice: what nobody sees, then what the cut loses, then what shows).
var leastHarmFirst = []string{"open", "seam allowance", "hem", "shorten", "cross grain", "join", "facing", "nap",
	"size"}

// harmfulJob has something of every kind that can be given up.
const harmfulJob = `
job: Remnant blouse
units: cm
size: 14
table: women
garments:
  - name: blouse
    bodice: {fit: easy, back: fold, below_waist: 24}
    sleeve: {reach: short}
    parts: [{kind: neck facing}]
    pieces:
      - {name: belt, width: 8, height: 60, cut: 2}
cloths:
  - {name: shell, width: 150, nap: one way, hand_laying: none}
`

// TestRemediesInOrderOfLeastHarm lets every change that would make a remnant
// enough be found, on cloth that is a little too short when it is folded. Each
// is one layout that keeps every rule, also by the outside checker.
func TestRemediesInOrderOfLeastHarm(t *testing.T) {
	path := filepath.Join(t.TempDir(), "job.yaml")
	require.NoError(t, os.WriteFile(path, []byte(harmfulJob), 0o600))
	file, err := job.Read(path)
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	cloth, all := work.Cloths[0].Cloth, work.PiecesOf("shell")
	cloth.Width = work.Cloths[0].Widths[0]
	q := remnant.Question{Cloth: cloth, Pieces: all, Lays: []lay.Kind{lay.FoldedAlong}}
	need, err := plan.Require(t.Context(), cloth, all, plan.Options{Passes: 10, Seed: 1, Lays: q.Lays})
	require.NoError(t, err)
	q.Length = 0.99 * need.Length
	every := changes(file, work, q, UsualLimits(work))
	assert.Equal(t, leastHarmFirst, kindsOf(every))

	got, err := remnant.Search(context.Background(), q, every, remnant.Options{Passes: 10, Seed: 1, Show: len(every)})
	require.NoError(t, err)
	var ways []remnant.Change
	folder := t.TempDir()
	for i, way := range got {
		ways = append(ways, way.Change)
		changed, ok := way.Change.Make(q, way.By)
		require.True(t, ok)
		assert.Equal(t, remnant.Enough, way.Fit.Answer)
		assert.LessOrEqual(t, way.Fit.Plan.Taken, way.Fit.Usable*(1+1e-6))
		assert.NoError(t, check.Plan(way.Fit.Plan, changed.Pieces), way.Change.Kind())
		layout, err := os.Create(filepath.Join(folder, string(rune('a'+i))+".json"))
		require.NoError(t, err)
		require.NoError(t, layoutfile.Write(layout, way.Fit.Plan))
		require.NoError(t, layout.Close())
	}
	kinds := kindsOf(ways)
	assert.True(t, slices.IsSortedFunc(kinds, func(a, b string) int {
		return slices.Index(leastHarmFirst, a) - slices.Index(leastHarmFirst, b)
	}), "%v", kinds)
	assert.GreaterOrEqual(t, len(kinds), 5, "%v", kinds)

	layouts, err := filepath.Glob(filepath.Join(folder, "*.json"))
	require.NoError(t, err)
	outside.Lays(t, layouts...)
}

// kindsOf changes, each once, in their order.
func kindsOf(changes []remnant.Change) []string {
	var out []string
	for _, c := range changes {
		if len(out) == 0 || out[len(out)-1] != c.Kind() {
			out = append(out, c.Kind())
		}
	}
	return out
}
