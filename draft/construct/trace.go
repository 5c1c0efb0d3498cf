package construct

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Trace is the draft of a piece that is drawn from its outline: a step for
// every corner, from the lowest one on the left round to the right, and one
// for every dart.
func Trace(piece pieces.Piece) Sheet {
	s := Sheet{Piece: piece.Name}
	corners := turned(corners(piece))
	if len(corners) == 0 {
		return s
	}
	if isRectangle(corners) {
		width, height := corners[2].at[0]-corners[0].at[0], corners[2].at[1]-corners[0].at[1]
		corner := s.Start(corners[0].at[0], corners[0].at[1], "the lower left corner")
		right, up := s.Right(corner, width, "the width"), s.Up(corner, height, "the height, along the grain")
		s.Draw("complete the rectangle "+Numbers(corner, right, up), "")
		return s
	}
	last := s.Start(corners[0].at[0], corners[0].at[1], "the lower left corner")
	first := last
	for _, c := range corners[1:] {
		last = s.Offset(last, c.at, "the end of the "+c.before)
	}
	s.Draw("draw the "+corners[0].before+" "+Numbers(last, first)+", and the outline "+Numbers(s.Points...), "")
	for _, d := range piece.Darts {
		s.traceDart(d)
	}
	return s
}

// Offset sets a point so far across and up or down from another.
func (s *Sheet) Offset(from Point, at orb.Point, rule string) Point {
	across, up := at[0]-from.X(), at[1]-from.Y()
	const none = 0.05
	switch {
	case math.Abs(across) < none && up > 0:
		return s.Up(from, up, rule)
	case math.Abs(across) < none:
		return s.Down(from, -up, rule)
	case math.Abs(up) < none && across > 0:
		return s.Right(from, across, rule)
	case math.Abs(up) < none:
		return s.Left(from, -across, rule)
	}
	side, way := "right", "up"
	if across < 0 {
		side = "left"
	}
	if up < 0 {
		way = "down"
	}
	return s.point(from, at, from.text("square across from %d to the "+side+" by {} and "+way+" by {} to")+" %[1]d", rule, math.Abs(across), math.Abs(up))
}

func isRectangle(c []outlineCorner) bool {
	return len(c) == 4 && c[0].at[1] == c[1].at[1] && c[1].at[0] == c[2].at[0] && c[2].at[1] == c[3].at[1] && c[3].at[0] == c[0].at[0]
}

func (s *Sheet) traceDart(d pieces.Dart) {
	if d.Mouth == "" || len(s.Points) == 0 {
		return
	}
	corner := s.Points[0]
	start := s.Offset(corner, d.Start, "a leg of the "+d.Name)
	end := s.Offset(start, d.End, "its other leg")
	apex := s.Offset(corner, d.Apex, "its point")
	s.Draw("draw the "+d.Name+" "+Numbers(start, apex, end), "")
}

// outlineCorner is where two stretches of an outline meet; before names the
// edge that ends there.
type outlineCorner struct {
	at     orb.Point
	before string
}

// corners of the outline, the mouths of darts left out.
func corners(piece pieces.Piece) []outlineCorner {
	mouths := map[string]bool{}
	for _, d := range piece.Darts {
		mouths[d.Mouth] = true
	}
	var out []outlineCorner
	for _, edge := range piece.Edges {
		if mouths[edge.Name] {
			continue
		}
		for _, curve := range edge.Path {
			out = append(out, outlineCorner{curve.End(), edge.Name})
		}
	}
	return out
}

// turned begins with the lowest corner on the left.
func turned(list []outlineCorner) []outlineCorner {
	begin := 0
	for i, c := range list {
		if c.at[0]+c.at[1] < list[begin].at[0]+list[begin].at[1]-1e-6 {
			begin = i
		}
	}
	return append(list[begin:len(list):len(list)], list[:begin]...)
}
