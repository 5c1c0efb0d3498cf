package search

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/outline"
)

// blob is a random star-shaped outline of about the given size.
func blob(rng *rand.Rand, corners int, size float64) []orb.Point {
	points := make([]orb.Point, corners)
	for i := range points {
		r := size * (0.4 + 0.6*rng.Float64())
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(corners))
		points[i] = orb.Point{r * cos, r * sin}
	}
	return outline.Clean(points)
}

// sample is a model of so many pieces of five outlines, either way up.
func sample(pieces int, width float64) *model.Model {
	rng := rand.New(rand.NewPCG(1, uint64(pieces)))
	m := model.New(width, 0, 0)
	m.Touch = 1e-8 * width
	var shapes [][]int
	for range 5 {
		base, _ := m.AddBase(blob(rng, 12, 50), false)
		_, hi := outline.Bounds(m.Bases[base].Points)
		var both []int
		for _, flip := range []float64{1, -1} {
			both = append(both, m.AddShape(model.Shape{Base: base, FlipX: flip, FlipY: flip, HalfX: hi[0], HalfY: hi[1]}))
		}
		shapes = append(shapes, both)
	}
	for i := range pieces {
		m.Pieces = append(m.Pieces, model.Piece{Item: i % 5, Copy: i / 5, Shapes: shapes[i%5]})
	}
	return m
}

// scattered is a state with the pieces anywhere on a strip of about the given
// density.
func scattered(pieces int, density float64) *state {
	m := sample(pieces, 600)
	s := newState(m, rand.New(rand.NewPCG(3, 4)))
	var area float64
	for i := range pieces {
		area += m.Bases[s.base(i)].OutlineArea
	}
	s.length = area / density / m.Width
	spots := make([]Spot, pieces)
	for i := range spots {
		spots[i] = s.sampleUniform(i)
	}
	s.load(spots, s.length)
	return s
}

// check walks what must always hold: severities are symmetric, agree with a
// plain look at every pair, and add up to the losses; every piece is in the
// grid once where it lies.
func (s *state) check(t *testing.T) {
	n := len(s.bodies)
	for i := range s.pieces {
		var loss float64
		for j := range n {
			require.Equal(t, s.overlaps.severity(i, j), s.overlaps.severity(j, i))
			loss += float64(s.overlaps.severity(i, j))
			if i == j {
				continue
			}
			a, b := &s.bodies[i], &s.bodies[j]
			apart := s.pairs.of(int(b.shape), int(a.shape)).depth(a.x-b.x, a.y-b.y) == 0
			require.Equal(t, apart, s.overlaps.severity(i, j) == 0, "pieces %d and %d", i, j)
		}
		require.InDelta(t, loss, s.loss[i], 1e-3)
		found := 0
		for _, c := range s.grid.cells[:s.grid.nx*s.grid.ny] {
			for _, k := range c {
				if int(k) == i {
					found++
				}
			}
		}
		box := s.grid.box(s.bodies[i].x, s.bodies[i].y, s.bodies[i].hx, s.bodies[i].hy)
		require.Equal(t, int(box.x1-box.x0+1)*int(box.y1-box.y0+1), found)
	}
}

func TestStateHoldsThroughPasses(t *testing.T) {
	s := scattered(30, 0.6)
	s.check(t)
	for range 5 {
		s.pass(func() bool { return false })
		s.updateWeights()
		s.check(t)
	}
}

// The cost by the grid equals a plain sum over all pieces.
func TestCostAgainstAllPieces(t *testing.T) {
	s := scattered(40, 0.7)
	n := len(s.bodies)
	for i := range s.pieces {
		at := s.sampleUniform(i)
		var plain float64
		for j := range n {
			if j != i {
				b := &s.bodies[j]
				plain += float64(s.overlaps.weightsOf(i)[j]) * s.factor[j] * s.pairs.of(int(b.shape), at.Shape).depth(at.X-b.x,
					at.Y-b.y)
			}
		}
		require.InDelta(t, plain, s.cost(i, at, math.Inf(1)), 1e-9*(1+plain))
		for _, reach := range []float64{20, s.length + s.m.Width} { // by cells, and all bodies
			near := s.gather(i, at.Shape, at.X, at.Y, reach, nil)
			require.InDelta(t, plain, costAmong(near, at.X, at.Y, math.Inf(1)), 1e-9*(1+plain))
		}
	}
}

// The planes of the neighbours add up to the cost, and their gradients to what
// a small step changes.
func TestPlanesAgainstDifferences(t *testing.T) {
	s := scattered(30, 0.9)
	agreed, looked := 0, 0
	for i := range s.pieces {
		b := s.bodies[i]
		near := s.gather(i, int(b.shape), b.x, b.y, 5, nil)
		cost, gx, gy := 0.0, 0.0, 0.0
		for _, p := range linearize(near, b.x, b.y, 5, nil) {
			if p.depth > 0 {
				cost, gx, gy = cost+p.factor*p.depth, gx+p.factor*p.gx, gy+p.factor*p.gy
			}
		}
		plain := costAmong(near, b.x, b.y, math.Inf(1))
		require.InDelta(t, plain, cost, 1e-6*(1+cost))
		if cost == 0 {
			continue
		}
		const h = 1e-5
		dx := (costAmong(near, b.x+h, b.y, math.Inf(1)) - plain) / h
		dy := (costAmong(near, b.x, b.y+h, math.Inf(1)) - plain) / h
		looked++
		if math.Hypot(gx-dx, gy-dy) < 0.02*(1+math.Hypot(dx, dy)) {
			agreed++
		}
	}
	// At a crease between two half-planes the two may differ.
	require.Greater(t, agreed, looked*8/10)
	require.Positive(t, looked)
}

// A descent never raises the cost, and says the cost of where it ends.
func TestDescendLowersTheCost(t *testing.T) {
	s := scattered(40, 0.8)
	for a := range s.m.Shapes {
		for b := range s.m.Shapes {
			s.pairs.of(a, b).promote() // so that all depths are of one kind
		}
	}
	lowered := 0
	for i := range s.pieces {
		now := s.spot(i)
		from := evaluated{now, s.cost(i, now, math.Inf(1))}
		to := s.descend(i, from, 5)
		require.InDelta(t, s.cost(i, to.at, math.Inf(1)), to.cost, 1e-6*(1+to.cost))
		require.LessOrEqual(t, to.cost, from.cost)
		require.Equal(t, to.at, s.clamp(i, to.at), "on the strip")
		if to.cost < from.cost {
			lowered++
		}
	}
	require.Positive(t, lowered)
}

// The direct test and the table agree on whether two shapes overlap.
func TestDirectDepthAgainstTables(t *testing.T) {
	m := sample(5, 600)
	rng := rand.New(rand.NewPCG(5, 6))
	for a := range m.Shapes {
		for b := range m.Shapes {
			pair := m.Pair(a, b)
			for range 50 {
				x, y := (rng.Float64()-0.5)*200, (rng.Float64()-0.5)*200
				overlaps := m.DirectDepth(a, b, x, y) > 0
				require.Equal(t, pair.Depth(x, y) > 0, overlaps)
				require.Equal(t, overlaps, m.DirectOverlap(a, b, x, y))
			}
		}
	}
}

func TestSnapKeepsToTheLattice(t *testing.T) {
	tests := []struct {
		name string
		r    span
		in   float64
		want float64
	}{
		{"free", span{low: 1, high: 9}, 4.2, 4.2},
		{"free below", span{low: 1, high: 9}, -3, 1},
		{"lattice", span{low: 1, high: 9, period: 2, offset: 0.5}, 4.2, 4.5},
		{"lattice at the low end", span{low: 1, high: 9, period: 2, offset: 0.5}, 0.6, 2.5},
		{"lattice at the high end", span{low: 1, high: 9, period: 2, offset: 0.5}, 20, 8.5},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { require.InDelta(t, test.want, test.r.snap(test.in), 1e-12) })
	}
	require.True(t, span{low: 1, high: 2, period: 5, offset: 3}.empty())
	require.False(t, span{low: 1, high: 3, period: 5, offset: 3}.empty())
}

// The cost of a move grows with the neighbours, not with the pieces: the
// strip grows with the set, its width and its density stay.
func BenchmarkMove(b *testing.B) {
	for _, pieces := range []int{50, 200, 800} {
		b.Run(fmt.Sprintf("pieces=%d", pieces), func(b *testing.B) {
			s := scattered(pieces, 0.8)
			for range 3 {
				s.pass(func() bool { return false })
			}
			i := 0
			for b.Loop() {
				s.improve(i % pieces)
				i++
			}
		})
	}
}

// BenchmarkGather is of all neighbours on a short strip, as a grid sample asks.
func BenchmarkGather(b *testing.B) {
	s := scattered(40, 0.8)
	for b.Loop() {
		s.scratch.near = s.gather(
			0,
			s.m.Pieces[0].Shapes[0],
			s.length/2,
			s.m.Width/2,
			max(s.length, s.m.Width)/2,
			s.scratch.near[:0],
		)
	}
}

// severity of a pair.
func (o *overlaps) severity(i, j int) float32 {
	if at, found := o.place(int32(i), int32(j)); found {
		return o.pairs[o.rows[i][at].at].severity
	}
	return 0
}
