package main

import (
	"errors"

	"ellwand/cmd/ellwand/failure"
)

// Exit statuses.
const (
	statusDone   = 0
	statusFailed = 1 // a fault of the program: nothing the user wrote is wrong
	statusBad    = 2 // bad input or usage
	statusNo     = 3 // the answer is no
)

// no marks an answer that is no, such as a remnant that does not fit.
type no struct{ answer string }

func (n *no) Error() string { return n.answer }

func statusOf(err error) int {
	var answer *no
	switch {
	case failure.Is(err):
		return statusFailed
	case errors.As(err, &answer):
		return statusNo
	}
	return statusBad
}
