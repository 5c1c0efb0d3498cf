package tiling

import (
	"cmp"
	"slices"
)

// sums answers whether some of the remaining rectangles have sides that add
// up to a target. It may answer yes where there are none, never no where
// there are some.
type sums interface {
	// remain tells what is left: of each kind, how many.
	remain(counts []int)
	reach(target int) bool
}

// bitSums keeps the set of all sums as bits: sum s is reached when bit s is
// set. For sides with a common measure.
type bitSums struct {
	sides [][]int // of each kind, the sides that it may show
	set   []uint64
	spare []uint64
}

func newBitSums(sides [][]int, most int) *bitSums {
	words := most/64 + 1
	return &bitSums{sides: sides, set: make([]uint64, words), spare: make([]uint64, words)}
}

func (b *bitSums) remain(counts []int) {
	clear(b.set)
	b.set[0] = 1
	for kind, count := range counts {
		for range count {
			copy(b.spare, b.set)
			for _, side := range b.sides[kind] {
				orShifted(b.set, b.spare, side)
			}
		}
	}
}

// orShifted sets in set every bit of from, moved up by shift.
func orShifted(set, from []uint64, shift int) {
	words, bits := shift/64, uint(shift%64)
	for i := len(set) - 1; i >= words; i-- {
		moved := from[i-words] << bits
		if bits > 0 && i > words {
			moved |= from[i-words-1] >> (64 - bits)
		}
		set[i] |= moved
	}
}

func (b *bitSums) reach(target int) bool {
	return target >= 0 && target/64 < len(b.set) && b.set[target/64]>>(target%64)&1 == 1
}

const (
	// mostListed is the number of rectangles for which pairSums lists sums:
	// 3^11 in each half.
	mostListed = 22
	// mostSubsets of one target are kept; with more, the answer is yes.
	mostSubsets = 2000
)

// pairSums keeps, for every target that was asked, the subsets that add up to
// it within the slack. They are found by halves: all sums of the one half in
// ascending order against all of the other in descending order (Horowitz,
// Sahni, "Computing partitions with applications to the knapsack problem",
// Journal of the ACM 21, 1974). For sides without a common measure, where
// few subsets add up to anything in particular.
type pairSums struct {
	halves [2][]subset
	slack  int
	memo   map[int][]uint32 // nil value: too many
	first  []int            // of each kind, its first bit
	left   uint32           // bits of the rectangles that remain
}

type subset struct {
	sum  int
	mask uint32
}

func newPairSums(sides [][]int, counts []int, slack, most int) *pairSums {
	p := &pairSums{slack: slack, memo: map[int][]uint32{}, first: make([]int, len(counts))}
	var single [][]int
	for kind, count := range counts {
		p.first[kind] = len(single)
		for range count {
			single = append(single, sides[kind])
		}
	}
	mid := len(single) / 2
	p.halves[0] = subsets(single[:mid], 0, most+slack)
	p.halves[1] = subsets(single[mid:], mid, most+slack)
	return p
}

// subsets lists the sums up to most of every choice of sides, ascending.
func subsets(single [][]int, bit, most int) []subset {
	all := []subset{{}}
	for i, sides := range single {
		for _, s := range all[:len(all):len(all)] {
			for _, side := range sides {
				if s.sum+side <= most {
					all = append(all, subset{s.sum + side, s.mask | 1<<(bit+i)})
				}
			}
		}
	}
	slices.SortFunc(all, func(a, b subset) int { return cmp.Compare(a.sum, b.sum) })
	return all
}

func (p *pairSums) remain(counts []int) {
	p.left = 0
	for kind, count := range counts {
		p.left |= (1<<count - 1) << p.first[kind]
	}
}

func (p *pairSums) reach(target int) bool {
	masks, ok := p.memo[target]
	if !ok {
		masks = p.find(target)
		p.memo[target] = masks
	}
	if masks == nil {
		return true
	}
	for _, mask := range masks {
		if mask&^p.left == 0 {
			return true
		}
	}
	return false
}

// find lists the subsets that add up to the target.
func (p *pairSums) find(target int) []uint32 {
	masks := []uint32{}
	low, high := p.halves[0], p.halves[1]
	top := len(high) - 1
	for _, a := range low {
		for top >= 0 && a.sum+high[top].sum > target+p.slack {
			top--
		}
		for i := top; i >= 0 && a.sum+high[i].sum >= target-p.slack; i-- {
			masks = append(masks, a.mask|high[i].mask)
			if len(masks) > mostSubsets {
				return nil
			}
		}
	}
	return masks
}

// anySums knows nothing.
type anySums struct{}

func (anySums) remain([]int)   {}
func (anySums) reach(int) bool { return true }
