package main

import (
	"errors"
	"slices"

	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/strict"
)

// wantsJSON looks at the command line itself: one that is refused may not have
// been read as far as the option.
func wantsJSON(args []string) bool { return slices.Contains(args, "--json") }

// errorDocument is an error as it is printed in place of a document.
func errorDocument(status int, err error) report.Error {
	out := report.Error{Status: status, Message: message(err), Faults: []report.Fault{}}
	var refused *strict.Faults
	if errors.As(err, &refused) {
		for _, fault := range refused.List {
			out.Faults = append(out.Faults,
				report.Fault{File: refused.FileOf(fault), Line: fault.Line, Path: fault.Path.String(),
					Text: fault.Said.String()})
		}
	}
	return out
}
