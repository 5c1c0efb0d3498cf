package construct

import (
	"slices"

	"ellwand/pieces"
)

// splinter is what is too short to be drawn as a curve of its own, in mm: both its
// ends would be one place on the draft sheet [source.OwnChoice].
const splinter = 2

// Stretch is the part of a path between two distances from its start. The
// distances must rise and lie within its length.
func Stretch(path pieces.Path, from, to float64) pieces.Path {
	var out pieces.Path
	done := 0.0
	for _, curve := range path {
		length := curve.Length()
		begin, end := max(from-done, 0), min(to-done, length)
		if end-begin > 1e-6 {
			out = append(out, cut(curve, begin, end, length))
		}
		done += length
	}
	return unsplintered(unsplintered(out).Reverse()).Reverse()
}

// unsplintered lets the second curve of a path begin where a splinter does.
func unsplintered(path pieces.Path) pieces.Path {
	if len(path) < 2 || path[0].Length() > splinter {
		return path
	}
	next, ok := path[1].(pieces.Bezier)
	if _, both := path[0].(pieces.Bezier); !ok || !both {
		return path
	}
	// A cubic goes on before its start: a little further back it lies at the other end.
	_, whole := next.Split(-path[0].Length() / (3 * Distance(next.P0, next.P1)))
	longer := whole.(pieces.Bezier)
	longer.P1 = Go(path[0].Start(), path[0].Tangent(0), Distance(longer.P0, longer.P1))
	longer.P0 = path[0].Start()
	return slices.Insert(slices.Clone(path[2:]), 0, pieces.Curve(longer))
}

func cut(curve pieces.Curve, begin, end, length float64) pieces.Curve {
	if end < length-1e-6 {
		curve, _ = curve.Split(parameter(curve, end))
	}
	if begin > 1e-6 {
		_, curve = curve.Split(parameter(curve, begin))
	}
	return curve
}

// parameter of the point at a distance along a curve, by halving.
func parameter(curve pieces.Curve, distance float64) float64 {
	low, high := 0.0, 1.0
	for range 50 {
		middle := (low + high) / 2
		if before, _ := curve.Split(middle); before.Length() < distance {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}

// Reach is the distance along a path at which its x (axis 0) or y (axis 1),
// which must rise along it, comes to a value; the whole length where it never
// does.
func Reach(path pieces.Path, axis int, value float64) float64 {
	low, high := 0.0, path.Length()
	for range 60 {
		if middle := (low + high) / 2; path.At(middle)[axis] < value {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}
