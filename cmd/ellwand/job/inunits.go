package job

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/measure"
)

// Rewritten is a value of a job as it is written in other units.
type Rewritten struct {
	Path Path
	Text string
}

// InUnits are the values of a job that are to be written otherwise when its units change:
// every length without a unit of its own, rounded for people; a price that is for a metre
// or a yard because of the units says so. Value gives the text at a path.
func (f *File) InUnits(to measure.Unit, value func(Path) (string, bool)) ([]Rewritten, error) {
	from, err := measure.ParseUnit(string(f.Units))
	if err != nil {
		return nil, f.Refuse(strict.Top("units"), strict.Malformed, "units: %s", "Einheit: %s", err)
	}
	var out []Rewritten
	add := func(path Path, convert func(text string, from, to measure.Unit) (string, bool)) {
		if text, stands := value(path); stands {
			if now, changed := convert(text, from, to); changed {
				out = append(out, Rewritten{path, now})
			}
		}
	}
	for _, path := range f.lines.Measures() {
		if isHandPlace(path) {
			add(path, withUnit)
			continue
		}
		add(path, converted)
	}
	for i := range f.Cloths {
		at := strict.Top("cloths").Entry(i)
		add(at.Key("hand_laying"), converted)
		add(at.Key("safety"), converted)
		add(at.Key("price"), pricedPer)
		for k := range f.Cloths[i].Offers {
			add(at.Key("offers").Entry(k).Key("price"), pricedPer)
		}
	}
	for i, garment := range f.Garments {
		for k, piece := range garment.Pieces {
			at := strict.Top("garments").Entry(i).Key("pieces").Entry(k).Key("allowance")
			add(at, allowed)
			if piece.Allowance != nil {
				for edge := range piece.Allowance.ByEdge {
					add(at.Key(edge), allowed)
				}
			}
		}
	}
	return out, nil
}

// converted writes a length without a unit in other units; false for anything else.
func converted(text string, from, to measure.Unit) (string, bool) {
	if from == to || strings.ContainsAny(text, "%") || strings.TrimLeft(text, "0123456789.,/ -") != "" {
		return "", false
	}
	mm, err := measure.Parse(text, from)
	if err != nil {
		return "", false
	}
	return rounded(float64(mm), to), true
}

// finer are lengths up to which a tape is read more closely, mm [source.OwnChoice].
const finer = 100

// rounded writes a length as people read it off a tape in a unit: to a millimetre, or an
// eighth of an inch; short ones to half a millimetre, or a sixteenth [source.OwnChoice].
func rounded(mm float64, unit measure.Unit) string {
	if unit == measure.Inch {
		step := measure.Length(25.4 / 8)
		if math.Abs(mm) <= finer {
			step /= 2
		}
		nearest := measure.Length(math.Round(mm/float64(step))) * step
		return strings.TrimSuffix(nearest.Format(measure.Inch), " in")
	}
	step := 1.0
	if math.Abs(mm) <= finer {
		step = 0.5
	}
	mm = math.Round(mm/step) * step
	if unit == measure.Centimetre {
		mm /= 10
	}
	return strconv.FormatFloat(mm, 'f', -1, 64)
}

// allowed converts the length in an allowance: "included 1.5", "add 1", "1.5".
func allowed(text string, from, to measure.Unit) (string, bool) {
	word, length, found := strings.Cut(text, " ")
	if !found || strings.TrimLeft(word, "0123456789.,/") == "" {
		return converted(text, from, to)
	}
	now, changed := converted(length, from, to)
	return word + " " + now, changed
}

// pricedPer says what a price is for, where the new units would make something else of it.
func pricedPer(text string, from, to measure.Unit) (string, bool) {
	if from.System() == to.System() || priceForm.MatchString(text) {
		return "", false
	}
	return text + " per " + perUnit(from.System()), true
}

// perUnit is what cloth is sold by.
func perUnit(system measure.System) string {
	if system == measure.Imperial {
		return measure.Yard.String()
	}
	return measure.Metre.String()
}

// isHandPlace says that a path is where a piece was laid by hand, which is not rounded.
func isHandPlace(path Path) bool {
	return slices.ContainsFunc(path, func(s strict.Step) bool { return s.Key == "laid_by_hand" }) &&
		slices.ContainsFunc(path, func(s strict.Step) bool { return s.Key == "at" || s.Key == "folded_in" })
}

// withUnit writes a length as it is, with its unit.
func withUnit(text string, from, to measure.Unit) (string, bool) {
	if _, bare := converted(text, from, to); !bare {
		return "", false
	}
	return text + " " + from.String(), true
}
