package remnant_test

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
	"ellwand/testdata/sample"
)

// cutAlong cuts a convex polygon in two along the line through p and q.
func cutAlong(polygon []orb.Point, p, q orb.Point) (left, right []orb.Point) {
	side := func(x orb.Point) float64 { return (q[0]-p[0])*(x[1]-p[1]) - (q[1]-p[1])*(x[0]-p[0]) }
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		s, t := side(a), side(b)
		if s >= 0 {
			left = append(left, a)
		}
		if s <= 0 {
			right = append(right, a)
		}
		if s*t < 0 {
			k := s / (s - t)
			x := orb.Point{a[0] + k*(b[0]-a[0]), a[1] + k*(b[1]-a[1])}
			left, right = append(left, x), append(right, x)
		}
	}
	return left, right
}

// slantedJigsaw cuts a rectangle into pieces by slanted lines, the largest
// piece first.
func slantedJigsaw(r *rand.Rand, width, length float64, count int) []pieces.Piece {
	size := func(points []orb.Point) float64 {
		twice := 0.0
		for i, a := range points {
			b := points[(i+1)%len(points)]
			twice += a[0]*b[1] - b[0]*a[1]
		}
		return math.Abs(twice)
	}
	parts := [][]orb.Point{{{0, 0}, {width, 0}, {width, length}, {0, length}}}
	for len(parts) < count {
		largest := 0
		for i := range parts {
			if size(parts[i]) > size(parts[largest]) {
				largest = i
			}
		}
		box := orb.MultiPoint(parts[largest]).Bound()
		w, h := box.Max[0]-box.Min[0], box.Max[1]-box.Min[1]
		p, slant := box.Center(), 0.4*(r.Float64()-0.5)
		p[0], p[1] = p[0]+0.2*w*(r.Float64()-0.5), p[1]+0.2*h*(r.Float64()-0.5)
		q := orb.Point{p[0] + slant, p[1] + 1}
		if h > w {
			q = orb.Point{p[0] + 1, p[1] + slant}
		}
		one, other := cutAlong(parts[largest], p, q)
		parts[largest] = one
		parts = append(parts, other)
	}
	var all []pieces.Piece
	for i, points := range parts {
		all = append(all, fabrictest.Polygon(fmt.Sprintf("piece %d", i+1), points...))
	}
	return all
}

// TestRemnantStraightJigsaws: rectangles cut from a cloth fit on it, with a
// little or with nothing to spare; 3 % less never does, by area.
func TestRemnantStraightJigsaws(t *testing.T) {
	for k := range sample.Of(9, 30) {
		r := rand.New(rand.NewPCG(uint64(k), 77))
		length := 500 + 700*r.Float64()
		var all []pieces.Piece
		for i, at := range fabrictest.Guillotine(r, fabrictest.Tile{X: 0, Y: 0, Along: length, Across: 1200}, length/97,
			1200.0/89, 8+2*(k%9)) {
			all = append(all, fabrictest.Rectangle(fmt.Sprintf("piece %d", i), at.Across, at.Along, 1))
		}
		for spare, want := range map[float64]remnant.Answer{0: remnant.Enough, 0.1: remnant.Enough,
			-0.03 * length: remnant.TooLittle} {
			got := fit(t, length+spare, plan.Options{Passes: 2000, Untidied: true, Lays: []lay.Kind{lay.Open}}, all...)
			assert.Equal(t, want, got.Answer, "jigsaw %d of %d pieces, %g to spare", k, len(all), spare)
		}
	}
}

// TestRemnantSlantedJigsaws: what was cut from a cloth fits on it; 3 % less
// never does, by area.
func TestRemnantSlantedJigsaws(t *testing.T) {
	for k := range sample.Of(5, 40) {
		r := rand.New(rand.NewPCG(uint64(k), 1))
		length := 500 + 700*r.Float64()
		all := slantedJigsaw(r, 1200, length, 3+k%5)
		ask := func(length float64) remnant.Answer {
			rest := remnant.Remnant{Cloth: cloth.Cloth{Width: 1220, Selvedge: 10}, Length: length}
			got, err := remnant.Fit(context.Background(), rest, all,
				plan.Options{Passes: 2000, Seed: 1, Lays: []lay.Kind{lay.Open}})
			require.NoError(t, err)
			return got.Answer
		}
		assert.Equal(t, remnant.Enough, ask(length+0.1), "jigsaw %d of %d pieces", k, len(all))
		assert.Equal(t, remnant.TooLittle, ask(0.97*length), "jigsaw %d of %d pieces", k, len(all))
	}
}

// TestRemnantFoldedJigsaw: gores of two wedges each beside a fold piece fill a
// folded cloth.
func TestRemnantFoldedJigsaw(t *testing.T) {
	all := append(fabrictest.Wedges("gore", 300, 800, 2), fabrictest.Half("back", 300, 800, 1))
	got := fit(t, 800.1, plan.Options{Lays: []lay.Kind{lay.FoldedAlong}, Passes: 1500}, all...)
	assert.Equal(t, remnant.Enough, got.Answer)
	assert.Equal(t, remnant.TooLittle, fit(t, 790, plan.Options{Lays: []lay.Kind{lay.FoldedAlong}}, all...).Answer)
}
