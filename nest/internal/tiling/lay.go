package tiling

// lay puts a choice at the left of a gap and writes the skyline of the next
// depth.
func (s *search) lay(depth, gap, index int) {
	c := s.choices[index]
	sky, next := s.skylines[depth], s.skylines[depth+1][:0]
	st := sky[gap]
	top := step{at: st.at, width: c.across, level: st.level + c.up, last: index, base: st.level, single: true}
	if s.equal(c.across, st.width) {
		top.width = st.width
	}
	next = append(next, sky[:gap]...)
	next = s.join(next, top)
	if rest := st.width - top.width; rest > 0 {
		next = append(next, step{at: st.at + top.width, width: rest, level: st.level, last: -1})
	}
	for _, after := range sky[gap+1:] {
		next = s.join(next, after)
	}
	s.skylines[depth+1] = next
	s.laid = append(s.laid, laid{index, st.at, st.level})
	s.counts[c.kind]--
	s.left--
}

// join appends a step, as one with the last where the two are level.
func (s *search) join(sky []step, st step) []step {
	if len(sky) == 0 || !s.equal(sky[len(sky)-1].level, st.level) {
		return append(sky, st)
	}
	before := &sky[len(sky)-1]
	before.width += st.width
	before.last, before.base, before.single = st.last, st.base, false
	return sky
}

func (s *search) unlay(kind int) {
	s.laid = s.laid[:len(s.laid)-1]
	s.counts[kind]++
	s.left++
}
