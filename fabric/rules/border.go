package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// This file is the rule of the border print: a piece that asks for it lies on the
// cross grain, its straight hem on the line of the border and all of it inwards.

var _ = register(rule{
	pieces: func(c cloth.Cloth) []string { return c.Border.Pieces },
	task:   lay.ToLieOnTheBorder,
	asCut:  crossed,
	refusal: func(c cloth.Cloth, piece pieces.Piece) error {
		_, _, err := hemOf(c.Border, piece)
		return err
	},
	turns: onBorder, bind: bindBorder, place: placeBorder, points: onItsLine,
})

// How straight and how square to the grainline a hem on a border is
// [source.OwnChoice].
const (
	straightHem = 0.5 // mm off the line between its ends
	squareHem   = 0.5 // degrees off the square
)

// isHem says that an edge is to lie on the border: the one that the maker names,
// or the hem.
func isHem(border cloth.Border, edge pieces.Edge) bool {
	if border.Hem != seams.None {
		return edge.Name == border.Hem
	}
	return edge.Hem || edge.Name.Seam() == seams.Hem
}

// hemOf gives the ends of the hem of a piece, which is straight and square to its
// grainline; or the reason why it is not.
func hemOf(border cloth.Border, piece pieces.Piece) (start, end orb.Point, err error) {
	var hem []orb.Point
	for _, edge := range piece.Edges {
		if isHem(border, edge) {
			hem = append(hem, edge.Path.Flatten(straightHem/10)...)
		}
	}
	if len(hem) < 2 {
		return start, end, lay.Reason{Of: lay.NoHem, Piece: piece.Name, Edge: hemName(border)}
	}
	start, end = hem[0], hem[len(hem)-1]
	for _, p := range hem {
		if geometry.Distance(p, geometry.Nearest([]orb.Point{start, end}, p)) > straightHem {
			return start, end, lay.Reason{Of: lay.CurvedHem, Piece: piece.Name}
		}
	}
	between := motion.AngleOf(start, end) - motion.AngleOf(piece.Grain.From, piece.Grain.To)
	if math.Abs(math.Abs(math.Remainder(between, 180))-90) > squareHem {
		return start, end, lay.Reason{Of: lay.SlantedHem, Piece: piece.Name}
	}
	return start, end, nil
}

func hemName(border cloth.Border) seams.Name {
	if border.Hem == seams.None {
		return seams.Hem
	}
	return border.Hem
}

// crossed lays a piece of the border on the cross grain.
func crossed(_ cloth.Cloth, piece pieces.Piece) pieces.Piece {
	piece.Grain.Lie = pieces.CrossGrain
	return piece
}

// onBorder keeps the turns in which the hem of a piece runs along the selvedge of
// the border, the piece lying inwards.
func onBorder(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error) {
	if b.Plies() == 2 && b.Kind != lay.FoldedAcross {
		return nil, lay.Reason{Of: lay.BorderOnOnePly, Piece: t.Asked.Name}
	}
	start, _, err := hemOf(c.Border, t.Asked)
	if err != nil {
		return nil, err
	}
	middle := geometry.Centroid(t.Outline)
	var out []layout.Turn
	for _, turn := range t.Turns {
		m := motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
		isAbove := m.Apply(middle)[1] > m.Apply(start)[1]
		if isAbove == (c.Border.Selvedge == cloth.Near) {
			out = append(out, turn)
		}
	}
	if len(out) == 0 {
		return nil, lay.Reason{Of: lay.BorderAgainstNap, Piece: t.Asked.Name}
	}
	return out, nil
}

// borderPlace is the y of a template in a turn at which its hem lies on the line.
func borderPlace(c cloth.Cloth, b bed.Bed, t Template, turn layout.Turn) float64 {
	line := c.Border.Line
	if c.Border.Selvedge == cloth.Far {
		line = c.WidthLaid() - line
	}
	start, _, _ := hemOf(c.Border, t.Asked)
	hem := motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0).Apply(start)[1]
	return line - c.Selvedge - b.V - hem
}

// bindBorder ties a piece of the border to its place across.
func bindBorder(m *Matching, a axis, i int) error {
	if a == acrossWarp {
		t := m.templates[i]
		m.sets[a].bind(fixedPlace, itemNode(i), borderPlace(m.cloth, m.bed, t, t.baseTurn()))
	}
	return nil
}

// placeBorder gives a piece of the border its one place across. It fails when that
// does not lie between the selvedges.
func placeBorder(c cloth.Cloth, b bed.Bed, t Template, item *layout.Item, width float64) error {
	item.Tilt = 0
	var turns []layout.Turn
	for _, turn := range item.Turns {
		turn.OffsetY = borderPlace(c, b, t, turn)
		low := turn.OffsetY + lowest(t.Outline, turn, acrossWarp)
		if low >= -fitTolerance && low+Across(t.Outline, turn) <= width+fitTolerance {
			turns = append(turns, turn)
		}
		// So long a period leaves a single place.
		item.PeriodY = math.Max(item.PeriodY, 4*(width+Across(t.Outline, turn)))
	}
	if len(turns) == 0 {
		return lay.Reason{Of: lay.BorderOutside, Piece: t.Asked.Name, Takes: c.Border.Line}
	}
	item.Turns = turns
	return nil
}

// onItsLine are the ends of the hem, on the line, and the middle of the piece,
// inwards of it.
func onItsLine(c cloth.Cloth, piece pieces.Piece) []Fixed {
	start, end, err := hemOf(c.Border, piece)
	if err != nil {
		return nil
	}
	line, width := c.Border.Line, c.WidthLaid()
	from, to := line, width
	if c.Border.Selvedge == cloth.Far {
		line = width - line
		from, to = 0, line
	}
	return []Fixed{
		{At: start, Across: true, From: line, To: line}, {At: end, Across: true, From: line, To: line},
		{At: geometry.Centroid(piece.SeamOutline(fineTolerance)), Across: true, From: from, To: to},
	}
}
