package construct

import "ellwand/pieces"

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
	return out
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
