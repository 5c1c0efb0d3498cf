package plan_test

import (
	"context"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// inTwo are the lays of two parts, with a side of each part that the other lies on.
var inTwo = []lay.Kind{lay.InStretches, lay.SelvedgeIn}

var cottonInTwo = cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, PurchaseStep: 100, Gap: 5}

// firstOn a part of a plan.
func firstOn(p lay.Plan, part int) int {
	return slices.IndexFunc(p.Pieces, func(l lay.Laid) bool { return l.Bed == part })
}

// Each piece lies where it may on its own part, and is told when it reaches onto the other.
func TestBenchHoldsBothParts(t *testing.T) {
	for _, kind := range inTwo {
		was, bench := laidByProgram(t, cottonInTwo, kind)
		require.Len(t, was.Beds, 2, "%s", kind)
		for i, l := range was.Pieces {
			found, err := bench.Look(was.Pieces, i, l, false)
			require.NoError(t, err)
			assert.True(t, found.Free, "%s: %s lies where it may: %v", kind, l.Name, found.Broken)
			assert.InDelta(t, was.Taken, found.Taken, 0.01)
		}
		again, ok := bench.Plan(was.Pieces)
		require.True(t, ok, "%s", kind)
		assert.InDelta(t, was.Taken, again.Taken, 1e-6)
		assert.InDelta(t, was.FoldedIn, again.FoldedIn, 1e-9)

		for part, i := range []int{firstOn(was, 0), firstOn(was, 1)} {
			other := was.Pieces[firstOn(was, 1-part)]
			held := was.Pieces[i]
			held.X += other.Outline.Bound().Center()[0] - held.Outline.Bound().Center()[0]
			held.Y += other.Outline.Bound().Center()[1] - held.Outline.Bound().Center()[1]
			if held.OnFold {
				held.Y = was.Pieces[i].Y
			}
			found, err := bench.Look(was.Pieces, i, held, false)
			require.NoError(t, err)
			assert.False(t, found.Free, "%s", kind)
			if !held.OnFold || kind == lay.InStretches {
				require.NotEmpty(t, found.Broken, "%s", kind)
				assert.Equal(t, plan.OtherPart, found.Broken[0].Rule, "%s, part %d: %v", kind, part, found)
				assert.NotEmpty(t, found.Broken[0].Area)
			}
			moved := slices.Clone(was.Pieces)
			moved[i] = held
			_, ok = bench.Plan(moved)
			assert.False(t, ok, "%s: no plan has a piece on the other part", kind)
		}
	}
}

// A piece of the open part slides into contact, and what is found free is proven; so is a
// piece of the folded one that slides back from the border.
func TestPieceSlidesOnItsPart(t *testing.T) {
	for _, kind := range inTwo {
		was, bench := laidByProgram(t, cottonInTwo, kind)
		for _, part := range []int{0, 1} {
			for i, l := range was.Pieces {
				if l.Bed != part {
					continue
				}
				l.X, l.Y = l.X-9, l.Y+4
				found, err := bench.Look(was.Pieces, i, l, true)
				require.NoError(t, err)
				require.True(t, found.Free, "%s: %s, part %d: %v %v", kind, l.Name, part, found.Broken, found.Overlaps)
				moved := slices.Clone(was.Pieces)
				l.X, l.Y, l.Outline = found.X, found.Y, found.Outline
				moved[i] = l
				_, ok := bench.Plan(moved)
				assert.True(t, ok, "%s: %s", kind, l.Name)
			}
		}
	}
}

// Held over the border of its part, a piece slides back to it.
func TestPieceSlidesBackToTheBorder(t *testing.T) {
	for _, kind := range inTwo {
		was, bench := laidByProgram(t, cottonInTwo, kind)
		for _, part := range []int{0, 1} {
			i := atBorder(was, part)
			held := was.Pieces[i]
			by := 25.0
			if part == 1 {
				by = -by
			}
			if kind == lay.InStretches {
				held.X += by
			} else if held.Y += by; held.OnFold {
				continue
			}
			over, err := bench.Look(was.Pieces, i, held, false)
			require.NoError(t, err)
			require.NotEmpty(t, over.Broken, "%s, part %d", kind, part)
			assert.Equal(t, plan.OtherPart, over.Broken[0].Rule)
			back, err := bench.Look(was.Pieces, i, held, true)
			require.NoError(t, err)
			assert.True(t, back.Free, "%s, part %d: %v %v", kind, part, back.Broken, back.Overlaps)
		}
	}
}

// atBorder is the piece of a part that lies nearest to the other part.
func atBorder(p lay.Plan, part int) int {
	side := 0
	if p.Lay == lay.SelvedgeIn {
		side = 1
	}
	best, nearest := -1, 0.0
	for i, l := range p.Pieces {
		near := l.Outline.Bound().Max[side]
		if part == 1 {
			near = -l.Outline.Bound().Min[side]
		}
		if l.Bed == part && (best < 0 || near > nearest) {
			best, nearest = i, near
		}
	}
	return best
}

// What is laid by hand stays on its part, the rest is laid round it and proven, and a
// selvedge stays folded in as far as it was.
func TestRoundAHandInTwoParts(t *testing.T) {
	for _, kind := range inTwo {
		was, _ := laidByProgram(t, cottonInTwo, kind)
		for _, part := range []int{0, 1} {
			l := was.Pieces[firstOn(was, part)]
			c := cottonInTwo
			c.ByHand = []cloth.HandLaid{{Width: 1400, Lay: int(kind), FoldedIn: was.FoldedIn, Pieces: []cloth.HandPiece{{
				Name: l.Name, Garment: l.Garment, Copy: l.Copy, At: [2]float64{l.X + 20, l.Y}, Turn: l.Turn,
				FaceDown: l.Mirrored, OnFold: l.OnFold, OnOpen: part == 1,
			}}}}
			hands := plan.HandLays(c, nil)
			require.Len(t, hands, 1)
			need, err := plan.Require(context.Background(), c, fabrictest.Blouse(),
				plan.Options{Passes: 20, Seed: 1, Fixed: hands[0]})
			require.NoError(t, err, "%s, part %d", kind, part)
			found := need.Lays[need.Chosen]
			assert.InDelta(t, was.FoldedIn, found.FoldedIn, 1e-9)
			at := slices.IndexFunc(found.Pieces, func(l lay.Laid) bool { return l.ByHand })
			require.GreaterOrEqual(t, at, 0, "%s, part %d", kind, part)
			got := found.Pieces[at]
			assert.Equal(t, [4]any{l.Name, l.Copy, l.X + 20, part}, [4]any{got.Name, got.Copy, got.X, got.Bed})
			assert.Contains(t, found.Notes, lay.Note{Of: lay.LaidByHand, Pieces: []string{l.Name}})
		}
	}
}

// On a repeat and on a nap too a lay of two parts is held as it was found.
func TestBenchHoldsBothPartsOnARepeat(t *testing.T) {
	all := fabrictest.DraftedBlouse("14")
	napped := cloth.Cloth{Name: "velvet", Width: 1400, Selvedge: 10, Nap: cloth.OneWay}
	checked := cloth.Cloth{Name: "check", Width: 1400, Selvedge: 10,
		Repeat: cloth.Repeat{Along: 70, Across: 90, Even: true}}
	for _, c := range []cloth.Cloth{napped, checked} {
		for _, kind := range inTwo {
			need, err := plan.Require(context.Background(), c, all,
				plan.Options{Lays: []lay.Kind{kind}, Passes: 10, Seed: 1})
			require.NoError(t, err, "%s, %s", c.Name, kind)
			was := need.Lays[0]
			bench, err := plan.NewBench(c, all, was, nil)
			require.NoError(t, err)
			again, ok := bench.Plan(was.Pieces)
			require.True(t, ok, "%s, %s", c.Name, kind)
			assert.InDelta(t, was.Taken, again.Taken, 1e-6)
			for i, l := range was.Pieces {
				found, err := bench.Look(was.Pieces, i, l, false)
				require.NoError(t, err)
				assert.True(t, found.Free, "%s, %s: %s: %v", c.Name, kind, l.Name, found.Broken)
			}
		}
	}
}
