package fabric

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/pieces"
)

// This file says of a plan what somebody needs who checks it without knowing
// how it came about.

// AsCut are the pieces asked as they are cut: larger, when the cloth is washed
// after cutting.
func (p LayPlan) AsCut() []pieces.Piece { return enlarged(p.Cloth, p.Asked) }

// PiecePoint is a point of a piece as it is cut, in its own frame.
type PiecePoint struct {
	// Piece is an index into LayPlan.Asked.
	Piece int
	At    orb.Point
}

// PointsOf a match are those that meet on the repeat; of the right and left of
// one piece it is the lower end of the grainline.
func (p LayPlan) PointsOf(match Match) []PiecePoint {
	cut := p.AsCut()
	var out []PiecePoint
	for _, i := range match.Pieces {
		at, found := cut[i].Grain.From, true
		if match.Name != "" {
			at, found = pointNamed(cut[i], match.Name)
		}
		if found {
			out = append(out, PiecePoint{i, at})
		}
	}
	return out
}

// Centres are points of the centre lines that lie on the centre line of the
// repeat.
func (p LayPlan) Centres() []PiecePoint {
	var out []PiecePoint
	for i, piece := range p.AsCut() {
		if slices.Contains(p.Cloth.Repeat.Centred, piece.Name) {
			out = append(out, PiecePoint{i, centreOf(piece)})
		}
	}
	return out
}

// FlawsTaken are the flaws on the length of cloth that the plan takes, lying
// open.
func (p LayPlan) FlawsTaken() ([]cloth.Flaw, error) {
	var out []cloth.Flaw
	for _, flaw := range p.Cloth.Flaws {
		parts, err := geometry.Clipped(geometry.Closed(flaw.Outline), 0, 0, p.Taken, p.Cloth.WidthLaid())
		if err != nil {
			return nil, err
		}
		for _, ring := range parts {
			out = append(out, cloth.Flaw{Name: flaw.Name, Outline: ring})
		}
	}
	return out, nil
}

// FlawsIn a ply of a part are the flaws of the cloth where that ply lies, in
// the frame of the lay.
func (p LayPlan) FlawsIn(part Part, ply Ply) ([]cloth.Flaw, error) {
	back := inverse(ply.ToCloth)
	var out []cloth.Flaw
	for _, flaw := range p.Cloth.Flaws {
		ring := orb.Ring(geometry.Mapped(back, geometry.Closed(flaw.Outline)))
		parts, err := geometry.Clipped(ring, part.X, ply.Low, part.X+part.Length, ply.High)
		if err != nil {
			return nil, err
		}
		for _, ring := range parts {
			out = append(out, cloth.Flaw{Name: flaw.Name, Outline: ring})
		}
	}
	return out, nil
}
