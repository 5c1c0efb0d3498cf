package search

import (
	"math/rand/v2"

	"ellwand/nest/internal/compact"
	"ellwand/nest/internal/model"
	"ellwand/nest/portable"
)

// Fitter makes room in stretches of a long strip: it lays the pieces of one on less
// length than they had. It belongs to one goroutine, and keeps what it knows of the
// shapes from stretch to stretch.
type Fitter struct {
	rng   *rand.Rand
	pairs *pairs
}

// NewFitter makes one for models of the same shapes. Those of one seed differ by their
// stream.
func NewFitter(m *model.Model, seed, stream uint64) *Fitter {
	return &Fitter{rng: rand.New(rand.NewPCG(seed, stream)), pairs: newPairs(m)}
}

// fitEffort is small: one stretch in several gives way, and there are many.
var fitEffort = effort{patience: 60, strikes: 1}

// Fit separates the pieces of a model of fixed length, in which some may overlap. It
// returns their spots and true, or false when it gives up; and the passes made.
func (f *Fitter) Fit(m *model.Model, spots []Spot, stop func() bool) (found []Spot, passes int, ok bool) {
	s := newState(m, f.rng)
	s.pairs = f.pairs
	s.load(spots, m.Length)
	ok = s.separate(fitEffort, stop, s.partWithin)
	return s.spots(), s.passes, ok
}

// Between a number, a small one as likely as a large one.
func (f *Fitter) Drawn(least, most float64) float64 {
	return portable.Geometric(least, most, f.rng.Float64())
}

// Share is a random number from 0 to 1.
func (f *Fitter) Share() float64 { return f.rng.Float64() }

// partWithin parts what overlaps by linear programs, where the length allows. It
// returns whether it succeeded; if not, the state is as before.
func (s *state) partWithin() bool {
	if s.pieces > compactMost {
		return false
	}
	before := s.spots()
	spots := before
	for range repairRounds {
		var ok bool
		if spots, ok = compact.Shorten(s.m, spots, compactReach*s.m.Width); !ok {
			break
		}
		s.load(spots, s.length)
		if s.total() == 0 {
			return true
		}
	}
	s.load(before, s.length)
	return false
}
