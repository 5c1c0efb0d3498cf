package rules

import (
	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// outwardTolerance is how far, in mm, a cutting outline may lie outside the
// true curve, and fineTolerance how far the chords it starts from may cut
// inside: a tenth of the width of a chalk line, and a hundredth
// [source.OwnChoice].
const (
	outwardTolerance = 0.1
	fineTolerance    = 0.01
)

// outward returns an outline of fewer points that contains the given
// counter-clockwise ring and stays within the tolerance of it, in mm. Along a
// hollow it skips points, along a bulge it prolongs some edges until they
// meet; corners and straight edges stay as they are. The result is closed.
func outward(ring orb.Ring, tolerance float64) orb.Ring {
	points := geometry.Distinct(ring)
	n := len(points)
	if n < 4 {
		return geometry.Closed(points)
	}
	first := startOf(points)
	points = append(points[first:n:n], points[:first]...)
	var out orb.Ring
	for i := 0; i < n; {
		run := i
		for run < n && convexAt(points, run) == convexAt(points, i) {
			run++
		}
		if convexAt(points, i) {
			out = append(out, bulge(points, i, run, tolerance)...)
		} else {
			out = append(out, hollow(points[i:run], tolerance)...)
		}
		i = run
	}
	return geometry.Closed(out)
}

// startOf finds a point where a run begins, so that no run is cut in two; on
// a wholly convex ring the start of the longest edge, which then stays.
func startOf(points []orb.Point) int {
	n, longest, best := len(points), 0.0, 0
	for i := range points {
		if !convexAt(points, i+n-1) && convexAt(points, i) {
			return i
		}
		if d := geometry.Distance(points[(i+n-1)%n], points[i]); d > longest {
			longest, best = d, i
		}
	}
	return best
}

// bulge replaces the convex points from i up to end. The edges before the
// first and after the last stay; of those between, some are left out and
// their neighbours prolonged.
func bulge(points []orb.Point, i, end int, tolerance float64) []orb.Point {
	n := len(points)
	edge := func(k int) (a, b orb.Point) { return points[(k+n-1)%n], points[k%n] }
	var out []orb.Point
	for k := i; k < end; {
		a, b := edge(k)
		next, corner := k+1, points[k]
		for try := k + 2; try <= end; try++ {
			c, d := edge(try)
			p, ok := intersection(a, b, c, d)
			if !ok || geometry.Distance(p, geometry.Nearest(points[k:try], p)) > tolerance {
				break
			}
			next, corner = try, p
		}
		out = append(out, corner)
		k = next
	}
	return out
}

// hollow keeps the first and last of a run of reflex points and as few as it
// may between.
func hollow(run []orb.Point, tolerance float64) []orb.Point {
	out := []orb.Point{run[0]}
	for i := 0; i < len(run)-1; {
		next := i + 1
		for try := i + 2; try < len(run) && within(run[i:try+1], tolerance); try++ {
			next = try
		}
		out = append(out, run[next])
		i = next
	}
	return out
}

// within reports whether all points are that near to the chord of the run.
func within(run []orb.Point, tolerance float64) bool {
	chord := []orb.Point{run[0], run[len(run)-1]}
	for _, p := range run[1 : len(run)-1] {
		if geometry.Distance(p, geometry.Nearest(chord, p)) > tolerance {
			return false
		}
	}
	return true
}

// intersection returns where the edge a-b prolonged past b meets the edge c-d
// prolonged before c.
func intersection(a, b, c, d orb.Point) (orb.Point, bool) {
	ux, uy, vx, vy := b[0]-a[0], b[1]-a[1], d[0]-c[0], d[1]-c[1]
	turn := float64(ux*vy) - float64(uy*vx)
	if turn <= 1e-12*portable.Hypot(ux, uy)*portable.Hypot(vx, vy) {
		return orb.Point{}, false
	}
	t := (float64((c[0]-b[0])*vy) - float64((c[1]-b[1])*vx)) / turn
	if t < 0 {
		return orb.Point{}, false
	}
	return orb.Point{b[0] + float64(t*ux), b[1] + float64(t*uy)}, true
}

func convexAt(points []orb.Point, i int) bool {
	n := len(points)
	a, b, c := points[(i+n-1)%n], points[i%n], points[(i+1)%n]
	return float64((b[0]-a[0])*(c[1]-b[1]))-float64((b[1]-a[1])*(c[0]-b[0])) > 0
}
