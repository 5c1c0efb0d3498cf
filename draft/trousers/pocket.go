package trousers

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The side-seam pocket [source.CommonPractice]: it begins 3 cm below the waist and
// is open for 16 cm.
const (
	pocketBelow = 30
	pocketOpen  = 160
)

// openPocket notches the ends of the opening on the outside leg, the upper one
// so far below its end.
func openPocket(piece pieces.Piece, below float64) pieces.Piece {
	return part.OpenPocket(piece, seams.OutsideLeg, below, pocketOpen)
}

// notchesApart is the length between the pocket notches of an edge.
func notchesApart(piece pieces.Piece, edge seams.Name) float64 {
	var top, end float64
	for _, n := range piece.Notches {
		if n.Edge == edge && n.Match == marks.PocketTop {
			top = n.At
		}
		if n.Edge == edge && n.Match == marks.PocketEnd {
			end = n.At
		}
	}
	return top - end
}

// The patch pocket, in mm: its width is a share of the hip girth, within limits
// [source.OwnChoice].
const (
	patchShare            = 1. / 7
	leastPatch, mostPatch = 120, 170
)

// patchWidth of a patch pocket: a seventh of the hip girth, 12 to 17 cm.
func (f figures) patchWidth() float64 { return max(leastPatch, min(mostPatch, patchShare*f.Hip)) }

// patchPocket is the pocket of each back, its lower edge pointed.
func (f figures) patchPocket() (pieces.Piece, error) {
	made, err := part.Draft(part.Measures{}, part.Options{Kind: part.PatchPocket, Shape: part.Pointed,
		Length: f.patchWidth()})
	if err != nil {
		return pieces.Piece{}, err
	}
	pocket := made.Pieces[0]
	pocket.Cut = 2
	return pocket, nil
}

func (f figures) patchPocketSheet() construct.Sheet {
	s := construct.Sheet{Piece: "patch pocket"}
	w := f.patchWidth()
	corner := s.Start(0, 0, "the lower left corner")
	s.Right(corner, w, "a seventh of the hip girth, 12 to 17 cm")
	s.Up(corner, w+15, "1.5 cm more than the width")
	s.Draw("complete the rectangle, and raise its two lower corners by {}, so that it ends in a point",
		"three twentieths of the width", 0.15*w)
	return s
}

// placePocket marks where the patch pocket's upper edge lies on the back.
func (f figures) placePocket(piece pieces.Piece, h half) pieces.Piece {
	y := float64(-backDart*f.WaistToHip) + 10
	left, right := h.centre.Start()[0], h.outsideLeg.End()[0]
	middle := (left+right)/2 + 5
	w := f.patchWidth()
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.PatchPocket,
		Path: construct.Line(orb.Point{middle - w/2, y}, orb.Point{middle + w/2, y})})
	return piece
}
