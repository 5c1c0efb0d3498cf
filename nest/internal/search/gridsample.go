package search

import (
	"math"
	"slices"
)

const (
	// gridSamples is about the number of spots that grid sampling evaluates in each
	// turn.
	gridSamples = 600
	// gridPieces is the number of pieces on the stretch of strip that is sampled, so
	// that it takes no longer in large sets.
	gridPieces = 50
	// gridTurns is the number of a piece's turns that are sampled.
	gridTurns = 2
	// gridKept is how many of the cheapest spots are evaluated exactly.
	gridKept = 8
)

// sampleGrid evaluates spots all over a stretch of the strip at once, on a coarse
// grid whose origin is random, for piece i in some of its turns. It returns the
// cheapest that are no dearer than the spots beside them, cheapest first, or
// false where some no-fit region has no table yet.
func (s *state) sampleGrid(i int) ([]candidate, bool) {
	kept := s.scratch.candidates[:0]
	shapes := s.m.Pieces[i].Shapes
	from, looked := s.rng.IntN(len(shapes)), 0
	for k := range shapes {
		shape := shapes[(from+k)%len(shapes)]
		if !s.allowed(i, shape) || !s.fits(i, shape) {
			continue
		}
		var ok bool
		if kept, ok = s.sampleTurn(i, shape, kept); !ok {
			return nil, false
		}
		if looked++; looked == gridTurns {
			break
		}
	}
	s.scratch.candidates = kept
	return kept, true
}

// sampleTurn adds the cheapest spots in one turn.
func (s *state) sampleTurn(i, shape int, kept []candidate) ([]candidate, bool) {
	x, y := s.spans(i, shape)
	if !s.evaluateGrid(i, shape, x, y) {
		return kept, false
	}
	f := &s.scratch.field
	for k, cost := range f.Costs {
		if len(kept) == gridKept && cost >= kept[gridKept-1].cost || f.Undercut(k) {
			continue
		}
		at := Spot{
			Shape: shape,
			X:     x.snap(f.X + float64(float64(k%f.NX)*f.StepX)),
			Y:     y.snap(f.Y + float64(float64(k/f.NX)*f.StepY)),
		}
		kept = keepCheapest(kept, candidate{at, cost})
	}
	return kept, true
}

// evaluateGrid fills the field with what a stretch of the strip costs piece i in one
// turn.
func (s *state) evaluateGrid(i, shape int, x, y span) bool {
	length, width := float64((x.high-x.low)*min(1, gridPieces/float64(s.pieces))), y.high-y.low
	left := x.low - length + float64(s.rng.Float64()*(x.high-x.low+length))
	left = max(x.low, min(x.high-length, left)) // or the ends would be seen less
	near := s.gather(i, shape, left+length/2, y.low+width/2, max(length, width)/2, s.scratch.near[:0])
	s.scratch.near = near
	if slices.ContainsFunc(near, func(v neighbour) bool { return !v.pair.view.Ready() }) {
		return false
	}
	f := &s.scratch.field
	f.Reset(gridOf(length, width))
	f.StepX, f.StepY = length/float64(f.NX), width/float64(f.NY)
	f.X, f.Y = left+float64(s.rng.Float64()*f.StepX), y.low+float64(s.rng.Float64()*f.StepY)
	for k := range near {
		v := &near[k]
		v.pair.view.AddTo(f, v.x, v.y, v.factor)
	}
	return true
}

// gridOf returns how many columns and rows of about square cells a stretch is
// divided into.
func gridOf(length, width float64) (columns, rows int) {
	if length <= 0 {
		return 1, gridSamples
	}
	columns = int(max(1, min(gridSamples, math.Round(math.Sqrt(gridSamples*length/max(width, length/gridSamples))))))
	return columns, max(1, gridSamples/columns)
}

// keepCheapest inserts a place where it belongs among the cheapest.
func keepCheapest(kept []candidate, p candidate) []candidate {
	if len(kept) < gridKept {
		kept = append(kept, p)
	}
	k := len(kept) - 1
	for ; k > 0 && kept[k-1].cost > p.cost; k-- {
		kept[k] = kept[k-1]
	}
	kept[k] = p
	return kept
}
