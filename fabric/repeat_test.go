package fabric_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/testdata/sample"
)

// notched puts a match point on an edge of a piece.
func notched(p pieces.Piece, edge string, at float64, match string) pieces.Piece {
	p.Notches = append(append([]pieces.Notch(nil), p.Notches...), pieces.Notch{Edge: edge, At: at, Count: 1, Match: match})
	return p
}

// skirt has a front on the fold and a pair of backs that meet at the side, 120
// mm and 90 mm up from their lower edges.
func skirt() []pieces.Piece {
	front := notched(half("front", 200, 500, 1), "b", 120, "side")
	back := notched(pair(polygon("back", orb.Point{0, 0}, orb.Point{190, 0}, orb.Point{170, 470}, orb.Point{0, 450})), "b", 90, "side")
	return []pieces.Piece{front, back, rectangle("band", 60, 400, 2)}
}

var checked = cloth.Cloth{Name: "check", Width: 1020, Selvedge: 10, Repeat: cloth.Repeat{Along: 90, Across: 60}}

// TestRepeatsMatch lays a skirt on stripes and checks in every lay; what is
// kept is looked up on the open cloth by hand for the open lay.
func TestRepeatsMatch(t *testing.T) {
	for _, repeat := range []cloth.Repeat{{Along: 90}, {Across: 60}, {Along: 90, Across: 60}} {
		c := checked
		c.Repeat = repeat
		options := brief
		options.Lays = nil
		got, err := fabric.Require(t.Context(), c, skirt(), options)
		require.NoError(t, err)
		require.NotNil(t, got.Matching)
		assert.GreaterOrEqual(t, got.Matching.Extra(), 0.0)
		for _, plan := range got.Lays {
			if !plan.Possible() {
				t.Logf("%+v %s: %s", repeat, plan.Lay, plan.Impossible)
				continue
			}
			names := map[string]bool{}
			for _, match := range plan.Matches {
				names[match.Describe(skirt())] = true
			}
			if repeat.Along > 0 {
				assert.True(t, names["side of front and back, along the warp"], "%s: %v", plan.Lay, plan.Matches)
				assert.True(t, names["right and left of back, along the warp"], "%s", plan.Lay)
			}
			if repeat.Across > 0 {
				assert.True(t, names["side of front and back, across"], "%s: %v", plan.Lay, plan.Matches)
			}
		}
		if repeat.Along > 0 {
			sideHeights(t, got.Lays[0], repeat.Along)
		}
	}
}

// sideHeights compares the places of the side notches along the warp.
func sideHeights(t *testing.T, plan fabric.LayPlan, period float64) {
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
	all := append(skirt(), rectangle("yoke", 300, 200, 1))
	options := brief
	options.Lays = []fabric.Lay{fabric.Open, fabric.FoldedAlong}
	got, err := fabric.Require(t.Context(), c, all[:3], options)
	require.NoError(t, err)
	assert.Contains(t, got.Lays[1].Impossible, "front: its centre would not lie on the chosen line of the repeat")
	alone := brief // beside the open lay, which may be shorter, it would be given up
	alone.Lays = []fabric.Lay{fabric.SelvedgeIn}
	got, err = fabric.Require(t.Context(), c, all, alone)
	require.NoError(t, err)
	require.True(t, got.Lays[0].Possible(), got.Lays[0].Impossible)
	assert.InDelta(t, 0, math.Remainder(got.Lays[0].FoldedIn-500, 60), 1e-6)
	c.Repeat.CentreLine = 510
	got, err = fabric.Require(t.Context(), c, all[:3], options)
	require.NoError(t, err)
	assert.True(t, got.Lays[1].Possible(), got.Lays[1].Impossible)
}

// TestMatchingCost by hand: on a cloth as wide as one panel, two panels of
// 250 mm that match each other at their lower edges lie 300 mm apart on a
// repeat of 100 mm. Plain cloth takes 500 mm, so matching costs 50 mm; the
// rule of thumb says one repeat, 100 mm.
func TestMatchingCost(t *testing.T) {
	left := notched(rectangle("left", 200, 250, 1), "left", 250, "seam")
	right := notched(rectangle("right", 200, 250, 1), "right", 0, "seam")
	c := cloth.Cloth{Width: 220, Selvedge: 10, Nap: cloth.OneWay, Repeat: cloth.Repeat{Along: 100}}
	got := required(t, c, left, right)
	assert.InDelta(t, 550, got.Length, 0.01)
	require.NotNil(t, got.Matching)
	assert.InDelta(t, 500, got.Matching.Plain, 0.01)
	assert.InDelta(t, 50, got.Matching.Extra(), 0.01)
	assert.InDelta(t, 0.5, got.Matching.Repeats, 1e-4)
	assert.InDelta(t, 600, got.Matching.RuleOfThumb, 0.01)
}

func TestMatchesThatContradict(t *testing.T) {
	a := notched(notched(rectangle("a", 100, 300, 1), "right", 0, "low"), "right", 150, "high")
	b := notched(notched(rectangle("b", 100, 300, 1), "right", 0, "low"), "right", 170, "high")
	c := cloth.Cloth{Width: 520, Selvedge: 10, Repeat: cloth.Repeat{Along: 90}}
	plan := inLay(t, c, fabric.Open, a, b)
	require.NotEmpty(t, plan.Notes)
	assert.Contains(t, plan.Notes[len(plan.Notes)-1]+plan.Notes[0], "high of b cannot be matched along the warp as well as the others")
	c.Repeat.Matches = []string{"high"}
	plan = inLay(t, c, fabric.Open, a, b)
	for _, note := range plan.Notes {
		assert.NotContains(t, note, "matched")
	}
	c.Repeat.Matches = []string{"middle"}
	_, err := fabric.Require(t.Context(), c, []pieces.Piece{a, b}, brief)
	assert.ErrorContains(t, err, `no piece has a match point "middle"`)
}

// TestCheckSeesMatches moves a matched piece by 5 mm.
func TestCheckSeesMatches(t *testing.T) {
	cloth := checked
	cloth.Width = 1400
	plan := inLay(t, cloth, fabric.Open, skirt()...)
	require.NoError(t, plan.Check(skirt()))
	plan.Length, plan.Taken = plan.Length+50, plan.Taken+50
	plan.Parts = []fabric.Part{{Length: plan.Length, Width: plan.Width, Plies: 1}}
	back := at(&plan, "back", true)
	shift(back, 5, 0)
	back.X += 5
	assert.ErrorContains(t, plan.Check(skirt()), "off the repeat")
}

// TestTurnedPieceKeepsMatches: a sleeve that alone takes part in two matches on
// the folded stretch may be turned end for end there; the bodice that is laid
// open after it then matches it as it lies.
func TestTurnedPieceKeepsMatches(t *testing.T) {
	c := cloth.Cloth{Width: 1500, Selvedge: 10, Repeat: cloth.Repeat{Along: 90}}
	all := draftedBlouse("12")
	require.NotEmpty(t, all)
	for seed := range uint64(sample.Of(1, 3)) {
		for _, lay := range []fabric.Lay{fabric.SelvedgeIn, fabric.InStretches} {
			_, err := fabric.Require(t.Context(), c, all, fabric.Options{Iterations: 1, Seed: seed, Workers: 1, Lays: []fabric.Lay{lay}})
			assert.NoError(t, err, "%s, seed %d", lay, seed)
		}
	}
}

// TestBothPliesHaveAPlaceAcross: folded across the weft both plies have the
// stripes along at the same places, so that a pair matches another whichever
// face of its template is up.
func TestBothPliesHaveAPlaceAcross(t *testing.T) {
	sail := polygon("sail", orb.Point{0, 0}, orb.Point{130, 0}, orb.Point{40, 300})
	jib := polygon("jib", orb.Point{0, 0}, orb.Point{170, 0}, orb.Point{90, 210})
	all := []pieces.Piece{
		pair(notched(sail, "b", 71, "luff")), pair(notched(jib, "c", 34, "luff")),
	}
	all[0].Cut, all[1].Cut = 4, 6
	c := cloth.Cloth{Width: 600, Selvedge: 10, Repeat: cloth.Repeat{Across: 23}}
	for seed := range uint64(6) {
		options := fabric.Options{Iterations: 5, Seed: seed, Workers: 1, Lays: []fabric.Lay{fabric.FoldedAcross}}
		got, err := fabric.Require(t.Context(), c, all, options)
		require.NoError(t, err)
		assert.Len(t, got.Lays[0].Matches, 3, "the luff of both, and right and left of each")
	}
}
