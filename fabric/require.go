package fabric

import (
	"context"
	"errors"
	"time"

	"ellwand/nest"
	"ellwand/pieces"
)

// Options say which lays to try and how long to search. The zero value tries
// every lay for five seconds each.
type Options struct {
	// Lays to try; empty means all.
	Lays []Lay
	// Time to search a lay; 0 means 5 s, or no limit when Iterations is
	// given.
	Time time.Duration
	// Iterations bounds each search, so that the result depends on the job
	// and the seed alone; 0 leaves it to Time.
	Iterations int
	Seed       uint64
	// Workers is the number of goroutines; 0 means one a core.
	Workers int
	// Gap is the least distance between two pieces, mm. Not negative.
	Gap float64
	// Progress, when set, is called with each better layout of a lay.
	Progress func(Lay, nest.Progress)
}

// Requirement is how much of a cloth a set of pieces needs.
type Requirement struct {
	Cloth Cloth
	// Lays that were tried, in the order open, folded along the warp.
	Lays []LayPlan
	// Chosen is an index into Lays: the lay with the least to buy; of equals
	// the folded one, which halves the chalking and the cutting.
	Chosen int
	// Length and Buy of the chosen lay, mm.
	Length, Buy float64
}

// Require finds the length of cloth that all pieces need, in every lay that
// is possible, each solved and verified. Pieces whose Cloth is another one
// must be left out by the caller.
//
// When the context is cancelled it returns the best found so far. It fails,
// with a sentence for the maker, when the cloth or a piece is not sound or
// when no lay is possible.
func Require(ctx context.Context, cloth Cloth, all []pieces.Piece, options Options) (Requirement, error) {
	return Requirement{}, errors.New("not laid")
}
