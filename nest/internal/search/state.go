// Package search makes layouts short: it fixes the length of the strip, lets
// pieces overlap, and removes the overlap by local search with memory (guided
// local search: Umetani et al. 2009, doi 10.1111/j.1475-3995.2009.00707.x).
package search

import (
	"math/rand/v2"

	"ellwand/nest/internal/model"
)

// state is a layout that may overlap, with the overlaps of every pair.
type state struct {
	m      *model.Model
	rng    *rand.Rand
	length float64
	// bodies of the pieces, then of the fixed shapes.
	bodies   []body
	pieces   int
	overlaps overlaps
	// loss of each body: the sum of its severities.
	loss []float64
	// direction of each group of pieces.
	direction map[int]int
	grid      grid
	cellSize  float64
	factor    []float64
	pairs     *pairs
	scratch   scratch
	passes    int // made so far
}

func newState(m *model.Model, rng *rand.Rand) *state {
	n := len(m.Pieces) + len(m.Fixed)
	s := &state{
		m: m, rng: rng, pieces: len(m.Pieces),
		bodies:    make([]body, n),
		overlaps:  newOverlaps(n),
		loss:      make([]float64, n),
		direction: map[int]int{},
		factor:    make([]float64, n),
		pairs:     newPairs(m),
	}
	for i, p := range m.Pieces {
		shape := &m.Shapes[p.Shapes[0]]
		s.cellSize += (shape.HalfX + shape.HalfY) / float64(s.pieces)
		s.factor[i] = m.Bases[shape.Base].Factor
	}
	for k, f := range m.Fixed {
		i := s.pieces + k
		s.factor[i] = m.Bases[m.Shapes[f.Shape].Base].Factor
		s.bodies[i] = s.bodyAt(f)
	}
	return s
}

func (s *state) bodyAt(at Spot) body {
	shape := &s.m.Shapes[at.Shape]
	return body{at.X, at.Y, shape.HalfX, shape.HalfY, int32(at.Shape)}
}

func (s *state) spot(i int) Spot {
	b := &s.bodies[i]
	return Spot{Shape: int(b.shape), X: b.x, Y: b.y}
}

func (s *state) spots() []Spot {
	out := make([]Spot, s.pieces)
	for i := range out {
		out[i] = s.spot(i)
	}
	return out
}

// total severity over all pairs. It is exactly zero when nothing overlaps.
func (s *state) total() float64 {
	var sum float64
	for i := 0; i < s.pieces; i++ {
		sum += s.outside(i)
		if s.loss[i] == 0 {
			continue
		}
		for _, c := range s.overlaps.rows[i] {
			if int(c.other) > i {
				sum += float64(s.overlaps.pairs[c.at].severity)
			}
		}
	}
	return sum
}

// outside is how far piece i hangs over an end of the strip: 0 but for pieces
// on a lattice that has no place on a strip as short as this.
func (s *state) outside(i int) float64 {
	b := &s.bodies[i]
	over := max(b.hx-b.x, b.x+b.hx-s.length)
	if over <= 1e-6*s.m.Width {
		return 0
	}
	return over
}

// used is the length that the pieces take.
func (s *state) used() float64 {
	most := 0.0
	for i := 0; i < s.pieces; i++ {
		most = max(most, s.bodies[i].x+s.bodies[i].hx)
	}
	return most
}

// depths returns how deeply each piece overlaps others.
func (s *state) depths() []float64 {
	out := make([]float64, s.pieces)
	for i := range out {
		for _, c := range s.overlaps.rows[i] {
			v := float64(s.overlaps.pairs[c.at].severity)
			out[i] = max(out[i], v/(s.factor[i]*s.factor[c.other]))
		}
	}
	return out
}
