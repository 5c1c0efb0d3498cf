package layout

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// LeastExtent returns the least extent of the item along an axis (0: x, 1: y)
// over every turn and tilt that is allowed.
func (item Item) LeastExtent(axis int) float64 {
	least := math.Inf(1)
	for _, turn := range item.Turns {
		least = min(least, item.TurnExtent(turn, axis))
	}
	return least
}

// TurnExtent returns the least extent along an axis in one turn with any tilt
// that is allowed.
//
// Between two angles at which an edge of the convex hull stands square to the
// axis, the extent is the distance of a fixed pair of corners times a sine:
// concave, hence least at one of the ends. So it is enough to look there and
// at the ends of the allowed tilt.
func (item Item) TurnExtent(turn Turn, axis int) float64 {
	least := extentAt(item.Outline, turn, 0, axis)
	if item.Tilt == 0 {
		return least
	}
	hull := convexHull(Turned(item.Outline, turn.Degrees, turn.Mirrored))
	upright := Turn{}
	for _, tilt := range []float64{-item.Tilt, item.Tilt} {
		least = min(least, extentAt(hull, upright, tilt, axis))
	}
	for i, a := range hull {
		b := hull[(i+1)%len(hull)]
		square := float64(90*float64(1-axis)) - portable.Atan2(b[1]-a[1], b[0]-a[0])*180/math.Pi
		for tilt := square - float64(180*math.Floor((square+item.Tilt)/180)); tilt <= item.Tilt; tilt += 180 {
			least = min(least, extentAt(hull, upright, tilt, axis))
		}
	}
	return least
}

func extentAt(ring orb.Ring, turn Turn, tilt float64, axis int) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range Turned(ring, turn.Degrees+tilt, turn.Mirrored) {
		low, high = min(low, q[axis]), max(high, q[axis])
	}
	return high - low
}

// convexHull returns the corners of the convex hull, counter-clockwise and
// open. (Andrew, "Another efficient algorithm for convex hulls in two
// dimensions", Information Processing Letters 9, 1979.)
func convexHull(ring orb.Ring) orb.Ring {
	points := slices.Clone(ring)
	slices.SortFunc(points, func(a, b orb.Point) int {
		if a[0] != b[0] {
			return cmp.Compare(a[0], b[0])
		}
		return cmp.Compare(a[1], b[1])
	})
	chain := func(hull orb.Ring, from int, q orb.Point) orb.Ring {
		for len(hull) >= from+2 && cross(hull[len(hull)-2], hull[len(hull)-1], q) <= 0 {
			hull = hull[:len(hull)-1]
		}
		return append(hull, q)
	}
	var hull orb.Ring
	for _, q := range points {
		hull = chain(hull, 0, q)
	}
	lower := len(hull) - 1
	for i := len(points) - 2; i >= 0; i-- {
		hull = chain(hull, lower, points[i])
	}
	return hull[:len(hull)-1]
}

// cross is twice the signed area of the triangle a, b, c.
func cross(a, b, c orb.Point) float64 {
	return float64((b[0]-a[0])*(c[1]-a[1])) - float64((b[1]-a[1])*(c[0]-a[0]))
}
