package construct

import (
	"regexp"
	"strconv"
	"strings"

	"ellwand/draft/subject"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Length is a length in mm among the words of a Sentence.
type Length float64

// String words the length in cm: "41.5 cm".
func (l Length) String() string { return l.In(measure.Centimetre) }

// In words the length as people of a unit say the size of a piece: in cm to
// the millimetre, or in inches to the nearest 1/16.
func (l Length) In(unit measure.Unit) string {
	return unit.System().Size(float64(l))
}

// Sentence is text about lengths that can be worded in any unit.
type Sentence struct {
	english, german string
	args            []any
}

// Say makes a sentence by the rules of fmt.Sprintf. Lengths in mm are given as
// Length, for %s; fixed lengths may stand in the format: "2 to 4 cm". What is said so is
// for paper, which is in English.
func Say(format string, args ...any) Sentence { return Both(format, format, args...) }

// Both makes a sentence that stands in every language.
func Both(english, german string, args ...any) Sentence { return Sentence{english, german, args} }

// String words the sentence in cm.
func (s Sentence) String() string { return s.In(measure.Centimetre) }

// In words the sentence in a unit, in English.
func (s Sentence) In(unit measure.Unit) string { return s.Said(unit).String() }

// Said is the sentence with its lengths in a unit.
func (s Sentence) Said(unit measure.Unit) language.Sentence {
	args := make([]any, len(s.args))
	for i, arg := range s.args {
		switch one := arg.(type) {
		case Sentence:
			args[i] = one.Said(unit)
		case interface{ In(measure.Unit) string }:
			args[i] = one.In(unit)
		default:
			args[i] = arg
		}
	}
	return language.Say(reworded(s.english, unit), reworded(s.german, unit), args...)
}

// Refusal is the error of a draft that cannot be. Its sentence can be worded
// in any unit.
type Refusal struct {
	Sentence
	// Subjects are what it is about, the likeliest slip first; none when it is
	// about the block as a whole.
	Subjects []subject.Subject
}

// Error words the sentence in cm.
func (r Refusal) Error() string { return r.String() }

// Refuse makes a Refusal by the rules of Both.
func Refuse(english, german string, args ...any) error {
	return About().Refuse(english, german, args...)
}

// Subjects are what a refusal is about, the likeliest slip first.
type Subjects []subject.Subject

// About begins a refusal.
func About(subjects ...subject.Subject) Subjects { return subjects }

// Refuse makes a Refusal about the subjects by the rules of Both.
func (s Subjects) Refuse(english, german string, args ...any) error {
	return Refusal{Both(english, german, args...), s}
}

// fixedLength is a length, or two with a word between, in fixed words.
var fixedLength = regexp.MustCompile(`([0-9]+(?:[.,][0-9]+)?)(?:( to | bis )([0-9]+(?:[.,][0-9]+)?))? (mm|cm|m)\b`)

// reworded words the fixed lengths of a text in inches, where the unit asks
// for them; they are exact, so that nothing is rounded twice.
func reworded(text string, unit measure.Unit) string {
	if unit.System() == measure.Metric {
		return text
	}
	return fixedLength.ReplaceAllStringFunc(text, func(found string) string {
		parts := fixedLength.FindStringSubmatch(found)
		size := map[string]float64{"mm": 1, "cm": 10, "m": 1000}[parts[4]]
		inches := func(number string) string {
			value, _ := strconv.ParseFloat(strings.Replace(number, ",", ".", 1), 64)
			return Length(value * size).In(unit)
		}
		if parts[3] == "" {
			return inches(parts[1])
		}
		return strings.TrimSuffix(inches(parts[1]), " in") + parts[2] + inches(parts[3])
	})
}
