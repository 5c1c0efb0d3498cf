package measure

import (
	"math"
	"math/big"
	"strings"
)

// mostRunes is the longest text that is read as a length.
const mostRunes = 40

// tidy turns what keyboards and word processors write into the plain forms:
// vulgar fractions into " n/d", the minus sign into a hyphen, hard spaces
// into spaces.
var tidy = strings.NewReplacer(
	"½", " 1/2", "⅓", " 1/3", "⅔", " 2/3", "¼", " 1/4", "¾", " 3/4",
	"⅕", " 1/5", "⅖", " 2/5", "⅗", " 3/5", "⅘", " 4/5", "⅙", " 1/6", "⅚", " 5/6",
	"⅐", " 1/7", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⅑", " 1/9", "⅒", " 1/10",
	"–", "-", "⁄", "/", "∕", "/", "−", "-", "\u00a0", " ", "\u202f", " ", "\u2009", " ",
)

// Parse reads a length: a number, which may be a decimal with a point or a
// comma ("41.5", "41,5") or a fraction ("16 3/8", "16-3/8", "16⅜", "5/8"),
// then a unit (mm, cm, m, in, yd, their names in full, or a double prime for
// inches), with or without a space; or feet and inches (5'5", 5 ft 5 1/2 in).
// Without a unit it is in the default unit. A minus sign is read, for the caller
// to judge. The value is the float64 nearest to what is written: 1 in is exactly
// 25.4 mm.
//
// The error is a *Fault.
func Parse(text string, defaultUnit Unit) (Length, error) {
	if len([]rune(text)) > mostRunes {
		return 0, &Fault{Of: TooLong, Part: string([]rune(text)[:mostRunes])}
	}
	plain := strings.Join(strings.Fields(tidy.Replace(text)), " ")
	if plain == "" {
		return 0, &Fault{Of: Missing}
	}
	if feet := feetForm.FindStringSubmatch(plain); feet != nil {
		return parseFeet(text, feet)
	}
	number, name := splitUnit(plain)
	unit := defaultUnit
	if name != "" {
		named, ok := unitNamed(name)
		if !ok {
			return 0, &Fault{Of: NoUnit, Text: text, Part: name}
		}
		unit = named
	}
	value, fault := parseNumber(number)
	if fault != nil {
		return 0, fault.of(text)
	}
	mm, _ := value.Mul(value, big.NewRat(unit.tenths(), 10)).Float64()
	if math.Abs(mm) > longest {
		return 0, &Fault{Of: Longest, Text: text}
	}
	return Length(mm), nil
}

// ParseUnit reads the name of a unit: mm, cm, m, in or yd, or its name in
// full, in small or capital letters. The error is a *Fault.
func ParseUnit(text string) (Unit, error) {
	unit, ok := unitNamed(strings.TrimSpace(text))
	if !ok {
		return 0, &Fault{Of: NotOneUnit, Part: text}
	}
	return unit, nil
}

// splitUnit divides the text after its last digit.
func splitUnit(text string) (number, unit string) {
	end := strings.LastIndexAny(text, "0123456789")
	return text[:end+1], strings.TrimSpace(text[end+1:])
}

func unitNamed(name string) (Unit, bool) {
	name = strings.ToLower(name)
	for unit, facts := range unitFacts {
		if name == facts.symbol {
			return Unit(unit), true
		}
		for _, other := range facts.names {
			if name == other {
				return Unit(unit), true
			}
		}
	}
	return 0, false
}

// parseNumber reads a signed decimal, fraction or whole number and fraction.
func parseNumber(text string) (*big.Rat, *Fault) {
	digits, negative := strings.CutPrefix(text, "-")
	value, fault := parseUnsigned(strings.TrimSpace(digits))
	if fault == nil && negative {
		value.Neg(value)
	}
	return value, fault
}
