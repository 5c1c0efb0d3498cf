package quote

import (
	"math"

	"ellwand/pieces/measure"
)

// Price is what a length of cloth costs.
type Price struct {
	Money Money
	// Per is measure.Metre or measure.Yard.
	Per measure.Unit
}

// micrometresPer the two units that cloth is sold by; exact
// [source.YardAndPound].
const (
	micrometresPerMetre = 1_000_000
	micrometresPerYard  = 914_400
)

func (p Price) micrometres() int64 {
	if p.Per == measure.Yard {
		return micrometresPerYard
	}
	return micrometresPerMetre
}

// For is the price of a length, mm, rounded to the minor unit. The length
// counts to the micrometre, which holds every step of a shop exactly.
func (p Price) For(length float64) Money {
	return p.Money.times(int64(math.Round(length*1000)), p.micrometres())
}

// perMetre is the price of a metre, to compare cloths sold by either unit.
func (p Price) perMetre() float64 {
	return float64(p.Money) * micrometresPerMetre / float64(p.micrometres())
}

// Times is the price of a number of things.
func (m Money) Times(count int) Money { return m * Money(count) }

// ForMinutes is what work costs at a rate for the hour, rounded to the minor
// unit.
func ForMinutes(perHour Money, minutes int) Money { return perHour.times(int64(minutes), 60) }
