package search

import (
	"maps"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/nofit"
)

// pairs keeps what this search knows of each pair of shapes. A pair is tested
// directly until it has been asked often enough to pay for its table.
type pairs struct {
	m      *model.Model
	shapes int
	dense  []*shapePair         // shapes x shapes, of few shapes
	sparse map[int64]*shapePair // of many
	// sparseMost are the pairs without a table that are kept in sparse.
	sparseMost int
	tables     int
	// patient says that descents, too, ask directly at first.
	patient bool
}

// shapePair is how shape b meets shape a.
type shapePair struct {
	view  nofit.View
	a, b  int32
	asked int32
	pairs *pairs
}

const (
	// promoteAfter is the number of direct tests after which a table is made:
	// one takes about as long as a thousand of them.
	promoteAfter = 400
	// tablesMost keeps the tables of a job within some 400 MB.
	tablesMost = 6000
	// denseShapes are the most of which every pair has a place: 8 MB.
	denseShapes = 1000
	// sparseMost are the pairs of more shapes that are kept, in some 70 MB a search.
	sparseMost = 400_000
)

func newPairs(m *model.Model) *pairs {
	p := &pairs{m: m, shapes: len(m.Shapes), sparseMost: sparseMost}
	if p.shapes <= denseShapes {
		p.dense = make([]*shapePair, p.shapes*p.shapes)
	} else {
		p.sparse = map[int64]*shapePair{}
	}
	return p
}

// of returns how shape b meets shape a.
func (p *pairs) of(a, b int) *shapePair {
	if p.dense == nil {
		return p.ofMany(a, b)
	}
	if found := p.dense[a*p.shapes+b]; found != nil {
		return found
	}
	made := &shapePair{a: int32(a), b: int32(b), pairs: p}
	p.dense[a*p.shapes+b] = made
	return made
}

// ofMany is of where there are many shapes. What is known of pairs without a table
// is forgotten when there are too many.
func (p *pairs) ofMany(a, b int) *shapePair {
	key := int64(a)<<32 | int64(b)
	if found := p.sparse[key]; found != nil {
		return found
	}
	if len(p.sparse)-p.tables >= p.sparseMost {
		maps.DeleteFunc(p.sparse, func(_ int64, v *shapePair) bool { return !v.view.Ready() })
	}
	made := &shapePair{a: int32(a), b: int32(b), pairs: p}
	p.sparse[key] = made
	return made
}

// depth returns how deeply b at an offset from a overlaps it.
func (v *shapePair) depth(dx, dy float64) float64 {
	if v.view.Ready() {
		return v.view.Depth(dx, dy)
	}
	v.asked++
	if v.asked > promoteAfter && v.promote() {
		return v.view.Depth(dx, dy)
	}
	return v.pairs.m.DirectDepth(int(v.a), int(v.b), dx, dy)
}

// overlaps reports whether depth is positive.
func (v *shapePair) overlaps(dx, dy float64) bool {
	if v.view.Ready() {
		return v.view.Depth(dx, dy) > 0
	}
	return v.pairs.m.DirectOverlap(int(v.a), int(v.b), dx, dy)
}

func (v *shapePair) promote() bool {
	if v.pairs.tables >= tablesMost {
		return false
	}
	v.pairs.tables++
	v.view = v.pairs.m.Pair(int(v.a), int(v.b))
	return true
}

// paysForTable makes the table for a descent, at once but where the pairs are many and of
// few parts. It returns false when there is none.
func (v *shapePair) paysForTable() bool {
	if v.pairs.patient {
		if v.asked++; v.asked <= promoteAfter {
			return false
		}
	}
	return v.promote()
}

// signed is the depth with its gradient; where the two are apart, about how
// far, as a negative depth.
func (v *shapePair) signed(dx, dy float64) (depth, gx, gy float64) {
	if v.view.Ready() || v.paysForTable() {
		return v.view.Signed(dx, dy)
	}
	return v.pairs.m.DirectSigned(int(v.a), int(v.b), dx, dy)
}
