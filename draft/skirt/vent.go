package skirt

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The vent, in mm: 4 cm wide, its upper end slanting up to the centre back
// [source.CommonPractice], and as high as a quarter of the length, 20 cm at most
// [source.OwnChoice].
const (
	ventWidth   = 40
	ventHighest = 200
	ventSlope   = 20
)

// vent grows a vent on to the centre back edge of a back piece.
func (f figures) vent(s *construct.Sheet, piece pieces.Piece) pieces.Piece {
	height := min(f.Length/4, ventHighest)
	top := orb.Point{0, height - f.Length}
	shoulder := orb.Point{-ventWidth, top[1] - ventSlope}
	foot := orb.Point{-ventWidth, -f.Length}

	s.Draw("on the centre back, {} above the hem, draw a vent {} wide to the left, its top slanting down by {}",
		"a quarter of the length, 20 cm at most", height, ventWidth, ventSlope)
	hem := &piece.Edges[0]
	hem.Path = construct.Join(construct.Line(foot, hem.Path.Start()), hem.Path)
	last := len(piece.Edges) - 1
	piece.Edges[last].Path = construct.Line(piece.Edges[last].Path.Start(), top)
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.VentTop, construct.Line(top, shoulder)),
		construct.Edge(seams.VentEdge, construct.Line(shoulder, foot)))
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.VentFold,
		Path: construct.Line(orb.Point{0, -f.Length}, top)})
	return piece
}
