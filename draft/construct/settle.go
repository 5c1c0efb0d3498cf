package construct

import "math"

// Settle changes a value by half of what it leaves over, again and again, until
// that is less than a thousandth of a millimetre: so the taper of two side seams
// is found at which a curved waist has its length.
func Settle(value float64, over func(value float64) float64) float64 {
	for range 40 {
		left := over(value)
		if math.Abs(left) < 0.001 {
			break
		}
		value += left / 2
	}
	return value
}
