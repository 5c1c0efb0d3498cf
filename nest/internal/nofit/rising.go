package nofit

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// rising are the sides of a sum from their lower to their upper ends, ordered by the
// lower, so that a row of cells looks at few of them.
type rising []side

type side struct{ low, high orb.Point }

func (r *region) rising() rising {
	sides := make(rising, len(r.points))
	for i, p := range r.points {
		q := r.points[(i+1)%len(r.points)]
		if p[1] > q[1] {
			p, q = q, p
		}
		sides[i] = side{p, q}
	}
	slices.SortFunc(sides, func(a, b side) int { return cmp.Compare(a.low[1], b.low[1]) })
	return sides
}

// extent returns the least and greatest x of the sum between two heights.
func (r rising) extent(low, high float64) (left, right float64) {
	left, right = math.Inf(1), math.Inf(-1)
	for i := range r {
		p, q := &r[i].low, &r[i].high
		if p[1] > high {
			break
		}
		if q[1] < low {
			continue
		}
		a, b := p[0], q[0]
		if p[1] < low {
			a = p[0] + (q[0]-p[0])*(low-p[1])/(q[1]-p[1])
		}
		if q[1] > high {
			b = p[0] + (q[0]-p[0])*(high-p[1])/(q[1]-p[1])
		}
		left = min(left, a, b)
		right = max(right, a, b)
	}
	return left, right
}

// line returns the range of x that the sum holds at a height: none outside it.
func (r rising) line(of *region, height float64) (left, right float64) {
	if height < of.y0 || height > of.y1 {
		return math.Inf(1), math.Inf(-1)
	}
	return r.extent(height, height)
}
