package job

import (
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// values reads the values of a job from their texts, and notes every fault on the way.
type values struct{ strict.Values }

// fault notes a fault of the value at a path.
func (v values) fault(path Path, kind strict.Kind, english, german string, args ...any) {
	v.Fault(path, kind, english, german, args...)
}

func quoted(name Text) language.Sentence { return language.Say("%q", "%q", string(name)) }

func texts(list []Text) []string {
	var out []string
	for _, text := range list {
		out = append(out, string(text))
	}
	return out
}

// point parses [along, across].
func (v values) point(path Path, what language.Sentence, pair []Measure) orb.Point {
	if len(pair) != 2 {
		v.fault(path, strict.Malformed, "%s must be two distances, along and across: [40, 30]",
			"%s: das sind zwei Abstände, längs und quer: [40, 30]", what)
		return orb.Point{}
	}
	x, _ := v.length(path, what, pair[0])
	y, _ := v.length(path, what, pair[1])
	return orb.Point{x, y}
}

// span parses [from, to], the second the larger.
func (v values) span(path Path, what language.Sentence, pair []Measure) orb.Point {
	p := v.point(path, what.Its("from and to", "von und bis"), pair)
	if len(pair) == 2 && p[0] >= p[1] {
		v.fault(path, strict.OutOfRange, "%s runs from %s to %s; the second must be the larger",
			"%s geht von %s bis %s; das zweite muss größer sein", what, pair[0], pair[1])
	}
	return p
}

// percent parses "4 %", "4%" or "4" as a share; an empty one is 0.
func (v values) percent(path Path, what language.Sentence, text Text, most float64, usual language.Sentence) float64 {
	if text == "" {
		return 0
	}
	figure := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(string(text)), "%"))
	value, err := strconv.ParseFloat(strings.Replace(figure, ",", ".", 1), 64)
	if err != nil || !(value >= 0 && value <= most) {
		v.fault(path, strict.OutOfRange, "%s is %q; it must be a percentage from 0 to %g (%s)",
			"%s: %q geht nicht; es muss ein Prozentsatz von 0 bis %g sein (%s)", what, string(text), most,
			usual)
		return 0
	}
	return value / 100
}

// length parses a measurement that may be zero; what names it in a fault.
func (v values) length(path Path, what language.Sentence, text Measure) (float64, bool) {
	return v.Values.Length(path, what, text)
}

// positive parses a measurement above zero.
func (v values) positive(path Path, what language.Sentence, text Measure) (float64, bool) {
	return v.Values.Positive(path, what, text)
}

// optional parses a measurement that is 0 when it is not given. One that is
// given as 0 is refused: the draft would take it for its usual value.
func (v values) optional(path Path, what language.Sentence, text Measure) float64 {
	if text == "" {
		return 0
	}
	value, _ := v.positive(path, what, text)
	return value
}

// fullness parses how many times its finished length a piece is gathered
// from; 0 when it is not given.
func (v values) fullness(path Path, what language.Sentence, text Text) float64 {
	if text == "" {
		return 0
	}
	times, err := strconv.ParseFloat(strings.Replace(string(text), ",", ".", 1), 64)
	if err != nil || !(times >= 1 && times <= 10) {
		v.fault(path, strict.OutOfRange,
			"%s: the fullness is %q; it must be a number from 1 to 10 (1.5 to 3 is usual)",
			"%s: die Weite ist %q; sie muss eine Zahl von 1 bis 10 sein (üblich ist 1.5 bis 3)", what,
			string(text))
		return 0
	}
	return times
}

// count parses a whole number from 1; an empty one is 1.
func (v values) count(path Path, what language.Sentence, text Count) int {
	return v.Values.Count(path, what, text)
}

// yes parses true, false, yes or no; an empty one is no.
func (v values) yes(path Path, what language.Sentence, text YesNo) bool {
	return v.Values.Yes(path, what, text)
}

func joined(names []string) string { return strings.Join(names, ", ") }

// optionalCount parses a whole number; 0 when it is not given.
func (v values) optionalCount(path Path, what language.Sentence, text Count) int {
	if text == "" {
		return 0
	}
	return v.count(path, what, text)
}
