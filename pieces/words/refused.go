package words

import (
	"errors"

	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/linework"
)

// Refused is an error about pieces in words for people: their faults, and those of the
// drawings that they stand in, as sentences, a line each, everything else as it is. It
// unwraps to the error; nil stays nil.
func Refused(err error) error {
	if err == nil {
		return nil
	}
	return refused{err, language.Join("\n", lines(err)...)}
}

// refused is an error and what people read of it.
type refused struct {
	error
	said language.Sentence
}

func (r refused) Error() string { return r.said.String() }

// Said is that in every language.
func (r refused) Said() language.Sentence { return r.said }

func (r refused) Unwrap() error { return r.error }

// lines of an error, one for each of several that were joined.
func lines(err error) []language.Sentence {
	switch one := err.(type) {
	case pieces.Fault:
		return []language.Sentence{language.Join(": ", About(one), Faulty(one))}
	case *linework.Fault:
		return []language.Sentence{InDrawing(one)}
	case interface{ Unwrap() []error }:
		if err.Error() != errors.Join(one.Unwrap()...).Error() {
			break
		}
		var out []language.Sentence
		for _, each := range one.Unwrap() {
			out = append(out, lines(each)...)
		}
		return out
	}
	return []language.Sentence{language.OfError(err)}
}
