package plan_test

import (
	"context"
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
)

func inLay(t *testing.T, c cloth.Cloth, kind lay.Kind, all ...pieces.Piece) lay.Plan {
	t.Helper()
	options := plan.Options{Lays: []lay.Kind{kind}, Passes: 300, Seed: 1}
	got, err := plan.Require(context.Background(), c, all, options)
	require.NoError(t, err)
	for _, p := range got.Lays {
		if p.Lay == kind {
			return p
		}
	}
	t.Fatalf("the lay %s was not tried", kind)
	return lay.Plan{}
}

// TestJigsaws cuts pieces from a cloth of known length, spread in each of the
// lays, so that the shortest length is known by hand: rectangles come back
// exactly, other shapes within 3 %.
func TestJigsaws(t *testing.T) {
	goods := cloth.Cloth{Width: 1220, Selvedge: 10}
	for _, c := range []struct {
		name  string
		lay   lay.Kind
		all   []pieces.Piece
		taken float64
		share float64 // how much longer it may be
	}{
		{"open, single pieces", lay.Open,
			[]pieces.Piece{fabrictest.Rectangle("a", 700, 500, 1), fabrictest.Rectangle("b", 500, 500, 1)}, 500, 0},
		{"folded along, fold pieces and pairs", lay.FoldedAlong,
			[]pieces.Piece{fabrictest.Half("back", 300, 700, 1), fabrictest.Half("front", 300, 500, 1),
				fabrictest.Rectangle("side", 300, 1200, 2)}, 1200, 0},
		{"folded along, wedges", lay.FoldedAlong,
			append(fabrictest.Wedges("gore", 300, 800, 2), fabrictest.Half("back", 300, 800, 1)), 800, 0.03},
		{"folded across, wider than half the width", lay.FoldedAcross,
			[]pieces.Piece{fabrictest.Rectangle("cape", 700, 600, 2), fabrictest.Rectangle("scarf", 500, 600, 2)}, 1200, 0},
		{"folded across, wedges", lay.FoldedAcross, fabrictest.Wedges("sail", 1200, 600, 2), 1200, 0.03},
		{"cut across, wider than half the width", lay.CutAcross,
			[]pieces.Piece{fabrictest.Rectangle("cape", 700, 600, 2), fabrictest.Rectangle("scarf", 500, 600, 2)}, 1200, 0},
		{"cut across, wedges", lay.CutAcross, fabrictest.Wedges("sail", 1200, 600, 2), 1200, 0.03},
		// The fold 210 mm from the edge leaves 200 mm of two plies and 790 mm
		// of one.
		{"one selvedge in, by the fold piece", lay.SelvedgeIn,
			[]pieces.Piece{fabrictest.Half("back", 200, 900, 1), fabrictest.Rectangle("skirt", 790, 900, 1)}, 900, 0},
		{"both selvedges in, two fold pieces", lay.BothSelvedgesIn,
			[]pieces.Piece{fabrictest.Half("front", 295, 800, 1), fabrictest.Half("back", 295, 800, 1)}, 800, 0},
		{"part folded, part open", lay.InStretches,
			[]pieces.Piece{fabrictest.Half("back", 600, 700, 1), fabrictest.Rectangle("yoke", 1200, 300, 1)}, 1000, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := inLay(t, goods, c.lay, c.all...)
			require.True(t, plan.Possible(), words.WhyNot(plan))
			assert.LessOrEqual(t, plan.Taken, c.taken*(1+c.share)+0.01)
			assert.GreaterOrEqual(t, plan.Taken, c.taken-0.01)
			if c.lay == lay.SelvedgeIn {
				assert.Equal(t, 210.0, plan.FoldedIn)
			}
		})
	}
}

// TestLaysThatCannotBe: the reason names the piece and the way out.
func TestLaysThatCannotBe(t *testing.T) {
	goods := cloth.Cloth{Width: 1220, Selvedge: 10}
	oneWay, one := goods, goods
	oneWay.Nap = cloth.OneWay
	one.OneWayPieces = []string{"cuff"}
	stained := goods
	stained.Flaws = []cloth.Flaw{cloth.RoundFlaw("stain", orb.Point{100, 100}, 20)}
	cuff := fabrictest.Rectangle("cuff", 100, 200, 2)
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		lay   lay.Kind
		all   []pieces.Piece
		want  []string
	}{
		{"one way", oneWay, lay.FoldedAcross, []pieces.Piece{cuff},
			[]string{"the cloth goes one way, and in the upper ply the warp runs the other way",
				"cut the cloth across and turn"}},
		{"one-way piece", one, lay.FoldedAcross, []pieces.Piece{cuff}, []string{"cuff: it must go one way"}},
		{"flawed", stained, lay.FoldedAcross, []pieces.Piece{cuff},
			[]string{"the cloth has flaws", "lay it open or folded along the warp"}},
		{"flawed", stained, lay.CutAcross, []pieces.Piece{cuff}, []string{"the cloth has flaws"}},
		{"a single fold piece", goods, lay.CutAcross, []pieces.Piece{fabrictest.Half("back", 100, 200, 1)},
			[]string{"back: a single piece cannot be cut from two plies"}},
		{"too wide to the middle", goods, lay.BothSelvedgesIn, []pieces.Piece{fabrictest.Half("back", 300, 200, 1)},
			[]string{"back: it is 30 cm wide", "only 29.5 cm"}},
		{"nothing double", goods, lay.SelvedgeIn, []pieces.Piece{fabrictest.Rectangle("yoke", 100, 200, 1)},
			[]string{"no piece can be cut from two plies"}},
		{"nothing single", goods, lay.InStretches, []pieces.Piece{cuff},
			[]string{"everything can be cut from the folded cloth"}},
	} {
		t.Run(c.name+" "+c.lay.String(), func(t *testing.T) {
			options := fabrictest.Brief
			options.Lays = []lay.Kind{c.lay, lay.Open}
			got, err := plan.Require(context.Background(), c.cloth, c.all, options)
			require.NoError(t, err)
			p := got.Lays[1]
			require.False(t, p.Possible())
			for _, want := range c.want {
				assert.Contains(t, words.WhyNot(p), want)
			}
		})
	}
}

func TestCutAcrossKeepsTheNap(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10, Nap: cloth.OneWay}
	plan := inLay(t, c, lay.CutAcross, fabrictest.Rectangle("cape", 700, 600, 2))
	require.True(t, plan.Possible(), words.WhyNot(plan))
	assert.InDelta(t, 1200, plan.Taken, 0.01)
	assert.Equal(t, 2, plan.Cuts, "one outline, and the cut across")
}

func TestEitherSideUp(t *testing.T) {
	c := cloth.Cloth{Width: 220, Selvedge: 10, Alike: true, Nap: cloth.OneWay}
	triangle := fabrictest.Polygon("flag", orb.Point{0, 0}, orb.Point{200, 0}, orb.Point{0, 200})
	triangle.Cut = 2
	plan := inLay(t, c, lay.Open, triangle)
	assert.Greater(t, plan.Length, 200.0)
	c.Nap = cloth.EitherWay
	plan = inLay(t, c, lay.Open, triangle)
	assert.InDelta(t, 200, plan.Length, 1, "two triangles make a square")
	single := triangle
	single.Cut, single.Pair = 2, true
	c.Nap, c.Alike = cloth.EitherWay, false
	plan = inLay(t, c, lay.Open, single)
	assert.Greater(t, plan.Length, 205.0, "a right and a left do not")
	c.Alike = true
	plan = inLay(t, c, lay.Open, single)
	assert.InDelta(t, 200, plan.Length, 1, "but two that turn over do")
}

// TestShrinkage: figures by hand. A cloth of 1,000 mm that loses 5 % in the
// weft is 950 mm wide; 1,900 mm of it, at 5 % in the warp, were 2,000 mm.
func TestShrinkage(t *testing.T) {
	c := cloth.Cloth{Width: 1000, Shrinkage: cloth.Shrinkage{Warp: 0.05, Weft: 0.05}}
	panel := fabrictest.Rectangle("panel", 950, 1900, 1)
	plan := inLay(t, c, lay.Open, panel)
	assert.InDelta(t, 950, plan.Width, 1e-9)
	assert.InDelta(t, 1900, plan.Taken, 0.01)
	assert.InDelta(t, 2000, plan.Buy, 0.01)

	c.Shrinkage.CutFirst = true
	plan = inLay(t, c, lay.Open, panel)
	assert.InDelta(t, 1000, plan.Width, 1e-9)
	assert.InDelta(t, 2000, plan.Buy, 0.01)
	assert.InDelta(t, 1000, plan.Pieces[0].Outline.Bound().Max[1], 0.01)

	c.Shrinkage = cloth.Shrinkage{Warp: 0.05, CutFirst: true}
	plan = inLay(t, c, lay.Open, fabrictest.OnGrain(fabrictest.Rectangle("panel", 950, 1000, 1), pieces.CrossGrain))
	assert.InDelta(t, 1000, plan.Taken, 0.01, "on the cross grain the width lies along the warp")
}

// TestGapAndTilt: two squares with 10 mm between, and a strip that tilts to
// fit.
func TestGapAndTilt(t *testing.T) {
	c := cloth.Cloth{Width: 100, Gap: 10}
	plan := inLay(t, c, lay.Open, fabrictest.Rectangle("square", 100, 100, 2))
	assert.InDelta(t, 210, plan.Length, 0.01)
	// Behind a folded part the gap is kept once more: 700 and 300 mm, and 10 between.
	c = cloth.Cloth{Width: 1220, Selvedge: 10, Gap: 10}
	plan = inLay(t, c, lay.InStretches, fabrictest.Half("back", 600, 700, 1), fabrictest.Rectangle("yoke", 1200, 300, 1))
	assert.InDelta(t, 1010, plan.Taken, 0.01)
	c = cloth.Cloth{Width: 1000, Tilt: 0.03}
	plan = inLay(t, c, lay.Open, fabrictest.Wedges("gore", 300, 1000, 2)...)
	for _, l := range plan.Pieces {
		rise := (l.Grain[1][1] - l.Grain[0][1]) / (l.Grain[1][0] - l.Grain[0][0])
		assert.LessOrEqual(t, rise*rise, 0.03*0.03*1.01)
	}
}

// TestGapBesideFolds: it is kept on the open cloth, in whichever plies.
func TestGapBesideFolds(t *testing.T) {
	// Half of it in each ply: 95 mm across in 100, not 96.
	c := cloth.Cloth{Width: 220, Selvedge: 10, Gap: 10}
	laid := inLay(t, c, lay.FoldedAlong, fabrictest.Rectangle("square", 95, 100, 2))
	assert.InDelta(t, 5, laid.Pieces[0].Outline.Bound().Min[1], 0.01)
	_, err := plan.Require(t.Context(), c, []pieces.Piece{fabrictest.Rectangle("square", 96, 100, 2)},
		plan.Options{Passes: 1, Lays: []lay.Kind{lay.FoldedAlong}})
	require.Error(t, err)
	// A half on the fold takes all of it.
	laid = inLay(t, c, lay.FoldedAlong, fabrictest.Half("back", 100, 100, 1))
	assert.InDelta(t, 100, laid.Length, 0.01)
	// A fold across, and a cut across, take the gap once.
	c.Width = 120
	for _, kind := range []lay.Kind{lay.FoldedAcross, lay.CutAcross} {
		assert.InDelta(t, 210, inLay(t, c, kind, fabrictest.Rectangle("square", 100, 100, 2)).Taken, 0.01, "%s", kind)
	}
	c.Repeat = cloth.Repeat{Along: 70} // the second length begins at 140
	assert.InDelta(t, 240, inLay(t, c, lay.CutAcross, fabrictest.Rectangle("square", 100, 100, 2)).Taken, 0.01)
}

// TestFlaws: a strip with a hole in its middle takes the pieces on both sides
// of it; a faded edge narrows the cloth; a band across lengthens it.
func TestFlaws(t *testing.T) {
	c := cloth.Cloth{Width: 220, Selvedge: 10}
	square := fabrictest.Rectangle("square", 200, 200, 2)
	c.Flaws = []cloth.Flaw{cloth.BarFlaw("shaded", 300, 350)}
	assert.InDelta(t, 550, inLay(t, c, lay.Open, square).Length, 0.01)
	c.Flaws = []cloth.Flaw{cloth.RoundFlaw("hole", orb.Point{300, 110}, 10)}
	plan := inLay(t, c, lay.Open, square)
	assert.InDelta(t, 510, plan.Length, 0.3)
	assert.Len(t, plan.Zones, 1)
	c.Flaws = []cloth.Flaw{cloth.BandFlaw("faded", 0, 60)}
	assert.InDelta(t, 600, inLay(t, c, lay.Open, fabrictest.Rectangle("strip", 150, 300, 2)).Length, 0.01)
	// On the folded cloth a stain in the far half lies on the near one too.
	c = cloth.Cloth{Width: 420, Selvedge: 10, Flaws: []cloth.Flaw{cloth.BarFlaw("shaded", 300, 350)}}
	c.Flaws[0].Outline = orb.Ring{{300, 0}, {350, 0}, {350, 100}, {300, 100}, {300, 0}}
	assert.InDelta(t, 550, inLay(t, c, lay.FoldedAlong, fabrictest.Rectangle("square", 200, 200, 4)).Length, 0.01)
}

// TestStricterIsNeverShorter: the answer to a stricter question, offered as a
// known plan, is where the looser one starts.
func TestStricterIsNeverShorter(t *testing.T) {
	strict := cloth.Cloth{Width: 1020, Selvedge: 10, Nap: cloth.OneWay, Gap: 2}
	options := fabrictest.Brief
	options.Passes = 60
	first, err := plan.Require(context.Background(), strict, fabrictest.Blouse(), options)
	require.NoError(t, err)
	options.Passes, options.WarmStarts = 1, first.Lays
	eitherWay, perGarment, wider, gapless := strict, strict, strict, strict
	eitherWay.Nap, perGarment.Nap, wider.Width, gapless.Gap = cloth.EitherWay, cloth.OneWayPerGarment, strict.Width+1, 0
	for name, loose := range map[string]cloth.Cloth{"either way": eitherWay, "one way per garment": perGarment,
		"wider": wider, "no gap": gapless} {
		second, err := plan.Require(context.Background(), loose, fabrictest.Blouse(), options)
		require.NoError(t, err)
		for i, p := range second.Lays {
			if first.Lays[i].Possible() {
				assert.LessOrEqual(t, p.Length, first.Lays[i].Length+1e-6, "%s, %s", name, p.Lay)
			}
		}
	}
}

// TestTwoPartsNeverNeedMore: a lay of two parts is weighed against the cloth
// folded or open throughout, which it is with one part empty; where they need
// less, it says so and gives their plan.
func TestTwoPartsNeverNeedMore(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10}
	all := []pieces.Piece{fabrictest.Half("back", 300, 700, 1), fabrictest.Half("front", 300, 500, 1),
		fabrictest.Rectangle("side", 300, 1200, 2)}
	options := plan.Options{Passes: 400, Seed: 1}
	got, err := plan.Require(context.Background(), c, all, options)
	require.NoError(t, err)
	for _, p := range got.Lays {
		if p.Lay == lay.SelvedgeIn || p.Lay == lay.InStretches {
			require.NotNil(t, p.Throughout, p.Lay)
			assert.Equal(t, lay.FoldedAlong, p.Throughout.Lay, "everything queues along the one fold in 1200 mm")
			assert.Contains(t, words.WhyNot(p), "lay the cloth folded along the warp throughout")
		}
	}
	// A single yoke as wide as the cloth cannot be folded: the stretches need no
	// more than the open cloth, and have one outline less to chalk.
	got, err = plan.Require(context.Background(), c,
		[]pieces.Piece{fabrictest.Rectangle("side", 600, 700, 2), fabrictest.Rectangle("yoke", 1200, 300, 1)}, options)
	require.NoError(t, err)
	stretches := got.Lays[len(got.Lays)-1]
	require.True(t, stretches.Possible(), words.WhyNot(stretches))
	assert.InDelta(t, 1000, stretches.Taken, 0.01)
	assert.Equal(t, lay.InStretches, got.Lays[got.Chosen].Lay)
}

// TestPairsMoveToTheOpenStretch: the folded cloth takes two of the three pairs
// beside each other; the third fills the open one with the single piece.
func TestPairsMoveToTheOpenStretch(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10}
	plan := inLay(t, c, lay.InStretches, fabrictest.Rectangle("leg", 300, 800, 6),
		fabrictest.Rectangle("yoke", 600, 800, 1))
	require.True(t, plan.Possible(), words.WhyNot(plan))
	assert.InDelta(t, 1600, plan.Taken, 0.01)
}
