package tiling

import (
	"math"
	"slices"
)

// finest is the number of units, at most, for which sums are kept as bits.
const finest = 4096

// units holds the sides as whole numbers, so that sums carry no rounding, and
// equal rectangles as one kind.
type units struct {
	size          float64 // of one unit
	width, length int
	// slack is how far sums may miss and still be equal: 0 where the sides
	// have a common measure.
	slack  int
	kinds  []kind
	counts []int // of each kind
	kindOf []int // of each rectangle
	// exchanged says for each rectangle that its kind has x and y exchanged.
	exchanged []bool
	sums      [2]sums // of the sides that can show along x and y
}

// kind is a size, x and y, and how it may lie.
type kind struct {
	sides [2]int
	turns Turns
}

func newUnits(width, length float64, rects []Rect) *units {
	u := &units{}
	largest := max(width, length)
	size, common := commonMeasure(width, length, rects)
	if u.size = size; !common {
		u.size = largest / (1 << 44)
		u.slack = int(Accuracy * largest / u.size)
	}
	u.width, u.length = u.whole(width), u.whole(length)
	for _, r := range rects {
		u.add(kind{[2]int{u.whole(r.X), u.whole(r.Y)}, r.Turns})
	}
	for axis := range u.sums {
		u.sums[axis] = u.newSums(axis, common)
	}
	return u
}

func (u *units) whole(v float64) int { return int(math.Round(v / u.size)) }

func (u *units) add(k kind) {
	exchanged := k.turns == Both && k.sides[0] > k.sides[1]
	if exchanged {
		k.sides[0], k.sides[1] = k.sides[1], k.sides[0]
	}
	if k.turns == Both && k.sides[0] == k.sides[1] {
		k.turns = Upright
	}
	index := slices.Index(u.kinds, k)
	if index < 0 {
		index = len(u.kinds)
		u.kinds, u.counts = append(u.kinds, k), append(u.counts, 0)
	}
	u.counts[index]++
	u.kindOf, u.exchanged = append(u.kindOf, index), append(u.exchanged, exchanged)
}

// newSums prepares the sums of sides along an axis: 0 for x, 1 for y.
func (u *units) newSums(axis int, common bool) sums {
	sides := make([][]int, len(u.kinds))
	for i, k := range u.kinds {
		if k.turns != Quarter {
			sides[i] = append(sides[i], k.sides[axis])
		}
		if k.turns != Upright {
			sides[i] = append(sides[i], k.sides[1-axis])
		}
	}
	most := u.length
	if axis == 1 {
		most = u.width
	}
	switch {
	case common:
		return newBitSums(sides, most)
	case len(u.kindOf) <= mostListed:
		return newPairSums(sides, u.counts, u.slack, most)
	}
	return anySums{}
}

// commonMeasure finds a length of which all sides are multiples, if it is
// not too small: Euclid's algorithm with a tolerance.
func commonMeasure(width, length float64, rects []Rect) (float64, bool) {
	largest := max(width, length)
	measure := width
	for _, side := range allSides(length, rects) {
		for side > largest*1e-7 {
			measure, side = side, math.Abs(math.Remainder(measure, side))
		}
		if largest/measure > finest {
			return 0, false
		}
	}
	measure = width / math.Round(width/measure)
	for _, side := range append(allSides(length, rects), width) {
		if math.Abs(side-float64(measure*math.Round(side/measure))) > Accuracy*largest {
			return 0, false
		}
	}
	return measure, true
}

func allSides(length float64, rects []Rect) []float64 {
	sides := []float64{length}
	for _, r := range rects {
		sides = append(sides, r.X, r.Y)
	}
	return sides
}
