package fabric

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// This file decides which match points are kept, by binding them to each other
// and to the cloth, the most important first.

// bindAxis binds what can be kept together, the most important first: what
// lies on a fold or at a known place, the centre line, the named points, and
// the right and left of each pair.
func (m *matching) bindAxis(a axis) {
	// Half of the tolerance is left to the layout; on two plies across, a
	// deviation counts twice, once in each.
	tolerance := matchTolerance / 2
	if a == acrossWarp && m.bed.mirrorsAcross() {
		tolerance /= 2
	}
	set := newPhases(a.period(m.cloth.Repeat), tolerance)
	m.sets[a], m.ties[a] = set, make([][]tie, len(m.templates))
	for name, place := range m.known[a] {
		set.bind(fixedPlace, name, m.toBed(a, place, name))
	}
	for i, t := range m.templates {
		set.add(itemNode(i), t.copies)
		if a == acrossWarp && t.onFold {
			turn := t.baseTurn()
			_, sign := m.at(a, turn, orb.Point{})
			set.bind(fixedPlace, itemNode(i), -sign*lowest(t.outline, turn, a))
		}
	}
	if a == acrossWarp {
		m.centre()
	}
	for _, name := range m.names {
		m.bindName(a, name)
	}
	m.bindPairs(a)
}

// bind ties a point of template i to a node; it reports whether that agrees
// with what is tied already.
func (m *matching) bind(a axis, i int, node string, p orb.Point) bool {
	q, sign := m.at(a, m.templates[i].baseTurn(), p)
	if !m.sets[a].bind(itemNode(i), node, sign*q) {
		return false
	}
	m.ties[a][i] = append(m.ties[a][i], tie{node: node, point: p})
	return true
}

// centre ties the centred pieces to their line.
func (m *matching) centre() {
	line := m.toBed(acrossWarp, m.cloth.Repeat.CentreLine-m.cloth.Selvedge, "")
	node, set, bound := "the centre line", m.sets[acrossWarp], false
	for i, t := range m.templates {
		if !slices.Contains(m.cloth.Repeat.Centred, t.piece.Name) {
			continue
		}
		if !bound {
			bound = set.bind(fixedPlace, node, line)
		}
		twice := m.bed.mirrorsAcross() && !t.onFold
		if twice && math.Abs(math.Remainder(2*line, set.period)) > matchTolerance/2 || !m.bind(acrossWarp, i, node, centreOf(t.asked)) {
			m.err = errors.Join(m.err, fmt.Errorf("%s: its centre would not lie on the chosen line of the repeat, because the fold does not; fold one selvedge in, or lay the cloth open", t.piece.Name))
		}
	}
}

// sideName is the node of a match point across the cloth, for the side that is
// drawn or for its image.
func sideName(a axis, name string, image bool) string {
	if a == acrossWarp && image {
		return "image of " + name
	}
	return "point " + name
}

// bindName ties a named match point on all pieces that have it.
func (m *matching) bindName(a axis, name string) {
	kept, seen := Match{Name: name, Across: a == acrossWarp}, map[int]bool{}
	for _, t := range m.templates {
		if _, ok := pointNamed(t.asked, name); !ok || seen[t.source] {
			continue
		}
		seen[t.source] = true
		if !m.bindPointOf(a, t.source, name) {
			m.dropped = append(m.dropped, fmt.Sprintf("%s of %s cannot be matched %s as well as the others", name, t.piece.Name, a))
			continue
		}
		kept.Pieces = append(kept.Pieces, t.source)
	}
	if len(kept.Pieces) > 0 {
		m.kept = append(m.kept, kept)
	}
}

// bindPointOf ties a named point on all templates of a piece, or on none: a
// right that matches beside a left that does not would be no match.
func (m *matching) bindPointOf(a axis, source int, name string) bool {
	set, ties := m.sets[a].clone(), slices.Clone(m.ties[a])
	for i, t := range m.templates {
		if t.source != source {
			continue
		}
		if p, ok := pointNamed(t.asked, name); ok && !m.bindPoint(a, i, t, name, p) {
			m.sets[a], m.ties[a] = set, ties
			return false
		}
	}
	return true
}

func (a axis) String() string {
	if a == alongWarp {
		return "along the warp"
	}
	return "across"
}

func (m *matching) bindPoint(a axis, i int, t template, name string, p orb.Point) bool {
	isPair := t.asked.Pair
	if a == acrossWarp && t.yields == 2 && !isPair {
		return false // the upper ply has the point at its image
	}
	left := m.bed.plies() == 1 && t.turns[0].Mirrored && isPair
	if !m.bind(a, i, sideName(a, name, left), p) {
		return false
	}
	isBothSides := a == acrossWarp && m.bed.plies() == 1 && t.asked.Fold != ""
	return !isBothSides || m.bind(a, i, sideName(a, name, true), apply(t.image, p))
}

// bindPairs ties the right of each pair to its left.
func (m *matching) bindPairs(a axis) {
	done := map[int]bool{}
	for _, t := range m.templates {
		if !t.asked.Pair || t.asked.Fold != "" || done[t.source] {
			continue
		}
		done[t.source] = true
		if m.bindPair(a, t.source) {
			m.kept = append(m.kept, Match{Across: a == acrossWarp, Pieces: []int{t.source}})
			continue
		}
		m.dropped = append(m.dropped, fmt.Sprintf("right and left of %s cannot be matched %s as well as the other points", t.piece.Name, a))
	}
}

func pairNode(source int) string { return fmt.Sprintf("pair %d", source) }

// bindPair ties all templates of a pair to one place, or none of them.
func (m *matching) bindPair(a axis, source int) bool {
	node := pairNode(source)
	set, ties := m.sets[a].clone(), slices.Clone(m.ties[a])
	if a == alongWarp && m.isTied(source) {
		m.together = append(m.together, source)
		return true
	}
	ok := a == alongWarp || !m.bed.mirrorsAcross() || m.sets[a].bind(fixedPlace, node, 0)
	for i, t := range m.templates {
		ok = ok && (t.source != source || m.bind(a, i, node, t.asked.Grain.From))
	}
	if !ok {
		m.sets[a], m.ties[a] = set, ties
	}
	return ok
}

// isTied reports whether all templates of a piece are tied along the warp by a
// named point already. Then its right and left match as long as they point the
// same way, whichever that is. (On the bias a way has two lies, which differ.)
func (m *matching) isTied(source int) bool {
	for i, t := range m.templates {
		if t.source == source && (len(m.ties[alongWarp][i]) == 0 || t.piece.Grain.Lie == pieces.Bias) {
			return false
		}
	}
	return true
}
