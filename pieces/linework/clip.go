package linework

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Clip cuts a line at the sides of a box, and gives what lies inside or on its rim. A
// line that lies wholly inside comes back as it is.
func Clip(line Stretch, box orb.Bound) []Stretch {
	around := hull(line.Path)
	if geometry.Holds(box, around) {
		return []Stretch{line}
	}
	if around.Min[0] > box.Max[0] || around.Max[0] < box.Min[0] || around.Min[1] > box.Max[1] ||
		around.Max[1] < box.Min[1] {
		return nil
	}
	var out []Stretch
	goesOn := false
	for _, curve := range line.Path {
		for _, part := range cutAt(curve, box) {
			middle := part.At(0.5)
			if !within(middle, box) {
				goesOn = false
				continue
			}
			if !goesOn {
				out = append(out, Stretch{})
			}
			last := &out[len(out)-1]
			last.Path = append(last.Path, part)
			goesOn = true
		}
	}
	return joinedEnds(out, line.Closed)
}

// joinedEnds puts the last part before the first where a closed line begins inside.
func joinedEnds(out []Stretch, closed bool) []Stretch {
	n := len(out)
	if !closed || n == 0 || geometry.Distance(out[n-1].Path.End(), out[0].Path.Start()) > same {
		return out
	}
	if n == 1 {
		out[0].Closed = true
		return out
	}
	out[0].Path = append(slices.Clone(out[n-1].Path), out[0].Path...)
	return out[:n-1]
}

func within(p orb.Point, box orb.Bound) bool {
	const rim = 1e-6 // [source.OwnChoice]
	return p[0] >= box.Min[0]-rim && p[0] <= box.Max[0]+rim && p[1] >= box.Min[1]-rim && p[1] <= box.Max[1]+rim
}

// hull is a box that holds the path.
func hull(path pieces.Path) orb.Bound {
	points := orb.MultiPoint{}
	for _, c := range path {
		if b, ok := c.(pieces.Bezier); ok {
			points = append(points, b.P0, b.P1, b.P2, b.P3)
			continue
		}
		points = append(points, orb.MultiPoint(c.Flatten(0.01))...)
	}
	box := points.Bound()
	for _, c := range path {
		if _, round := c.(pieces.Arc); round {
			return box.Pad(0.01)
		}
	}
	return box
}

// cutAt the sides of a box.
func cutAt(curve pieces.Curve, box orb.Bound) []pieces.Curve {
	cuts := []float64{}
	for axis := range 2 {
		for _, side := range [2]float64{box.Min[axis], box.Max[axis]} {
			cuts = append(cuts, meets(curve, axis, side, 0, 1, 0)...)
		}
	}
	slices.Sort(cuts)
	var out []pieces.Curve
	rest, done := curve, 0.0
	for _, t := range cuts {
		if t <= done+1e-9 || t >= 1-1e-9 {
			continue
		}
		before, after := rest.Split((t - done) / (1 - done))
		out, rest, done = append(out, before), after, t
	}
	return append(out, rest)
}

// meets are the parameters from t0 to t1 at which a curve has a coordinate.
func meets(curve pieces.Curve, axis int, value, t0, t1 float64, depth int) []float64 {
	part := curve
	if depth > 0 {
		_, part = curve.Split(t0)
		part, _ = part.Split((t1 - t0) / (1 - t0))
	}
	low, high := reachOf(part, axis)
	if value < low || value > high {
		return nil
	}
	from, to := part.Start()[axis], part.End()[axis]
	if _, straight := part.(pieces.Line); straight {
		if from == to {
			return nil
		}
		return []float64{t0 + (t1-t0)*(value-from)/(to-from)}
	}
	const fine = 40 // halvings: to 1e-12 of the curve [source.OwnChoice]
	if depth == fine || high-low < 1e-9 {
		if (from-value)*(to-value) > 0 {
			return nil // it only comes near
		}
		return []float64{(t0 + t1) / 2}
	}
	middle := (t0 + t1) / 2
	return append(meets(curve, axis, value, t0, middle, depth+1), meets(curve, axis, value, middle, t1, depth+1)...)
}

// reachOf a curve along an axis, or a little more.
func reachOf(curve pieces.Curve, axis int) (low, high float64) {
	if b, ok := curve.(pieces.Bezier); ok {
		return min(b.P0[axis], b.P1[axis], b.P2[axis], b.P3[axis]), max(b.P0[axis], b.P1[axis], b.P2[axis], b.P3[axis])
	}
	if a, ok := curve.(pieces.Arc); ok {
		return reachOfArc(a, axis)
	}
	from, to := curve.Start()[axis], curve.End()[axis]
	return min(from, to), max(from, to)
}

// reachOfArc by its ends and the corner of its tangents, where it turns less than half
// round; else by its circle.
func reachOfArc(a pieces.Arc, axis int) (low, high float64) {
	if a.Sweep > 2 || a.Sweep < -2 {
		return a.Centre[axis] - a.Radius, a.Centre[axis] + a.Radius
	}
	from, to := a.Start(), a.End()
	middle := a.At(0.5)
	// The corner lies as far beyond the middle as the secant of half the sweep.
	chord := geometry.Between(from, to, 0.5)
	corner := geometry.Add(chord, geometry.Times(geometry.Sub(middle, chord), 3))
	return min(from[axis], to[axis], corner[axis]), max(from[axis], to[axis], corner[axis])
}
