package construct

import (
	"math"

	"ellwand/pieces/measure"
)

// AtLeast is a length in mm that a refusal asks for as the least. Among the
// words of a Sentence it is rounded up to what people read, so that what is
// asked for will do.
type AtLeast float64

// String words the limit in cm.
func (l AtLeast) String() string { return l.In(measure.Centimetre) }

// In words the limit in a unit.
func (l AtLeast) In(unit measure.Unit) string {
	step := unit.System().Step()
	return Length(math.Ceil(float64(l)/step) * step).In(unit)
}

// AtMost is the like for the most: it is rounded down.
type AtMost float64

// String words the limit in cm.
func (l AtMost) String() string { return l.In(measure.Centimetre) }

// In words the limit in a unit.
func (l AtMost) In(unit measure.Unit) string {
	step := unit.System().Step()
	return Length(math.Floor(float64(l)/step) * step).In(unit)
}
