package outline

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCleanDropsWhatAddsNothing(t *testing.T) {
	ring := orb.Ring{{0, 0}, {0, 2}, {0, 2}, {1, 2}, {2, 2}, {2, 1}, {2, 0}, {0, 0}}
	require.Equal(t, []orb.Point{{2, 0}, {2, 2}, {0, 2}, {0, 0}}, rotatedTo(Clean(ring), orb.Point{2, 0}))
}

func rotatedTo(p []orb.Point, first orb.Point) []orb.Point {
	for i := range p {
		if p[i] == first {
			return append(append([]orb.Point(nil), p[i:]...), p[:i]...)
		}
	}
	return p
}

func TestHullOfASquareWithPointsInside(t *testing.T) {
	points := []orb.Point{{0, 0}, {1, 1}, {2, 0}, {2, 2}, {1, 0.5}, {0, 2}, {1, 2}}
	require.Len(t, Hull(points), 4)
	require.InDelta(t, 4, SignedArea(Hull(points)), 1e-12)
}

// curve is a smooth blob, like the outline of a drafted piece.
func curve(t *rapid.T) []orb.Point {
	n := rapid.IntRange(40, 160).Draw(t, "points")
	wave := rapid.Float64Range(0, 0.3).Draw(t, "wave")
	times := float64(rapid.IntRange(2, 5).Draw(t, "times"))
	points := make([]orb.Point, n)
	for i := range points {
		a := 2 * math.Pi * float64(i) / float64(n)
		r := 300 * (1 + wave*math.Sin(times*a))
		points[i] = orb.Point{r * math.Cos(a), r * math.Sin(a)}
	}
	return Clean(points)
}

func polygon(p []orb.Point) geom.Geometry {
	var flat []float64
	for i := 0; i <= len(p); i++ {
		flat = append(flat, p[i%len(p)][0], p[i%len(p)][1])
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))}).AsGeometry()
}

// Difference by simplefeatures.
func TestSimplifyStaysOutsideAndNear(t *testing.T) {
	const tolerance = 0.5
	fewer := 0
	rapid.Check(t, func(t *rapid.T) {
		before := curve(t)
		after := Simplify(before, tolerance)
		lost, err := geom.Difference(polygon(before), polygon(after))
		require.NoError(t, err)
		require.Less(t, lost.Area(), 1e-6)
		for _, p := range after {
			require.Less(t, distanceTo(before, p), tolerance*1.01)
		}
		lo, hi := Bounds(before)
		lo2, hi2 := Bounds(after)
		require.Equal(t, lo, lo2)
		require.Equal(t, hi, hi2)
		fewer += len(before) - len(after)
	})
	require.Positive(t, fewer)
}

func distanceTo(ring []orb.Point, p orb.Point) float64 {
	least := math.Inf(1)
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		dx, dy := b[0]-a[0], b[1]-a[1]
		s := math.Max(0, math.Min(1, ((p[0]-a[0])*dx+(p[1]-a[1])*dy)/(dx*dx+dy*dy)))
		least = math.Min(least, math.Hypot(p[0]-a[0]-s*dx, p[1]-a[1]-s*dy))
	}
	return least
}

func TestSimplifyKeepsStraightOutlines(t *testing.T) {
	jagged := []orb.Point{{0, 0}, {10, 0}, {10, 5}, {6, 5}, {6, 8}, {0, 8}}
	require.Equal(t, jagged, Simplify(jagged, 0.1))
}
