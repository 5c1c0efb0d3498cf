package trousers

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The fly, in mm: an extension of the front, 4 cm wide and 18 cm long, that is
// folded back along the centre front [source.CommonPractice].
const (
	flyWidth  = 40
	flyLength = 180
)

// frontPiece is the front, with its fly extension unless it opens at the side.
func (f figures) frontPiece(s *construct.Sheet, h half) pieces.Piece {
	piece := f.piece(h, 1)
	if f.Opening != Fly {
		return piece
	}
	length := min(flyLength, h.centre.Length()-5)
	down := h.centre[0].Tangent(0)
	top, end := h.centre.Start(), h.centre.At(length)
	out := construct.Back(construct.Square(down))

	// Folded back along the centre front, the extension lies under the waist:
	// its top is the mirror image of the waist beside it.
	last := h.waist[len(h.waist)-1].Path
	above := construct.Stretch(last, last.Length()-flyWidth, last.Length()).Map(pieces.MirrorAbout(top, end)).Reverse()
	corner := above.End()
	low := construct.Go(corner, down, length-1.2*flyWidth)
	edge := construct.Join(construct.Line(corner, low),
		construct.Curve(low, down, 0.45, end, construct.Back(out), 0.45))

	for i, e := range piece.Edges {
		if e.Name == seams.Crotch {
			crotch := construct.Stretch(e.Path, length, e.Path.Length())
			with := []pieces.Edge{construct.Edge(seams.FlyWaist, above), construct.Edge(seams.FlyEdge, edge),
				construct.Edge(seams.Crotch, crotch)}
			piece.Edges = append(piece.Edges[:i:i], append(with, piece.Edges[i+1:]...)...)
			break
		}
	}
	s.Draw("along the centre front draw a fly extension {} wide and {} long, its lower end rounded, its top the "+
		"mirror image of the waist", "both fronts are cut alike", flyWidth, length)
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.CentreFront,
		Path: pieces.Path{pieces.Line{From: top, To: end}}})
	waist := h.waist[len(h.waist)-1]
	piece.Notches = append(piece.Notches, pieces.Notch{Edge: waist.Name, At: waist.Path.Length(), Count: 1,
		Match: marks.CentreFront})
	return piece
}
