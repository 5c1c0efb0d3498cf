package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// This file is the rule of the centre line: the centre of a piece lies on one line of
// the repeat across.

var _ = register(rule{
	pieces: func(c cloth.Cloth) []string { return c.Repeat.Centred },
	task:   lay.ToBeCentred,
	bind:   bindCentre,
})

// centreNode is the place of the centre line.
var centreNode = lay.Node{Kind: lay.CentreNode}

// bindCentre ties a centred piece to its line.
func bindCentre(m *Matching, a axis, i int) error {
	if a == alongWarp {
		return nil
	}
	line, set, t := m.toBed(a, m.cloth.Repeat.CentreLine-m.cloth.Selvedge), m.sets[a], m.templates[i]
	set.bind(fixedPlace, centreNode, line)
	twice := m.bed.MirrorsAcross() && !t.OnFold
	if twice && math.Abs(math.Remainder(2*line, set.period)) > matchTolerance/2 ||
		!m.bind(a, i, centreNode, centreOf(t.Asked)) {
		return lay.Reason{Of: lay.OffCentreLine, Piece: t.Piece.Name}
	}
	return nil
}

// centreOf is a point of the line that is to lie on the centre line.
func centreOf(piece pieces.Piece) orb.Point {
	piece = piece.Seam()
	for _, edge := range piece.Edges {
		if edge.Name == piece.Fold && piece.Fold != seams.None {
			return edge.Path[0].Start()
		}
	}
	for _, edge := range piece.Edges {
		if edge.Name.IsCentre() {
			return edge.Path[0].Start()
		}
	}
	return piece.Grain.From
}
