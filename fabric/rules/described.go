package rules

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
)

// This file says of a plan what somebody needs who checks it without knowing
// how it came about.

// AsCut are the pieces asked as they are cut: larger, when the cloth is washed
// after cutting.
func AsCut(p lay.Plan) []pieces.Piece { return Enlarged(p.Cloth, p.Asked) }

// PiecePoint is a point of a piece as it is cut, in its own frame.
type PiecePoint struct {
	// Piece is an index into lay.Plan.Asked.
	Piece int
	At    orb.Point
}

// PointsOf a match are those that meet on the repeat; of the right and left of
// one piece it is the lower end of the grainline.
func PointsOf(p lay.Plan, match lay.Match) []PiecePoint {
	cut := AsCut(p)
	var out []PiecePoint
	for _, i := range match.Pieces {
		at, found := cut[i].Grain.From, true
		if match.Name != marks.None {
			at, found = PointNamed(cut[i], match.Name)
		}
		if found {
			out = append(out, PiecePoint{i, at})
		}
	}
	return out
}

// Centres are points of the centre lines that lie on the centre line of the
// repeat.
func Centres(p lay.Plan) []PiecePoint {
	var out []PiecePoint
	for i, piece := range AsCut(p) {
		if slices.Contains(p.Cloth.Repeat.Centred, piece.Name) {
			out = append(out, PiecePoint{i, centreOf(piece)})
		}
	}
	return out
}

// PieceFixed is a point of a piece as it is cut that a rule fixes on the open cloth.
type PieceFixed struct {
	// Piece is an index into lay.Plan.Asked.
	Piece int
	Fixed
}

// FixedPoints are all that the rules of the cloth fix.
func FixedPoints(p lay.Plan) []PieceFixed {
	var out []PieceFixed
	for i, piece := range AsCut(p) {
		for _, r := range registered {
			if r.points == nil || !r.keeps(p.Cloth, piece.Name) {
				continue
			}
			for _, fixed := range r.points(p.Cloth, piece) {
				out = append(out, PieceFixed{i, fixed})
			}
		}
	}
	return out
}

// FlawsTaken are the flaws on the length of cloth that the plan takes, lying
// open.
func FlawsTaken(p lay.Plan) ([]cloth.Flaw, error) {
	var out []cloth.Flaw
	for _, flaw := range p.Cloth.Flaws {
		parts, err := motion.Clipped(geometry.Closed(flaw.Outline), 0, 0, p.Taken, p.Cloth.WidthLaid())
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
func FlawsIn(p lay.Plan, part lay.Bed, ply lay.Ply) ([]cloth.Flaw, error) {
	back := motion.Inverse(ply.ToCloth)
	var out []cloth.Flaw
	for _, flaw := range p.Cloth.Flaws {
		ring := orb.Ring(motion.Mapped(back, geometry.Closed(flaw.Outline)))
		parts, err := motion.Clipped(ring, part.X, ply.Low, part.X+part.Length, ply.High)
		if err != nil {
			return nil, err
		}
		for _, ring := range parts {
			out = append(out, cloth.Flaw{Name: flaw.Name, Outline: ring})
		}
	}
	return out, nil
}
