package sleeve

import "math"

// root finds where a function passes 0 between two places where it has different
// signs, within a tolerance, by the false position; an end that stays put twice
// counts half (Dowell and Jarratt, A modified regula falsi method, BIT 11, 1971).
// Of a function that has one sign at both it is the end where that is nearer to 0.
func root(low, high, within float64, f func(float64) float64) float64 {
	atLow, atHigh := f(low), f(high)
	if atLow == 0 || atHigh == 0 || atLow > 0 == (atHigh > 0) {
		if math.Abs(atLow) <= math.Abs(atHigh) {
			return low
		}
		return high
	}
	middle, stayed := low, 0
	for range 60 {
		last := middle
		middle = (float64(low*atHigh) - float64(high*atLow)) / (atHigh - atLow)
		value := f(middle)
		if value == 0 || math.Abs(middle-last) < within || high-low < within {
			break
		}
		if value > 0 == (atHigh > 0) {
			high, atHigh = middle, value
			if stayed < 0 {
				atLow /= 2
			}
			stayed = -1
			continue
		}
		low, atLow = middle, value
		if stayed > 0 {
			atHigh /= 2
		}
		stayed = 1
	}
	return middle
}
