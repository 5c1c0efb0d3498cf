package strict

import (
	"unicode/utf8"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
)

// withinEntries says whether a list is no longer than it may be; a longer one is
// not looked into.
func (s *shape) withinEntries(path Path, line, entries int) bool {
	most, known := s.form.Lists[path[len(path)-1].Key]
	if !known {
		most = limit.List
	}
	if err := most.Check(s.place(path), entries); err != nil {
		s.note(path, line, OutOfRange, language.OfError(err))
		return false
	}
	return true
}

// withinText refuses a text that is longer than it may be.
func (s *shape) withinText(path Path, line int, text string) {
	most := limit.Text
	for _, step := range path {
		if s.form.Paragraphs[step.Key] {
			most = limit.Paragraph
		}
	}
	if err := most.Check(s.place(path), utf8.RuneCountInString(text)); err != nil {
		s.note(path, line, OutOfRange, language.OfError(err))
	}
}
