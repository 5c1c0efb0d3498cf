// Package sums has products in every position; the comment "fault" marks the
// lines with a fault.
package sums

import (
	"math"
	"math/rand/v2"
)

type length float64

type box struct{ width, area float64 }

func added(a, b, c float64) float64      { return a*b + c }            // fault
func subtracted(a, b, c float64) float64 { return c - a*b }            // fault
func negative(a, b, c float64) float64   { return -(a * b) + c }       // fault
func small(a, b, c float32) float32      { return a*b + c }            // fault
func typed(a, b, c length) length        { return (a * b) - c }        // fault
func both(a, b, c float64) float64       { return float64(a*b) + c*c } // fault
func rounded(a, b, c float64) float64    { return float64(a*b) + c }
func compared(a, b, c float64) bool      { return a*b > c }
func chained(a, b, c float64) float64    { return a * b / c }
func doubled(a, b float64) float64       { return 2*a + b - a*0.25 }
func tripled(a, b float64) float64       { return 3*a + b } // fault
func whole(a, b, c int) int              { return a*b + c }
func constant(a float64) float64         { return a + 3*0.7 }
func quotient(a, b, c float64) float64   { return a/b + c }

func assigned(a, b, c float64) float64 {
	sum := c
	sum += a * b         // fault
	sum -= a * b         // fault
	product := a * b     // fault
	var declared = a * b // fault
	free := a * b
	if free > 1 {
		return 0
	}
	c *= a // fault
	return sum + product + declared - c
}

func area(a, b float64) float64 { return a * b } // fault

// Area may be added in another package.
func Area(a, b float64) float64 { return a * b } // fault

func called(a, b, c float64) float64 { return area(a, b) + c }

func increased(a, by float64) float64 { return a + by }

func passed(a, b, c float64) float64 { return increased(c, a*b) } // fault

func inField(a, b float64) float64 {
	x := box{width: a, area: a * b} // fault
	return x.area + x.width
}

func inPoint(a, b float64) [2]float64 {
	return [2]float64{a, a * b} // fault
}

func results(a, b float64) (float64, float64) {
	return a * b, b // fault
}

func functions(r *rand.Rand, a float64) float64 {
	return math.Max(math.Abs(a), math.Sqrt(a)) +
		math.Sin(a) + // fault
		math.Pow(a, 3) + // fault
		r.NormFloat64() + // fault
		r.Float64()
}
