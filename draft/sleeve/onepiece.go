package sleeve

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// onePiece draws the underarm seams and the lower edge.
func (d drafting) onePiece(sheet construct.Sheet, h head, ends ends) (Block, error) {
	fall := d.length - d.height
	takenIn := (h.bicep() - h.spread - d.wrist(h.bicep()-h.spread, h.height-h.rise)) / 2
	lower := sheet.Down(ends.level, fall, "the lower edge: the length from the crown")
	front := sheet.Right(lower, h.front.width()-takenIn, "its front end: the bicep line in by a "+
		"quarter, or the wrist asked for, half at each end")
	back := sheet.Left(lower, h.back.width()-takenIn, "its back end")
	sheet.Draw("draw the underarm seams "+construct.Numbers(ends.front, front)+" and "+
		construct.Numbers(ends.back, back), "")

	wrist := construct.Edge(seams.WristHem, construct.Line(back.At, front.At))
	wrist.Hem = true
	if d.Cuffed {
		wrist = construct.Edge(seams.Wrist, wrist.Path)
	}
	sin, cos := portable.Sincos(h.slant)
	seam := h.seam()
	length, toCrown := seam.Length(), h.front.path.Length()
	piece := pieces.Piece{
		Name: role.Sleeve.String(), Role: role.Sleeve, Cut: 2, Pair: true,
		Edges: []pieces.Edge{
			wrist,
			construct.Edge(seams.FrontUnderarm, underarm(front.At, ends.front.At, orb.Point{sin, cos})),
			construct.Edge(seams.SleeveHead, seam),
			construct.Edge(seams.BackUnderarm, underarm(back.At, ends.back.At, orb.Point{-sin, cos}).Reverse()),
		},
		Grain: pieces.Grain{From: orb.Point{0, lower.Y() + float64(0.15*fall)}, To: orb.Point{0, h.height - 0.25*d.height}},
		Notches: []pieces.Notch{
			{Edge: seams.SleeveHead, At: d.FrontNotch, Count: 1, Match: marks.FrontArmhole},
			{Edge: seams.SleeveHead, At: toCrown, Count: 1, Match: marks.Shoulder},
			{Edge: seams.SleeveHead, At: length - d.BackNotch, Count: 2, Match: marks.BackArmhole},
		},
		Marks: []pieces.Mark{{Name: marks.BicepLine, Path: construct.Line(ends.back.At, ends.front.At)}},
	}
	d.markElbow(&piece)
	d.markPlacket(&piece)
	return Block{
		Piece: piece, Pieces: []pieces.Piece{piece}, Sheet: sheet,
		HeadHeight: h.height, BicepLine: h.bicep(), WristWidth: front.X() - back.X(),
		Head: length, FrontHead: toCrown, Spread: h.spread,
	}, nil
}

// markElbow draws the elbow line, half the length of the arm and 5 cm below
// the crown [source.CommonPractice], with a notch at both its ends. A sleeve that
// ends above it has none.
func (d drafting) markElbow(piece *pieces.Piece) {
	elbow := d.elbowLine()
	foot := d.height - d.length
	if elbow > -10 || elbow < foot+10 {
		return
	}
	front, back := piece.Edges[1].Path, piece.Edges[3].Path
	upFront := construct.Reach(front, 1, elbow)
	downBack := back.Length() - construct.Reach(back.Reverse(), 1, elbow)
	piece.Marks = append(piece.Marks, pieces.Mark{
		Name: marks.ElbowLine, Path: construct.Line(back.At(downBack), front.At(upFront)),
	})
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: seams.FrontUnderarm, At: upFront, Count: 1, Match: marks.Elbow},
		pieces.Notch{Edge: seams.BackUnderarm, At: downBack, Count: 1, Match: marks.Elbow})
}

// placketSlit is how long the slit of a shirt sleeve is, 8 to 15 cm
// [source.CommonPractice]; less on a child's short arm.
const placketSlit = 120.

// markPlacket marks the slit for the placket of a shirt sleeve that goes into
// a cuff at the wrist: in the middle of the back half of the lower edge.
func (d drafting) markPlacket(piece *pieces.Piece) {
	if !d.hasPlacket || !d.Cuffed {
		return
	}
	slit := min(placketSlit, 0.4*(d.length-d.height))
	wrist := piece.Edges[0].Path
	at := wrist.Length() / 4
	foot := wrist.At(at)
	piece.Notches = append(piece.Notches, pieces.Notch{Edge: seams.Wrist, At: at, Count: 1, Match: marks.Placket})
	piece.Marks = append(piece.Marks, pieces.Mark{
		Name: marks.PlacketSlit, Path: construct.Line(foot, orb.Point{foot[0], foot[1] + slit}),
	})
}
