package puzzle

import (
	"context"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// trapezes are two that make a rectangle of 10 x 4, and the same turned by 180 degrees.
func trapezes(slant float64) Problem {
	left := []orb.Point{{0, 0}, {6, 0}, {6 - slant, 4}, {0, 4}}
	right := []orb.Point{{0, 0}, {4, 0}, {4, 4}, {-slant, 4}}
	turned := func(points []orb.Point) []orb.Point {
		out := make([]orb.Point, len(points))
		for i, p := range points {
			out[i] = orb.Point{-p[0], -p[1]}
		}
		return out
	}
	return Problem{Width: 4, Length: 10, Shapes: [][]orb.Point{right, turned(right), left, turned(left)},
		Pieces: []Piece{{Shapes: []int{0, 1}, Copies: 1}, {Shapes: []int{2, 3}, Copies: 1}}}
}

func TestTwoTrapezes(t *testing.T) {
	p := trapezes(2)
	placed, ok := Solve(context.Background(), p, 1e-6, 100)
	require.True(t, ok)
	require.Len(t, placed, 2)
	for _, at := range placed {
		box := orb.MultiPoint(p.Shapes[at.Shape]).Bound()
		assert.InDelta(t, 0, box.Min[1]+at.Y, 1e-9)
		assert.InDelta(t, 4, box.Max[1]+at.Y, 1e-9)
	}
	ends := placed[1]
	assert.InDelta(t, 10, orb.MultiPoint(p.Shapes[ends.Shape]).Bound().Max[0]+ends.X, 1e-9)
}

// Copies of both fill a strip so many times as long.
func TestCopies(t *testing.T) {
	p := trapezes(2)
	p.Length, p.Pieces[0].Copies, p.Pieces[1].Copies = 50, 5, 5
	placed, ok := Solve(context.Background(), p, 1e-6, 1000)
	require.True(t, ok)
	assert.Len(t, placed, 10)
}

// What leaves waste is not found, at once where no angle fits.
func TestWasteIsRefused(t *testing.T) {
	p := trapezes(2)
	p.Shapes[2][2][0] -= 0.01
	p.Shapes[3][2][0] += 0.01
	_, ok := Solve(context.Background(), p, 1e-6, 1000)
	assert.False(t, ok, "slants differ")
	p = trapezes(2)
	p.Length = 11
	_, ok = Solve(context.Background(), p, 1e-6, 1000)
	assert.False(t, ok, "the strip is longer")
	p.Length = 9
	_, ok = Solve(context.Background(), p, 1e-6, 1000)
	assert.False(t, ok, "the strip is shorter")
	_, ok = Solve(context.Background(), trapezes(2), 1e-6, 1)
	assert.False(t, ok, "one node is not enough")
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, ok = Solve(ctx, trapezes(2), 1e-6, 100)
	assert.False(t, ok, "the context has ended")
}

// Outlines that were rounded are found within a tolerance that is wider.
func TestRoundedOutlines(t *testing.T) {
	p := trapezes(2)
	p.Shapes[2][2][0] -= 0.01
	p.Shapes[3][2][0] += 0.01
	_, ok := Solve(context.Background(), p, 0.02, 100)
	assert.True(t, ok)
}

// Diamond angles grow with the angle and add up to a whole turn.
func TestDiamond(t *testing.T) {
	for _, c := range []struct{ x, y, want float64 }{
		{1, 0, 0}, {0, 3, 1}, {0, -2, -1}, {-1, 0, 2}, {2, 2, 0.5}, {-2, 2, 1.5}, {-1, -1, -1.5}, {1, -1, -0.5},
	} {
		assert.Equal(t, c.want, diamond(c.x, c.y), "%g, %g", c.x, c.y)
	}
	random := rand.New(rand.NewPCG(3, 3))
	for range 1000 {
		a, b := 4*random.Float64()-2, 4*random.Float64()-2
		assert.InDelta(t, full, turn(a, b)+turn(b, a), 1e-12)
	}
}

// A shape covers its corner by its angle, its side by a half turn, and nothing beside it.
func TestAround(t *testing.T) {
	s := newShape([]orb.Point{{5, 5}, {7, 5}, {7, 9}, {5, 9}}, 1e-6)
	require.Equal(t, orb.Point{5, 5}, s.first)
	for _, c := range []struct {
		at         orb.Point
		from, span float64
	}{{orb.Point{0, 0}, 0, 1}, {orb.Point{2, 4}, 2, 1}, {orb.Point{1, 0}, 0, 2}, {orb.Point{0, 1}, -1, 2}} {
		got, ok := s.around(c.at, 1e-6)
		require.True(t, ok)
		assert.InDelta(t, c.span, got.span, 1e-12)
		assert.InDelta(t, 0, turn(got.from, c.from), 1e-12, "%v", c.at)
	}
	for _, off := range []orb.Point{{1, 1}, {-1, 0}, {3, 4}} {
		_, ok := s.around(off, 1e-6)
		assert.False(t, ok, "%v", off)
	}
}

// TestFinelyDrawnCurvesAreNotTried holds that a tolerance is not tried at which the
// directions of most sides are open.
func TestFinelyDrawnCurvesAreNotTried(t *testing.T) {
	p := trapezes(2)
	fine := make([][]orb.Point, len(p.Shapes))
	for i, points := range p.Shapes {
		for k, from := range points {
			to := points[(k+1)%len(points)]
			for n := range 20 {
				share := float64(n) / 20
				fine[i] = append(fine[i], orb.Point{from[0] + share*(to[0]-from[0]), from[1] + share*(to[1]-from[1])})
			}
		}
	}
	of := func(shapes [][]orb.Point, tolerance float64) *solver {
		s := &solver{}
		for _, points := range shapes {
			s.shapes = append(s.shapes, newShape(points, tolerance))
		}
		return s
	}
	assert.True(t, of(p.Shapes, 0.01).tellsDirections())
	assert.False(t, of(fine, 0.01).tellsDirections())
	assert.True(t, of(fine, 1e-4).tellsDirections())
	finely := Problem{Width: p.Width, Length: p.Length, Shapes: fine, Pieces: p.Pieces}
	_, ok := Solve(context.Background(), finely, 0.01, 100)
	assert.False(t, ok)
}
