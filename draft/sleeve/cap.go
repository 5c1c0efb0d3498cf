package sleeve

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// How far a cap sleeve's lower edge lies below the line between its ends, usually,
// at least and at most, in mm [source.CommonPractice].
const (
	usualCapDip = 15.0
	leastCapDip = 5.0
	mostCapDip  = 60.0
)

// capSleeve covers the shoulder only: the head from the front notch of the
// armhole to the back notch, and a lower edge that joins them in a shallow
// curve. The armhole below is bound or faced.
func (d drafting) capSleeve(sheet construct.Sheet, h head, _ ends) (Block, error) {
	whole, toCrown := h.seam(), h.front.path.Length()
	length := whole.Length()
	seam := construct.Stretch(whole, d.FrontNotch, length-d.BackNotch)
	front, back := seam.Start(), seam.End()
	chord := (front[1] + back[1]) / 2
	dip := usualCapDip
	if d.Length > 0 {
		dip = d.Length - (h.height - chord)
	}
	if dip < leastCapDip || dip > mostCapDip {
		return Block{}, construct.About(subject.Length, subject.Style).Refuse(
			"sleeve: a cap sleeve of %s does not join the notches of this armhole; ask for %s to "+
				"%s from the crown",
			"Ärmel: ein kleiner Ärmel von %s trifft die Knipse dieses Armlochs nicht; verlangen Sie "+
				"%s bis %s ab der Schulter",
			construct.Length(d.Length), construct.AtLeast(h.height-chord+leastCapDip),
			construct.AtMost(h.height-chord+mostCapDip))
	}
	// The middle of the curve lies three quarters of the way to its handles.
	low, third := chord-dip/0.75, (front[0]-back[0])/3
	hem := pieces.Path{pieces.Bezier{
		P0: back, P1: orb.Point{back[0] + third, low}, P2: orb.Point{front[0] - third, low}, P3: front,
	}}
	sheet.Draw("mark the notches of the armhole on the head, {} from its front end and {} from its back end, "+
		"and join them by a curve that lies {} below the line between them in the middle",
		"the lower edge of the cap", d.FrontNotch, d.BackNotch, dip)
	piece := pieces.Piece{
		Name: role.Sleeve.String(), Role: role.Sleeve, Cut: 2, Pair: true,
		Edges: []pieces.Edge{construct.Edge(seams.NarrowHem, hem), construct.Edge(seams.SleeveHead, seam)},
		Grain: pieces.Grain{From: orb.Point{0, chord - 0.5*dip},
			To: orb.Point{0, h.height - float64(0.2*(h.height-chord))}},
		Notches: []pieces.Notch{{Edge: seams.SleeveHead, At: toCrown - d.FrontNotch, Count: 1, Match: marks.Shoulder}},
	}
	return Block{
		Piece: piece, Pieces: []pieces.Piece{piece}, Sheet: sheet,
		HeadHeight: h.height, BicepLine: h.bicep(), WristWidth: hem.Length(),
		Head: seam.Length(), FrontHead: toCrown - d.FrontNotch, IsCap: true,
	}, nil
}
