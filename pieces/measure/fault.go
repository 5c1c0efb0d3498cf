package measure

import (
	"fmt"
	"strings"
)

// Defect is what keeps a text from being a length.
type Defect string

// The defects of a text. Part is what they are about.
const (
	TooLong        Defect = "too long"        // Part is how it begins
	Missing        Defect = "missing"         //
	NoUnit         Defect = "no unit"         // Part
	NotOneUnit     Defect = "not one unit"    // where a unit alone is asked for
	NoNumber       Defect = "no number"       // at all
	NotANumber     Defect = "not a number"    // Part
	IsRange        Defect = "range"           // Part; Other is its lower end
	Grouped        Defect = "grouped"         // Part: thousands or thousandths
	DividesByZero  Defect = "divides by zero" // the fraction Part
	NotBelowOne    Defect = "not below one"   // the fraction Part after a whole number
	FeetNotWhole   Defect = "feet not whole"  // before inches
	InchesPastFoot Defect = "inches past foot"
	Longest        Defect = "longest" // longer than 100 km
)

// Fault is what is wrong with a text that should be a length, or a unit.
type Fault struct {
	Of Defect
	// Text as it was given; empty where a number alone is read.
	Text string
	// Part of it that the defect is about, and Other that belongs to that.
	Part, Other string
}

// Error says what is wrong, and what was expected.
func (f *Fault) Error() string {
	text := sentences[f.Of](f)
	if f.Text != "" {
		text = fmt.Sprintf("%q is not a length: %s", f.Text, text)
	}
	return text
}

// of a text that was given.
func (f *Fault) of(text string) *Fault {
	f.Text = text
	return f
}

// expected ends every sentence about a length.
const expected = `write a number and a unit (mm, cm, m, in, ft or yd), such as "41.5 cm", "1.35 m", ` +
	`"16 3/8 in" or "2 1/8 yd"`

// sentences of the defects, one for each.
var sentences = map[Defect]func(f *Fault) string{
	TooLong: func(f *Fault) string { return fmt.Sprintf("%q... is too long for a length: %s", f.Part, expected) },
	Missing: func(*Fault) string { return "the length is missing: " + expected },
	NoUnit:  func(f *Fault) string { return fmt.Sprintf("%q is not a unit; %s", f.Part, expected) },
	NotOneUnit: func(f *Fault) string {
		return fmt.Sprintf("%q is not a unit of length: write mm, cm, m, in or yd", f.Part)
	},
	NoNumber:   func(*Fault) string { return "it has no number; " + expected },
	NotANumber: func(f *Fault) string { return fmt.Sprintf("%q is not a number; %s", f.Part, expected) },
	IsRange: func(f *Fault) string {
		return fmt.Sprintf("%q is a range; write one figure, of a cloth's width the smaller: %s", f.Part, f.Other)
	},
	Grouped: func(f *Fault) string {
		return fmt.Sprintf("%q could be %s or %s; write it without the comma or with a decimal point", f.Part,
			strings.Replace(f.Part, ",", "", 1), strings.Replace(f.Part, ",", ".", 1))
	},
	DividesByZero: func(f *Fault) string {
		return fmt.Sprintf("the fraction %s divides by nothing; %s", f.Part, expected)
	},
	NotBelowOne: func(f *Fault) string {
		return fmt.Sprintf("the fraction %s after a whole number must be less than 1; %s", f.Part, expected)
	},
	FeetNotWhole:   func(*Fault) string { return "the feet before inches must be a whole number; " + expected },
	InchesPastFoot: func(*Fault) string { return "a foot has 12 inches; write the inches after it below 12" },
	Longest:        func(*Fault) string { return "it is longer than 100 km; " + expected },
}
