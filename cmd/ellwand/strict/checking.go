package strict

import "ellwand/pieces/language"

// shape compares the nodes of a file with the types that it is read into: every key
// known, every value of the right kind. It notes the line of every value by its
// path, for what is said of it later.
type shape struct {
	form   Form
	faults *Faults
	lines  Lines
}

// place names a path for a reader.
func (s *shape) place(path Path) language.Sentence { return path.Place(s.form.Whole) }

// fault notes a fault at a line.
func (s *shape) fault(path Path, line int, kind Kind, english, german string, args ...any) {
	s.note(path, line, kind, language.Say(english, german, args...))
}

func (s *shape) note(path Path, line int, kind Kind, said language.Sentence) {
	s.faults.List = append(s.faults.List, Fault{Path: path, Line: line, Kind: kind, Said: said})
}
