// Package packing lays full-size pieces on paper so that they take few sheets.
package packing

import (
	"context"
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/simplify"

	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
)

// Options of a packing.
type Options struct {
	// Passes of each search; positive.
	Passes  int
	Seed    uint64
	Workers int
	// Counted, when set, is told after each search how many of its passes were made.
	Counted func(due, made int)
	// Kept is how the same figures were packed before; nil when that is not known. It is
	// taken as it is where it still is a packing of them.
	Kept *Arrangement
	// Found, when set, is told how they are packed where they were searched.
	Found func(Arrangement)
}

const (
	// coarse is how far, mm, an outline may be straightened for the search.
	coarse = 1.0
	// mostTried ways of joining the sheets, for each way that they can lie.
	mostTried = 5
)

// Pack lays the figures, each in its own frame with y up, on sheets of the
// paper, upright or on their side, whichever takes fewer. It returns the
// figures in their places and the paper as it lies. The pieces may be turned
// by quarters, never turned over; they cross from sheet to sheet where that
// saves sheets.
//
// When the context is cancelled it returns the best found so far. It fails
// when the paper is not sound.
func Pack(ctx context.Context, figures []sheet.DrawnPiece, paper paper.Paper, options Options) (sheet.Layout, error) {
	if err := paper.Check(); err != nil {
		return sheet.Layout{}, err
	}
	if len(figures) == 0 {
		return sheet.Layout{}, fmt.Errorf("there is no piece to print")
	}
	items := itemsOf(figures)
	if options.Kept != nil {
		if found, ok := options.Kept.again(figures, items, paper); ok {
			return found, nil
		}
	}
	tries, chosen := triesOf(items, paper), Arrangement{}
	best, fewest, shortest := sheet.Layout{}, math.MaxInt, math.Inf(1)
	var fault error
	for _, try := range tries {
		found, laid, err := try.pack(ctx, figures, items, options)
		if err != nil {
			fault = err
			continue
		}
		plane, tiling := found.Plane()
		if n := tiling.Sheets(plane); n < fewest || n == fewest && laid.Length < shortest {
			best, fewest, shortest = found, n, laid.Length
			chosen = Arrangement{try.paper != paper, try.columns, laid.Placements}
		}
	}
	if len(best.Figures) == 0 {
		return best, fmt.Errorf("the pieces cannot be laid on paper of %s x %s: %w", paper.Say(paper.Width),
			paper.Say(paper.Height), fault)
	}
	if options.Found != nil {
		options.Found(chosen)
	}
	return best, nil
}

// itemsOf gives each figure its outline, in which all its sizes lie.
func itemsOf(figures []sheet.DrawnPiece) []layout.Item {
	quarters := []layout.Turn{{Degrees: 0}, {Degrees: 90}, {Degrees: 180}, {Degrees: 270}}
	var out []layout.Item
	for _, f := range figures {
		out = append(out, layout.Item{Name: f.Label[0], Outline: straightened(f.Around()), Copies: 1, Turns: quarters})
	}
	return out
}

// straightened takes points off an outline, unless it would then cross itself.
func straightened(ring orb.Ring) orb.Ring {
	simple := simplify.DouglasPeucker(coarse).Ring(ring.Clone())
	test := layout.Problem{Width: 1e6,
		Items: []layout.Item{{Name: "outline", Outline: simple, Copies: 1, Turns: []layout.Turn{{}}}}}
	if len(simple) < 4 || test.Check() != nil {
		return ring
	}
	return simple
}

// triesOf lists the ways that are wide enough for the largest piece, up to
// about a square of sheets.
func triesOf(items []layout.Item, sheet paper.Paper) []try {
	var area, widest float64
	for _, item := range items {
		size := item.Outline.Bound()
		width, height := size.Max[0]-size.Min[0], size.Max[1]-size.Min[1]
		area += width * height
		widest = math.Max(widest, math.Min(width, height))
	}
	ways := []paper.Paper{sheet}
	if sheet.Width != sheet.Height {
		ways = append(ways, sheet.Turned())
	}
	var out []try
	for _, way := range ways {
		width, _ := way.Cell()
		least := max(1, int(math.Ceil(widest/width)))
		most := max(least, min(mostColumns, int(math.Ceil(math.Sqrt(2*area)/width))))
		step := (most-least)/mostTried + 1
		for columns := least; columns <= most; columns += step {
			out = append(out, try{way, columns})
		}
	}
	return out
}

// pack lays the figures on a strip so many sheets wide; the strip runs down
// the plane.
func (t try) pack(ctx context.Context, figures []sheet.DrawnPiece, items []layout.Item,
	options Options) (sheet.Layout, layout.Layout, error) {
	problem := t.problem(items)
	result, err := nest.Solve(ctx, problem,
		nest.Options{Passes: options.Passes, Seed: options.Seed, Workers: options.Workers})
	if err != nil {
		return sheet.Layout{}, layout.Layout{}, err
	}
	if options.Counted != nil {
		made := options.Passes
		if ctx.Err() != nil {
			made = min(made, result.TotalPasses/2) // each of the two searches
		}
		options.Counted(options.Passes, made)
	}
	if err := verify.Layout(problem, result.Layout); err != nil {
		return sheet.Layout{}, layout.Layout{}, errors.Join(nest.ErrUnverified, err)
	}
	return t.laidOut(figures, problem, result.Layout.Placements), result.Layout, nil
}
