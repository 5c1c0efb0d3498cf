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
	least, first := s.leastOf(shown)
	for i, piece := range shown {
		if len(piece.visible) < 4 {
			continue
		}
		from := least[piece.laid.Name]
		found := first[i]
		if !found.tried || found.ok && found.index < from {
			found.label, _, found.ok = s.labelInside(piece, from)
		}
		if found.ok {
			g.add(found.label)
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

// firstLabel is the first attempt at a label that fits in a piece, if any does.
type firstLabel struct {
	label
	index     int
	tried, ok bool
}

// leastOf finds for all pieces of a name the first label that fits in each of
// them, so that like pieces look alike; and that of each piece. Those that a page cuts
// do not count, and are not tried.
func (s *sheets) leastOf(shown []shownPiece) (map[string]int, []firstLabel) {
	out, first := map[string]int{}, make([]firstLabel, len(shown))
	for i, piece := range shown {
		if len(piece.visible) < 4 || piece.visible.Bound() != orb.Ring(piece.outline).Bound() {
			continue
		}
		l, index, ok := s.labelInside(piece, 0)
		first[i] = firstLabel{label: l, index: index, tried: true, ok: ok}
		if ok {
			out[piece.laid.Name] = max(out[piece.laid.Name], index)
		}
	}
	return out, first
}
