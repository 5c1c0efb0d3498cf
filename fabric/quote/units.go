package quote

import (
	"math"
	"unicode"
	"unicode/utf8"

	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// Units in which a client reads lengths: metric, or inches and yards.
type Units struct{ Inches bool }

// yard and its eighth, mm [source.YardAndPound].
const (
	yard   = 914.4
	eighth = yard / 8
)

// Short prints the width of a cloth or the size of a piece: "140 cm", "55 in".
func (u Units) Short(mm float64) string {
	return measure.SystemOf(u.Inches).Size(mm)
}

// Long prints a length of cloth: "1.82 m", or inches, since the eighths of a
// yard are too coarse for it.
func (u Units) Long(mm float64) string {
	return measure.SystemOf(u.Inches).Cloth(mm)
}

// AtLeast prints a length of cloth that no lay is shorter than: as Long, but never more
// than it is.
func (u Units) AtLeast(mm float64) string {
	return measure.SystemOf(u.Inches).ClothAtLeast(mm)
}

// Bought prints a length to buy in the client's units, never less than it is.
// When the shop sells by the other system, its own length follows in brackets:
// "2 1/8 yd (1.90 m)".
func (u Units) Bought(c cloth.Cloth, mm float64) string {
	metres, yards := measure.Metric.Purchase(mm), measure.Imperial.Purchase(mm)
	switch {
	case u.Inches && SoldInYards(c):
		return yards
	case u.Inches:
		return yards + " (" + metres + ")"
	case SoldInYards(c):
		return metres + " (" + yards + ")"
	}
	return metres
}

// SoldInYards reports whether the shop's step is a number of eighths of a
// yard.
func SoldInYards(c cloth.Cloth) bool {
	steps := c.PurchaseStep / eighth
	return c.PurchaseStep > 0 && math.Abs(steps-math.Round(steps)) < 1e-6
}

// metricStep is what shops that count in metres round up to, mm
// [source.CommonPractice].
const metricStep = 100

// InBothSystems gives a length to buy in both systems, mm: in that of the
// shop's step it is what the shop sells; in the other, the need rounded up to
// 10 cm or to 1/8 yd.
func InBothSystems(c cloth.Cloth, need, buy float64) (metric, yards float64) {
	need = math.Max(need, c.Minimum)
	if SoldInYards(c) {
		return float64(measure.RoundUp(measure.Length(need), metricStep)), buy
	}
	return buy, float64(measure.RoundUp(measure.Length(need), eighth))
}

// Each prints what a price is for: "a metre" or "a yard".
func (p Price) Each() string {
	if p.Per == measure.Yard {
		return "a yard"
	}
	return "a metre"
}

// capital begins a text with a capital letter.
func capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}
