package nest

import (
	"context"
	"math"
	"time"

	"ellwand/nest/internal/outline"
	"ellwand/nest/internal/puzzle"
	"ellwand/nest/internal/search"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// puzzleTolerances are tried one after the other, as shares of the width: for outlines
// that are exact, and for those that were rounded when they were written down, whose
// pieces are parted once they are found to belong together.
var puzzleTolerances = []float64{1e-6, 2e-5, 4e-4, 2e-3}

const (
	// puzzleNodes bounds the search for a layout without waste, at each tolerance, with
	// puzzleNodesOfAPiece for each piece: of 100 jigsaws that are not all rectangles none
	// took more than 300, of those that were rounded one took 6,003.
	puzzleNodes         = 2000
	puzzleNodesOfAPiece = 5
	// puzzleMost pieces are tried.
	puzzleMost = 2000
	// puzzleNodesOfAPass bounds all of it under a budget of passes: a node takes a
	// twentieth of a pass over as many pieces.
	puzzleNodesOfAPass = 5
	// puzzleShare of a limit of time goes to it.
	puzzleShare = 0.05
)

// assembled tries to put the pieces together without any waste. What it finds is the
// layout, where it verifies, or else where the search begins.
func (r *run) assembled() bool {
	p, shapes, ok := r.q.asPuzzle()
	if !ok || len(r.q.model.Pieces) > puzzleMost || !r.mayFill(p.Length) {
		return false
	}
	ctx := r.ctx
	if r.limit > 0 {
		var cancel context.CancelFunc
		ctx, cancel = context.WithTimeout(ctx, time.Duration(puzzleShare*float64(r.limit)))
		defer cancel()
	}
	left := r.o.Passes * puzzleNodesOfAPass
	for _, share := range puzzleTolerances {
		nodes := puzzleNodes + puzzleNodesOfAPiece*len(r.q.model.Pieces)
		if r.o.Passes > 0 {
			nodes = min(nodes, left)
			left -= nodes
		}
		if placed, ok := puzzle.Solve(ctx, p, share*r.q.scale, nodes); ok {
			return r.takes(r.q.putTogether(placed, shapes), p.Length)
		}
	}
	return false
}

// takes a layout without waste, or has the searches begin from it when it does not
// verify.
func (r *run) takes(spots []search.Spot, length float64) bool {
	if verify.Layout(r.q.problem, r.q.layout(spots)) == nil {
		r.best = make([]search.Outcome, 1)
		r.offer(0, search.Outcome{Spots: spots, Length: length})
		return true
	}
	r.begins = make([]*search.Spot, len(spots))
	for i := range spots {
		r.begins[i] = &spots[i]
	}
	return false
}

// mayFill reports whether a layout without waste, of that length, is possible and wanted.
func (r *run) mayFill(length float64) bool {
	if sheet := r.q.model.Length; sheet > 0 {
		return length <= sheet && length >= sheet*(1-mostSpare)
	}
	return r.bound <= length*(1+1e-6)
}

// asPuzzle is the problem with outlines that are not simplified, and the shape of the
// model that each of them is; false when anything else than full use is asked.
func (q *prepared) asPuzzle() (p puzzle.Problem, shapes []int, ok bool) {
	m := q.model
	if m.Gap > 0 || len(m.Fixed) > 0 || len(q.sheetX) > 0 || len(q.locked) > 0 {
		return p, nil, false
	}
	area, last := 0.0, -1
	for _, piece := range m.Pieces {
		if piece.Group != 0 || piece.PeriodX > 0 || piece.PeriodY > 0 {
			return p, nil, false
		}
		item := q.problem.Items[piece.Item]
		area += math.Abs(outline.SignedArea(item.Outline))
		if piece.Item == last {
			p.Pieces[len(p.Pieces)-1].Copies++
			continue
		}
		last = piece.Item
		made := puzzle.Piece{Copies: 1}
		for _, k := range piece.Shapes {
			s := &m.Shapes[k]
			if s.Low || s.High {
				return p, nil, false
			}
			if s.Tilt != 0 {
				continue
			}
			turn := item.Turns[s.Turn]
			made.Shapes = append(made.Shapes, len(shapes))
			shapes = append(shapes, k)
			p.Shapes = append(p.Shapes, outline.Clean(layout.Turned(item.Outline, turn.Degrees, turn.Mirrored)))
		}
		p.Pieces = append(p.Pieces, made)
	}
	p.Width, p.Length = m.Width, area/m.Width
	return p, shapes, true
}

// putTogether are the spots of the pieces of the model, whose copies stand in the order
// of the items.
func (q *prepared) putTogether(placed []puzzle.Placed, shapes []int) []search.Spot {
	next := map[int][]search.Spot{}
	for _, at := range placed {
		s := &q.model.Shapes[shapes[at.Shape]]
		next[at.Piece] = append(next[at.Piece], search.Spot{
			Shape: shapes[at.Shape], X: at.X + s.CentreX, Y: at.Y + s.CentreY,
		})
	}
	var spots []search.Spot
	for piece := range len(next) {
		spots = append(spots, next[piece]...)
	}
	return spots
}
