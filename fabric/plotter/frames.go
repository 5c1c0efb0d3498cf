package plotter

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// span is how far a shape reaches in one direction, mm.
type span struct{ low, high float64 }

// spans of shapes along (axis 0) or across the plane (axis 1).
func spans(shapes []orb.Ring, axis int) []span {
	out := make([]span, len(shapes))
	for i, ring := range shapes {
		box := ring.Bound()
		out[i] = span{box.Min[axis], box.Max[axis]}
	}
	return out
}

// frameCost of one frame more, in shapes cut through [source.OwnChoice].
const frameCost = 2.0

// frames cuts a length into stretches no longer than given, where the fewest
// shapes are cut through; a frame more is made for that only where it saves
// more of them than it costs. It finds the best cuts of all, by going through
// the places to cut from the left (dynamic programming; Bellman, 1957).
func frames(shapes []span, length, longest, each float64) []float64 {
	places := placesToCut(shapes, length, longest)
	cost := make([]float64, len(places))
	from := make([]int, len(places))
	for i := 1; i < len(places); i++ {
		cost[i] = math.Inf(1)
		through := 0.0
		if i < len(places)-1 {
			through = cutThrough(shapes, places[i])
		}
		for j := i - 1; j >= 0 && places[i]-places[j] <= longest+1e-6; j-- {
			if c := cost[j] + through + each; c < cost[i] {
				cost[i], from[i] = c, j
			}
		}
	}
	var out []float64
	for i := len(places) - 1; i > 0; i = from[i] {
		out = append(out, places[i])
	}
	out = append(out, 0)
	slices.Reverse(out)
	return out
}

// placesToCut are the ends of the shapes, the ends of frames that are as long
// as can be, so that no more are made than are needed, and a place every
// 50 mm.
func placesToCut(shapes []span, length, longest float64) []float64 {
	places := []float64{0}
	for _, step := range []float64{min(50, longest), longest} {
		for x := step; x < length; x += step {
			places = append(places, x)
		}
	}
	for _, s := range shapes {
		for _, x := range []float64{s.low, s.high} {
			if x > 0 && x < length {
				places = append(places, x)
			}
		}
	}
	return sortedApart(append(places, length))
}

// cutThrough counts the shapes on both sides of a cut.
func cutThrough(shapes []span, x float64) float64 {
	n := 0.0
	for _, s := range shapes {
		if s.low < x-1e-6 && s.high > x+1e-6 {
			n++
		}
	}
	return n
}

// sortedApart sorts places and leaves out those that are the same.
func sortedApart(places []float64) []float64 {
	slices.Sort(places)
	return slices.CompactFunc(places, func(a, b float64) bool { return math.Abs(a-b) < 1e-6 })
}
