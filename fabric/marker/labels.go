package marker

import "github.com/paulmach/orb"

// labels finds a place for each label, the largest that fits: inside the
// piece, across or upwards, in full or only its name, clear of every line if it
// can be; then the number alone; where even that does not fit, outside nearby
// with a line to the piece; among pieces that leave no such room, the number
// over the grain arrow, or outside anywhere.
func (s *sheets) labels(v view, shown []shownPiece) []label {
	g := newGround(shown)
	var waiting []shownPiece
	least := s.leastOf(shown)
	for _, piece := range shown {
		if len(piece.visible) < 4 {
			continue
		}
		if l, _, ok := s.labelInside(piece, least[piece.laid.Name]); ok {
			g.add(l)
		} else {
			waiting = append(waiting, piece)
		}
	}
	for _, way := range []func(shownPiece) (label, bool){
		func(p shownPiece) (label, bool) { return s.labelOutside(v, p, g, nearby) },
		s.labelOver,
		func(p shownPiece) (label, bool) { return s.labelOutside(v, p, g, s.Width) },
		func(p shownPiece) (label, bool) { return s.labelInTheMiddle(p), true },
	} {
		var still []shownPiece
		for _, piece := range waiting {
			if l, ok := way(piece); ok {
				g.add(l)
			} else {
				still = append(still, piece)
			}
		}
		waiting = still
	}
	return g.placed
}

// leastOf finds for all pieces of a name the first label that fits in each of
// them, so that like pieces look alike. Those that a page cuts do not count.
func (s *sheets) leastOf(shown []shownPiece) map[string]int {
	out := map[string]int{}
	for _, piece := range shown {
		if len(piece.visible) < 4 || piece.visible.Bound() != orb.Ring(piece.outline).Bound() {
			continue
		}
		if _, index, ok := s.labelInside(piece, 0); ok {
			out[piece.laid.Name] = max(out[piece.laid.Name], index)
		}
	}
	return out
}
