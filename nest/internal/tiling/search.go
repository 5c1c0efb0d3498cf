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
	s.skylines = make([][]step, s.left+1)
	for i := range s.skylines {
		s.skylines[i] = make([]step, 0, s.left+2)
	}
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

// run searches. None is said only if the limit of steps kept nothing out.
func (s *search) run() Outcome {
	outcome := s.fill(0)
	if outcome == None && s.cut {
		return GaveUp
	}
	return outcome
}

// fill fills the lowest gap of the skyline of a depth.
func (s *search) fill(depth int) Outcome {
	if s.left == 0 {
		return Tiled
	}
	if s.nodes--; s.nodes < 0 || s.nodes%1024 == 0 && s.ctx.Err() != nil {
		s.nodes = -1
		return GaveUp
	}
	sky := s.skylines[depth]
	s.sumsAcross.remain(s.counts)
	s.sumsUp.remain(s.counts)
	if !s.hopeful(sky) {
		return None
	}
	gap := lowest(sky)
	for flush := 3; flush >= 0; flush-- {
		for i, c := range s.choices {
			if s.counts[c.kind] == 0 || s.flush(sky, gap, c) != flush || !s.suits(sky, gap, i) {
				continue
			}
			s.lay(depth, gap, i)
			if len(s.skylines[depth+1]) > s.steps {
				s.cut = true
				s.unlay(c.kind)
				continue
			}
			outcome := s.fill(depth + 1)
			if outcome != None {
				return outcome
			}
			s.unlay(c.kind)
		}
	}
	return None
}

// flush counts the ends of steps that a choice saves: it fills the gap, or
// ends level with the step before or after. The skyline begins and ends as
// one step, and each choice adds one less what it saves, so in a tiling each
// saves one on average. By chance that is rare; so those are tried first.
func (s *search) flush(sky []step, gap int, c choice) int {
	st, count := sky[gap], 0
	if gap > 0 && s.equal(sky[gap-1].level, st.level+c.up) || gap == 0 && s.equal(s.up, st.level+c.up) {
		count++
	}
	if s.equal(st.width, c.across) {
		count++
		if gap+1 < len(sky) && s.equal(sky[gap+1].level, st.level+c.up) {
			count++
		}
	}
	return count
}

// hopeful applies the cuts: every step must be able to grow to the top, every
// gap between two higher steps to be filled, and every rectangle that remains
// must find room.
func (s *search) hopeful(sky []step) bool {
	for i, st := range sky {
		if s.up-st.level > s.slack && !s.sumsUp.reach(s.up-st.level) {
			return false
		}
		isGap := (i == 0 || sky[i-1].level > st.level) && (i == len(sky)-1 || sky[i+1].level > st.level)
		if isGap && s.up-st.level > s.slack && !s.sumsAcross.reach(st.width) {
			return false
		}
	}
	for kind, count := range s.counts {
		if count > 0 && !s.finds(sky, kind) {
			return false
		}
	}
	return true
}

// finds reports whether a rectangle that remains has room above the skyline
// in one of its turns.
func (s *search) finds(sky []step, kind int) bool {
	for _, c := range s.turns[kind] {
		room := 0
		for _, st := range sky {
			if st.level+c.up > s.up+s.slack {
				room = 0
				continue
			}
			if room += st.width; room >= c.across-s.slack {
				return true
			}
		}
	}
	return false
}

// suits reports whether a choice may stand at the left of a gap.
//
// Two rectangles that together make a larger one may be exchanged, so they
// are tried in one order only, side by side and one on the other. Of all
// tilings that differ by exchanges, the first in the order of choices is
// kept by both rules.
func (s *search) suits(sky []step, gap, index int) bool {
	c, st := s.choices[index], sky[gap]
	if c.across > st.width+s.slack || c.up > s.up-st.level+s.slack {
		return false
	}
	if st.single && s.equal(st.width, c.across) && index < st.last {
		return false
	}
	if gap == 0 {
		return true
	}
	beside := sky[gap-1]
	sameRow := beside.last >= 0 && s.equal(beside.base, st.level) && s.equal(beside.level, st.level+c.up)
	return !sameRow || index >= beside.last
}

func (s *search) equal(a, b int) bool { return a-b <= s.slack && b-a <= s.slack }

// positions hands the places out to the rectangles.
func (s *search) positions(u *units) []Position {
	places := make([][]Position, len(s.counts))
	for _, l := range s.laid {
		c := s.choices[l.choice]
		p := Position{X: float64(l.level) * u.size, Y: float64(l.at) * u.size, Quarter: c.quarter}
		if s.swapped {
			p.X, p.Y = p.Y, p.X
		}
		places[c.kind] = append(places[c.kind], p)
	}
	out := make([]Position, len(u.kindOf))
	for i, kind := range u.kindOf {
		out[i] = places[kind][0]
		out[i].Quarter = out[i].Quarter != u.exchanged[i]
		places[kind] = places[kind][1:]
	}
	return out
}
