package straightcut

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/internal/drafttest"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// size12 of the handbook table (Aldrich, Metric Pattern Cutting for Women's
// Wear, 6th edition; scye depth and sleeve length from memory).
var size12 = Measures{
	Bust: 920, Waist: 760, Hip: 1000, NeckBase: 380, Shoulder: 125,
	ScyeDepth: 215, ShoulderToWrist: 590, UpperArm: 296,
}

func drafted(t *testing.T, o Options) Block {
	t.Helper()
	block, err := Draft(size12, o)
	require.NoError(t, err)
	for _, p := range block.Pieces {
		require.NoError(t, p.Check())
		_, err := p.CuttingOutline(0.1)
		require.NoError(t, err)
	}
	for _, p := range block.Pairings {
		difference := p.Length - p.Other
		assert.True(t, difference >= p.Least && difference <= p.Most, "%s: %s %g, %s %g", p.Seam, p.Of, p.Length,
			p.Against, p.Other)
	}
	assert.Len(t, block.Sheets, len(block.Pieces))
	return block
}

func piece(t *testing.T, b Block, name string) pieces.Piece {
	t.Helper()
	for _, p := range b.Pieces {
		if p.Name == name {
			return p
		}
	}
	require.Fail(t, "no "+name)
	return pieces.Piece{}
}

// By hand, for size 12: half a front is (100 + 30) / 4 = 32.5 cm; the neck is
// 38 / 5 + 1 = 8.6 cm to each side; the armhole 21.5 + 4 = 25.5 cm; the sleeve
// 8.6 + 12.5 + 59 - 32.5 = 47.6 cm long and 51 cm round. The amounts are ours
// [source.OwnChoice], the sums arithmetic.
func TestKaftanByHand(t *testing.T) {
	block := drafted(t, Options{})
	front, back, sleeve := piece(t, block, "front kaftan"), piece(t, block, "back kaftan"), piece(t, block, "sleeve")
	assert.InDelta(t, 325, drafttest.Path(t, front, seams.Armhole).Start()[0], 1e-9)
	assert.InDelta(t, 255, drafttest.Path(t, front, seams.Armhole).Length(), 1e-9)
	assert.InDelta(t, 325-86, drafttest.Path(t, front, seams.Shoulder).Length(), 1e-9)
	assert.InDelta(t, -86, drafttest.Path(t, front, seams.Neck).End()[1], 1e-9)
	assert.InDelta(t, -20, drafttest.Path(t, back, seams.Neck).End()[1], 1e-9)
	assert.InDelta(t, 510, drafttest.Path(t, sleeve, seams.SleeveHead).Length(), 1e-9)
	assert.InDelta(t, 476, drafttest.Path(t, sleeve, seams.FrontUnderarm).Length(), 1e-9)
	assert.InDelta(t, 1200-255, drafttest.Path(t, front, seams.SideSeam).Length(), 0.01,
		"the side is as long as the way down")
	// Square at the fold and at the side.
	for _, p := range []pieces.Piece{front, back} {
		hem, side := drafttest.Path(t, p, seams.BodyHem), drafttest.Path(t, p, seams.SideSeam)
		a, b := hem[0].Tangent(1), side[0].Tangent(0)
		assert.InDelta(t, 0, a[0]*b[0]+a[1]*b[1], 1e-9)
		assert.InDelta(t, 0, hem[0].Tangent(0)[1], 1e-9)
		assert.InDelta(t, 0, drafttest.Path(t, p, seams.Neck)[0].Tangent(1)[1], 1e-9)
	}
}

// Half a front is (100 + 20) / 4 = 30 cm, and wraps over by 45 parts in 100 of
// that, 13.5 cm [source.OwnChoice].
func TestKimonoByHand(t *testing.T) {
	block := drafted(t, Options{Shape: Kimono})
	front, back := piece(t, block, "front kimono"), piece(t, block, "back kimono")
	assert.InDelta(t, 435, drafttest.Path(t, front, seams.BodyHem).Length(), 1e-9)
	assert.InDelta(t, 300, drafttest.Path(t, back, seams.BodyHem).Length(), 1e-9)
	band := piece(t, block, "front band")
	assert.Equal(t, 2, band.Cut)
	assert.InDelta(t, drafttest.Path(t, front, seams.FrontEdge).Length()+drafttest.Path(t, back, seams.Neck).Length(),
		drafttest.Path(t, band, seams.Left).Length(), 1e-6)
	// The edge bends one way and has no corner.
	path := drafttest.Path(t, front, seams.FrontEdge)
	before := path.Tangent(0)
	for at := 5.0; at < path.Length(); at += 5 {
		now := path.Tangent(at)
		turn := math.Atan2(before[0]*now[1]-before[1]*now[0], before[0]*now[0]+before[1]*now[1])
		assert.True(t, turn > -1e-6 && turn < 0.1, "at %g: %g", at, turn)
		before = now
	}
}

// Wrapper, apron and bag are ours [source.OwnChoice]; what a boxed corner makes
// follows from its shape [source.Geometry].
func TestFlatShapesByHand(t *testing.T) {
	wrapper := drafted(t, Options{Shape: Wrapper})
	assert.InDelta(t, 1600, drafttest.Path(t, piece(t, wrapper, "wrapper"), seams.Waist).Length(), 1e-9)
	assert.InDelta(t, 800, drafttest.Path(t, piece(t, wrapper, "tie"), seams.Left).Length(), 1e-9)

	apron := piece(t, drafted(t, Options{Shape: Apron}), "apron")
	assert.InDelta(t, 400, drafttest.Path(t, apron, seams.NarrowHem).Length(), 1e-9)
	assert.InDelta(t, 760./6, drafttest.Path(t, apron, seams.BodyHem).Length(), 1e-9)

	bag := piece(t, drafted(t, Options{Shape: Bag}), "bag panel")
	assert.InDelta(t, 480, drafttest.Path(t, bag, seams.BodyHem).Length(), 1e-9)
	assert.InDelta(t, 400, drafttest.Path(t, bag, seams.RightSide).Length(), 1e-9)
	assert.InDelta(t, 380, drafttest.Path(t, bag, seams.Bottom).Length(), 1e-9)
	// Sewn up, the boxed corners make a bottom of the depth.
	assert.InDelta(t, 100, drafttest.Path(t, bag, seams.RightCornerUpright).Length()+
		drafttest.Path(t, bag, seams.RightCornerLevel).Length(), 1e-9)
	steps := drafted(t, Options{Shape: Bag}).Sheets[0].Steps
	square := steps[len(steps)-1]
	require.Contains(t, square.Do, "cut a square")
	assert.Equal(t, []float64{drafttest.Path(t, bag, seams.RightCornerUpright).Length()}, square.Lengths)
	flat := piece(t, drafted(t, Options{Shape: Bag, Flat: true}), "bag panel")
	assert.InDelta(t, 380, drafttest.Path(t, flat, seams.Bottom).Length(), 1e-9)
	assert.Len(t, flat.Edges, 4)
}

func TestRefusals(t *testing.T) {
	for want, c := range map[string]struct {
		o      Options
		change func(*Measures)
	}{
		"kaftan: the neck base girth of 100 cm leaves no shoulder on a bust girth of 60 cm": {Options{},
			func(m *Measures) { m.NeckBase, m.Bust, m.Hip = 1000, 600, 350 }},
		"kaftan: a length of 10 cm cannot be; ask for 50 cm to 170 cm": {Options{Length: 100}, nil},
		"kimono: the ease is -5 cm; it cannot be negative": {Options{Shape: Kimono,
			Ease: -50}, nil},
		"wrapper: a width of 90 cm does not overlap on a hip girth of 100 cm": {Options{Shape: Wrapper,
			Width: 900}, nil},
		"apron: a width of 20 cm is too narrow beside a bib for a waist girth of 76 cm": {Options{Shape: Apron,
			Width: 200}, nil},
		"bag: a width of 5 cm cannot be":                             {Options{Shape: Bag, Width: 50}, nil},
		"bag: a depth of 45 cm is more than the bag is wide or high": {Options{Shape: Bag, Depth: 450}, nil},
	} {
		m := size12
		if c.change != nil {
			c.change(&m)
		}
		_, err := Draft(m, c.o)
		assert.ErrorContains(t, err, want)
	}
}

// A kaftan so wide that its shoulder line covers the arm has no sleeves.
func TestWideKaftanHasNoSleeves(t *testing.T) {
	block := drafted(t, Options{Ease: 2400})
	assert.Len(t, block.Pieces, 2)
	assert.Contains(t, block.Warnings[0].String(), "there are no sleeves")
}
