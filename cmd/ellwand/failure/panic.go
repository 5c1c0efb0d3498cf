package failure

import (
	"errors"
	"fmt"
	"runtime/debug"
)

// Panic is a fault of the program that it did not foresee.
type Panic struct {
	value any
	stack []byte
}

// Caught makes an error of what recover returned, in the deferred function that
// called it; nil stays nil.
func Caught(value any) error {
	if value == nil {
		return nil
	}
	return Of(&Panic{value: value, stack: debug.Stack()})
}

// Error says no more than that it happened: what it was is of no use to whom it
// happened to.
func (p *Panic) Error() string { return "it came to a place from which it does not know how to go on" }

// Details are for whoever mends the program.
func (p *Panic) Details() string { return fmt.Sprintf("%v\n\n%s", p.value, p.stack) }

// DetailsOf an error that a panic is behind; empty when none is.
func DetailsOf(err error) string {
	var unforeseen *Panic
	if !errors.As(err, &unforeseen) {
		return ""
	}
	return unforeseen.Details()
}
