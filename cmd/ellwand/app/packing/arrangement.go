package packing

import (
	"github.com/paulmach/orb"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
)

const (
	// gap between two pieces, mm: room for scissors, and for what outlines
	// lose when they are straightened.
	gap = 6.0
	// mostColumns of sheets beside each other: more are no fun to join.
	mostColumns = 10
)

// try is one way of joining sheets: so many beside each other.
type try struct {
	paper   paper.Paper
	columns int
}

// Arrangement is how figures were packed, to be kept: where each lies, and how the sheets
// are joined.
type Arrangement struct {
	// Turned says that the paper lies on its side; Columns of sheets are beside each other.
	Turned  bool
	Columns int
	// Placements of the figures, in their order.
	Placements []layout.Placement
}

// problem of laying items on a strip so many sheets wide.
func (t try) problem(items []layout.Item) layout.Problem {
	width, _ := t.paper.Cell()
	out := layout.Problem{Width: width * float64(t.columns), Gap: gap, Items: items}
	if across, down := sheet.PanelRoom(t.paper); across > 0 {
		out.Zones = []orb.Ring{{{0, 0}, {down, 0}, {down, across}, {0, across}, {0, 0}}}
	}
	return out
}

// laidOut brings placements on the strip to figures on the plane.
func (t try) laidOut(figures []sheet.DrawnPiece, problem layout.Problem, placed []layout.Placement) sheet.Layout {
	out := sheet.Layout{Paper: t.paper}
	for _, at := range placed {
		turn := problem.Items[at.Item].Turns[at.Turn]
		m := pieces.Turn(turn.Degrees).Then(pieces.Move(at.X, at.Y)).Then(ontoPlane)
		out.Figures = append(out.Figures, figures[at.Item].Map(m))
	}
	return out
}

// again packs figures as they were packed before. It reports false where that is no
// packing of these figures: everything is verified as if it were new.
func (a Arrangement) again(figures []sheet.DrawnPiece, items []layout.Item,
	sheetPaper paper.Paper) (sheet.Layout, bool) {
	t := try{paper: sheetPaper, columns: a.Columns}
	if a.Turned {
		t.paper = sheetPaper.Turned()
	}
	if a.Columns < 1 || a.Columns > mostColumns || len(a.Placements) != len(items) {
		return sheet.Layout{}, false
	}
	problem := t.problem(items)
	laid := layout.Layout{Placements: a.Placements}
	for _, at := range a.Placements {
		if at.Item < 0 || at.Item >= len(items) || at.Turn < 0 || at.Turn >= len(items[at.Item].Turns) {
			return sheet.Layout{}, false
		}
		laid.Length = max(laid.Length, problem.Placed(at).Bound().Max[0])
	}
	if verify.Layout(problem, laid) != nil {
		return sheet.Layout{}, false
	}
	return t.laidOut(figures, problem, a.Placements), true
}

// ontoPlane turns the strip, x along it and y up, onto the plane, where it
// runs down: the strip's x becomes y down, its y becomes x. That is a quarter
// turn to the eye, no mirror image, since y runs down on the plane.
var ontoPlane = pieces.Motion{B: 1, C: 1}
