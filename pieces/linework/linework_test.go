package linework

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
)

func limits() found.Limits {
	return found.Limits{found.Things: 10, found.Vertices: 100, found.Nesting: 5}
}

func TestChain(t *testing.T) {
	c := NewChain(pieces.Scale(2), NewBudget(limits()))
	c.MoveTo(orb.Point{1, 1})
	c.LineTo(orb.Point{3, 1})
	c.LineTo(orb.Point{3, 1}) // nothing
	c.LineTo(orb.Point{3, 4})
	c.Close()
	assert.Equal(t, orb.Point{1, 1}, c.At(), "back where it began")
	c.LineTo(orb.Point{0, 0})
	c.MoveTo(orb.Point{9, 9})
	lines, err := c.Lines()
	require.NoError(t, err)
	require.Len(t, lines, 2)
	assert.True(t, lines[0].Closed)
	assert.Equal(t, orb.LineString{{2, 2}, {6, 2}, {6, 8}, {2, 2}}, lines[0].Path.Flatten(0.1))
	assert.False(t, lines[1].Closed)
}

// A circle stays one through a turn and a mirror image, and becomes an ellipse of curves
// through a stretch: within 1e-6 of its size either way.
func TestChainKeepsCircles(t *testing.T) {
	for m, keeps := range map[pieces.Motion]bool{pieces.Turn(30): true, pieces.MirrorX(): true, {A: 2, D: 1}: false,
		{A: 1, B: 0.5, D: 1}: false, {A: 1e-3, D: 1.0005e-3}: false, {A: -1e-3, D: 1.0005e-3}: false} {
		c := NewChain(m, NewBudget(limits()))
		radius := 50 / math.Abs(m.A) // of a drawing in thousandths of a mm, too
		c.MoveTo(orb.Point{radius, 0})
		c.ArcTo(pieces.Arc{Radius: radius, Sweep: math.Pi})
		c.ArcTo(pieces.Arc{Radius: radius, Begin: math.Pi, Sweep: math.Pi})
		lines, err := c.Lines()
		require.NoError(t, err)
		require.Len(t, lines, 1)
		_, isArc := lines[0].Path[0].(pieces.Arc)
		assert.Equal(t, keeps, isArc, "%v", m)
		want := math.Pi * radius * radius * math.Abs(m.A*m.D-m.B*m.C)
		assert.InEpsilon(t, want, math.Abs(geometry.Area(lines[0].Path.Flatten(0.0001))), 1e-5)
	}
}

func TestBudget(t *testing.T) {
	c := NewChain(pieces.Identity(), NewBudget(limits()))
	c.MoveTo(orb.Point{})
	for i := range 200 {
		c.LineTo(orb.Point{float64(i + 1), 0})
	}
	_, err := c.Lines()
	var much *found.TooMuch
	require.ErrorAs(t, err, &much)
	assert.Equal(t, found.Vertices, much.What)
	assert.Error(t, NewBudget(limits()).Depth(6))
	for _, far := range []float64{1e7, math.Inf(1), math.NaN()} {
		c := NewChain(pieces.Identity(), NewBudget(limits()))
		c.LineTo(orb.Point{far, 0})
		_, err := c.Lines()
		assert.Equal(t, &Fault{Of: TooFar}, err)
	}
}

// What a box leaves of a line lies in it, and with what the rest of the plane leaves it
// is the whole line.
func TestClip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Custom(func(t *rapid.T) orb.Point {
			n := rapid.Float64Range(-20, 20)
			return orb.Point{n.Draw(t, "x"), n.Draw(t, "y")}
		})
		a, b, c, d := at.Draw(t, "a"), at.Draw(t, "b"), at.Draw(t, "c"), at.Draw(t, "d")
		line := Stretch{Path: pieces.Path{pieces.Bezier{P0: a, P1: b, P2: c, P3: d}, pieces.Line{From: d, To: a}},
			Closed: true}
		if rapid.Bool().Draw(t, "arc") {
			line.Path = pieces.Path{pieces.Arc{Centre: a, Radius: 1 + math.Abs(b[0]), Begin: b[1], Sweep: 2 * math.Pi}}
		}
		length := 0.0
		far := 1000.0
		for _, box := range []orb.Bound{
			{Min: orb.Point{-10, -10}, Max: orb.Point{10, 10}},
			{Min: orb.Point{-far, -far}, Max: orb.Point{-10, far}}, {Min: orb.Point{10, -far}, Max: orb.Point{far, far}},
			{Min: orb.Point{-10, -far}, Max: orb.Point{10, -10}}, {Min: orb.Point{-10, 10}, Max: orb.Point{10, far}},
		} {
			for _, part := range Clip(line, box) {
				length += part.Path.Length()
				for _, p := range part.Path.Flatten(0.01) {
					assert.True(t, geometry.Holds(box.Pad(0.02), orb.Bound{Min: p, Max: p}), "%v in %v", p, box)
				}
			}
		}
		assert.InDelta(t, line.Path.Length(), length, 1e-3)
	})
}

func TestClipKeepsWholeLines(t *testing.T) {
	box := orb.Bound{Max: orb.Point{10, 10}}
	square := func(x float64) Stretch {
		return Stretch{Closed: true, Path: pieces.Path{pieces.Line{From: orb.Point{x, 2}, To: orb.Point{x + 4, 2}},
			pieces.Line{From: orb.Point{x + 4, 2}, To: orb.Point{x + 4, 6}}, pieces.Line{From: orb.Point{x + 4, 6},
				To: orb.Point{x, 6}},
			pieces.Line{From: orb.Point{x, 6}, To: orb.Point{x, 2}}}}
	}
	assert.Equal(t, []Stretch{square(2)}, Clip(square(2), box))
	assert.Empty(t, Clip(square(20), box))
	parts := Clip(square(8), box)
	require.Len(t, parts, 1, "a closed line is parted where it leaves, not where it begins")
	assert.False(t, parts[0].Closed)
	assert.InDelta(t, 2+4+2, parts[0].Path.Length(), 1e-9)
}
