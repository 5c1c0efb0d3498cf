package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// nearby is how far a number may stand from its piece, mm.
const nearby = 14.0

// labelOver puts the number over the grain arrow and the darts.
func (s *sheets) labelOver(piece shownPiece) (label, bool) {
	piece.fine, piece.arrow, piece.darts = nil, [2]orb.Point{}, nil
	for _, a := range numbers(piece) {
		if l, ok := s.place(a.piece, a.label); ok {
			return l, true
		}
	}
	return label{}, false
}

// labelInTheMiddle is the number over everything.
func (s *sheets) labelInTheMiddle(piece shownPiece) label {
	l := label{number: piece.number, plain: true, points: 4.5}
	width, height := s.blockSize(l)
	middle := middleOf(piece.visible)
	l.box = orb.Bound{Min: orb.Point{middle[0] - width/2, middle[1] - height/2},
		Max: orb.Point{middle[0] + width/2, middle[1] + height/2}}
	return l
}

// labelOutside puts the number on free ground no farther from the piece than
// given. Nearby its line crosses no other piece.
func (s *sheets) labelOutside(v view, piece shownPiece, g *ground, farthest float64) (label, bool) {
	l := label{number: piece.number, points: 6}
	size, _ := s.blockSize(l)
	target := middleOf(piece.visible)
	l.leader = &target
	page := orb.Bound{Min: orb.Point{v.left, v.box().Min[1]}, Max: v.box().Max}
	for radius := 2.0; radius < farthest; radius += 1.5 {
		steps := 8 + int(radius)
		for k := range steps {
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(steps))
			centre := orb.Point{target[0] + radius*cos, target[1] + radius*sin}
			l.box = orb.Bound{Min: centre, Max: centre}.Pad(size / 2)
			leader := []orb.Point{centre, target}
			if geometry.Holds(page, l.box) && g.isFree(l.box) && g.isClear(leader) &&
				(farthest > nearby || !g.crossesOthers(leader, piece)) {
				return l, true
			}
		}
	}
	return label{}, false
}
