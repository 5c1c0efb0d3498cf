package fitting

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// noisy points along a closed chain of curves, 1 apart, as a photo gives them.
func noisy(path pieces.Path, noise float64) []orb.Point {
	random := rand.New(rand.NewPCG(3, 4))
	var out []orb.Point
	length := path.Length()
	for at := 0.0; at < length; at++ {
		p := path.At(at)
		out = append(out, orb.Point{p[0] + random.NormFloat64()*noise, p[1] + random.NormFloat64()*noise})
	}
	return out
}

var look = Look{Gap: 2, Window: 14, Turn: 22 * math.Pi / 180}

// A half disc on a square: four corners would be wrong, the smooth joints are none.
func TestCornersAndCurves(t *testing.T) {
	path := pieces.Path{
		pieces.Line{From: orb.Point{0, 0}, To: orb.Point{200, 0}},
		pieces.Line{From: orb.Point{200, 0}, To: orb.Point{200, 200}},
		pieces.Arc{Centre: orb.Point{100, 200}, Radius: 100, Begin: 0, Sweep: math.Pi},
		pieces.Line{From: orb.Point{0, 200}, To: orb.Point{0, 0}},
	}
	points := noisy(path, 0.1)
	corners := Corners(points, look)
	require.Len(t, corners, 2)
	edges, ok := Outline(Points{At: points}, corners, look, 0.3)
	require.True(t, ok)
	require.Len(t, edges, 2)
	assert.InDelta(t, 0, geometry.Distance(edges[0].Start(), orb.Point{0, 0}), 0.3)
	assert.InDelta(t, 0, geometry.Distance(edges[1].Start(), orb.Point{200, 0}), 0.3)
	assert.IsType(t, pieces.Line{}, edges[0][0])
	var ring []orb.Point
	for _, e := range edges {
		ring = append(ring, e.Flatten(0.01)...)
	}
	for _, p := range ring {
		assert.InDelta(t, 0, toPath(p, path), 0.4)
	}
	assert.InDelta(t, 40000+math.Pi*5000, geometry.Area(ring), 60)
}

func toPath(p orb.Point, path pieces.Path) float64 {
	line := path.Flatten(0.01)
	least := math.Inf(1)
	for i := 1; i < len(line); i++ {
		least = math.Min(least, geometry.SegmentDistance(p, line[i-1], line[i]))
	}
	return least
}

// A disc has no corner, and closes smoothly.
func TestDisc(t *testing.T) {
	points := noisy(pieces.Path{pieces.Arc{Centre: orb.Point{50, 50}, Radius: 80, Begin: 0, Sweep: 2 * math.Pi}}, 0.1)
	assert.Empty(t, Corners(points, look))
	edges, ok := Outline(Points{At: points}, nil, look, 0.3)
	require.True(t, ok)
	require.Len(t, edges, 1)
	for _, p := range edges[0].Flatten(0.01) {
		assert.InDelta(t, 80, geometry.Distance(p, orb.Point{50, 50}), 0.3)
	}
	assert.InDelta(t, 0, geometry.Distance(edges[0].Start(), edges[0].End()), 1e-9)
}

// The tip of a sharp corner is found though its last stretch was not seen.
func TestSharpTip(t *testing.T) {
	triangle := []orb.Point{{0, 0}, {300, -50}, {300, 50}}
	var path pieces.Path
	for i, p := range triangle {
		path = append(path, pieces.Line{From: p, To: triangle[(i+1)%3]})
	}
	var points []orb.Point
	for _, p := range noisy(path, 0.1) {
		if p[0] > 15 {
			points = append(points, p)
		}
	}
	edges, ok := Outline(Points{At: points}, Corners(points, look), look, 0.3)
	require.True(t, ok)
	least := math.Inf(1)
	for _, e := range edges {
		least = math.Min(least, geometry.Norm(e.Start()))
	}
	assert.Less(t, least, 1.0)
}

func TestTooFewPoints(t *testing.T) {
	_, ok := Outline(Points{At: []orb.Point{{0, 0}, {1, 0}, {0, 1}}}, nil, look, 0.3)
	assert.False(t, ok)
}

// A straight side stays one where points that are not trusted lie in waves beside it, and
// its ends stay where they are.
func TestDoubtfulPointsBendNoLine(t *testing.T) {
	corners := []orb.Point{{0, 0}, {300, 0}, {300, 200}, {0, 200}}
	var all Points
	var at []int
	for k, from := range corners {
		to := corners[(k+1)%len(corners)]
		at = append(at, len(all.At))
		for i := range int(geometry.Distance(from, to)) {
			p, trust := geometry.Between(from, to, float64(i)/geometry.Distance(from, to)), 1.0
			if k == 0 && i > 5 && i%20 < 10 {
				p[1], trust = -1.2*math.Sin(float64(i%20)/10*math.Pi), Doubtful
			}
			all.At, all.Trust = append(all.At, p), append(all.Trust, trust)
		}
	}
	look := Look{Gap: 1, Window: 16}
	edges, ok := Outline(all, at, look, 0.3)
	require.True(t, ok)
	for k, e := range edges {
		assert.IsType(t, pieces.Line{}, e[0], "side %d", k)
		assert.InDelta(t, 0, geometry.Distance(corners[k], e.Start()), 0.3, "corner %d", k)
	}
	edges, ok = Outline(Points{At: all.At}, at, look, 0.3)
	require.True(t, ok)
	assert.IsType(t, pieces.Bezier{}, edges[0][0], "all points trusted, it is no line")
}
