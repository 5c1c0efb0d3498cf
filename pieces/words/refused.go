package words

import (
	"errors"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// Refused is an error about pieces in words for people: their faults, and those of the
// drawings that they stand in, as sentences, a line each, everything else as it is. It
// unwraps to the error; nil stays nil.
func Refused(err error) error {
	if err == nil {
		return nil
	}
	return refused{err, strings.Join(lines(err), "\n")}
}

// refused is an error and what people read of it.
type refused struct {
	error
	text string
}

func (r refused) Error() string { return r.text }

func (r refused) Unwrap() error { return r.error }

// lines of an error, one for each of several that were joined.
func lines(err error) []string {
	switch one := err.(type) {
	case pieces.Fault:
		return []string{About(one) + ": " + Faulty(one)}
	case *linework.Fault:
		return []string{InDrawing(one)}
	case interface{ Unwrap() []error }:
		if err.Error() != errors.Join(one.Unwrap()...).Error() {
			break
		}
		var out []string
		for _, each := range one.Unwrap() {
			out = append(out, lines(each)...)
		}
		return out
	}
	return []string{err.Error()}
}
