package rules

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
)

func circle(radius float64, corners int) orb.Ring {
	var ring orb.Ring
	for i := range corners {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(corners))
		ring = append(ring, orb.Point{radius * cos, radius * sin})
	}
	return append(ring, ring[0])
}

// TestOutwardCircle: the area of a circle is pi r^2 (Archimedes). The
// outline contains the circle and is no more than 0.1 mm larger.
func TestOutwardCircle(t *testing.T) {
	for _, radius := range []float64{10, 100, 500} {
		// Corners so many that the chords stay within 0.01 mm of the circle.
		corners := int(math.Ceil(math.Pi / math.Acos(1-fineTolerance/radius)))
		out := outward(circle(radius, corners), outwardTolerance-fineTolerance)
		assert.Less(t, len(out), corners/2, "fewer corners")
		assert.Greater(t, geometry.Area(out), math.Pi*math.Pow(radius-fineTolerance, 2))
		assert.Less(t, geometry.Area(out), math.Pi*math.Pow(radius+outwardTolerance, 2))
		for _, p := range out {
			assert.LessOrEqual(t, math.Hypot(p[0], p[1]), radius+outwardTolerance)
		}
	}
}

func TestOutwardKeepsStraightEdges(t *testing.T) {
	rectangle := orb.Ring{{0, 0}, {150, 0}, {300, 0}, {300, 200}, {0, 200}, {0, 0}}
	assert.InDelta(t, 60000, geometry.Area(outward(rectangle, 0.1)), 1e-9)
	assert.Len(t, outward(rectangle, 0.1), 5)
	corner := orb.Ring{{0, 0}, {300, 0}, {300, 200}, {100, 200}, {100, 100}, {0, 100}, {0, 0}}
	assert.InDelta(t, 50000, geometry.Area(outward(corner, 0.1)), 1e-9)
	assert.Len(t, outward(corner, 0.1), 7)
}

// TestOutwardContains: whatever the shape, the new outline covers the old and
// is nowhere farther from it than the tolerance.
func TestOutwardContains(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		corners := rapid.IntRange(8, 200).Draw(t, "corners")
		waves := rapid.IntRange(1, 7).Draw(t, "waves")
		depth := rapid.Float64Range(0, 60).Draw(t, "depth")
		var ring orb.Ring
		for i := range corners {
			angle := 2 * math.Pi * float64(i) / float64(corners)
			sin, cos := math.Sincos(angle)
			r := 200 + depth*math.Sin(float64(waves)*angle)
			ring = append(ring, orb.Point{r * cos, r * sin})
		}
		ring = append(ring, ring[0])
		out := outward(ring, 0.1)
		if geometry.Area(out) < geometry.Area(ring)-1e-6 {
			t.Fatalf("area %g fell to %g", geometry.Area(ring), geometry.Area(out))
		}
		for _, p := range ring {
			if !planar.RingContains(out, p) && geometry.Distance(p, geometry.Nearest(out, p)) > 1e-6 {
				t.Fatalf("%v is left outside", p)
			}
		}
		for _, p := range out {
			if d := geometry.Distance(p, geometry.Nearest(ring, p)); d > 0.1+1e-9 {
				t.Fatalf("%v lies %g outside", p, d)
			}
		}
	})
}

func BenchmarkOutward(b *testing.B) {
	ring := circle(300, 400)
	for b.Loop() {
		if got := len(outward(ring, 0.09)); got > 150 {
			b.Fatalf("%d corners", got)
		}
	}
}
