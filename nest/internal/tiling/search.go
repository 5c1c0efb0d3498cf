package tiling

import (
	"cmp"
	"context"
	"math/rand/v2"
	"slices"
)

// limits are the steps that the skyline may have in the searches that take
// turns; noLimit stands for all. Cut-up rectangles are nearly always found
// with a short skyline, and there are far fewer of those: with them, twenty
// rectangles of whole sides and free turns take 0.1 s on average, and without
// them half of such sets are not found in 5 s.
var limits = []int{3, 4, 5, 6, noLimit}

const noLimit = 1 << 30

// orders is the number of searches before the first limit comes again: each
// limit along y and along x. From then on the order of choices is shuffled.
var orders = 2 * len(limits)

// search is one depth-first search. The skyline runs along one axis,
// "across"; rectangles grow from it "up", along the other.
type search struct {
	ctx        context.Context
	across, up int
	slack      int
	swapped    bool // across is x
	choices    []choice
	turns      [][]choice // of each kind
	counts     []int      // remaining, of each kind
	sumsAcross sums
	sumsUp     sums
	left       int // rectangles that remain
	nodes      int
	steps      int  // that the skyline may have
	cut        bool // whether that kept anything from being tried
	laid       []laid
	skylines   [][]step // one a depth
}

// choice is a kind of rectangle in one of its turns.
type choice struct {
	kind       int
	across, up int
	quarter    bool
}

// laid is a choice and where it lies.
type laid struct {
	choice    int
	at, level int
}

func newSearch(ctx context.Context, u *units, round int) *search {
	s := &search{ctx: ctx, across: u.width, up: u.length, slack: u.slack, swapped: round%2 == 1, left: len(u.kindOf)}
	s.sumsUp, s.sumsAcross = u.sums[0], u.sums[1]
	if s.swapped {
		s.across, s.up = s.up, s.across
		s.sumsAcross, s.sumsUp = s.sumsUp, s.sumsAcross
	}
	s.counts = slices.Clone(u.counts)
	s.addChoices(u)
	long := func(c choice) int { return max(c.across, c.up) }
	slices.SortStableFunc(s.choices, func(a, b choice) int {
		return cmp.Or(cmp.Compare(long(b), long(a)), cmp.Compare(b.across, a.across))
	})
	if round >= orders {
		rng := rand.New(rand.NewPCG(uint64(round), 0))
		rng.Shuffle(len(s.choices), func(i, j int) { s.choices[i], s.choices[j] = s.choices[j], s.choices[i] })
	}
	s.steps = limits[round/2%len(limits)]
	// Each grows as it is needed: of 10,000 rectangles, room for all took 4.8 GB.
	s.skylines = make([][]step, s.left+1)
	s.skylines[0] = append(s.skylines[0], step{width: s.across, last: -1})
	return s
}

// addChoices lists every kind in each of its turns.
func (s *search) addChoices(u *units) {
	s.turns = make([][]choice, len(u.kinds))
	for index, kind := range u.kinds {
		for _, quarter := range []bool{false, true} {
			if quarter && kind.turns == Upright || !quarter && kind.turns == Quarter {
				continue
			}
			c := choice{kind: index, up: kind.sides[0], across: kind.sides[1], quarter: quarter}
			if quarter != s.swapped {
				c.up, c.across = c.across, c.up
			}
			s.choices = append(s.choices, c)
			s.turns[index] = append(s.turns[index], c)
		}
	}
}

func (s *search) equal(a, b int) bool { return a-b <= s.slack && b-a <= s.slack }
