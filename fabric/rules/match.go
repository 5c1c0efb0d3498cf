package rules

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// This file decides which match points are kept, by binding them to each other
// and to the cloth, the most important first.

// bindAxis binds what can be kept together, the most important first: what
// lies on a fold or at a known place, what a rule binds, the joins, and
// the right and left of each pair.
func (m *Matching) bindAxis(a axis) {
	// Half of the tolerance is left to the layout; on two plies across, a
	// deviation counts twice, once in each.
	tolerance := matchTolerance / 2
	if a == acrossWarp && m.bed.MirrorsAcross() {
		tolerance /= 2
	}
	set := newUnionFind(a.period(m.cloth.Repeat), tolerance)
	m.paired[a] = map[int]bool{}
	m.sets[a], m.ties[a] = set, make([][]tie, len(m.templates))
	for node, place := range m.known[a] {
		set.bind(fixedPlace, node, m.toBed(a, place))
	}
	for i, t := range m.templates {
		set.add(itemNode(i), t.Copies)
		if a == acrossWarp && t.OnFold {
			turn := t.baseTurn()
			_, sign := m.at(a, turn, orb.Point{})
			set.bind(fixedPlace, itemNode(i), float64(-sign*lowest(t.Outline, turn, a)))
		}
	}
	m.bindRules(a)
	for _, j := range m.joins {
		m.bindJoin(a, j)
	}
	m.bindPairs(a, m.sources())
}

// Match computes the ties of all templates of a bed.
func Match(c cloth.Cloth, b bed.Bed, templates []Template, joins []Join, known lay.Places) *Matching {
	m := &Matching{cloth: c, bed: b, templates: templates, joins: joins, known: known}
	for _, a := range []axis{alongWarp, acrossWarp} {
		if a.period(c.Repeat) > 0 {
			m.bindAxis(a)
		}
	}
	return m
}
