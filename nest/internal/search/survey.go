package search

import (
	"math"
	"slices"
)

const (
	// surveyPlaces is about the number of places that a survey judges in each
	// turn.
	surveyPlaces = 600
	// surveyPieces is the number of pieces on the stretch of strip that it
	// covers, so that it takes no longer in large sets.
	surveyPieces = 50
	// surveyTurns is the number of a piece's turns that it looks at.
	surveyTurns = 2
	// surveyKept is how many of the cheapest places are looked at exactly.
	surveyKept = 8
)

// place is a spot with about what it costs.
type place struct {
	at   Spot
	cost float32
}

// survey judges places all over a stretch of the strip at once, on a coarse
// grid whose origin is random, for piece i in some of its turns. It returns the
// cheapest that are no dearer than the places beside them, cheapest first, or
// false where some no-fit region has no table yet.
func (s *state) survey(i int) ([]place, bool) {
	kept := s.scratch.places[:0]
	shapes := s.m.Pieces[i].Shapes
	from, looked := s.rng.IntN(len(shapes)), 0
	for k := range shapes {
		shape := shapes[(from+k)%len(shapes)]
		if !s.allowed(i, shape) || !s.fits(i, shape) {
			continue
		}
		var ok bool
		if kept, ok = s.surveyTurn(i, shape, kept); !ok {
			return nil, false
		}
		if looked++; looked == surveyTurns {
			break
		}
	}
	s.scratch.places = kept
	return kept, true
}

// surveyTurn adds the cheapest places in one turn.
func (s *state) surveyTurn(i, shape int, kept []place) ([]place, bool) {
	x, y := s.spans(i, shape)
	if !s.judge(i, shape, x, y) {
		return kept, false
	}
	f := &s.scratch.field
	for k, cost := range f.Costs {
		if len(kept) == surveyKept && cost >= kept[surveyKept-1].cost || f.Undercut(k) {
			continue
		}
		at := Spot{Shape: shape, X: x.snap(f.X + float64(k%f.NX)*f.StepX), Y: y.snap(f.Y + float64(k/f.NX)*f.StepY)}
		kept = keepCheapest(kept, place{at, cost})
	}
	return kept, true
}

// judge fills the field with what a stretch of the strip costs piece i in one
// turn.
func (s *state) judge(i, shape int, x, y span) bool {
	length, width := (x.high-x.low)*min(1, surveyPieces/float64(s.pieces)), y.high-y.low
	left := x.low - length + s.rng.Float64()*(x.high-x.low+length)
	left = max(x.low, min(x.high-length, left)) // or the ends would be seen less
	near := s.gather(i, shape, left+length/2, y.low+width/2, max(length, width)/2, s.scratch.near[:0])
	s.scratch.near = near
	if slices.ContainsFunc(near, func(v neighbour) bool { return !v.meeting.view.Known() }) {
		return false
	}
	f := &s.scratch.field
	f.Reset(gridOf(length, width))
	f.StepX, f.StepY = length/float64(f.NX), width/float64(f.NY)
	f.X, f.Y = left+s.rng.Float64()*f.StepX, y.low+s.rng.Float64()*f.StepY
	for k := range near {
		v := &near[k]
		v.meeting.view.AddTo(f, v.x, v.y, v.factor)
	}
	return true
}

// gridOf returns how many columns and rows of about square cells a stretch is
// divided into.
func gridOf(length, width float64) (columns, rows int) {
	if length <= 0 {
		return 1, surveyPlaces
	}
	columns = int(max(1, min(surveyPlaces, math.Round(math.Sqrt(surveyPlaces*length/max(width, length/surveyPlaces))))))
	return columns, max(1, surveyPlaces/columns)
}

// keepCheapest inserts a place where it belongs among the cheapest.
func keepCheapest(kept []place, p place) []place {
	if len(kept) < surveyKept {
		kept = append(kept, p)
	}
	k := len(kept) - 1
	for ; k > 0 && kept[k-1].cost > p.cost; k-- {
		kept[k] = kept[k-1]
	}
	kept[k] = p
	return kept
}
