package measure

import "strconv"

// System is a system of units in which people say lengths of cloth.
type System int

const (
	// Metric says sizes in cm and lengths of cloth in m.
	Metric System = iota
	// Imperial says both in inches, and what is bought in yards.
	Imperial
)

// The steps of a purchase: a cm, and the eighth of a yard that shops cut
// [source.CommonPractice].
const (
	purchaseMetric   Length = 10
	purchaseImperial Length = 914.4 / 8
)

// System that a unit belongs to.
func (u Unit) System() System {
	if u == Inch || u == Yard {
		return Imperial
	}
	return Metric
}

// SystemOf is the system of those who read inches, or of those who do not.
func SystemOf(inches bool) System {
	if inches {
		return Imperial
	}
	return Metric
}

// Unit in which sizes are said: cm or in.
func (s System) Unit() Unit {
	if s == Imperial {
		return Inch
	}
	return Centimetre
}

// Step to which sizes are said, mm: 1 mm or 1/16 in.
func (s System) Step() float64 {
	if s == Imperial {
		return 25.4 / 16
	}
	return 1
}

// Size says the size of a piece, the width of a cloth or a place on it, mm:
// "41.5 cm", "16 3/8 in".
func (s System) Size(mm float64) string { return Length(mm).Format(s.Unit()) }

// Accuracy says how far something may be out, mm, never less than it is: "1.2 mm",
// "0.3 cm", "1/8 in".
func (s System) Accuracy(mm float64) string {
	const fine, tenth = 2, 0.1 // mm: below 2 to a tenth [source.OwnChoice]
	if s == Metric && mm < fine {
		return strconv.FormatFloat(float64(RoundUp(Length(mm), tenth)), 'f', 1, 64) + " mm"
	}
	return s.Size(float64(RoundUp(Length(mm), Length(s.Step()))))
}

// Cloth says a length of cloth, mm: "1.82 m", or inches, since the eighths of a
// yard are too coarse for it.
func (s System) Cloth(mm float64) string {
	if s == Imperial {
		return s.Size(mm)
	}
	return Length(mm).Format(Metre)
}

// ClothStep is to what lengths of cloth are said, mm: 1 cm or 1/16 in.
func (s System) ClothStep() float64 {
	if s == Imperial {
		return s.Step()
	}
	return 10
}

// ClothAtLeast says a length of cloth, mm, that nothing is shorter than, and so
// never more than it is: "1.81 m".
func (s System) ClothAtLeast(mm float64) string {
	return s.Cloth(float64(RoundDown(Length(mm), Length(s.ClothStep()))))
}

// Purchase says a length to buy, mm, never less than it is: "1.35 m", "2 1/8
// yd".
func (s System) Purchase(mm float64) string {
	if s == Imperial {
		return RoundUp(Length(mm), purchaseImperial).Format(Yard)
	}
	return RoundUp(Length(mm), purchaseMetric).Format(Metre)
}
