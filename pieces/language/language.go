// Package language says sentences in the language of a reader: each stands in all
// languages side by side, where it is made, and is worded where people read it.
package language

import (
	"golang.org/x/text/language"
	"golang.org/x/text/message"
)

// Language of a reader.
type Language int

// The languages.
const (
	English Language = iota
	German
	count
)

var tags = [count]language.Tag{English: language.English, German: language.German}

// Of a tag by BCP 47, such as "de"; English where nothing is said in that language.
func Of(tag string) Language {
	for l, known := range tags {
		if known.String() == tag {
			return Language(l)
		}
	}
	return English
}

// All languages.
func All() []Language { return []Language{English, German} }

// String is the tag of the language by BCP 47.
func (l Language) String() string { return tags[l].String() }

// printer writes numbers in the way of the language.
func (l Language) printer() *message.Printer { return message.NewPrinter(tags[l]) }
