package rules

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// Found gives the places of all points of a solved bed, on the open cloth, for
// what is laid after.
func (m *Matching) Found(problem layout.Problem, placed layout.Layout) lay.Places {
	var out lay.Places
	for _, a := range []axis{alongWarp, acrossWarp} {
		out[a] = map[lay.Node]float64{}
		for node, place := range m.known[a] {
			out[a][node] = place
		}
		for node, place := range m.placesInBed(a, problem, placed) {
			out[a][node] = m.toCloth(a, place)
			if a == acrossWarp && node.Kind == lay.PointNode && m.bed.Plies() == 2 {
				out[a][pointNode(a, node.Name, node.Index, true)] = m.toCloth(a, m.imageOf(place))
			}
		}
	}
	return out
}

// Laid gives the places on the open cloth that points have in a layout which does not say
// them, the first of each.
func (m *Matching) Laid(problem layout.Problem, placed layout.Layout) lay.Places {
	var out lay.Places
	for _, a := range []axis{alongWarp, acrossWarp} {
		out[a] = map[lay.Node]float64{}
		if m.sets[a] == nil {
			continue
		}
		for _, at := range placed.Placements {
			for _, tie := range m.ties[a][at.Item] {
				if _, known := out[a][tie.node]; !known {
					out[a][tie.node] = m.toCloth(a, m.whereLaid(a, problem, at, tie.point))
				}
			}
		}
	}
	return out
}

// placesInBed gives the points that are bound to the cloth their places on the
// lattice, and those of a template that nothing bound, or that had two places,
// the places where it came to lie: turned end for end, its points lie otherwise
// to each other.
func (m *Matching) placesInBed(a axis, problem layout.Problem, placed layout.Layout) map[lay.Node]float64 {
	out := map[lay.Node]float64{}
	if m.sets[a] == nil {
		return out
	}
	for _, at := range placed.Placements {
		for _, tie := range m.ties[a][at.Item] {
			root, place := m.sets[a].root(tie.node)
			if root != fixedPlace || a == acrossWarp && m.periodAcross(at.Item) < m.sets[a].period {
				place = m.whereLaid(a, problem, at, tie.point)
			}
			out[tie.node] = place
		}
	}
	return out
}

// whereLaid is the place of a point of a template on an axis of the bed.
func (m *Matching) whereLaid(a axis, problem layout.Problem, at layout.Placement, p orb.Point) float64 {
	_, sign := m.at(a, problem.Items[at.Item].Turns[at.Turn], p)
	place := PlacementMotion(problem, at).Apply(p)[a]
	if a == acrossWarp {
		place -= m.bed.MirrorLine()
	}
	return sign * place
}

// imageOf a place across is where the upper ply has it.
func (m *Matching) imageOf(place float64) float64 {
	if m.bed.MirrorsAcross() {
		return -place
	}
	return place
}
