package words

import (
	"slices"

	"ellwand/pieces/language"
)

// Shared are sentences that several may share, pieces or lays: each is said once, after
// the names of all, in the order in which they came.
type Shared struct {
	sentences []language.Sentence
	names     map[string][]language.Sentence
}

// Add says a sentence of one that is named so; an empty name is none.
func (s *Shared) Add(name, sentence language.Sentence) {
	key := sentence.String()
	if s.names == nil {
		s.names = map[string][]language.Sentence{}
	}
	if s.names[key] == nil {
		s.sentences = append(s.sentences, sentence)
	}
	same := func(other language.Sentence) bool { return other.String() == name.String() }
	if !slices.ContainsFunc(s.names[key], same) {
		s.names[key] = append(s.names[key], name)
	}
}

// Lines are a line for each sentence.
func (s *Shared) Lines() []language.Sentence {
	out := make([]language.Sentence, len(s.sentences))
	for i, sentence := range s.sentences {
		out[i] = sentence
		names := language.Join(", ", s.names[sentence.String()]...)
		if names.String() != "" {
			out[i] = language.Join(": ", names, sentence)
		}
	}
	return out
}
