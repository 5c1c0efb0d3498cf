package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

var _ = register(rule{piece: checkMotif})

// checkMotif: on the open cloth the centre of a motif falls on the point
// of the piece, along and across, to 1 mm.
func checkMotif(p lay.Plan, o openedPiece, asked pieces.Piece) error {
	motif, repeat := p.Cloth.Motif, p.Cloth.Repeat
	if !motif.Has(asked.Name) {
		return nil
	}
	at := wholeMiddle(asked)
	if motif.Point != marks.None {
		at, _ = matchPoint(asked, motif.Point)
		for _, mark := range asked.Marks {
			if mark.Name == motif.Point && mark.Path == nil {
				at = mark.At
			}
		}
	}
	drawn, _ := onCloth(p, o, asked, at)
	along := math.Abs(math.Remainder(drawn[0]-motif.Along, repeat.Along))
	across := math.Abs(math.Remainder(drawn[1]-motif.Across, repeat.Across))
	if !(along <= matchTolerance && across <= matchTolerance) {
		return fmt.Errorf("%s copy %d: the centre of the motif lies %.1f mm along and %.1f mm across off its point", o.Name,
			o.Copy, along, across)
	}
	return nil
}

// wholeMiddle is the middle of a piece, of a half the middle of the whole, along and
// across its grainline.
func wholeMiddle(piece pieces.Piece) orb.Point {
	if piece.Fold != seams.None {
		piece = piece.Unfolded()
	}
	upright := pieces.Turn(90 - angle(piece.Grain.From, piece.Grain.To))
	box := moved(upright, piece.SeamOutline(fineTolerance)).Bound()
	back := pieces.Turn(angle(piece.Grain.From, piece.Grain.To) - 90)
	return back.Apply(orb.Point{(box.Min[0] + box.Max[0]) / 2, (box.Min[1] + box.Max[1]) / 2})
}
