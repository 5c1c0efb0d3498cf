package plan_test

import (
	"math"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

var checked = cloth.Cloth{Name: "check", Width: 1020, Selvedge: 10, Repeat: cloth.Repeat{Along: 90, Across: 60}}

// TestRepeatsMatch lays a skirt on stripes and checks in every lay; what is
// kept is looked up on the open cloth by hand for the open lay.
func TestRepeatsMatch(t *testing.T) {
	for _, repeat := range []cloth.Repeat{{Along: 90}, {Across: 60}, {Along: 90, Across: 60}} {
		c := checked
		c.Repeat = repeat
		options := fabrictest.Brief
		options.Lays = nil
		got, err := plan.Require(t.Context(), c, fabrictest.Skirt(), options)
		require.NoError(t, err)
		require.NotNil(t, got.Matching)
		assert.GreaterOrEqual(t, got.Matching.Extra(), 0.0)
		for _, p := range got.Lays {
			if !p.Possible() {
				t.Logf("%+v %s: %s", repeat, p.Lay, words.WhyNot(p))
				continue
			}
			said := strings.Join(words.Matches(p, fabrictest.Skirt()), "\n")
			if repeat.Along > 0 {
				assert.Regexp(t, "side of front and back,.* along the warp", said, "%s", p.Lay)
				assert.Regexp(t, "right and left of back,.* along the warp", said, "%s", p.Lay)
			}
			if repeat.Across > 0 {
				assert.Regexp(t, "side of front and back,.* across", said, "%s", p.Lay)
			}
		}
		if repeat.Along > 0 {
			sideHeights(t, got.Lays[0], repeat.Along)
		}
	}
}

// sideHeights compares the places of the side notches along the warp.
func sideHeights(t *testing.T, plan lay.Plan, period float64) {
	t.Helper()
	var all []float64
	for _, l := range plan.Pieces {
		for _, notch := range l.Notches {
			all = append(all, notch.At[0])
		}
	}
	require.Len(t, all, 4, "two on the front laid whole, one on each back")
	for _, x := range all {
		assert.InDelta(t, 0, math.Remainder(x-all[0], period), 1)
	}
}

// TestFoldOnTheCentreLine: with stripes along and the centre front on the
// stripe 500 mm from the selvedge, the fold in the middle of 1,020 mm (510 mm)
// is 10 mm off it; one selvedge folded in can be on it.
func TestFoldOnTheCentreLine(t *testing.T) {
	c := checked
	c.Repeat = cloth.Repeat{Across: 60, Centred: []string{"front"}, CentreLine: 500}
	all := append(fabrictest.Skirt(), fabrictest.Rectangle("yoke", 300, 200, 1))
	options := fabrictest.Brief
	options.Lays = []lay.Kind{lay.Open, lay.FoldedAlong}
	got, err := plan.Require(t.Context(), c, all[:3], options)
	require.NoError(t, err)
	assert.Contains(t, words.WhyNot(got.Lays[1]), "front: its centre would not lie on the chosen line of the repeat")
	alone := fabrictest.Brief // beside the open lay, which may be shorter, it would be given up
	alone.Lays = []lay.Kind{lay.SelvedgeIn}
	got, err = plan.Require(t.Context(), c, all, alone)
	require.NoError(t, err)
	require.True(t, got.Lays[0].Possible(), words.WhyNot(got.Lays[0]))
	assert.InDelta(t, 0, math.Remainder(got.Lays[0].FoldedIn-500, 60), 1e-6)
	c.Repeat.CentreLine = 510
	got, err = plan.Require(t.Context(), c, all[:3], options)
	require.NoError(t, err)
	assert.True(t, got.Lays[1].Possible(), words.WhyNot(got.Lays[1]))
}

// TestMatchingCost by hand: on a cloth as wide as one panel, two panels of
// 250 mm that match each other at their lower edges lie 300 mm apart on a
// repeat of 100 mm. Plain cloth takes 500 mm, so matching costs 50 mm; the
// rule of thumb says one repeat, 100 mm.
func TestMatchingCost(t *testing.T) {
	left := fabrictest.Notched(fabrictest.Rectangle("left", 200, 250, 1), seams.Left, 250, "seam")
	right := fabrictest.Notched(fabrictest.Rectangle("right", 200, 250, 1), seams.Right, 0, "seam")
	c := cloth.Cloth{Width: 220, Selvedge: 10, Nap: cloth.OneWay, Repeat: cloth.Repeat{Along: 100}}
	got := fabrictest.Required(t, c, left, right)
	assert.InDelta(t, 550, got.Length, 0.01)
	require.NotNil(t, got.Matching)
	assert.InDelta(t, 500, got.Matching.Plain, 0.01)
	assert.InDelta(t, 50, got.Matching.Extra(), 0.01)
	assert.InDelta(t, 0.5, got.Matching.Repeats, 1e-4)
	assert.InDelta(t, 600, got.Matching.RuleOfThumb, 0.01)
}

func TestMatchesThatContradict(t *testing.T) {
	a := fabrictest.Notched(fabrictest.Notched(fabrictest.Rectangle("a", 100, 300, 1), seams.Right, 0, "low"),
		seams.Right, 150, "high")
	b := fabrictest.Notched(fabrictest.Notched(fabrictest.Rectangle("b", 100, 300, 1), seams.Right, 0, "low"),
		seams.Right, 170, "high")
	c := cloth.Cloth{Width: 520, Selvedge: 10, Repeat: cloth.Repeat{Along: 90}}
	p := inLay(t, c, lay.Open, a, b)
	assert.Contains(t, p.Notes, lay.Note{Of: lay.Unmatched})
	assert.Contains(t, strings.Join(words.Notes(p), "\n"),
		"high of b cannot be matched along the warp as well as the others")
	c.Repeat.Matches = []marks.Name{marks.Called("high")}
	p = inLay(t, c, lay.Open, a, b)
	for _, note := range p.Notes {
		assert.NotEqual(t, lay.Unmatched, note.Of)
	}
	c.Repeat.Matches = []marks.Name{marks.Called("middle")}
	_, err := plan.Require(t.Context(), c, []pieces.Piece{a, b}, fabrictest.Brief)
	assert.ErrorContains(t, words.Refused(c, err), `no pieces are joined by "middle"; name one of: low, high`)
}

// TestTurnedPieceKeepsMatches: a sleeve that alone takes part in two matches on
// the folded stretch may be turned end for end there; the bodice that is laid
// open after it then matches it as it lies.
func TestTurnedPieceKeepsMatches(t *testing.T) {
	c := cloth.Cloth{Width: 1500, Selvedge: 10, Repeat: cloth.Repeat{Along: 90}}
	all := fabrictest.DraftedBlouse("12")
	require.NotEmpty(t, all)
	for seed := range uint64(sample.Of(1, 3)) {
		for _, kind := range []lay.Kind{lay.SelvedgeIn, lay.InStretches} {
			_, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 1, Seed: seed, Workers: 1, Lays: []lay.Kind{kind}})
			assert.NoError(t, err, "%s, seed %d", kind, seed)
		}
	}
}

// TestBothPliesHaveAPlaceAcross: folded across the weft both plies have the
// stripes along at the same places, so that a pair matches another whichever
// face of its template is up.
func TestBothPliesHaveAPlaceAcross(t *testing.T) {
	sail := fabrictest.Polygon("sail", orb.Point{0, 0}, orb.Point{130, 0}, orb.Point{40, 300})
	jib := fabrictest.Polygon("jib", orb.Point{0, 0}, orb.Point{170, 0}, orb.Point{90, 210})
	all := []pieces.Piece{
		fabrictest.Pair(fabrictest.Notched(sail, seams.Called("b"), 71, "luff")),
		fabrictest.Pair(fabrictest.Notched(jib, seams.Called("c"), 34, "luff")),
	}
	all[0].Cut, all[1].Cut = 4, 6
	c := cloth.Cloth{Width: 600, Selvedge: 10, Repeat: cloth.Repeat{Across: 23, Even: true}}
	for seed := range uint64(6) {
		options := plan.Options{Passes: 5, Seed: seed, Workers: 1, Lays: []lay.Kind{lay.FoldedAcross}}
		got, err := plan.Require(t.Context(), c, all, options)
		require.NoError(t, err)
		assert.Len(t, got.Lays[0].Matches, 3, "the luff of both, and right and left of each")
	}
}
