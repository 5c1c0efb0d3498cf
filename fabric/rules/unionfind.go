package rules

import (
	"maps"
	"math"

	"ellwand/fabric/lay"
)

// unionFind finds places on a repeat that are bound to each other: x + q = y,
// modulo the period. It is a disjoint-set forest whose links carry a
// difference (Tarjan, Efficiency of a good but not linear set union algorithm,
// J. ACM 22, 1975).
type unionFind struct {
	period float64
	// tolerance of what is bound twice, mm.
	tolerance float64
	parent    map[lay.Node]lay.Node
	above     map[lay.Node]float64 // place of a node less that of its parent
	weight    map[lay.Node]int     // things laid in the set of a root
}

// fixedPlace is the node of the cloth itself, at place 0.
var fixedPlace = lay.Node{Kind: lay.ClothNode}

func newUnionFind(period, tolerance float64) *unionFind {
	return &unionFind{period: period, tolerance: tolerance, parent: map[lay.Node]lay.Node{},
		above: map[lay.Node]float64{}, weight: map[lay.Node]int{}}
}

func (p *unionFind) clone() *unionFind {
	return &unionFind{period: p.period, tolerance: p.tolerance, parent: maps.Clone(p.parent), above: maps.Clone(p.above),
		weight: maps.Clone(p.weight)}
}

// root of a node, and the place of the node less that of the root.
func (p *unionFind) root(node lay.Node) (lay.Node, float64) {
	sum := 0.0
	for parent, ok := p.parent[node]; ok; parent, ok = p.parent[node] {
		sum += p.above[node]
		node = parent
	}
	return node, sum
}

// bind asks that node b lies at the place of node a plus q. It reports false,
// and changes nothing, when that contradicts what is bound already by more
// than the tolerance.
func (p *unionFind) bind(a, b lay.Node, q float64) bool {
	ra, da := p.root(a)
	rb, db := p.root(b)
	if ra == rb {
		return math.Abs(math.Remainder(da+q-db, p.period)) <= p.tolerance
	}
	if rb == fixedPlace { // keep it the root
		p.parent[ra], p.above[ra] = rb, db-q-da
		p.weight[rb] += p.weight[ra]
		return true
	}
	p.parent[rb], p.above[rb] = ra, da+q-db
	p.weight[ra] += p.weight[rb]
	return true
}

// add counts things laid under a node.
func (p *unionFind) add(node lay.Node, n int) {
	r, _ := p.root(node)
	p.weight[r] += n
}

// isBound reports whether a node must lie on a lattice: it is bound to the
// cloth or to another thing laid.
func (p *unionFind) isBound(node lay.Node) bool {
	r, _ := p.root(node)
	return r == fixedPlace || p.weight[r] > 1
}
