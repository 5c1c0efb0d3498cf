package search

import "slices"

// A layout that no longer gains is perturbed: stretched onto a longer strip,
// where a few pieces are exchanged, and gone on from as far as it leads. The
// shortest layout of the start is perturbed the next time (iterated local search:
// Lourenço, Martin, Stützle 2003, doi 10.1007/0-306-48056-5_11). Where nothing
// can be exchanged on a shorter strip, as after a minute of most sets, it is on a
// longer one; nest/MEASURED.md holds what was measured.
const (
	// perturbPatience is the number of passes without gain after which a layout
	// is perturbed: one or two attempts.
	perturbPatience = 2000
	// stretchLeast and stretchMost are between what the strip is made longer, as
	// shares of the length of the layout.
	stretchLeast = 0.005
	stretchMost  = 0.02
	// kicksMost is the largest number of kicks.
	kicksMost = 6
	// kickTries bounds the tries, of which one in five is made room for.
	kickTries = 20
)

// kickEffort is small: an exchange that is not soon made room for is taken
// back and another tried.
var kickEffort = effort{patience: 20, strikes: 1}

// isIdle reports that the layout at hand is to be perturbed.
func (r *Searcher) isIdle() bool {
	return r.s.passes-r.gained > perturbPatience || r.cameBack()
}

// cameBack reports that a perturbed layout has come to be the one it was again.
func (r *Searcher) cameBack() bool {
	return r.returning && r.length < r.shortest.length*(1+repairGain)
}

// perturb goes on from the shortest layout of this start, perturbed. When no
// exchange could be made it returns false, and the layout at hand is left for
// as many passes again.
func (r *Searcher) perturb(until float64) bool {
	before, length := r.s.spots(), r.s.length
	by := 1 + r.drawn(stretchLeast, stretchMost)
	longer := by * r.shortest.length
	wanted := int(r.drawn(1, kicksMost+1))
	spots, ok := r.kicked(stretched(r.shortest.spots, by), longer, wanted, until)
	r.gained = r.s.passes
	if !ok {
		r.s.load(before, length)
		return false
	}
	r.s.load(spots, longer)
	r.best, r.length, r.pool = spots, r.s.used(), r.pool[:0]
	r.returning, r.perturbed = true, true
	return true
}

// stretched moves spots apart along the strip, so that all of it has room.
func stretched(spots []Spot, by float64) []Spot {
	spots = slices.Clone(spots)
	for i := range spots {
		spots[i].X = float64(spots[i].X * by)
	}
	return spots
}

// kicked kicks a layout on a strip until so many kicks have been
// made room for. It returns false when none was.
func (r *Searcher) kicked(spots []Spot, length float64, wanted int, until float64) ([]Spot, bool) {
	made := 0
	for tries := kickTries; tries > 0 && made < wanted && !r.over(until); tries-- {
		r.s.resetWeights()
		r.s.load(spots, length)
		if r.s.kick() && r.separate(kickEffort, until) {
			spots = r.s.spots()
			made++
		}
	}
	return spots, made > 0
}
