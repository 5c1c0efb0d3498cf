package fabric_test

import (
	"context"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

// half is a rectangle on the fold, given by its half.
func half(name string, width, height float64, cut int) pieces.Piece {
	p := polygon(name, orb.Point{0, 0}, orb.Point{width, 0}, orb.Point{width, height}, orb.Point{0, height})
	p.Fold, p.Cut = "d", cut
	return p
}

// wedges are two right-angled triangles that make a rectangle, each a pair.
func wedges(name string, width, height float64, cut int) []pieces.Piece {
	lower := polygon(name+" lower", orb.Point{0, 0}, orb.Point{width, 0}, orb.Point{width, height})
	upper := polygon(name+" upper", orb.Point{0, 0}, orb.Point{width, height}, orb.Point{0, height})
	lower.Pair, lower.Cut, upper.Pair, upper.Cut = true, cut, true, cut
	return []pieces.Piece{lower, upper}
}

func inLay(t *testing.T, c cloth.Cloth, lay fabric.Lay, all ...pieces.Piece) fabric.LayPlan {
	t.Helper()
	options := fabric.Options{Lays: []fabric.Lay{lay}, Iterations: 300, Seed: 1}
	got, err := fabric.Require(context.Background(), c, all, options)
	require.NoError(t, err)
	for _, plan := range got.Lays {
		if plan.Lay == lay {
			return plan
		}
	}
	t.Fatalf("the lay %s was not tried", lay)
	return fabric.LayPlan{}
}

// TestJigsaws cuts pieces from a cloth of known length, spread in each of the
// lays, so that the shortest length is known by hand: rectangles come back
// exactly, other shapes within 3 %.
func TestJigsaws(t *testing.T) {
	goods := cloth.Cloth{Width: 1220, Selvedge: 10}
	for _, c := range []struct {
		name  string
		lay   fabric.Lay
		all   []pieces.Piece
		taken float64
		share float64 // how much longer it may be
	}{
		{"open, single pieces", fabric.Open,
			[]pieces.Piece{rectangle("a", 700, 500, 1), rectangle("b", 500, 500, 1)}, 500, 0},
		{"folded along, fold pieces and pairs", fabric.FoldedAlong,
			[]pieces.Piece{half("back", 300, 700, 1), half("front", 300, 500, 1), rectangle("side", 300, 1200, 2)}, 1200, 0},
		{"folded along, wedges", fabric.FoldedAlong,
			append(wedges("gore", 300, 800, 2), half("back", 300, 800, 1)), 800, 0.03},
		{"folded across, wider than half the width", fabric.FoldedAcross,
			[]pieces.Piece{rectangle("cape", 700, 600, 2), rectangle("scarf", 500, 600, 2)}, 1200, 0},
		{"folded across, wedges", fabric.FoldedAcross, wedges("sail", 1200, 600, 2), 1200, 0.03},
		{"cut across, wider than half the width", fabric.CutAcross,
			[]pieces.Piece{rectangle("cape", 700, 600, 2), rectangle("scarf", 500, 600, 2)}, 1200, 0},
		{"cut across, wedges", fabric.CutAcross, wedges("sail", 1200, 600, 2), 1200, 0.03},
		// The fold 210 mm from the edge leaves 200 mm of two plies and 790 mm
		// of one.
		{"one selvedge in, by the fold piece", fabric.SelvedgeIn,
			[]pieces.Piece{half("back", 200, 900, 1), rectangle("skirt", 790, 900, 1)}, 900, 0},
		{"both selvedges in, two fold pieces", fabric.BothSelvedgesIn,
			[]pieces.Piece{half("front", 295, 800, 1), half("back", 295, 800, 1)}, 800, 0},
		{"part folded, part open", fabric.InStretches,
			[]pieces.Piece{half("back", 600, 700, 1), rectangle("yoke", 1200, 300, 1)}, 1000, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := inLay(t, goods, c.lay, c.all...)
			require.True(t, plan.Possible(), plan.Impossible)
			assert.LessOrEqual(t, plan.Taken, c.taken*(1+c.share)+0.01)
			assert.GreaterOrEqual(t, plan.Taken, c.taken-0.01)
			if c.lay == fabric.SelvedgeIn {
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
	cuff := rectangle("cuff", 100, 200, 2)
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		lay   fabric.Lay
		all   []pieces.Piece
		want  []string
	}{
		{"one way", oneWay, fabric.FoldedAcross, []pieces.Piece{cuff}, []string{"the cloth goes one way, and in the upper ply the warp runs the other way", "cut the cloth across and turn"}},
		{"one-way piece", one, fabric.FoldedAcross, []pieces.Piece{cuff}, []string{"cuff: it must go one way"}},
		{"flawed", stained, fabric.FoldedAcross, []pieces.Piece{cuff}, []string{"the cloth has flaws", "lay it open or folded along the warp"}},
		{"flawed", stained, fabric.CutAcross, []pieces.Piece{cuff}, []string{"the cloth has flaws"}},
		{"a single fold piece", goods, fabric.CutAcross, []pieces.Piece{half("back", 100, 200, 1)}, []string{"back: a single piece cannot be cut from two plies"}},
		{"too wide to the middle", goods, fabric.BothSelvedgesIn, []pieces.Piece{half("back", 300, 200, 1)}, []string{"back: it is 30 cm wide", "only 29.5 cm"}},
		{"nothing double", goods, fabric.SelvedgeIn, []pieces.Piece{rectangle("yoke", 100, 200, 1)}, []string{"no piece can be cut from two plies"}},
		{"nothing single", goods, fabric.InStretches, []pieces.Piece{cuff}, []string{"everything can be cut from the folded cloth"}},
	} {
		t.Run(c.name+" "+c.lay.String(), func(t *testing.T) {
			options := brief
			options.Lays = []fabric.Lay{c.lay, fabric.Open}
			got, err := fabric.Require(context.Background(), c.cloth, c.all, options)
			require.NoError(t, err)
			plan := got.Lays[1]
			require.False(t, plan.Possible())
			for _, want := range c.want {
				assert.Contains(t, plan.Impossible, want)
			}
		})
	}
}

func TestCutAcrossKeepsTheNap(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10, Nap: cloth.OneWay}
	plan := inLay(t, c, fabric.CutAcross, rectangle("cape", 700, 600, 2))
	require.True(t, plan.Possible(), plan.Impossible)
	assert.InDelta(t, 1200, plan.Taken, 0.01)
	assert.Equal(t, 2, plan.Cuts, "one outline, and the cut across")
}

func TestEitherSideUp(t *testing.T) {
	c := cloth.Cloth{Width: 220, Selvedge: 10, Alike: true, Nap: cloth.OneWay}
	triangle := polygon("flag", orb.Point{0, 0}, orb.Point{200, 0}, orb.Point{0, 200})
	triangle.Cut = 2
	plan := inLay(t, c, fabric.Open, triangle)
	assert.Greater(t, plan.Length, 200.0)
	c.Nap = cloth.EitherWay
	plan = inLay(t, c, fabric.Open, triangle)
	assert.InDelta(t, 200, plan.Length, 1, "two triangles make a square")
	single := triangle
	single.Cut, single.Pair = 2, true
	c.Nap, c.Alike = cloth.EitherWay, false
	plan = inLay(t, c, fabric.Open, single)
	assert.Greater(t, plan.Length, 205.0, "a right and a left do not")
	c.Alike = true
	plan = inLay(t, c, fabric.Open, single)
	assert.InDelta(t, 200, plan.Length, 1, "but two that turn over do")
}

// TestShrinkage: figures by hand. A cloth of 1,000 mm that loses 5 % in the
// weft is 950 mm wide; 1,900 mm of it, at 5 % in the warp, were 2,000 mm.
func TestShrinkage(t *testing.T) {
	c := cloth.Cloth{Width: 1000, Shrinkage: cloth.Shrinkage{Warp: 0.05, Weft: 0.05}}
	panel := rectangle("panel", 950, 1900, 1)
	plan := inLay(t, c, fabric.Open, panel)
	assert.InDelta(t, 950, plan.Width, 1e-9)
	assert.InDelta(t, 1900, plan.Taken, 0.01)
	assert.InDelta(t, 2000, plan.Buy, 0.01)

	c.Shrinkage.CutFirst = true
	plan = inLay(t, c, fabric.Open, panel)
	assert.InDelta(t, 1000, plan.Width, 1e-9)
	assert.InDelta(t, 2000, plan.Buy, 0.01)
	assert.InDelta(t, 1000, plan.Pieces[0].Outline.Bound().Max[1], 0.01)

	c.Shrinkage = cloth.Shrinkage{Warp: 0.05, CutFirst: true}
	plan = inLay(t, c, fabric.Open, onGrain(rectangle("panel", 950, 1000, 1), pieces.CrossGrain))
	assert.InDelta(t, 1000, plan.Taken, 0.01, "on the cross grain the width lies along the warp")
}

// TestGapAndTilt: two squares with 10 mm between, and a strip that tilts to
// fit.
func TestGapAndTilt(t *testing.T) {
	c := cloth.Cloth{Width: 100, Gap: 10}
	plan := inLay(t, c, fabric.Open, rectangle("square", 100, 100, 2))
	assert.InDelta(t, 210, plan.Length, 0.01)
	c = cloth.Cloth{Width: 1000, Tilt: 0.03}
	plan = inLay(t, c, fabric.Open, wedges("gore", 300, 1000, 2)...)
	for _, l := range plan.Pieces {
		rise := (l.Grain[1][1] - l.Grain[0][1]) / (l.Grain[1][0] - l.Grain[0][0])
		assert.LessOrEqual(t, rise*rise, 0.03*0.03*1.01)
	}
}

// TestFlaws: a strip with a hole in its middle takes the pieces on both sides
// of it; a faded edge narrows the cloth; a band across lengthens it.
func TestFlaws(t *testing.T) {
	c := cloth.Cloth{Width: 220, Selvedge: 10}
	square := rectangle("square", 200, 200, 2)
	c.Flaws = []cloth.Flaw{cloth.BarFlaw("shaded", 300, 350)}
	assert.InDelta(t, 550, inLay(t, c, fabric.Open, square).Length, 0.01)
	c.Flaws = []cloth.Flaw{cloth.RoundFlaw("hole", orb.Point{300, 110}, 10)}
	plan := inLay(t, c, fabric.Open, square)
	assert.InDelta(t, 510, plan.Length, 0.3)
	assert.Len(t, plan.Zones, 1)
	c.Flaws = []cloth.Flaw{cloth.BandFlaw("faded", 0, 60)}
	assert.InDelta(t, 600, inLay(t, c, fabric.Open, rectangle("strip", 150, 300, 2)).Length, 0.01)
	// On the folded cloth a stain in the far half lies on the near one too.
	c = cloth.Cloth{Width: 420, Selvedge: 10, Flaws: []cloth.Flaw{cloth.BarFlaw("shaded", 300, 350)}}
	c.Flaws[0].Outline = orb.Ring{{300, 0}, {350, 0}, {350, 100}, {300, 100}, {300, 0}}
	assert.InDelta(t, 550, inLay(t, c, fabric.FoldedAlong, rectangle("square", 200, 200, 4)).Length, 0.01)
}

// TestStricterIsNeverShorter: the answer to a stricter question, offered as a
// known plan, is where the looser one starts.
func TestStricterIsNeverShorter(t *testing.T) {
	strict := cloth.Cloth{Width: 1020, Selvedge: 10, Nap: cloth.OneWay, Gap: 2}
	options := brief
	options.Iterations = 60
	first, err := fabric.Require(context.Background(), strict, blouse(), options)
	require.NoError(t, err)
	options.Iterations, options.Known = 1, first.Lays
	eitherWay, perGarment, wider, gapless := strict, strict, strict, strict
	eitherWay.Nap, perGarment.Nap, wider.Width, gapless.Gap = cloth.EitherWay, cloth.OneWayPerGarment, strict.Width+1, 0
	for name, loose := range map[string]cloth.Cloth{"either way": eitherWay, "one way per garment": perGarment, "wider": wider, "no gap": gapless} {
		second, err := fabric.Require(context.Background(), loose, blouse(), options)
		require.NoError(t, err)
		for i, plan := range second.Lays {
			if first.Lays[i].Possible() {
				assert.LessOrEqual(t, plan.Length, first.Lays[i].Length+1e-6, "%s, %s", name, plan.Lay)
			}
		}
	}
}

// TestTwoPartsNeverNeedMore: a lay of two parts is weighed against the cloth
// folded or open throughout, which it is with one part empty; where they need
// less, it says so and gives their plan.
func TestTwoPartsNeverNeedMore(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10}
	all := []pieces.Piece{half("back", 300, 700, 1), half("front", 300, 500, 1), rectangle("side", 300, 1200, 2)}
	options := fabric.Options{Iterations: 400, Seed: 1}
	got, err := fabric.Require(context.Background(), c, all, options)
	require.NoError(t, err)
	for _, plan := range got.Lays {
		if plan.Lay == fabric.SelvedgeIn || plan.Lay == fabric.InStretches {
			require.NotNil(t, plan.Throughout, plan.Lay)
			assert.Equal(t, fabric.FoldedAlong, plan.Throughout.Lay, "everything queues along the one fold in 1200 mm")
			assert.Contains(t, plan.Impossible, "lay the cloth folded along the warp throughout")
		}
	}
	// A single yoke as wide as the cloth cannot be folded: the stretches need no
	// more than the open cloth, and have one outline less to chalk.
	got, err = fabric.Require(context.Background(), c, []pieces.Piece{rectangle("side", 600, 700, 2), rectangle("yoke", 1200, 300, 1)}, options)
	require.NoError(t, err)
	stretches := got.Lays[len(got.Lays)-1]
	require.True(t, stretches.Possible(), stretches.Impossible)
	assert.InDelta(t, 1000, stretches.Taken, 0.01)
	assert.Equal(t, fabric.InStretches, got.Lays[got.Chosen].Lay)
}

// TestPairsMoveToTheOpenStretch: the folded cloth takes two of the three pairs
// beside each other; the third fills the open one with the single piece.
func TestPairsMoveToTheOpenStretch(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10}
	plan := inLay(t, c, fabric.InStretches, rectangle("leg", 300, 800, 6), rectangle("yoke", 600, 800, 1))
	require.True(t, plan.Possible(), plan.Impossible)
	assert.InDelta(t, 1600, plan.Taken, 0.01)
}
