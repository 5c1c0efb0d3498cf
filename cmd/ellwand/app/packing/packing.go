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
	"ellwand/pieces"
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
}

const (
	// gap between two pieces, mm: room for scissors, and for what outlines
	// lose below.
	gap = 6.0
	// coarse is how far, mm, an outline may be straightened for the search.
	coarse = 1.0
	// mostColumns of sheets beside each other: more are no fun to join.
	mostColumns = 10
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
func Pack(ctx context.Context, figures []sheet.Figure, paper paper.Paper, options Options) (sheet.Layout, error) {
	if err := paper.Check(); err != nil {
		return sheet.Layout{}, err
	}
	if len(figures) == 0 {
		return sheet.Layout{}, fmt.Errorf("there is no piece to print")
	}
	items := itemsOf(figures)
	tries := triesOf(items, paper)
	best, fewest, shortest := sheet.Layout{}, math.MaxInt, math.Inf(1)
	var fault error
	for _, try := range tries {
		found, length, err := try.pack(ctx, figures, items, options)
		if err != nil {
			fault = err
			continue
		}
		plane, tiling := found.Plane()
		if n := tiling.Sheets(plane); n < fewest || n == fewest && length < shortest {
			best, fewest, shortest = found, n, length
		}
	}
	if len(best.Figures) == 0 {
		return best, fmt.Errorf("the pieces cannot be laid on paper of %s x %s: %w", paper.Say(paper.Width),
			paper.Say(paper.Height), fault)
	}
	return best, nil
}

// itemsOf gives each figure its outline, in which all its sizes lie.
func itemsOf(figures []sheet.Figure) []layout.Item {
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

// try is one way of joining sheets: so many beside each other.
type try struct {
	paper   paper.Paper
	columns int
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
func (t try) pack(ctx context.Context, figures []sheet.Figure, items []layout.Item, options Options) (sheet.Layout, float64, error) {
	width, _ := t.paper.Cell()
	problem := layout.Problem{Width: width * float64(t.columns), Gap: gap, Items: items}
	if across, down := sheet.PanelRoom(t.paper); across > 0 {
		problem.Zones = []orb.Ring{{{0, 0}, {down, 0}, {down, across}, {0, across}, {0, 0}}}
	}
	result, err := nest.Solve(ctx, problem,
		nest.Options{Passes: options.Passes, Seed: options.Seed, Workers: options.Workers})
	if err != nil {
		return sheet.Layout{}, 0, err
	}
	if options.Counted != nil {
		made := options.Passes
		if ctx.Err() != nil {
			made = min(made, result.TotalPasses/2) // each of the two searches
		}
		options.Counted(options.Passes, made)
	}
	if err := verify.Layout(problem, result.Layout); err != nil {
		return sheet.Layout{}, 0, errors.Join(nest.ErrUnverified, err)
	}
	out := sheet.Layout{Paper: t.paper}
	for _, at := range result.Layout.Placements {
		turn := problem.Items[at.Item].Turns[at.Turn]
		m := pieces.Turn(turn.Degrees).Then(pieces.Move(at.X, at.Y)).Then(ontoPlane)
		out.Figures = append(out.Figures, figures[at.Item].Map(m))
	}
	return out, result.Layout.Length, nil
}

// ontoPlane turns the strip, x along it and y up, onto the plane, where it
// runs down: the strip's x becomes y down, its y becomes x. That is a quarter
// turn to the eye, no mirror image, since y runs down on the plane.
var ontoPlane = pieces.Motion{B: 1, C: 1}
