package nest

import (
	"time"

	"ellwand/nest/layout"
)

// Options say how long to search and how. The zero value searches for five
// seconds with every core.
type Options struct {
	// Time to search; 0 means 5 s, or no limit when Passes are given.
	Time time.Duration
	// Clock tells the time that Time is measured in; nil is the clock on the wall. A
	// measurement on a busy machine gives that of the processor.
	Clock func() time.Duration
	// Passes of each search at most. With them (and without
	// Time) the result depends on the problem and the seed alone, whatever
	// the number of workers.
	Passes int
	// Patience ends a search of a strip that has stopped paying: when the next gain
	// has not come after so many times the passes that the last took to come. What
	// it found until then it compresses. 0 uses the whole budget.
	Patience float64
	// Enough is a length that will do: a search for the shortest strip ends when
	// it has a layout that is no longer. 0 is none.
	Enough float64
	// Bound is a length that no layout can beat, where it is known already: a search
	// ends there. 0 has it found.
	Bound float64
	// Seed of the random numbers.
	Seed uint64
	// Workers is the number of goroutines; 0 means one a core.
	Workers int
	// Start is a layout to improve on; nil starts from nothing. It may be
	// infeasible; placements of it that are missing are added.
	Start *layout.Layout
	// Locked placements of Start stay where they are: one entry a placement,
	// or nil.
	Locked []bool
	// Tables, when set, are shared with the searches for other problems about the
	// same outlines. They change the time alone, not the result; but tolerances are
	// then shares of the width that they were made for.
	Tables *Tables
	// Progress, when set, is called with each better layout, from one
	// goroutine at a time. It must not keep the search waiting.
	Progress func(Progress)
}

// Progress reports the best layout so far.
type Progress struct {
	Length  float64 // used so far
	Bound   float64 // no layout is shorter
	Elapsed time.Duration
	// Layout of that length, made when it is asked for, which is to be done before
	// Progress returns. It is not verified yet.
	Layout func() layout.Layout
}

// Result is what a search found.
type Result struct {
	// Layout is the best found. It is verified when Fits.
	Layout layout.Layout
	// Fits reports whether everything lies where it may: always true on a
	// strip of open length.
	Fits bool
	// Out lists, when it does not fit, the placements that are out, worst
	// first.
	Out []Excess
	// Bound is a length that no layout can beat (0 on sheets).
	Bound float64
	// TotalPasses are those of all searches together.
	TotalPasses int
	Elapsed     time.Duration
}

// Excess says how far a placement is from being allowed.
type Excess struct {
	Placement int // index into Layout.Placements
	// Depth by which it overlaps others or hangs over the sheet.
	Depth float64
}
