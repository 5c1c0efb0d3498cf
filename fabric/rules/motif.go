package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// This file is the rule of the motif: its centre falls on a point of a piece, along
// and across, so that the piece lies on a lattice of both repeats.

var _ = register(rule{
	pieces:  func(c cloth.Cloth) []string { return c.Motif.Pieces },
	task:    lay.ToBearAMotif,
	refusal: hasPoint, bind: bindMotif, points: atTheMotif,
})

// motifNode is the place of the centre of a motif.
var motifNode = lay.Node{Kind: lay.MotifNode}

// motifPoint is where the centre of a motif falls on a piece: a mark or a match
// point of that name, or the middle of the whole piece along and across its
// grainline. It reports false when there is no such point.
func motifPoint(motif cloth.Motif, piece pieces.Piece) (orb.Point, bool) {
	if motif.Point == marks.None {
		return middleOf(piece), true
	}
	for _, mark := range piece.Marks {
		if mark.Name == motif.Point && mark.Path == nil {
			return mark.At, true
		}
	}
	return PointNamed(piece, motif.Point)
}

// hasPoint refuses a piece without the point that the motif is to fall on.
func hasPoint(c cloth.Cloth, piece pieces.Piece) error {
	if _, ok := motifPoint(c.Motif, piece); ok {
		return nil
	}
	return lay.Reason{Of: lay.NoMotifPoint, Piece: piece.Name, Point: c.Motif.Point}
}

// bindMotif ties a piece of the motif to its places on an axis.
func bindMotif(m *Matching, a axis, i int) error {
	motif, set, t := m.cloth.Motif, m.sets[a], m.templates[i]
	place := motif.Along
	if a == acrossWarp {
		place = motif.Across - m.cloth.Selvedge
	}
	place = m.toBed(a, place)
	set.bind(fixedPlace, motifNode, place)
	point, _ := motifPoint(motif, t.Asked)
	twice := a == acrossWarp && m.bed.MirrorsAcross() && !t.OnFold
	if twice && math.Abs(math.Remainder(2*place, set.period)) > matchTolerance/2 || !m.bind(a, i, motifNode, point) {
		return lay.Reason{Of: lay.OffMotif, Piece: t.Asked.Name, Across: a == acrossWarp}
	}
	return nil
}

// atTheMotif is its point, on the centre of a motif along and across.
func atTheMotif(c cloth.Cloth, piece pieces.Piece) []Fixed {
	point, ok := motifPoint(c.Motif, piece)
	if !ok {
		return nil
	}
	along, across := c.Motif.Along, c.Motif.Across
	return []Fixed{
		{At: point, From: along, To: along, Period: c.Repeat.Along},
		{At: point, Across: true, From: across, To: across, Period: c.Repeat.Across},
	}
}
