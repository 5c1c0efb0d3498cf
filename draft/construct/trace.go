package construct

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Trace is the draft of a piece that is drawn from its outline: the width and
// height of a rectangle; of any other piece its lowest corner on the left,
// from which Complete sets the others.
func Trace(piece pieces.Piece) Sheet {
	s := Sheet{Piece: piece.Name}
	places := outlinePlaces(piece)
	if !isRectangle(places) {
		return s
	}
	low, high := places[0].at, places[2].at
	corner := s.Start(low[0], low[1], "the lower left corner")
	right, up := s.Right(corner, high[0]-low[0], "the width"), s.Up(corner, high[1]-low[1],
		"the height, along the grain")
	s.Draw("complete the rectangle "+Numbers(corner, right, up), "")
	return s
}

// isRectangle says that the places are the corners of an upright rectangle,
// from the lower left one counter-clockwise.
func isRectangle(c []place) bool {
	return len(c) == 4 && c[0].at[1] == c[1].at[1] && c[1].at[0] == c[2].at[0] && c[2].at[1] == c[3].at[1] &&
		c[3].at[0] == c[0].at[0]
}

// Offset sets a point so far across and up or down from another.
func (s *Sheet) Offset(from Point, at orb.Point, rule string) Point {
	across, up := at[0]-from.X(), at[1]-from.Y()
	// What rounds to nothing is left out [source.OwnChoice].
	const none = 0.5
	side, way := "right", "up"
	if across < 0 {
		side = "left"
	}
	if up < 0 {
		way = "down"
	}
	switch across, up = math.Abs(across), math.Abs(up); {
	case across < none:
		return s.point(from, at, from.text("square "+way+" from %d by {} to")+" %[1]d", rule, up)
	case up < none:
		return s.point(from, at, from.text("square across from %d to the "+side+" by {} to")+" %[1]d", rule, across)
	}
	return s.point(from, at, from.text("square across from %d to the "+side+" by {} and "+way+" by {} to")+" %[1]d",
		rule, across, up)
}
