package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/quote"
)

// A sleeve whose length was not measured may be 4 % longer; one that was may not. What
// is cut from another cloth has no part in it.
func TestDerivedMeasurementsAreDoubted(t *testing.T) {
	resolved := func(more string) *job.Work {
		file, err := job.Parse("blouse.yaml", []byte("job: a\nunits: cm\nbody:\n  bust_girth: 92\n  waist_girth: 76\n  "+
			"neck_base_girth: 38\n  back_neck_point_to_waist: 41.5\n  shoulder_length: 12.5\n  across_back_width: 35.5\n  "+
			"across_front_width: 33.5\n  scye_depth: 21.5\n  upper_arm_girth: 29\n  wrist_girth: 16\n"+more+
			"garments:\n  - name: blouse\n    bodice: {}\n    sleeve: {}\n    pieces: [{name: pocket, width: 12, height: "+
			"14, cloth: "+
			"lining}]\ncloths:\n  - {name: shell, width: 140}\n  - {name: lining, width: 140}\n"))
		require.NoError(t, err)
		work, err := file.Resolve()
		require.NoError(t, err)
		return work
	}
	derived := resolved("")
	assert.Len(t, derived.DerivedNames(), 1)
	doubts := mustDoubt(t, derived)
	shell := doubts.measures("shell")
	assert.InDelta(t, 0.015, shell.More, 0.01, "the sleeves are a good third of the blouse")
	assert.InDelta(t, shell.More, shell.Less, 0.002)
	assert.Equal(t, quote.Doubt{Of: quote.Measures}, doubts.measures("lining"))

	measured := mustDoubt(t, resolved("  shoulder_to_wrist: 59\n"))
	assert.Equal(t, quote.Doubt{Of: quote.Measures}, measured.measures("shell"))
}

// The width is doubted until it is measured, and a search that was cut short more than
// a whole one.
func TestWhatIsDoubted(t *testing.T) {
	file, err := job.Parse("a.yaml",
		[]byte("job: a\nunits: cm\ngarments:\n  - name: b\n    pieces: [{name: c, width: 20, "+
			"height: 30, cut: 7}]\ncloths:\n  - {name: shell, width: 90}\n  - {name: lining, width: 90, width_measured: yes}\n"))
	require.NoError(t, err)
	file.Garments[0].Pieces[0].Cloth = "shell"
	file.Garments[0].Pieces = append(file.Garments[0].Pieces, file.Garments[0].Pieces[0])
	file.Garments[0].Pieces[1].Cloth, file.Garments[0].Pieces[1].Name = "lining", "d"
	work, err := file.Resolve()
	require.NoError(t, err)
	cloths, err := Cloths(work, nil)
	require.NoError(t, err)
	found, err := Estimate(t.Context(), work, cloths, Search{Passes: 2, Anew: true}, Watch{})
	require.NoError(t, err)
	of := func(e Estimated) []quote.Unknown {
		var out []quote.Unknown
		for _, d := range e.Range.Doubts {
			out = append(out, d.Of)
		}
		return out
	}
	assert.Contains(t, of(found[0]), quote.TrueWidth)
	assert.NotContains(t, of(found[1]), quote.TrueWidth)

	one := found[1]
	one.Amount.Bound = one.Amount.Taken / 2
	whole := mustDoubt(t, work)
	assert.Less(t, whole.rangeOf(one.Cloth, one.Amount, false).Doubts[0].Less,
		whole.rangeOf(one.Cloth, one.Amount, true).Doubts[0].Less)
}

func mustDoubt(t *testing.T, work *job.Work) doubter {
	t.Helper()
	out, err := newDoubter(t.Context(), work, Search{})
	require.NoError(t, err)
	return out
}
