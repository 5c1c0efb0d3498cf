package bound

import (
	"math"
	"math/rand/v2"
	"testing"

	"ellwand/nest/layout"

	"github.com/stretchr/testify/require"
)

// onLattice binds some of the pieces of a jigsaw to lattices on which they lie
// in their first turn, and in any other wherever it may be.
func onLattice(p layout.Problem, rng *rand.Rand) layout.Problem {
	items := make([]layout.Item, len(p.Items))
	for i, it := range p.Items {
		it.Turns = append([]layout.Turn(nil), it.Turns...)
		if rng.IntN(3) > 0 {
			it.PeriodX = 10 + 60*rng.Float64()
		}
		if rng.IntN(3) == 0 && it.Turns[0].Pin == layout.PinNone {
			it.PeriodY = 10 + 60*rng.Float64()
		}
		for k := range it.Turns[1:] {
			it.Turns[k+1].OffsetX, it.Turns[k+1].OffsetY = 100*rng.Float64(), 100*rng.Float64()
		}
		items[i] = it
	}
	p.Items = items
	return p
}

// TestBoundOfQueueOnLattice: boxes that cannot pass each other have, on a
// lattice, the optimum that trying every order and every turn finds.
func TestBoundOfQueueOnLattice(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 3))
	for n := range 300 {
		p := layout.Problem{Width: 100, Gap: []float64{0, 3}[rng.IntN(2)]}
		period := 20 + 40*rng.Float64()
		for range 2 + rng.IntN(4) {
			at, long := 50*(rng.Float64()-0.5), 10+60*rng.Float64()
			box := item("box", oblong(at, 0, long, 51+20*rng.Float64()), 1)
			if rng.IntN(4) > 0 {
				box.PeriodX, box.Turns[0].OffsetX = period, period*rng.Float64()
				if rng.IntN(2) == 0 {
					box.Turns = append(box.Turns, layout.Turn{Degrees: 180, OffsetX: period * rng.Float64()})
				}
			}
			p.Items = append(p.Items, box)
		}
		p.Items[0].Turns[0].OffsetX, p.Items[0].PeriodX = 0, period
		require.InDelta(t, shortestQueue(p, 0, -p.Gap), Length(p), 1e-3, "case %d", n)
	}
}

// shortestQueue lays the pieces that are not in the set one behind the other,
// from an end on, in every order and turn, each as soon as its lattice lets it.
func shortestQueue(p layout.Problem, laid int, end float64) float64 {
	best := math.Inf(1)
	for i, it := range p.Items {
		if laid>>i&1 == 1 {
			continue
		}
		for _, turn := range it.Turns {
			box := layout.Turned(it.Outline, turn.Degrees, turn.Mirrored).Bound()
			x := end + p.Gap - box.Min[0]
			if it.PeriodX > 0 {
				x = turn.OffsetX + it.PeriodX*math.Ceil((x-turn.OffsetX)/it.PeriodX-1e-9)
			}
			best = min(best, shortestQueue(p, laid|1<<i, x+box.Max[0]))
		}
	}
	if math.IsInf(best, 1) {
		return end
	}
	return best
}
