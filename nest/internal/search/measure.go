package search

// load puts the pieces on the spots, on a strip of the given length, and
// measures every overlap anew. Spots past the end are drawn back onto it.
func (s *state) load(spots []Spot, length float64) {
	s.length = length
	for i, at := range spots { // before any piece takes another shape
		if group := s.m.Pieces[i].Group; group != 0 {
			s.direction[group] = s.m.Shapes[at.Shape].Direction
		}
	}
	for i, at := range spots {
		s.bodies[i] = s.bodyAt(s.clamp(i, at))
	}
	s.rebuild()
}

func (s *state) rebuild() {
	s.grid.reset(s.bodies, s.cellSize, s.length, s.m.Width)
	for k := range s.overlaps.pairs {
		s.overlaps.pairs[k].severity = 0
	}
	s.overlaps.sweep()
	clear(s.loss)
	for i := 0; i < s.pieces; i++ {
		s.measure(i)
	}
}

// measure brings the severities of piece i up to date.
func (s *state) measure(i int) {
	for _, c := range s.overlaps.rows[i] {
		if m := &s.overlaps.pairs[c.at]; m.severity != 0 {
			s.loss[c.other] -= float64(m.severity)
			m.severity = 0
		}
	}
	s.loss[i] = 0
	b := &s.bodies[i]
	s.scratch.near = s.gather(i, int(b.shape), b.x, b.y, 0, s.scratch.near[:0])
	for k := range s.scratch.near {
		v := &s.scratch.near[k]
		depth := v.pair.depth(b.x-v.x, b.y-v.y)
		if depth <= 0 {
			continue
		}
		j := int(v.index)
		d := float32(depth * s.factor[i] * s.factor[j])
		s.overlaps.between(int32(i), v.index).severity = d
		s.loss[i] += float64(d)
		s.loss[j] += float64(d)
	}
}

// place moves piece i.
func (s *state) place(i int, at Spot) {
	s.grid.remove(i)
	s.bodies[i] = s.bodyAt(at)
	s.grid.add(i, &s.bodies[i])
	if group := s.m.Pieces[i].Group; group != 0 {
		s.direction[group] = s.m.Shapes[at.Shape].Direction
	}
	s.measure(i)
}
