package measure

import (
	"fmt"
	"math"
	"math/big"
	"regexp"
	"strings"
)

// expected ends every error about a length.
const expected = `write a number and a unit (mm, cm, m, in, ft or yd), such as "41.5 cm", "1.35 m", "16 3/8 in" or "2 1/8 yd"`

// longest length that is read, mm: 109,375 yd, some 100 km, more than any mill
// weaves in one (our own choice). It is printed with no more digits than are
// read, and being a whole number of the steps of every unit, none below it is
// rounded up beyond it.
const longest = 109_375 * 914.4

// mostRunes is the longest text that is read as a length.
const mostRunes = 40

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
// inches), with or without a space; or feet and inches (5'5", 5 ft 5 1/2 in). Without a unit it is in the default unit.
// A minus sign is read, for the caller to judge. The value is the float64
// nearest to what is written: 1 in is exactly 25.4 mm.
//
// An error says what is wrong with the text and what was expected.
func Parse(text string, defaultUnit Unit) (Length, error) {
	if len([]rune(text)) > mostRunes {
		return 0, fmt.Errorf("%q... is too long for a length: %s", string([]rune(text)[:mostRunes]), expected)
	}
	plain := strings.Join(strings.Fields(tidy.Replace(text)), " ")
	if plain == "" {
		return 0, fmt.Errorf("the length is missing: %s", expected)
	}
	if feet := feetForm.FindStringSubmatch(plain); feet != nil {
		return parseFeet(text, feet)
	}
	number, name := splitUnit(plain)
	unit := defaultUnit
	if name != "" {
		named, ok := unitNamed(name)
		if !ok {
			return 0, fmt.Errorf("%q is not a length: %q is not a unit; %s", text, name, expected)
		}
		unit = named
	}
	value, err := parseNumber(number)
	if err != nil {
		return 0, fmt.Errorf("%q is not a length: %w", text, err)
	}
	mm, _ := value.Mul(value, big.NewRat(unit.tenths(), 10)).Float64()
	if math.Abs(mm) > longest {
		return 0, fmt.Errorf("%q is not a length: it is longer than 100 km; %s", text, expected)
	}
	return Length(mm), nil
}

// ParseUnit reads the name of a unit: mm, cm, m, in or yd, or its name in
// full, in small or capital letters.
func ParseUnit(text string) (Unit, error) {
	unit, ok := unitNamed(strings.TrimSpace(text))
	if !ok {
		return 0, fmt.Errorf("%q is not a unit of length: write mm, cm, m, in or yd", text)
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
func parseNumber(text string) (*big.Rat, error) {
	digits, negative := strings.CutPrefix(text, "-")
	digits = strings.TrimSpace(digits)
	value, err := parseUnsigned(digits)
	if err != nil {
		return nil, err
	}
	if negative {
		value.Neg(value)
	}
	return value, nil
}

func parseUnsigned(text string) (*big.Rat, error) {
	if text == "" {
		return nil, fmt.Errorf("it has no number; %s", expected)
	}
	if ends := rangeForm.FindStringSubmatch(text); ends != nil {
		return nil, fmt.Errorf("%q is a range; write one figure, of a cloth's width the smaller: %s", text, ends[1])
	}
	if groupedForm.MatchString(text) {
		return nil, fmt.Errorf("%q could be %s or %s; write it without the comma or with a decimal point",
			text, strings.Replace(text, ",", "", 1), strings.Replace(text, ",", ".", 1))
	}
	if decimalForm.MatchString(text) {
		value, _ := new(big.Rat).SetString("0" + strings.Replace(text, ",", ".", 1))
		return value, nil
	}
	parts := fractionForm.FindStringSubmatch(text)
	if parts == nil {
		return nil, fmt.Errorf("%q is not a number; %s", text, expected)
	}
	return parseFraction(parts[1], parts[2], parts[3])
}

// parseFraction takes digits; whole may be empty.
func parseFraction(whole, above, below string) (*big.Rat, error) {
	denominator, _ := new(big.Int).SetString(below, 10)
	if denominator.Sign() == 0 {
		return nil, fmt.Errorf("the fraction %s/%s divides by nothing; %s", above, below, expected)
	}
	numerator, _ := new(big.Int).SetString(above, 10)
	value := new(big.Rat).SetFrac(numerator, denominator)
	if whole == "" {
		return value, nil
	}
	if value.Cmp(big.NewRat(1, 1)) >= 0 {
		return nil, fmt.Errorf("the fraction %s/%s after a whole number must be less than 1; %s", above, below, expected)
	}
	units, _ := new(big.Rat).SetString(whole)
	return value.Add(value, units), nil
}
