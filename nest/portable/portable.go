// Package portable holds the elementary functions that decide what pieces are
// and where they lie, to the same last bit on every processor.
//
// The functions of math do not promise that: some are in assembler on some
// processors, and in the others a compiler may fuse a multiplication and an
// addition, which skips a rounding ("Floating-point operators" in the Go
// specification). A search branches on such bits, and its layouts then differ
// wholly. Here every product is rounded by a conversion before it is added to
// anything. What this package takes from math is exact or rounded once by
// IEEE 754: Abs, Copysign, Frexp, Ldexp, Mod, Round, Signbit, Sqrt.
//
// The series are those of Taylor, with as many terms as leave less than a tenth
// of a unit in the last place. The bounds of error that the functions state are
// measured against math, in the tests.
package portable

import "math"

// Hypot is the length of (x, y), both finite, within 2 units in the last place.
func Hypot(x, y float64) float64 {
	x, y = math.Abs(x), math.Abs(y)
	if x < y {
		x, y = y, x
	}
	if x == 0 {
		return 0
	}
	y /= x
	return float64(x * math.Sqrt(1+float64(y*y)))
}

// horner is the value at x of a polynomial whose coefficients begin with the
// constant.
func horner(x float64, coefficients []float64) float64 {
	sum := 0.0
	for i := len(coefficients) - 1; i >= 0; i-- {
		sum = float64(sum*x) + coefficients[i]
	}
	return sum
}
