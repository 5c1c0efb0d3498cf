package desk

import (
	"errors"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// Reading is what a text of a job says.
type Reading struct {
	// Work is nil where there are faults.
	Work   *job.Work
	Faults []job.Fault
}

// read a text as the job of that path. What nobody foresaw is a fault as well, so that
// the text stays at hand.
func read(path string, text []byte) (out Reading) {
	defer func() {
		if caught := failure.Caught(recover()); caught != nil {
			out = Reading{Faults: []job.Fault{{Said: language.OfError(caught)}}}
		}
	}()
	if err := limit.JobSize.Check(language.Say("this text", "dieser Text"), len(text)); err != nil {
		return faulty(err)
	}
	file, err := job.Parse(path, text)
	if err != nil {
		return faulty(err)
	}
	work, err := file.Resolve()
	if err != nil {
		return faulty(err)
	}
	return Reading{Work: work}
}

func faulty(err error) Reading {
	var faults *job.Faults
	if errors.As(err, &faults) {
		return Reading{Faults: faults.List}
	}
	return Reading{Faults: []job.Fault{{Said: language.OfError(err)}}}
}

// againstValue is what speaks against a value by itself: a fault of the value at the path
// or of one below it. What it only does not go with may be what is changed next.
func (r Reading) againstValue(path strict.Path) *job.Fault {
	for _, fault := range r.Faults {
		if !isWithin(fault.Path, path) {
			continue
		}
		switch fault.Kind {
		case strict.WrongShape, strict.Unknown, strict.Malformed, strict.OutOfRange, strict.Missing, strict.Twice:
			return &fault
		}
	}
	return nil
}

// isWithin says that a path is another one or lies below it.
func isWithin(path, above strict.Path) bool {
	if len(path) < len(above) {
		return false
	}
	for i, step := range above {
		if path[i] != step {
			return false
		}
	}
	return true
}
