package portable

import (
	"math"
	"math/rand/v2"
)

// ln 2 in two parts, of which the first ends in 21 zero bits.
const (
	ln2High = 0x1.62e42feep-1
	ln2Low  = 0x1.a39ef35793c76p-33
)

// expSeries are the coefficients of (exp x - 1 - x)/x^2; logSeries those in s^2
// of log((1+s)/(1-s))/s - 2, divided by s^2.
var (
	expSeries = []float64{
		1.0 / 2, 1.0 / 6, 1.0 / 24, 1.0 / 120, 1.0 / 720, 1.0 / 5040, 1.0 / 40320, 1.0 / 362880,
		1.0 / 3628800, 1.0 / 39916800, 1.0 / 479001600, 1.0 / 6227020800,
	}
	logSeries = []float64{
		2.0 / 3, 2.0 / 5, 2.0 / 7, 2.0 / 9, 2.0 / 11, 2.0 / 13, 2.0 / 15, 2.0 / 17, 2.0 / 19, 2.0 / 21, 2.0 / 23,
	}
)

// Exp returns e to the power of x, for x between -700 and 700, within 2 units in
// the last place.
func Exp(x float64) float64 {
	twos := math.Round(x * (1 / math.Ln2))
	rest := x - float64(twos*ln2High) - float64(twos*ln2Low)
	return math.Ldexp(1+(rest+float64(float64(rest*rest)*horner(rest, expSeries))), int(twos))
}

// Log returns the natural logarithm of a positive, finite number, within 2 units
// in the last place.
func Log(x float64) float64 {
	part, twos := math.Frexp(x)
	if part < math.Sqrt2/2 {
		part *= 2
		twos--
	}
	f := part - 1
	s := f / (2 + f)
	square := s * s
	// log(1+f) = 2s + s R, and 2s = f - s f.
	r := float64(square * horner(square, logSeries))
	k := float64(twos)
	return float64(k*ln2High) + (f - (float64(s*(f-r)) - float64(k*ln2Low)))
}

// Geometric returns what lies between two positive numbers at a share of the way
// from 0 to 1, evenly in the logarithm; at most a million times apart they give
// it within 20 units in the last place.
func Geometric(from, to, share float64) float64 {
	return float64(from * Exp(float64(share*Log(to/from))))
}

// Normal draws from the normal distribution of mean 0 and deviation 1 (the polar
// method: Marsaglia and Bray, "A convenient method for generating normal
// variables", SIAM Review 6, 1964).
func Normal(random *rand.Rand) float64 {
	for {
		u, v := 2*random.Float64()-1, 2*random.Float64()-1
		if s := float64(u*u) + float64(v*v); s > 0 && s < 1 {
			return float64(u * math.Sqrt(-2*Log(s)/s))
		}
	}
}
