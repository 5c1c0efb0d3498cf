package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// bind ties a point of template i to a node; it reports whether that agrees
// with what is tied already.
func (m *Matching) bind(a axis, i int, node lay.Node, p orb.Point) bool {
	q, sign := m.at(a, m.templates[i].baseTurn(), p)
	if !m.sets[a].bind(itemNode(i), node, float64(sign*q)) {
		return false
	}
	m.ties[a][i] = append(m.ties[a][i], tie{node: node, point: p})
	return true
}

// This file turns the repeat into geometry: each template that takes part in a
// match may lie on a lattice of positions only.

// axis is one direction of the repeat.
type axis int

const (
	alongWarp axis = iota
	acrossWarp
)

func (a axis) period(repeat cloth.Repeat) float64 {
	if a == alongWarp {
		return repeat.Along
	}
	return repeat.Across
}

// Matching binds the templates of one bed to the repeat.
type Matching struct {
	cloth     cloth.Cloth
	bed       bed.Bed
	templates []Template
	joins     []Join // to keep, the most important first
	known     lay.Places
	Kept      []lay.Match
	Dropped   []lay.Match
	// first constraint of each template on each axis, to find the offset of
	// every turn, and how many there are.
	ties [2][][]tie
	sets [2]*unionFind
	// paired are those whose right and left were looked at on an axis.
	paired [2]map[int]bool
	// together are the pairs whose right and left must point the same way.
	together []int
	err      error
}

// tie binds a point of a template to a place.
type tie struct {
	node  lay.Node
	point orb.Point
}

// at is the place of a point in a turn, less the position of the template, on
// an axis; sign is -1 where the lower ply gives the side that is not drawn.
func (m *Matching) at(a axis, turn layout.Turn, p orb.Point) (q, sign float64) {
	r := motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0).Apply(p)
	if a == alongWarp {
		return r[0], 1
	}
	q, sign = r[1], 1
	if m.bed.MirrorsAcross() {
		q -= m.bed.MirrorLine()
		if turn.Mirrored {
			sign = -1
		}
	}
	return q, sign
}

func itemNode(i int) lay.Node { return lay.Node{Kind: lay.TemplateNode, Index: i} }

// toBed brings a place on the open cloth to the bed; on two plies across, that
// is the distance from the line about which they mirror.
func (m *Matching) toBed(a axis, place float64) float64 {
	if a == alongWarp {
		return place - m.bed.Before
	}
	return place - m.bed.V - m.bed.MirrorLine()
}

// toCloth brings it back.
func (m *Matching) toCloth(a axis, place float64) float64 {
	if a == alongWarp {
		return place + m.bed.Before
	}
	return place + m.bed.V + m.bed.MirrorLine()
}

// lowest extent of a turned outline on an axis.
func lowest(outline orb.Ring, turn layout.Turn, a axis) float64 {
	motion := motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
	low := math.Inf(1)
	for _, p := range outline {
		low = math.Min(low, motion.Apply(p)[a])
	}
	return low
}
