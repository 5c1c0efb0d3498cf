package app

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
)

const remnantJob = `
job: Bag
units: cm
garments: [{name: bag, pieces: [{name: side, width: 43, height: 37, cut: 4},
  {name: strap, width: 8, height: 61, cut: 3}, {name: base, width: 21, height: 34, cut: 3}]}]
cloths: [{name: shell, width: 90}]
`

// A remnant that was asked about is answered from the store, yes or no, and so is one
// that is as long as what was found of the cloth to be bought; each plan is checked.
func TestRemnantsAreAnsweredFromTheStore(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	path := filepath.Join(t.TempDir(), "job.yaml")
	require.NoError(t, os.WriteFile(path, []byte(remnantJob), 0o600))
	file, err := job.Read(path)
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	search := Search{Passes: 20, Seed: 1, Workers: 1}
	cloths, err := Cloths(work, nil)
	require.NoError(t, err)
	found, err := Estimate(t.Context(), work, cloths, search, Watch{})
	require.NoError(t, err)
	enough := found[0].Length + plan.LeastStraightening
	ask := func(length float64) RemnantAnswer {
		pieces, err := PiecesOfCloth(work, RemnantQuestion{Length: length})
		require.NoError(t, err)
		answer, err := Remnant(t.Context(), file, work, pieces[0], nil, UsualLimits(work), search, Watch{})
		require.NoError(t, err)
		return answer
	}
	first := ask(enough)
	assert.Equal(t, remnant.Enough, first.Fit.Answer)
	assert.NoError(t, check.Plan(first.Fit.Plan, work.PiecesOf("shell")))
	again := ask(enough)
	assert.Zero(t, again.Fit.Work.Due)
	assert.Equal(t, first.Fit.Answer, again.Fit.Answer)
	assert.InDelta(t, first.Fit.Plan.Taken, again.Fit.Plan.Taken, 1e-6)

	first = ask(0.84 * enough)
	assert.Equal(t, remnant.NotFound, first.Fit.Answer)
	assert.NotZero(t, first.Fit.Work.Due)
	again = ask(0.84 * enough)
	assert.Equal(t, remnant.NotFound, again.Fit.Answer)
	assert.Zero(t, again.Fit.Work.Due)
	assert.Equal(t, first.Fit.Over, again.Fit.Over)
	require.Len(t, again.Ways, len(first.Ways))
	for i, way := range first.Ways {
		assert.Equal(t, way.Change.With(way.By), again.Ways[i].Change.With(again.Ways[i].By))
	}
}
