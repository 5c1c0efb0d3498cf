package draft

import (
	"slices"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/trousers"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// garment is one garment in the making.
type garment struct {
	Request
	result   Result
	bodice   bodice.Block
	sleeve   sleeve.Block
	skirt    skirt.Block
	trousers trousers.Block
	// lowerWaist is the waist seam of the skirt or trousers; 0 without.
	lowerWaist float64
	// lowerEase is what it has over the girth of the body there.
	lowerEase float64
	pairings  []construct.Pairing
	parts     []drafted
	// partFigures are the figures that parts report.
	partFigures []Figure
}

// drafted is a part with its pieces.
type drafted struct {
	part.Options
	pieces []pieces.Piece
}

func (g *garment) add(more ...pieces.Piece) { g.result.Pieces = append(g.result.Pieces, more...) }

// adopt takes over what a block has drafted.
func (g *garment) adopt(made []pieces.Piece, sheets []construct.Sheet, pairings []construct.Pairing,
	warnings []construct.Sentence) {
	g.add(made...)
	g.result.Sheets = append(g.result.Sheets, sheets...)
	g.pairings = append(g.pairings, pairings...)
	g.result.Warnings = append(g.result.Warnings, warnings...)
}

// seam is the length of a seam of a piece, darts closed.
func seam(piece pieces.Piece, name seams.Name) float64 { return construct.SeamLength(piece, name) }

// notch is the distance along its edge of the notch that meets another.
func notch(piece pieces.Piece, match marks.Name) float64 {
	for _, n := range piece.Notches {
		if n.Match == match {
			return n.At
		}
	}
	return 0
}

func (g *garment) warnf(english, german string, args ...any) {
	g.result.Warnings = append(g.result.Warnings, construct.Both(english, german, args...))
}

// hasWaistband says that the parts have one.
func (r Request) hasWaistband() bool {
	return slices.ContainsFunc(r.Parts, func(p part.Options) bool {
		return p.Kind == part.Waistband ||
			p.Kind == part.ShapedWaistband
	})
}
