package nest

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/outline"
	"ellwand/nest/internal/search"
	"ellwand/nest/layout"
)

// lockedPlacements collects the locked placements by item and copy.
func (q *prepared) lockedPlacements(start *layout.Layout, locked []bool) map[[2]int]layout.Placement {
	kept := map[[2]int]layout.Placement{}
	if start == nil {
		return kept
	}
	for k, at := range start.Placements {
		if k < len(locked) && locked[k] {
			kept[[2]int{at.Item, at.Copy}] = at
		}
	}
	return kept
}

func (q *prepared) addLocked(at layout.Placement, shapes []int) {
	q.model.Fixed = append(q.model.Fixed, q.spotOf(at, shapes))
	q.locked = append(q.locked, at)
}

// centreOf a placement that is a shape to the search, from its own place. Where it lies in
// a turn that only looks like that of the shape, its origin is another one.
func (q *prepared) centreOf(at layout.Placement, shape int) orb.Point {
	s := &q.model.Shapes[shape]
	if s.Turn == at.Turn {
		return orb.Point{s.CentreX, s.CentreY}
	}
	item := q.problem.Items[at.Item]
	angle, flipX, flipY := item.Turns[at.Turn].Reduced(s.Tilt)
	centre := q.ringOf(item, angle).Bound().Center()
	return orb.Point{float64(flipX * centre[0]), float64(flipY * centre[1])}
}

// spotOf finds the shape nearest to a placement's turn.
func (q *prepared) spotOf(at layout.Placement, shapes []int) search.Spot {
	best := shapes[0]
	least := math.Inf(1)
	turn := q.problem.Items[at.Item].Turns[at.Turn]
	for _, k := range shapes {
		s := &q.model.Shapes[k]
		off := math.Abs(s.Tilt - at.Tilt)
		if s.Turn != at.Turn {
			off += 1000
		}
		// A turn that looks like another is not a shape of its own; the other
		// must at least point the same way.
		if s.Direction != turn.Direction {
			off += 1e6
		}
		if off < least {
			best, least = k, off
		}
	}
	centre := q.centreOf(at, best)
	x, y := at.X+centre[0], at.Y+centre[1]
	if at.Sheet < len(q.sheetX) {
		x, y = x+q.sheetX[at.Sheet], y+q.sheetY[at.Sheet]
	}
	return search.Spot{Shape: best, X: x, Y: y}
}

// startSpots turns the start into spots, one a piece of the model; pieces
// that it does not place are nil.
func (q *prepared) startSpots(start *layout.Layout) []*search.Spot {
	if start == nil {
		return nil
	}
	at := map[[2]int]layout.Placement{}
	for _, p := range start.Placements {
		at[[2]int{p.Item, p.Copy}] = p
	}
	spots := make([]*search.Spot, len(q.model.Pieces))
	for i, piece := range q.model.Pieces {
		if p, ok := at[[2]int{piece.Item, piece.Copy}]; ok && len(piece.Shapes) > 0 {
			spot := q.spotOf(p, piece.Shapes)
			spots[i] = &spot
		}
	}
	return spots
}

// layout turns spots back into placements.
func (q *prepared) layout(spots []search.Spot) layout.Layout {
	var l layout.Layout
	l.Placements = append(l.Placements, q.locked...)
	for i, spot := range spots {
		s := &q.model.Shapes[spot.Shape]
		piece := q.model.Pieces[i]
		at := layout.Placement{
			Item: piece.Item,
			Copy: piece.Copy,
			Turn: s.Turn,
			Tilt: s.Tilt,
			X:    spot.X - s.CentreX,
			Y:    spot.Y - s.CentreY,
		}
		at.Sheet = q.sheetAt(spot.X)
		if len(q.sheetX) > 0 {
			at.X, at.Y = at.X-q.sheetX[at.Sheet], at.Y-q.sheetY[at.Sheet]
		}
		l.Placements = append(l.Placements, at)
	}
	if len(q.sheetX) == 0 {
		l.Length = used(q.problem, l.Placements)
	}
	return l
}

// sheetAt returns the sheet that holds the x of the model's strip.
func (q *prepared) sheetAt(x float64) int {
	for k := len(q.sheetX) - 1; k > 0; k-- {
		lo, _ := outline.Bounds(q.problem.Sheets[k][0])
		if x >= q.sheetX[k]+lo[0] {
			return k
		}
	}
	return 0
}

// used is the largest x of the placed outlines.
func used(p layout.Problem, placements []layout.Placement) float64 {
	most := 0.0
	for _, at := range placements {
		for _, q := range p.Placed(at) {
			most = math.Max(most, q[0])
		}
	}
	return most
}
