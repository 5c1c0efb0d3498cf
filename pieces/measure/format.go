package measure

import (
	"math"
	"strconv"
	"strings"
)

// Format prints the length in the unit, rounded to the nearest step that
// people read: mm whole ("415 mm"), cm to 0.1 ("41.5 cm"), m to 0.01 ("1.35
// m", always with both decimals), in to 1/16 as a reduced fraction ("16 3/8
// in"), yd to 1/8 ("2 1/8 yd"). It rounds to the nearest step, also down:
// what is to be bought goes through RoundUp first. Parse reads its output.
func (l Length) Format(u Unit) string {
	value := float64(l) / u.Millimetres()
	switch u {
	case Inch:
		return fraction(value, 16) + " " + u.String()
	case Yard:
		return fraction(value, 8) + " " + u.String()
	case Metre:
		return decimal(value, 2) + " " + u.String()
	case Centimetre:
		return strings.TrimSuffix(decimal(value, 1), ".0") + " " + u.String()
	default:
		return decimal(value, 0) + " " + Millimetre.String()
	}
}

// decimal prints the value with so many decimals, halves rounded away from
// zero, and never as a negative zero.
func decimal(value float64, decimals int) string {
	scale := math.Pow10(decimals)
	rounded := nearest(float64(value*scale)) / scale
	return strconv.FormatFloat(rounded, 'f', decimals, 64)
}

// fraction prints the value as a whole number and a reduced fraction with
// the denominator given or a divisor of it, which must be a power of two.
func fraction(value float64, denominator int64) string {
	parts := nearest(float64(value * float64(denominator)))
	if math.Abs(parts) >= 1<<53 || math.IsNaN(parts) {
		return decimal(value, 0)
	}
	sign := ""
	if parts < 0 {
		sign, parts = "-", -parts
	}
	whole, rest := int64(parts)/denominator, int64(parts)%denominator
	for rest > 0 && rest%2 == 0 {
		rest, denominator = rest/2, denominator/2
	}
	text := strconv.FormatInt(rest, 10) + "/" + strconv.FormatInt(denominator, 10)
	switch {
	case rest == 0:
		return sign + strconv.FormatInt(whole, 10)
	case whole == 0:
		return sign + text
	default:
		return sign + strconv.FormatInt(whole, 10) + " " + text
	}
}

// nearest rounds to the nearest whole number. A half that arithmetic has left
// a little short still counts as a half, and a negative zero becomes zero.
func nearest(value float64) float64 {
	return math.Round(value+math.Copysign(1e-9, value)) + 0
}
