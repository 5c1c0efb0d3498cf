package strict

import (
	"fmt"
)

// shape compares the nodes of a file with the types that it is read into: every key
// known, every value of the right kind. It notes the line of every value by its
// path, for what is said of it later.
type shape struct {
	form   Form
	faults *Faults
	lines  Lines
}

// place names a path for a reader.
func (s *shape) place(path Path) string { return path.Place(s.form.Whole) }

// fault notes a fault at a line.
func (s *shape) fault(path Path, line int, kind Kind, format string, args ...any) {
	s.faults.List = append(s.faults.List, Fault{Path: path, Line: line, Kind: kind, Text: fmt.Sprintf(format, args...)})
}
