package proof

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// byPins bounds the length by the pieces that are pinned to an edge. Their
// place across the strip is known, so that along any line y they have known
// sections, which may not overlap: together they are no longer than the
// strip. Pieces that may be pinned to either edge lie on one line or the
// other at the same height from their edge, so together with those of both
// edges they are no longer than twice the strip.
func byPins(strip Strip, pieces []Piece) float64 {
	var low, high, either []pinned
	var heights []float64
	for _, p := range pieces {
		q, where := pin(p)
		switch where {
		case onlyLow:
			low = append(low, q)
		case onlyHigh:
			high = append(high, q)
		case lowOrHigh:
			either = append(either, q)
		default:
			continue
		}
		heights = append(heights, q.heights()...)
	}
	best := 0.0
	for _, y := range some(between(heights, strip.Width), mostLooks/(1+len(low)+len(high)+len(either))) {
		atLow, atHigh := sum(low, y, strip.Gap), sum(high, y, strip.Gap)
		best = max(best, atLow-strip.Gap, atHigh-strip.Gap)
		best = max(best, atLow+sum(high, strip.Width-y, strip.Gap)-strip.Gap)
		if y != strip.Width/2 { // else both lines are one
			best = max(best, (atLow+atHigh+sum(either, y, strip.Gap))/2-strip.Gap)
		}
	}
	return best
}

type edge int

const (
	nowhere edge = iota
	onlyLow
	onlyHigh
	lowOrHigh
)

// pinned holds, of each turn of a piece, the slabs at every height from the
// edge it is pinned to (their x is that height).
type pinned struct {
	copies int
	turns  [][]slab
}

// pin turns a piece so that heights run along x; it says to which edge it is
// pinned, in all of its turns.
func pin(p Piece) (pinned, edge) {
	if p.Tilts || len(p.Pins) != len(p.Outlines) {
		return pinned{}, nowhere
	}
	q := pinned{copies: p.Copies}
	isLow, isHigh := false, false
	for i, outline := range p.Outlines {
		box := outline.Bound()
		across := make(orb.Ring, len(outline))
		for j, c := range outline {
			across[j] = orb.Point{c[1] - box.Min[1], c[0]}
			if p.Pins[i] == High {
				across[j][0] = box.Max[1] - c[1]
			}
		}
		q.turns = append(q.turns, sections(across, 0))
		isLow, isHigh = isLow || p.Pins[i] == Low, isHigh || p.Pins[i] == High
		if p.Pins[i] == Free {
			return pinned{}, nowhere
		}
	}
	switch {
	case isLow && isHigh:
		return q, lowOrHigh
	case isLow:
		return q, onlyLow
	}
	return q, onlyHigh
}

func (q pinned) heights() []float64 {
	var list []float64
	for _, slabs := range q.turns {
		for _, s := range slabs {
			list = append(list, s.x0, s.x1)
		}
	}
	return list
}

// at is the least total section at a height, over the turns.
func (q pinned) at(y float64) float64 {
	least := math.Inf(1)
	for _, slabs := range q.turns {
		total := 0.0
		for _, s := range slabs {
			if s.x0 <= y && y < s.x1 {
				t := (y - s.x0) / (s.x1 - s.x0)
				total += float64((1-t)*s.first) + float64(t*s.last)
			}
		}
		least = min(least, total)
	}
	return least
}

// sum adds the sections of all copies at a height, each with its gap.
func sum(list []pinned, y, gap float64) float64 {
	total := 0.0
	for _, q := range list {
		if long := q.at(y); long > 0 {
			total += float64(float64(q.copies) * (long + gap))
		}
	}
	return total
}

// mostLooks is at how many sections of pieces the pins are looked at, some times what 50
// garments ask for (our own choice): all heights of thousands of pieces that differ took
// minutes. Each height proves a bound by itself.
const mostLooks = 2_000_000

// some of a list, at most so many but one at least, evenly.
func some[T any](list []T, most int) []T {
	most = max(1, most)
	if len(list) <= most {
		return list
	}
	out := make([]T, most)
	for k := range out {
		out[k] = list[k*len(list)/most]
	}
	return out
}

// between returns heights a little inside every stretch between the given
// ones, at both of its ends: between corners, sections change evenly, so they
// are longest there. Stretches shorter than a ten-thousandth of the width are
// passed over, and a thousandth of the others kept off, so that the tolerance
// of a layout, a ten-millionth, makes no difference.
func between(heights []float64, width float64) []float64 {
	slices.Sort(heights)
	var list []float64
	for i := 1; i < len(heights); i++ {
		from, to := heights[i-1], heights[i]
		if to-from < width*1e-4 {
			continue
		}
		inside := (to - from) / 1000
		list = append(list, from+inside, to-inside)
	}
	return list
}
