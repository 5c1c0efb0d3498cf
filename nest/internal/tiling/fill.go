package tiling

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
	if s.nodes--; s.nodes < 0 || s.nodes%64 == 0 && s.ctx.Err() != nil {
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
