package pieces

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// box holds a segment.
type box struct{ minX, minY, maxX, maxY float64 }

func boxOf(a, b orb.Point) box {
	return box{math.Min(a[0], b[0]), math.Min(a[1], b[1]), math.Max(a[0], b[0]), math.Max(a[1], b[1])}
}

// eachNearPair visits every pair of boxes that come within the margin of each
// other, once, the smaller number first in neither order in particular.
func eachNearPair(boxes []box, margin float64, visit func(i, j int)) {
	order := make([]int, len(boxes))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(i, j int) int { return compare(boxes[i].minX, boxes[j].minX) })
	for k, i := range order {
		a := boxes[i]
		for _, j := range order[k+1:] {
			b := boxes[j]
			if b.minX > a.maxX+margin {
				break
			}
			if a.minY <= b.maxY+margin && b.minY <= a.maxY+margin {
				visit(i, j)
			}
		}
	}
}

func compare(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}
