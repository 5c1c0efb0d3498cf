package app

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// keptAnew is a problem with what an empty store has to say of it.
func keptAnew(t *testing.T) (problem, finder, finding) {
	t.Helper()
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	p, f := aProblem(), newFinder(Search{Passes: 5, Seed: 1, Workers: 1})
	first, err := f.find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	return p, f, first
}

// A layout in the store that is sound, but longer than what the search would find, does
// not make the answer longer, whatever it says of itself.
func TestALongLayoutInTheStoreDoesNotLengthen(t *testing.T) {
	p, f, first := keptAnew(t)
	again, err := f.find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	assert.Zero(t, again.Work.Due, "it is not searched again")

	entries, err := filepath.Glob(filepath.Join(os.Getenv("XDG_CACHE_HOME"), "ellwand", "layouts", "*.json"))
	require.NoError(t, err)
	require.Len(t, entries, 1)
	mine, err := os.ReadFile(entries[0])
	require.NoError(t, err)
	longer := strings.ReplaceAll(string(mine), `"x_mm":`, `"x_mm":10`)
	require.NotEqual(t, string(mine), longer)
	require.NoError(t, os.WriteFile(entries[0], []byte(longer), 0o600))
	got, err := f.find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	assert.InDelta(t, first.Length, got.Length, 1e-6)
	assert.NotZero(t, got.Work.Due)
}

// Of two processes that search at once the second takes what the first has kept where
// that is shorter, and leaves it in the store.
func TestOfTwoAtOnceTheShorterIsKept(t *testing.T) {
	p, f, first := keptAnew(t)
	long := finding{Requirement: first.Requirement}
	long.Found = nil
	for _, one := range first.Found {
		moved := plan.Bare(one)
		for i := range moved.Pieces {
			moved.Pieces[i].X += 100
		}
		long.Found = append(long.Found, moved)
	}
	long.Length += 100
	key := f.key(p.cloth, p.all)
	options := plan.Options{Passes: 5, Seed: 1}
	got, err := f.keep(t.Context(), key, store.Entry{}, store.Found{Plans: long.Found}, long, options)
	require.NoError(t, err)
	assert.InDelta(t, first.Length, got.Length, 1e-6)
	assert.True(t, got.kept)
	assert.Equal(t, bare(first.Found), f.store.Read(key).Plans())
}

func bare(all []lay.Plan) []lay.Plan {
	var out []lay.Plan
	for _, p := range all {
		out = append(out, plan.Bare(p))
	}
	return out
}

// A lay that the same command found is not said to be an earlier one, also where a search
// that begins where another answer lies finds no less; nor by a command that would have
// searched the same. Another seed is another search.
func TestOnlyOtherSearchesAreEarlierOnes(t *testing.T) {
	p, f, first := keptAnew(t)
	assert.False(t, first.kept)
	from := plan.Options{WarmStarts: first.Found}
	for _, finds := range []finder{f, newFinder(f.search)} {
		for _, options := range []plan.Options{from, {}} {
			got, err := finds.find(t.Context(), p.cloth, p.all, options)
			require.NoError(t, err)
			assert.False(t, got.kept)
		}
	}
	entry := f.store.Read(f.key(p.cloth, p.all))
	require.True(t, f.store.Add(f.key(p.cloth, p.all), entry,
		store.Found{Plans: first.Found, By: &store.Search{Seed: 2, Effort: "usual", Passes: 5}}))
	got, err := newFinder(f.search).find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	assert.True(t, got.kept)
}
