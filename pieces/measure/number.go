package measure

import (
	"math/big"
	"regexp"
	"strings"
)

// longest length that is read, mm: 109,375 yd, some 100 km, more than any mill
// weaves in one (our own choice). It is printed with no more digits than are
// read, and being a whole number of the steps of every unit, none below it is
// rounded up beyond it.
const longest = 109_375 * 914.4

func parseUnsigned(text string) (*big.Rat, *Fault) {
	if text == "" {
		return nil, &Fault{Of: NoNumber}
	}
	if ends := rangeForm.FindStringSubmatch(text); ends != nil {
		return nil, &Fault{Of: IsRange, Part: text, Other: ends[1]}
	}
	if groupedForm.MatchString(text) {
		return nil, &Fault{Of: Grouped, Part: text, Other: strings.Replace(text, ",", "", 1),
			Decimal: strings.Replace(text, ",", ".", 1)}
	}
	if decimalForm.MatchString(text) {
		value, _ := new(big.Rat).SetString("0" + strings.Replace(text, ",", ".", 1))
		return value, nil
	}
	parts := fractionForm.FindStringSubmatch(text)
	if parts == nil {
		return nil, &Fault{Of: NotANumber, Part: text}
	}
	return parseFraction(parts[1], parts[2], parts[3])
}

// parseFraction takes digits; whole may be empty.
func parseFraction(whole, above, below string) (*big.Rat, *Fault) {
	denominator, _ := new(big.Int).SetString(below, 10)
	if denominator.Sign() == 0 {
		return nil, &Fault{Of: DividesByZero, Part: above + "/" + below}
	}
	numerator, _ := new(big.Int).SetString(above, 10)
	value := new(big.Rat).SetFrac(numerator, denominator)
	if whole == "" {
		return value, nil
	}
	if value.Cmp(big.NewRat(1, 1)) >= 0 {
		return nil, &Fault{Of: NotBelowOne, Part: above + "/" + below}
	}
	units, _ := new(big.Rat).SetString(whole)
	return value.Add(value, units), nil
}

// The forms of a number. Up to nine digits on each side is more than any
// cloth needs.
var (
	decimalForm  = regexp.MustCompile(`^(\d{1,9})(?:[.,](\d{1,9}))?$|^[.,](\d{1,9})$`)
	fractionForm = regexp.MustCompile(`^(?:(\d{1,9})[ -])?(\d{1,9}) ?/ ?(\d{1,9})$`)
	// groupedForm may mean thousands or thousandths.
	groupedForm = regexp.MustCompile(`^[1-9]\d{0,2},\d{3}$`)
	// rangeForm is how shops and charts give widths: 58-60, 1.40 to 1.50.
	rangeForm = regexp.MustCompile(`^(\d{1,9}(?:[.,]\d{1,9})?) ?(?:-|to) ?\d{1,9}(?:[.,]\d{1,9})?$`)
	// feetForm is feet alone or with inches.
	feetForm = regexp.MustCompile(`(?i)^(-?)([\d.,/ ]*\d) ?(?:'|′|’|ft\.?|foot|feet) ?` +
		`(?:(\d[\d.,/ -]*?) ?(?:"|″|”|''|′′|in\.?|inch|inches)?)?$`)
)
