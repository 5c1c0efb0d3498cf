package job

import (
	"math"
	"regexp"
	"slices"
	"strings"

	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// questioner looks in a job that can be used for slips that pass: what hardly belongs
// together is asked about, never refused.
type questioner struct {
	file *File
	work *Work
	out  []Question
}

// ask about the value at a path.
func (q *questioner) ask(path Path, english, german string, args ...any) {
	one := Question{Path: path, File: q.file.name, Line: q.file.lines.Of(path),
		Said: language.Say(english, german, args...)}
	known := func(other Question) bool { return other.String() == one.String() }
	if !slices.ContainsFunc(q.out, known) {
		q.out = append(q.out, one)
	}
}

// length that stands in the file; 0 for none.
func (q *questioner) length(text Measure) float64 {
	value, err := measure.Parse(string(text), q.work.Unit)
	if err != nil {
		return 0
	}
	return float64(value)
}

// usual is what a length commonly is, mm.
type usual struct{ least, most float64 }

func (u usual) holds(mm float64) bool { return mm >= u.least && mm <= u.most }

// about is what lies near a length that goes with something else.
func about(mm float64) usual { return usual{0.9 * mm, 1.1 * mm} }

var written = regexp.MustCompile(`^([0-9][0-9 .,/]*?)\s*([a-z"]*)$`)

// meant guesses what was meant by a text: the number in another unit, or with one digit
// changed, that is as usual; of several digits the one that comes nearest to the middle.
// It is empty where there is no such guess.
func (q *questioner) meant(text Measure, u usual) language.Sentence {
	parts := written.FindStringSubmatch(strings.ToLower(string(text)))
	if parts == nil {
		return language.Sentence{}
	}
	unit := q.work.Unit
	if parts[2] != "" {
		named, err := measure.ParseUnit(parts[2])
		if err != nil {
			return language.Sentence{}
		}
		unit = named
	}
	for _, other := range []measure.Unit{measure.Centimetre, measure.Inch, measure.Millimetre} {
		if mm, err := measure.Parse(parts[1], other); err == nil && other != unit && u.holds(float64(mm)) {
			return language.Name(parts[1] + " " + other.String())
		}
	}
	best, nearest := "", math.Inf(1)
	for _, digits := range oneDigitOff(parts[1]) {
		mm, err := measure.Parse(digits, unit)
		if away := math.Abs(float64(mm) - (u.least+u.most)/2); err == nil && u.holds(float64(mm)) && away < nearest {
			best, nearest = digits+" "+unit.String(), away
		}
	}
	if best == "" {
		return language.Sentence{}
	}
	return language.Name(best)
}

// oneDigitOff are the numbers that differ from one in a single digit: another one,
// one more in front, a nought more behind, or one too many.
func oneDigitOff(number string) []string {
	out := []string{number + "0"}
	for i, was := range number {
		if was < '0' || was > '9' {
			continue
		}
		for digit := '0'; digit <= '9'; digit++ {
			if digit != was && !(i == 0 && digit == '0') {
				out = append(out, number[:i]+string(digit)+number[i+1:])
			}
		}
		out = append(out, number[:i]+number[i+1:])
	}
	for digit := '1'; digit <= '9'; digit++ {
		out = append(out, string(digit)+number)
	}
	return out
}

// either says one of several guesses, or the other; nothing where there is none.
func either(guesses []language.Sentence) language.Sentence {
	if len(guesses) == 2 {
		return language.Say("%s, or %s", "%s, oder %s", guesses[0], guesses[1])
	}
	if len(guesses) == 0 {
		return language.Sentence{}
	}
	return guesses[0]
}

// orMeant ends a question with what may have been meant.
func orMeant(guess language.Sentence) language.Sentence {
	if guess.IsEmpty() {
		return language.Say("check the figure and its unit", "prüfen Sie Zahl und Einheit")
	}
	return language.Say("was %s meant?", "ist %s gemeint?", guess)
}
