package marker

import (
	"github.com/paulmach/orb"
	"github.com/tidwall/rtree"

	"ellwand/pieces/geometry"
)

// ground is what labels keep off: the pieces on a page and the labels that have found
// their places, by their boxes. Of 450 pieces in one picture, each place that was tried
// against all of them took 20 s of 25.
type ground struct {
	shown  []shownPiece
	placed []label
	pieces rtree.RTreeG[int]
	labels rtree.RTreeG[int]
}

func newGround(shown []shownPiece) *ground {
	g := &ground{shown: shown}
	for i, piece := range shown {
		if len(piece.outline) > 0 {
			box := orb.MultiPoint(piece.outline).Bound()
			g.pieces.Insert(box.Min, box.Max, i)
		}
	}
	return g
}

// add a label that has found its place.
func (g *ground) add(l label) {
	box := l.box
	if l.leader != nil {
		box = box.Extend(*l.leader)
	}
	g.labels.Insert(box.Min, box.Max, len(g.placed))
	g.placed = append(g.placed, l)
}

// none reports whether of what a tree has near a box none is met.
func none(tree *rtree.RTreeG[int], box orb.Bound, meets func(i int) bool) bool {
	isFree := true
	tree.Search(box.Min, box.Max, func(_, _ [2]float64, i int) bool {
		isFree = !meets(i)
		return isFree
	})
	return isFree
}

// isFree reports whether nothing lies in a box.
func (g *ground) isFree(box orb.Bound) bool {
	return none(&g.labels, box, func(i int) bool {
		other := g.placed[i]
		return other.box.Intersects(box) || other.leader != nil &&
			geometry.Crosses([]orb.Point{other.box.Center(), *other.leader}, box)
	}) && none(&g.pieces, box, func(i int) bool {
		outline := g.shown[i].outline
		return geometry.Crosses(outline, box) || geometry.Inside(outline, box.Center())
	})
}

// isClear reports whether a line to a piece keeps off all labels.
func (g *ground) isClear(leader []orb.Point) bool {
	return none(&g.labels, orb.MultiPoint(leader).Bound(), func(i int) bool {
		return geometry.Crosses(leader, g.placed[i].box)
	})
}

// crossesOthers reports whether a line to a piece runs through another.
func (g *ground) crossesOthers(leader []orb.Point, piece shownPiece) bool {
	return !none(&g.pieces, orb.MultiPoint(leader).Bound(), func(i int) bool {
		other := g.shown[i]
		if other.number == piece.number {
			return false
		}
		for k := 1; k < len(other.outline); k++ {
			if crosses(leader[0], leader[1], other.outline[k-1], other.outline[k]) {
				return true
			}
		}
		return false
	})
}
