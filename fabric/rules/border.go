package rules

import (
	"errors"
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// This file is the rule of the border print: a piece that asks for it lies on the
// cross grain, its straight hem on the line of the border and all of it inwards.

// How straight and how square to the grainline a hem on a border is
// [source.OwnChoice].
const (
	straightHem = 0.5 // mm off the line between its ends
	squareHem   = 0.5 // degrees off the square
)

// hemOf gives the ends of the hem of a piece, which is straight and square to its
// grainline; or a sentence why it is not.
func hemOf(border cloth.Border, piece pieces.Piece) (start, end orb.Point, err error) {
	var hem []orb.Point
	for _, edge := range piece.Edges {
		if edge.Name == border.Hem || border.Hem == "" && strings.HasPrefix(strings.ToLower(edge.Name), "hem") {
			hem = append(hem, edge.Path.Flatten(straightHem/10)...)
		}
	}
	if len(hem) < 2 {
		return start, end, lay.Because(piece.Name, "it is to lie on the border and has no edge %q; say which edge is its hem", hemName(border))
	}
	start, end = hem[0], hem[len(hem)-1]
	for _, p := range hem {
		if geometry.Distance(p, geometry.Nearest([]orb.Point{start, end}, p)) > straightHem {
			return start, end, lay.Because(piece.Name, "its hem is curved and cannot lie on the line of the border; "+
				"straighten the hem, or leave the piece off the border")
		}
	}
	between := geometry.AngleOf(start, end) - geometry.AngleOf(piece.Grain.From, piece.Grain.To)
	if math.Abs(math.Abs(math.Remainder(between, 180))-90) > squareHem {
		return start, end, lay.Because(piece.Name, "its hem is not square to its grainline and cannot lie on the border; "+
			"draw the grainline square to the hem, or leave the piece off the border")
	}
	return start, end, nil
}

func hemName(border cloth.Border) string {
	if border.Hem == "" {
		return "hem"
	}
	return border.Hem
}

// CheckBorder refuses pieces that cannot lie on the border, with every reason.
func CheckBorder(c cloth.Cloth, all []pieces.Piece) error {
	var faults []error
	for _, piece := range all {
		if c.Border.Has(piece.Name) {
			_, _, err := hemOf(c.Border, piece)
			faults = append(faults, err)
		}
	}
	return errors.Join(faults...)
}

// crossed lays the pieces of the border on the cross grain.
func crossed(border cloth.Border, all []pieces.Piece) []pieces.Piece {
	if len(border.Pieces) == 0 {
		return all
	}
	out := make([]pieces.Piece, len(all))
	for i, piece := range all {
		if border.Has(piece.Name) {
			piece.Grain.Lie = pieces.CrossGrain
		}
		out[i] = piece
	}
	return out
}

// onBorder keeps the turns in which the hem of a piece runs along the selvedge of
// the border, the piece lying inwards.
func onBorder(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error) {
	if !c.Border.Has(t.Asked.Name) {
		return t.Turns, nil
	}
	if b.Plies() == 2 && b.Kind != lay.FoldedAcross {
		return nil, lay.Because(t.Asked.Name, "the border runs along one selvedge, and the upper ply does not have it there; "+
			"lay the cloth open")
	}
	start, _, err := hemOf(c.Border, t.Asked)
	if err != nil {
		return nil, err
	}
	middle := geometry.Centroid(t.Outline)
	var out []layout.Turn
	for _, turn := range t.Turns {
		m := geometry.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
		isAbove := geometry.Apply(m, middle)[1] > geometry.Apply(m, start)[1]
		if isAbove == (c.Border.Selvedge == cloth.Near) {
			out = append(out, turn)
		}
	}
	if len(out) == 0 {
		return nil, lay.Because(t.Asked.Name, "with its hem on the border the nap would run the wrong way over it; "+
			"let the cloth go either way, or leave the piece off the border")
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
	hem := geometry.Apply(geometry.MotionOf(turn.Degrees, turn.Mirrored, 0, 0), start)[1]
	return line - c.Selvedge - b.V - hem
}

// bindBorder ties the pieces of the border to their place across, before anything
// is matched on the repeat.
func (m *Matching) bindBorder() {
	for i, t := range m.templates {
		if m.cloth.Border.Has(t.Asked.Name) {
			m.sets[acrossWarp].bind(fixedPlace, itemNode(i), borderPlace(m.cloth, m.bed, t, t.baseTurn()))
		}
	}
}

// placeBorder gives the pieces of the border their one place across. It fails when
// that does not lie between the selvedges.
func placeBorder(c cloth.Cloth, b bed.Bed, templates []Template, problem *layout.Problem) error {
	var faults []error
	for i, t := range templates {
		if !c.Border.Has(t.Asked.Name) {
			continue
		}
		item := &problem.Items[i]
		item.Tilt = 0
		var turns []layout.Turn
		for _, turn := range item.Turns {
			turn.OffsetY = borderPlace(c, b, t, turn)
			low := turn.OffsetY + lowest(t.Outline, turn, acrossWarp)
			if low >= -fitTolerance && low+Across(t.Outline, turn) <= problem.Width+fitTolerance {
				turns = append(turns, turn)
			}
			// So long a period leaves a single place.
			item.PeriodY = math.Max(item.PeriodY, 4*(problem.Width+Across(t.Outline, turn)))
		}
		if len(turns) == 0 {
			faults = append(faults, lay.Because(t.Asked.Name, "with its hem on the line of the border, %s from the edge, it does not lie between the selvedges; "+
				"move the line, take a wider cloth, or leave the piece off the border", c.Say(c.Border.Line)))
			continue
		}
		item.Turns = turns
	}
	return errors.Join(faults...)
}
