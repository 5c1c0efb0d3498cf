package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// A pocket bag in a side seam, in mm [source.CommonPractice].
const (
	bagBeyond = 20 // it reaches beyond both ends of the opening
	bagWidth  = 130
	bagRound  = 0.75 // fullness of its lower end
)

// BagOn draws a pocket bag from the side seam that it is sewn to, so that it
// matches. The seam runs upwards; the pocket begins so far below its upper end
// and is open for a length. Both in mm.
func BagOn(seam pieces.Path, name string, below, open float64) pieces.Piece {
	length := seam.Length()
	side := construct.Stretch(seam, length-below-open-bagBeyond, length-below+bagBeyond)
	top := construct.Go(side.End(), orb.Point{-1, 0}, bagWidth)
	low := orb.Point{top[0], side.Start()[1] - bagBeyond}
	bottom := construct.Curve(low, orb.Point{0, -1}, bagRound, side.Start(), side[0].Tangent(0), bagRound)
	edge := construct.Join(construct.Line(top, low), construct.Parted(bottom))
	x := top[0] + bagWidth/3
	return pieces.Piece{
		Name: name, Cut: 4, Pair: true,
		Edges: []pieces.Edge{construct.Edge(seams.PocketSide, side),
			construct.Edge(seams.PocketTop, construct.Line(side.End(), top)), construct.Edge(seams.PocketEdge, edge)},
		Grain: pieces.Grain{From: orb.Point{x, low[1]}, To: orb.Point{x, top[1] - bagBeyond}},
		Notches: []pieces.Notch{
			{Edge: seams.PocketSide, At: bagBeyond, Count: 1, Match: marks.PocketEnd},
			{Edge: seams.PocketSide, At: bagBeyond + open, Count: 1, Match: marks.PocketTop},
		},
	}
}

// OpenPocket notches the ends of such an opening on an edge of a piece.
func OpenPocket(piece pieces.Piece, edge seams.Name, below, open float64) pieces.Piece {
	seam, _ := piece.Edge(edge)
	length := seam.Path.Length()
	piece.Notches = append(append([]pieces.Notch{}, piece.Notches...),
		pieces.Notch{Edge: edge, At: length - below - open, Count: 1, Match: marks.PocketEnd},
		pieces.Notch{Edge: edge, At: length - below, Count: 1, Match: marks.PocketTop})
	return piece
}

// BagSheet is the draft of a pocket bag by hand; the seam is named in words.
func BagSheet(name, seam string, below, open float64) construct.Sheet {
	s := construct.Sheet{Piece: name}
	s.Draw("trace the "+seam+" of the front from {} below the waist down to {} below it, and notch it {} from either "+
		"end", "the opening and 2 cm beyond both its ends", below-bagBeyond, below+open+bagBeyond, bagBeyond)
	s.Draw("from its upper end draw level to the left by {}, from there straight down to {} below its lower end, and "+
		"round the bottom off", "room for a hand", bagWidth, bagBeyond)
	return s
}
