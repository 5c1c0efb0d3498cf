package construct

import (
	"math"

	"ellwand/nest/portable"
	"ellwand/pieces"
)

// gentlest is how far a part of a curve turns at most, in degrees, so that the
// marks at its ends and three between are enough to draw it by [source.OwnChoice].
const gentlest = 40

// Parted cuts the curves of a path that turn far into parts of equal length,
// each of which gets numbered ends and marks of its own on the draft sheet. The
// path stays where it is.
func Parted(path pieces.Path) pieces.Path {
	var out pieces.Path
	for _, curve := range path {
		parts := math.Ceil(turned(curve) / gentlest)
		if parts < 2 {
			out = append(out, curve)
			continue
		}
		whole := pieces.Path{curve}
		part := whole.Length() / parts
		for i := range int(parts) {
			out = append(out, Stretch(whole, float64(float64(i)*part), float64(float64(i+1)*part))...)
		}
	}
	return out
}

// turned is by how much a curve turns all the way along it, in degrees.
func turned(curve pieces.Curve) float64 {
	// steps are finer than any turn of a seam [source.OwnChoice].
	const steps = 32
	sum := 0.0
	for i := range steps {
		a, b := curve.Tangent(float64(i)/steps), curve.Tangent(float64(i+1)/steps)
		sum += math.Abs(portable.Atan2(float64(a[0]*b[1])-float64(a[1]*b[0]), float64(a[0]*b[0])+float64(a[1]*b[1])))
	}
	return sum * 180 / math.Pi
}
