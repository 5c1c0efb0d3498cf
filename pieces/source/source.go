// Package source is the register of what the drafts and the rules of the cloth
// rest on: handbooks, standards, charts, and what has no one source.
//
// A constant of a draft, of a rule, or of what finds pieces in drawings and photos names its
// entry in its comment, as a link:
//
//	// dartShort is how far before the bust point a dart ends, in mm
//	// [source.CommonPractice].
//
// The comment of a group speaks for all its constants; a constant that rests on
// something else says so beside itself. The size tables name theirs in their
// heads. A test finds a constant that names none, and an entry that nothing
// names. What a program prints about a source is made from its entry.
package source

// Kind of a source.
type Kind int

const (
	// Handbook is a book that teaches the trade.
	Handbook Kind = iota
	// Standard is one that a body has issued under a number.
	Standard
	// Chart is a table of figures in circulation.
	Chart
	// Practice is a rule of the trade that has no one source.
	Practice
	// Choice is a figure that Ellwand's makers have chosen.
	Choice
	// Trial is a figure that Ellwand's makers have measured.
	Trial
	// Mathematics needs nobody's word.
	Mathematics
)

// Source is an entry of the register.
type Source struct {
	Kind Kind
	// Work is the author and the title of a handbook, the number and the title of
	// a standard; for the others, what they are called.
	Work string
	// Edition of a handbook, or "".
	Edition string
	// FromMemory says that the figures were not read from the work but recalled.
	FromMemory bool
}

// String words the source for people: "Bunka Fashion College, Fundamentals of
// Garment Design, 2009, from memory".
func (s Source) String() string {
	words := s.Work
	if s.Edition != "" {
		words += ", " + s.Edition
	}
	if s.FromMemory {
		words += ", from memory"
	}
	return words
}
