package straightcut

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Measures of the body. A shape needs only some of them; a bag needs none.
type Measures struct {
	Bust, Waist, Hip, NeckBase, Shoulder float64
	ScyeDepth, ShoulderToWrist, UpperArm float64
}

// Block is a straight-cut garment as drafted.
type Block struct {
	Pieces   []pieces.Piece
	Sheets   []construct.Sheet
	Pairings []construct.Pairing
	Warnings []construct.Sentence
}

// figures are the lengths that a shape is drawn from.
type figures struct {
	Measures
	Options
	name string
}

// named gives the edges of a rectangle their names, from the bottom
// counter-clockwise; those that are hems fold up.
func named(piece pieces.Piece, hems map[seams.Name]bool, names ...seams.Name) pieces.Piece {
	for i := range piece.Edges {
		piece.Edges[i].Name, piece.Edges[i].Hem = names[i], hems[names[i]]
	}
	return piece
}

// strip is a rectangle that is folded double along its length, so many times
// the finished width wide.
func strip(name string, length, finished float64, cut int) pieces.Piece {
	piece := pieces.Rectangle(name, 2*finished, length)
	piece.Cut = cut
	piece.Marks = []pieces.Mark{{Name: marks.FoldLine,
		Path: construct.Line(orb.Point{finished, 0}, orb.Point{finished, length})}}
	return piece
}

// rectangleSheet is the draft of a rectangle.
func rectangleSheet(name string, width, height float64, widthRule, heightRule string) construct.Sheet {
	s := construct.Sheet{Piece: name}
	corner := s.Start(0, 0, "the lower left corner")
	right := s.Right(corner, width, widthRule)
	up := s.Up(corner, height, heightRule)
	s.Draw("complete the rectangle "+construct.Numbers(corner, right, up), "")
	return s
}

// fuller is the fuller of bust and hip.
func (f figures) fuller() float64 { return max(f.Bust, f.Hip) }
