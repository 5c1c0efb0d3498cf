package reference

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/fitting"
)

// quadrangle is a rim in the photo with four corners and sides that are nearly straight.
type quadrangle struct {
	corners [4]orb.Point
	sides   [4][]orb.Point // what blur left alone, from each corner to the next
}

// How a sheet looks in the photo [source.OwnChoice].
const (
	mostBow   = 0.03 // of a side: how far the lens may bow it
	leastSide = 24.0 // pixels
	pointsOf  = 40   // of a side that are looked at
)

// quadrangleOf a closed rim, one point a pixel.
func quadrangleOf(rim []orb.Point, look fitting.Look) (quadrangle, bool) {
	var q quadrangle
	at := fitting.Corners(rim, look)
	if len(at) != 4 {
		return q, false
	}
	// A line is what stays within the bow of the longest side.
	paths, ok := fitting.Outline(fitting.Points{At: rim}, at, look, 0.5)
	if !ok {
		return q, false
	}
	n := len(rim)
	for k := range 4 {
		q.corners[k] = paths[k].Start()
		from, to := at[k], at[(k+1)%4]
		if to <= from {
			to += n
		}
		from, to = from+look.Gap, to-look.Gap
		a, b := paths[k].Start(), paths[k].End()
		if to-from < 8 || geometry.Distance(a, b) < leastSide {
			return q, false
		}
		for i := range pointsOf {
			p := rim[(from+i*(to-from)/(pointsOf-1))%n]
			if geometry.LineDistance(p, a, b) > mostBow*geometry.Distance(a, b) {
				return q, false
			}
			q.sides[k] = append(q.sides[k], p)
		}
	}
	return q, true
}

// turned begins at the next corner, so often.
func (q quadrangle) turned(by int) quadrangle {
	var out quadrangle
	for k := range 4 {
		out.corners[k], out.sides[k] = q.corners[(k+by)%4], q.sides[(k+by)%4]
	}
	return out
}

// size of the quadrangle where its corners lie on the plane: the means of opposite
// sides.
func size(corners [4]orb.Point) (wide, high float64) {
	d := func(i, k int) float64 { return math.Hypot(corners[i][0]-corners[k][0], corners[i][1]-corners[k][1]) }
	return (d(0, 1) + d(2, 3)) / 2, (d(1, 2) + d(3, 0)) / 2
}
