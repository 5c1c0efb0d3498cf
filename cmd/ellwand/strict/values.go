package strict

import (
	"strconv"
	"strings"

	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Values reads the values of a file from their texts, and notes every fault on the
// way. What names a value in a fault: "the width".
type Values struct {
	// Unit of numbers that are written without one.
	Unit measure.Unit
	// Note takes a fault of the value at a path.
	Note func(path Path, kind Kind, said language.Sentence)
}

// Fault notes a fault of the value at a path.
func (v Values) Fault(path Path, kind Kind, english, german string, args ...any) {
	v.Note(path, kind, language.Say(english, german, args...))
}

// Signed parses a length, which may be negative, mm.
func (v Values) Signed(path Path, what language.Sentence, text Measure) (float64, bool) {
	value, err := measure.Parse(string(text), v.Unit)
	if err != nil {
		v.Fault(path, Malformed, "%s: %s", "%s: %s", what, err)
		return 0, false
	}
	return float64(value), true
}

// Length parses a length that may be zero, mm.
func (v Values) Length(path Path, what language.Sentence, text Measure) (float64, bool) {
	value, ok := v.Signed(path, what, text)
	if ok && value < 0 {
		v.Fault(path, OutOfRange, "%s is %s; it cannot be negative",
			"%s: %s geht nicht; es kann nicht negativ sein", what, text)
		return 0, false
	}
	return value, ok
}

// Positive parses a length above zero, mm.
func (v Values) Positive(path Path, what language.Sentence, text Measure) (float64, bool) {
	if text == "" {
		v.Fault(path, Missing, "%s is missing; measure it and add it", "%s fehlt; messen Sie nach", what)
		return 0, false
	}
	value, ok := v.Length(path, what, text)
	if ok && value == 0 {
		v.Fault(path, OutOfRange, "%s is 0; it must be above 0", "%s ist 0; es muss mehr als 0 sein", what)
		return 0, false
	}
	return value, ok
}

// MostCount of anything that one file may ask for; more is a slip of the keyboard
// [source.OwnChoice].
const MostCount = 10_000

// Count parses a whole number from 1; an empty one is 1.
func (v Values) Count(path Path, what language.Sentence, text Count) int {
	if text == "" {
		return 1
	}
	n, err := strconv.Atoi(string(text))
	if err != nil || n < 1 || n > MostCount {
		v.Fault(path, OutOfRange, "%s is %q; it must be a whole number from 1 to %d",
			"%s: %q geht nicht; es muss eine ganze Zahl von 1 bis %d sein", what, string(text), MostCount)
		return 1
	}
	return n
}

// Yes parses true, false, yes or no; an empty one is no.
func (v Values) Yes(path Path, what language.Sentence, text YesNo) bool {
	switch strings.ToLower(string(text)) {
	case "true", "yes":
		return true
	case "false", "no", "":
		return false
	}
	v.Fault(path, Malformed, "%s is %q; write yes or no",
		"%s: %q geht nicht; schreiben Sie yes (ja) oder no (nein)", what, string(text))
	return false
}

// Choose reads a word; an empty one is the usual value.
func Choose[T interface {
	~int
	Worded
}](v Values, path Path, what language.Sentence, chosen Choice[T]) T {
	at, unknown := Chosen(what, string(chosen), WordsOf[T]())
	if !unknown.IsEmpty() {
		v.Note(path, Unknown, unknown)
	}
	return T(at)
}
