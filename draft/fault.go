package draft

import (
	"errors"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// Section is a part of a Request.
type Section int

// The sections of a Request.
const (
	WholeRequest Section = iota
	BodiceSection
	SleeveSection
	SkirtSection
	TrousersSection
	StraightCutSection
	PartsSection
	LiningsSection
	InterfacingsSection
	AllowancesSection
)

// Entry is where in a Request something stands.
type Entry struct {
	Section Section
	// Index is the entry of a list: of the parts, linings or interfacings.
	Index int
	// Name is that of an allowance.
	Name string
}

// Fault is the error of a garment that cannot be drafted.
type Fault struct {
	Entry Entry
	// Subjects are what it is about, the likeliest slip first: options of the
	// place, or measurements of the body. None when it is about the whole place.
	Subjects []subject.Subject
	cause    error
}

// Error words the fault in cm; Worded words it in any unit.
func (f *Fault) Error() string { return f.cause.Error() }

// Unwrap returns the refusal.
func (f *Fault) Unwrap() error { return f.cause }

// FaultOf finds the fault in an error of Draft or Body.Check.
func FaultOf(err error) Fault {
	var fault *Fault
	if errors.As(err, &fault) {
		return *fault
	}
	return Fault{Subjects: subjectsOf(err), cause: err}
}

// at says where in a request an error arose; the innermost place counts. Nil
// stays nil.
func at(section Section, err error) error { return atEntry(Entry{Section: section}, err) }

func atEntry(entry Entry, err error) error {
	var known *Fault
	if err == nil || errors.As(err, &known) {
		return err
	}
	return &Fault{Entry: entry, Subjects: subjectsOf(err), cause: err}
}

func subjectsOf(err error) []subject.Subject {
	var refusal construct.Refusal
	errors.As(err, &refusal)
	return refusal.Subjects
}
