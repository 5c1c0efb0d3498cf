package job

import (
	"context"
	"errors"
	"fmt"
)

// Ended says that drafting was ended before it was done.
type Ended struct {
	File string
	// Drafted garments, each for each wearer, of All.
	Drafted, All int
	// Cause is the error of the context: that it was cancelled, or its time over.
	Cause error
}

// Error says how far it came, and what to do.
func (e *Ended) Error() string {
	why, what := "you ended it", "start it again for an answer"
	if errors.Is(e.Cause, context.DeadlineExceeded) {
		why, what = "the time that you gave was over", "give it more time, or fewer wearers at once"
	}
	return fmt.Sprintf("%s: %s before there was any answer, when %d of %d garments were drafted; nothing was laid and "+
		"nothing written; %s", e.File, why, e.Drafted, e.All, what)
}

// Unwrap gives the cause.
func (e *Ended) Unwrap() error { return e.Cause }

// Within gives the job as one whose drafting ends, with an Ended, when the context does.
// A first garment is drafted all the same: it takes milliseconds.
func (f *File) Within(ctx context.Context) *File {
	out := *f
	out.ctx = ctx
	return &out
}
