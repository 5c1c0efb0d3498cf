package language

import (
	"strings"

	"golang.org/x/text/feature/plural"
)

// Counted is so many of something: its words for one, and for several, in which %[1]d
// stands for the number.
type Counted struct {
	N            int
	One, Several Sentence
}

// In words the number in a language, by its plurals.
func (c Counted) In(l Language) string {
	form := plural.Cardinal.MatchPlural(tags[l], c.N, 0, 0, 0, 0)
	words := c.Several.words
	if form == plural.One {
		words = c.One.words
	}
	if !strings.Contains(words[l], "%") {
		return words[l]
	}
	return Say(words[English], words[German], c.N).In(l)
}

// String is the number in English.
func (c Counted) String() string { return c.In(English) }
