package measure

import "ellwand/pieces/language"

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
	Grouped        Defect = "grouped"         // Part: as thousands Other, or Decimal
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
	// Part of it that the defect is about, Other that belongs to that, and Decimal, how
	// else it may be meant.
	Part, Other, Decimal string
}

// Error says what is wrong, and what was expected.
func (f *Fault) Error() string { return f.Said().String() }

// Said is that in every language.
func (f *Fault) Said() language.Sentence {
	said := sentences[f.Of](f)
	if f.Text != "" {
		said = language.Say("%q is not a length: %s", "%q ist keine Länge: %s", f.Text, said)
	}
	return said
}

// of a text that was given.
func (f *Fault) of(text string) *Fault {
	f.Text = text
	return f
}

// expected ends every sentence about a length.
var expected = language.Say(`write a number and a unit (mm, cm, m, in, ft or yd), such as "41.5 cm", "1.35 m", `+
	`"16 3/8 in" or "2 1/8 yd"`, "schreiben Sie eine Zahl und eine Einheit (mm, cm, m, in, ft oder yd), etwa „41,5 cm“, "+
	"„1,35 m“, „16 3/8 in“ oder „2 1/8 yd“")

// sentences of the defects, one for each.
var sentences = map[Defect]func(f *Fault) language.Sentence{
	TooLong:    ofPart("%q... is too long for a length: %s", "%q… ist zu lang für eine Länge: %s"),
	Missing:    ofNone("the length is missing: %s", "die Länge fehlt: %s"),
	NoUnit:     ofPart("%q is not a unit; %s", "%q ist keine Einheit; %s"),
	NoNumber:   ofNone("it has no number; %s", "es fehlt die Zahl; %s"),
	NotANumber: ofPart("%q is not a number; %s", "%q ist keine Zahl; %s"),
	NotOneUnit: func(f *Fault) language.Sentence {
		return language.Say("%q is not a unit of length: write mm, cm, m, in or yd",
			"%q ist keine Längeneinheit: schreiben Sie mm, cm, m, in oder yd", f.Part)
	},
	IsRange: func(f *Fault) language.Sentence {
		return language.Say("%q is a range; write one figure, of a cloth's width the smaller: %s",
			"%q ist ein Bereich; schreiben Sie nur eine Zahl, bei einer Stoffbreite die kleinere: %s", f.Part, f.Other)
	},
	Grouped: func(f *Fault) language.Sentence {
		return language.Say("%q could be %s or %s; write it without the comma or with a decimal point",
			"%q könnte %s oder %s heißen; schreiben Sie es ohne Tausenderzeichen", f.Part, f.Other,
			f.Decimal)
	},
	DividesByZero: ofPart("the fraction %s divides by nothing; %s", "der Bruch %s teilt durch null; %s"),
	NotBelowOne: ofPart("the fraction %s after a whole number must be less than 1; %s",
		"der Bruch %s hinter einer ganzen Zahl muss kleiner als 1 sein; %s"),
	FeetNotWhole: ofNone("the feet before inches must be a whole number; %s", "vor Zoll stehen nur ganze Fuß; %s"),
	InchesPastFoot: func(*Fault) language.Sentence {
		return language.Say("a foot has 12 inches; write the inches after it below 12",
			"ein Fuß hat 12 Zoll; danach stehen weniger als 12")
	},
	Longest: ofNone("it is longer than 100 km; %s", "das ist länger als 100 km; %s"),
}

// ofPart is a sentence about a part of the text, and what was expected.
func ofPart(english, german string) func(f *Fault) language.Sentence {
	return func(f *Fault) language.Sentence { return language.Say(english, german, f.Part, expected) }
}

// ofNone is a sentence with what was expected alone.
func ofNone(english, german string) func(f *Fault) language.Sentence {
	return func(*Fault) language.Sentence { return language.Say(english, german, expected) }
}
