package words

import (
	"slices"
	"strings"
)

// Shared are sentences that several may share, pieces or lays: each is said once, after
// the names of all, in the order in which they came.
type Shared struct {
	sentences []string
	names     map[string][]string
}

// Add says a sentence of one that is named so; an empty name is none.
func (s *Shared) Add(name, sentence string) {
	if s.names == nil {
		s.names = map[string][]string{}
	}
	if s.names[sentence] == nil {
		s.sentences = append(s.sentences, sentence)
	}
	if !slices.Contains(s.names[sentence], name) {
		s.names[sentence] = append(s.names[sentence], name)
	}
}

// Lines are a line for each sentence.
func (s *Shared) Lines() []string {
	out := make([]string, len(s.sentences))
	for i, sentence := range s.sentences {
		out[i] = sentence
		if names := strings.Join(s.names[sentence], ", "); names != "" {
			out[i] = names + ": " + sentence
		}
	}
	return out
}
