package rules

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// pointNode is the node of a match point: across the cloth, of the side that is
// drawn or of its image.
func pointNode(a axis, name marks.Name, of int, image bool) lay.Node {
	if a == acrossWarp && image {
		return lay.Node{Kind: lay.ImageNode, Name: name, Index: of}
	}
	return lay.Node{Kind: lay.PointNode, Name: name, Index: of}
}

// bindJoin ties a join on all pieces that have it.
func (m *Matching) bindJoin(a axis, j Join) {
	if j.Pairs {
		m.bindPairs(a, j.Pieces)
		return
	}
	if j.Along && a == acrossWarp || j.Across && a == alongWarp {
		return
	}
	if j.Name == marks.Alike {
		m.bindAlike(a, j.of())
		return
	}
	kept, seen := lay.Match{Name: j.Name, Across: a == acrossWarp, Of: j.of()}, map[int]bool{}
	for _, t := range m.templates {
		if !slices.Contains(j.Pieces, t.Source) || seen[t.Source] {
			continue
		}
		seen[t.Source] = true
		if !m.bindPointOf(a, t.Source, j) {
			m.Dropped = append(m.Dropped, lay.Match{Name: j.Name, Across: a == acrossWarp, Of: j.of(), Pieces: []int{t.Source}})
			continue
		}
		kept.Pieces = append(kept.Pieces, t.Source)
	}
	if len(kept.Pieces) > 0 {
		m.Kept = append(m.Kept, kept)
	}
}

// bindPointOf ties a point on all templates of a piece, or on none: a
// right that matches beside a left that does not would be no match.
func (m *Matching) bindPointOf(a axis, source int, j Join) bool {
	set, ties := m.sets[a].clone(), slices.Clone(m.ties[a])
	for i, t := range m.templates {
		if t.Source != source {
			continue
		}
		if p, ok := PointNamed(t.Asked, j.Name); ok && !m.bindPoint(a, i, t, j, p) {
			m.sets[a], m.ties[a] = set, ties
			return false
		}
	}
	return true
}

func (m *Matching) bindPoint(a axis, i int, t Template, j Join, p orb.Point) bool {
	isPair := t.Asked.Pair
	if a == acrossWarp && t.Yields == 2 && !isPair {
		return false // the upper ply has the point at its image
	}
	left := m.bed.Plies() == 1 && t.Turns[0].Mirrored && isPair
	if !m.bind(a, i, pointNode(a, j.Name, j.of(), left), p) {
		return false
	}
	isBothSides := a == acrossWarp && m.bed.Plies() == 1 && t.Asked.Fold != seams.None
	return !isBothSides || m.bind(a, i, pointNode(a, j.Name, j.of(), true), t.Image.Apply(p))
}

// bindPairs ties the right of each pair among some pieces to its left, unless that is
// done already.
func (m *Matching) bindPairs(a axis, of []int) {
	for _, t := range m.templates {
		if !isPair(t.Asked) || !slices.Contains(of, t.Source) || m.paired[a][t.Source] {
			continue
		}
		m.paired[a][t.Source] = true
		m.note(lay.Match{Across: a == acrossWarp, Of: t.Source, Pieces: []int{t.Source}},
			m.bindCopies(a, t.Source, pairNode(t.Source), t.Asked.Grain.From))
	}
}

// bindAlike ties the middle of all copies of a piece to one place across.
func (m *Matching) bindAlike(a axis, source int) {
	at := slices.IndexFunc(m.templates, func(t Template) bool { return t.Source == source })
	if at < 0 {
		return
	}
	match := lay.Match{Name: marks.Alike, Across: true, Of: source, Pieces: []int{source}}
	m.note(match, m.bindCopies(a, source, pointNode(a, marks.Alike, source, false), middleOf(m.templates[at].Asked)))
}

func (m *Matching) note(match lay.Match, isKept bool) {
	if isKept {
		m.Kept = append(m.Kept, match)
		return
	}
	m.Dropped = append(m.Dropped, match)
}

// sources of the templates.
func (m *Matching) sources() []int {
	out := make([]int, len(m.templates))
	for i, t := range m.templates {
		out[i] = t.Source
	}
	return out
}

func pairNode(source int) lay.Node { return lay.Node{Kind: lay.PairNode, Index: source} }

// bindCopies ties a point of all templates of a piece to one place, or none of them. On
// two plies that mirror each other across, both have the place on the line between.
func (m *Matching) bindCopies(a axis, source int, node lay.Node, p orb.Point) bool {
	set, ties := m.sets[a].clone(), slices.Clone(m.ties[a])
	if a == alongWarp && m.isTied(source) {
		m.together = append(m.together, source)
		return true
	}
	ok := a == alongWarp || !m.bed.MirrorsAcross() || m.sets[a].bind(fixedPlace, node, 0)
	for i, t := range m.templates {
		ok = ok && (t.Source != source || m.bind(a, i, node, p))
	}
	if !ok {
		m.sets[a], m.ties[a] = set, ties
	}
	return ok
}

// isTied reports whether all templates of a piece are tied along the warp by a
// named point already. Then its right and left match as long as they point the
// same way, whichever that is. (On the bias, or on either grain, a way has two lies, which differ.)
func (m *Matching) isTied(source int) bool {
	for i, t := range m.templates {
		if t.Source == source && (len(m.ties[alongWarp][i]) == 0 || len(lies[t.Piece.Grain.Lie]) > 2) {
			return false
		}
	}
	return true
}
