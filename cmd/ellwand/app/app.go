// Package app has the use cases of the program: draft, estimate, marker,
// remnant, table, compare, quote, print and convert. Each takes a resolved job
// with what is asked of it, and returns values; nothing here knows of flags,
// screens or files. The commands and whatever else shows the program to people
// call the same functions.
//
// Lengths are millimetres. A cancelled context ends a search, which then
// returns the best that it has.
package app

import (
	"context"
	"errors"
	"fmt"
	"time"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/nest"
)

// Search says how much work goes into looking for layouts, and from where. What it
// finds depends on it and on the job alone, as long as the context lets it finish.
type Search struct {
	// Effort of each lay.
	Effort plan.Effort
	// Passes, when not 0, are made in each search in place of the effort.
	Passes int
	// Seed of the search: another one may find another layout.
	Seed uint64
	// Workers is the number of cores to use; 0 is all of them.
	Workers int
	// From are layouts that somebody brings in, as layoutfile.Read gives them: verified
	// like any other, and used where they are shorter.
	From []lay.Plan
	// Fix names pieces and garments that stay where they lie in a layout brought in.
	Fix []string
	// Anew searches again, and keeps nothing of what is found.
	Anew bool
}

// options of a search for layouts, with tables of outlines of its own.
func (s Search) options() plan.Options {
	return plan.Options{
		Effort: s.Effort, Passes: s.Passes, Seed: s.Seed, Workers: s.Workers, Tables: plan.NewTables(),
	}
}

// passes of a search with that many of the usual effort.
func (s Search) passes(usual int) int {
	if s.Passes > 0 {
		return s.Passes
	}
	return s.Effort.Of(usual)
}

// ended says how far searches got that began at a time.
func (s Search) ended(ctx context.Context, work plan.Work, begun time.Time) plan.Ended {
	of := "the " + s.Effort.String() + " effort"
	if s.Passes > 0 {
		of = "its passes"
	}
	return plan.Ended{Early: ctx.Err() != nil, Work: work, Of: of, After: time.Since(begun)}
}

// Watch is told how the work goes. Every field may be nil; none is called by
// two goroutines at once.
type Watch struct {
	// Found is told each better layout of a lay.
	Found func(c cloth.Cloth, kind lay.Kind, progress nest.Progress)
	// Better is told each better layout of a lay of one part, which it may have as a plan,
	// proven like any other; false when that is none.
	Better func(c cloth.Cloth, kind lay.Kind, plan func() (lay.Plan, bool))
	// Counted is told how many of several searches are over.
	Counted func(over, all int, elapsed time.Duration)
	// Trying is told what is tried next to make a remnant enough, in words.
	Trying func(what string)
}

// ReadJob reads a job file and drafts its pieces.
func ReadJob(ctx context.Context, path string) (*job.Work, error) {
	file, err := job.Read(path)
	if err != nil {
		return nil, err
	}
	return file.Within(ctx).Resolve()
}

// clothError says which cloth an error is about, and sets apart those that are
// the program's own fault.
func clothError(work *job.Work, c cloth.Cloth, err error) error {
	err = blamed(err)
	return fmt.Errorf("%s: cloth %q, %s wide: %w", work.AtCloth(c.Name), c.Name, work.Format(c.Width), err)
}

// Units in which the client of a job reads lengths.
func Units(work *job.Work) quote.Units { return quote.Units{Inches: work.InInches()} }

// blamed marks what failed its check as a fault of the program.
func blamed(err error) error {
	if errors.Is(err, plan.ErrInternal) || errors.Is(err, nest.ErrUnverified) {
		return failure.Of(err)
	}
	return err
}
