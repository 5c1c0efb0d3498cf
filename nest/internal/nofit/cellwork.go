package nofit

import "math"

// cellWork is scratch space for listCell.
type cellWork struct {
	local       []localSum
	planes      []plane
	pieces, cut []Segment
	covered     []bool
}

// outsideOthers takes out of a segment what lies inside the other sums of the
// cell. What it returns is overwritten by the next.
func (w *cellWork) outsideOthers(s Segment, self int, inset float64) []Segment {
	w.pieces = append(w.pieces[:0], s)
	for j := range w.local {
		if len(w.pieces) == 0 {
			break
		}
		if j == self {
			continue
		}
		w.cut = w.cut[:0]
		for _, piece := range w.pieces {
			w.cut = piece.minus(w.local[j].planes, inset, w.cut)
		}
		w.pieces, w.cut = w.cut, w.pieces
	}
	return w.pieces
}

// dropCovered takes out the sums that another covers in the cell: where that one is
// crossed by a single half-plane, all that end before it by the same normal. The sums of
// a part with the parts of the other outline share its normals, so most go, and with
// them half of the time of making a table and of asking it.
func (w *cellWork) dropCovered() {
	w.covered = w.covered[:0]
	for i := range w.local {
		w.covered = append(w.covered, w.isCovered(i))
	}
	kept := w.local[:0]
	for i, covered := range w.covered {
		if !covered {
			kept = append(kept, w.local[i])
		}
	}
	w.local = kept
}

// isCovered reports whether another sum covers sum i: of two that cover each other, the
// first covers.
func (w *cellWork) isCovered(i int) bool {
	for j := range w.local {
		if j == i || len(w.local[j].planes) != 1 {
			continue
		}
		border := &w.local[j].planes[0]
		for k := range w.local[i].planes {
			p := &w.local[i].planes[k]
			if !border.isParallel(p) || p.c > border.c {
				continue
			}
			if p.c < border.c || j < i || len(w.local[i].planes) > 1 {
				return true
			}
		}
	}
	return false
}

// sameNormal is the sine of an angle up to which two normals are one.
const sameNormal = 1e-9

func (p *plane) isParallel(q *plane) bool {
	return math.Abs(float64(p.nx*q.ny)-float64(p.ny*q.nx)) < sameNormal && float64(p.nx*q.nx)+float64(p.ny*q.ny) > 0
}
