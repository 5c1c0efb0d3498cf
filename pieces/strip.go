package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// Strip is a piece that is a rectangle of one length throughout, such as a waistband
// before it is folded.
type Strip struct {
	// Length along its longer side, mm.
	Length float64
	// GrainAlong says that the grainline is drawn along that side.
	GrainAlong bool
	piece      Piece
	axis       int // of that side: 0 for x, 1 for y
}

// StripOf a piece; false for one that is no upright rectangle, or half of one.
func StripOf(p Piece) (Strip, bool) {
	if len(p.Edges) != 4 || p.Fold != seams.None || len(p.Darts) > 0 {
		return Strip{}, false
	}
	var sides [2]float64
	for _, e := range p.Edges {
		line, isLine := Curve(nil), false
		if len(e.Path) == 1 {
			line, isLine = e.Path[0], true
		}
		if _, straight := line.(Line); !isLine || !straight {
			return Strip{}, false
		}
		dx, dy := math.Abs(line.End()[0]-line.Start()[0]), math.Abs(line.End()[1]-line.Start()[1])
		if math.Min(dx, dy) > joinTolerance {
			return Strip{}, false
		}
		sides[0], sides[1] = math.Max(sides[0], dx), math.Max(sides[1], dy)
	}
	out := Strip{piece: p}
	if sides[1] > sides[0] {
		out.axis = 1
	}
	out.Length = sides[out.axis]
	along := geometry.Distance(orb.Point{p.Grain.From[out.axis], 0}, orb.Point{p.Grain.To[out.axis], 0})
	out.GrainAlong = along > geometry.Distance(p.Grain.From, p.Grain.To)/2
	return out, true
}

// Joined is the strip cut into equal pieces, one more than the joins, which are sewn to
// each other by the allowances of their ends. Its lines run over each of them; what
// lies at one place of it, such as a notch, is left out.
func (s Strip) Joined(joins int) Piece {
	if joins == 0 {
		return s.piece
	}
	out := s.piece
	shorter := func(q orb.Point) orb.Point {
		q[s.axis] /= float64(joins + 1)
		return q
	}
	out.Cut, out.Edges, out.Marks, out.Notches = s.piece.Cut*(joins+1), nil, nil, nil
	for _, e := range s.piece.Edges {
		line := e.Path[0]
		e.Path = Path{Line{shorter(line.Start()), shorter(line.End())}}
		out.Edges = append(out.Edges, e)
	}
	for _, mark := range s.piece.Marks {
		if len(mark.Path) != 1 {
			continue
		}
		if line, ok := mark.Path[0].(Line); ok && math.Abs(line.To[s.axis]-line.From[s.axis]) > s.Length/2 {
			mark.Path = Path{Line{shorter(line.From), shorter(line.To)}}
			out.Marks = append(out.Marks, mark)
		}
	}
	out.Grain.From, out.Grain.To = shorter(out.Grain.From), shorter(out.Grain.To)
	return out
}
