// Package failure tells the faults of the program from those of what its user
// wrote.
package failure

import "errors"

// Failure is an error that the user's input is not to blame for.
type Failure struct{ Cause error }

// Of marks an error as a fault of the program; nil stays nil.
func Of(err error) error {
	if err == nil {
		return nil
	}
	return &Failure{Cause: err}
}

// Error says so before the cause.
func (f *Failure) Error() string {
	return "ellwand failed, and not by anything you wrote: " + f.Cause.Error()
}

// Unwrap returns the cause.
func (f *Failure) Unwrap() error { return f.Cause }

// Is reports whether an error, or one that it wraps, is a fault of the program.
func Is(err error) bool {
	var failed *Failure
	return errors.As(err, &failed)
}
