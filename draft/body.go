package draft

import (
	"math"
	"slices"
	"strings"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces/language"
)

// limits are what a measurement of a body can be, of a child of a metre or a
// grown body, in mm: wide enough for any body, narrow enough to catch a slip of
// the unit [source.CommonPractice].
var limits = []struct {
	name        Measurement
	least, most float64
}{
	{Height, 850, 2200},
	{BustGirth, 480, 1800},
	{WaistGirth, 400, 1800},
	{HipGirth, 500, 2000},
	{NeckBaseGirth, 220, 600},
	{BackNeckPointToWaist, 200, 560},
	{ShoulderLength, 70, 200},
	{AcrossBackWidth, 190, 620},
	{AcrossFrontWidth, 180, 640},
	{ScyeDepth, 110, 340},
	{ShoulderToWrist, 290, 780},
	{UpperArmGirth, 140, 600},
	{WristGirth, 100, 280},
	{WaistToHip, 95, 320},
	{BodyRise, 150, 420},
	{InsideLegLength, 350, 1050},
	{OutsideLegLength, 500, 1350},
}

// Measurements lists every measurement that a body may have.
func Measurements() []Measurement {
	names := make([]Measurement, len(limits))
	for i, l := range limits {
		names[i] = l.name
	}
	return names
}

// ParseMeasurement reads a measurement's name; hyphens and underscores stand
// for spaces, capitals do not matter.
func ParseMeasurement(text string) (Measurement, error) {
	plain := strings.NewReplacer("_", " ", "-", " ").Replace(strings.ToLower(strings.TrimSpace(text)))
	if name := Measurement(plain); slices.Contains(Measurements(), name) {
		return name, nil
	}
	return "", language.Refuse("%q is no body measurement that is known here; use one of: %s",
		"%q ist kein Körpermaß, das hier bekannt ist; es gibt: %s", text, joined(Measurements()))
}

// Body holds the measurements of one body, in mm.
type Body map[Measurement]float64

// Get returns a measurement and whether the body has it.
func (b Body) Get(name Measurement) (float64, bool) {
	value, ok := b[name]
	return value, ok
}

// With returns the body with the measurements of another in place of its own:
// a size of a table with what was measured on the client.
func (b Body) With(other Body) Body {
	all := Body{}
	for name, value := range b {
		all[name] = value
	}
	for name, value := range other {
		all[name] = value
	}
	return all
}

// Check refuses a body that cannot be: a measurement that is unknown, is not
// positive or lies outside what a grown body can have, or a waist girth over
// three times the bust girth or under a third of it.
func (b Body) Check() error {
	for name := range b {
		if !slices.Contains(Measurements(), name) {
			_, err := ParseMeasurement(string(name))
			return err
		}
	}
	bust, waist := b[BustGirth], b[WaistGirth]
	if bust > 0 && waist > 3*bust {
		return construct.About(subject.WaistGirth, subject.BustGirth).Refuse(
			"the waist girth of %s is over three times the bust girth of %s: measure both again",
			"der Taillenumfang von %s ist über dreimal der Brustumfang von %s: messen Sie beide noch "+
				"einmal",
			construct.Length(waist), construct.Length(bust))
	}
	if waist > 0 && bust > 3*waist {
		return construct.About(subject.BustGirth, subject.WaistGirth).Refuse(
			"the bust girth of %s is over three times the waist girth of %s: measure both again",
			"der Brustumfang von %s ist über dreimal der Taillenumfang von %s: messen Sie beide noch "+
				"einmal",
			construct.Length(bust), construct.Length(waist))
	}
	for _, l := range limits {
		value, ok := b[l.name]
		switch {
		case !ok:
		case math.IsNaN(value) || math.IsInf(value, 0):
			return construct.About(SubjectOf(l.name)).Refuse("the %s is not a number: give it as a length",
				"%s ist keine Zahl: geben Sie eine Länge an", l.name)
		case value <= 0:
			return construct.About(SubjectOf(l.name)).Refuse("the %s is %s: a body measurement must be more than "+
				"nothing", "%s: %s geht nicht; ein Körpermaß ist mehr als nichts",
				l.name, construct.Length(value))
		case value < l.least || value > l.most:
			return construct.About(SubjectOf(l.name)).Refuse("the %s is %s; between %s and %s is possible: check the "+
				"figure and its unit", "%s: %s geht nicht; möglich sind %s bis %s: prüfen Sie Zahl und Einheit",
				l.name, construct.Length(value), construct.Length(l.least),
				construct.Length(l.most))
		}
	}
	return nil
}

func joined[T ~string](names []T) string {
	words := make([]string, len(names))
	for i, name := range names {
		words[i] = string(name)
	}
	return strings.Join(words, ", ")
}
