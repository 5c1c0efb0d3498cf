package convex

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/nest/internal/outline"
)

// outlineOf draws a star-shaped outline: always simple, with reflex corners.
func outlineOf(t *rapid.T, least, most int) []orb.Point {
	n := rapid.IntRange(least, most).Draw(t, "corners")
	points := make([]orb.Point, n)
	for i := range points {
		radius := rapid.Float64Range(1, 5).Draw(t, "radius")
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		points[i] = orb.Point{radius * cos, radius * sin}
	}
	return outline.Clean(points)
}

func TestPartsAreConvexAndFillTheOutline(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := outlineOf(t, 3, 60)
		var area float64
		for _, part := range Parts(whole) {
			for i := range part {
				require.False(t, isReflex(part, i), "%v", part)
			}
			area += outline.SignedArea(part)
		}
		require.InEpsilon(t, outline.SignedArea(whole), area, 1e-9)
	})
}

func TestPartsOfKnownOutlines(t *testing.T) {
	tests := []struct {
		name   string
		points []orb.Point
		parts  int
	}{
		{"square", []orb.Point{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, 1},
		{"L", []orb.Point{{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}}, 2},
		{"T", []orb.Point{{1, 0}, {2, 0}, {2, 2}, {3, 2}, {3, 3}, {0, 3}, {0, 2}, {1, 2}}, 3},
		{"notched on both sides", []orb.Point{{0, 0}, {1, 0.4}, {2, 0}, {2, 2}, {1, 1.6}, {0, 2}}, 2},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			require.LessOrEqual(t, len(Parts(test.points)), test.parts)
		})
	}
}

// The area of the sum of two convex outlines is A + B + 2 V(A, B), and the
// sum of an outline with itself is the outline twice as large (Schneider,
// Convex Bodies, 2nd ed. 2014, section 5.1).
func TestSumWithItselfIsTwiceAsLarge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		part := outline.Hull(outlineOf(t, 3, 20))
		require.InEpsilon(t, 4*outline.SignedArea(part), outline.SignedArea(Sum(part, part)), 1e-9)
	})
}

// Every sum of two corners lies in the sum, and its extents add up.
func TestSumHoldsAllSums(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := outline.Hull(outlineOf(t, 3, 15)), outline.Hull(outlineOf(t, 3, 15))
		sum := Sum(a, b)
		for _, p := range a {
			for _, q := range b {
				r := orb.Point{p[0] + q[0], p[1] + q[1]}
				for i := range sum {
					require.GreaterOrEqual(t, outline.Cross(sum[i], sum[(i+1)%len(sum)], r), -1e-9)
				}
			}
		}
		la, ha := outline.Bounds(a)
		lb, hb := outline.Bounds(b)
		ls, hs := outline.Bounds(sum)
		require.InDelta(t, la[0]+lb[0], ls[0], 1e-12)
		require.InDelta(t, ha[1]+hb[1], hs[1], 1e-12)
	})
}

func TestDiscHoldsTheCircle(t *testing.T) {
	disc := Disc(2)
	lo, hi := outline.Bounds(disc)
	require.InDelta(t, -2, lo[0], 1e-12)
	require.InDelta(t, 2, hi[1], 1e-12)
	for _, p := range disc {
		r := math.Hypot(p[0], p[1])
		require.True(t, r >= 2 && r <= 2*1.02)
	}
}
