// Package measure holds lengths at the borders of the program: it reads what
// a dressmaker writes ("16 3/8 in", "41,5 cm", "2⅛ yd") and prints lengths
// rounded for people. Inside the program lengths are millimetres in float64.
package measure

import "math"

// Length is a length in millimetres.
type Length float64

// Unit is a unit of length in which people write.
type Unit int

// The units, with their sizes by the international yard and pound agreement
// of 1959: 1 yd is 914.4 mm and 1 in is 25.4 mm, exactly.
const (
	Millimetre Unit = iota
	Centimetre
	Metre
	Inch
	Yard
)

// unitFacts is what is known of each unit: its symbol, its size in tenths of
// a millimetre (whole numbers, so that reading stays exact; inch and yard by
// [source.YardAndPound]), and the other ways in which people write it.
var unitFacts = [...]struct {
	symbol string
	tenths int64
	names  []string
}{
	Millimetre: {"mm", 10, []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
	Centimetre: {"cm", 100, []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
	Metre:      {"m", 10_000, []string{"metre", "metres", "meter", "meters"}},
	Inch:       {"in", 254, []string{"inch", "inches", "in.", `"`, "″", "”", "''", "′′"}},
	Yard:       {"yd", 9144, []string{"yds", "yard", "yards", "yd.", "yds."}},
}

// String returns the unit's symbol: "mm", "cm", "m", "in" or "yd".
func (u Unit) String() string {
	if u < 0 || int(u) >= len(unitFacts) {
		return "unknown unit"
	}
	return unitFacts[u].symbol
}

// tenths is the size of the unit in tenths of a millimetre. A unit that does
// not exist counts as millimetres.
func (u Unit) tenths() int64 {
	if u < 0 || int(u) >= len(unitFacts) {
		return 10
	}
	return unitFacts[u].tenths
}

// Millimetres of one of the unit.
func (u Unit) Millimetres() float64 { return float64(u.tenths()) / 10 }

// noise is what float arithmetic may add to a length, in mm: a millionth of a
// millimetre, far below anything that can be cut.
const noise = 1e-6

// RoundDown returns the largest multiple of the step that is not above l, as RoundUp
// does upwards: a length that nothing is shorter than is rounded so.
func RoundDown(l, step Length) Length { return -RoundUp(-l, step) }

// RoundUp returns the smallest multiple of the step that is not below l: a
// purchase is rounded up, never down. What lies less than 1e-6 mm above a
// multiple is arithmetic noise and stays there, so that 1.20 m on a step of
// 10 cm remains 1.20 m. A step that is zero, negative or not a number leaves
// the length as it is.
func RoundUp(l, step Length) Length {
	if !(step > 0) || math.IsInf(float64(step), 0) {
		return l
	}
	allowed := math.Max(noise, 1e-13*math.Abs(float64(l)))
	return Length(float64(math.Ceil((float64(l)-allowed)/float64(step)) * float64(step)))
}
