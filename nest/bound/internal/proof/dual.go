package proof

import (
	"math"
	"slices"
)

// A dual is a dual feasible function: from a share of the width, 0 to 1, to a
// weight, such that weights of shares that together are 1 at most are
// together 1 at most. It is not decreasing, and made of straight parts.
//
// The families are those of Fekete and Schepers, "New classes of fast lower
// bounds for bin packing problems", Mathematical Programming 91, 2001
// (doi 10.1007/s101070100243).
type dual struct {
	breaks []float64      // ascending, between 0 and 1
	parts  []linearWeight // before, between and after the breaks
	at     []float64      // weight at each break itself
	whole  []float64      // integral from 0 to each break
}

// linearWeight is a weight of base + slope * share.
type linearWeight struct{ base, slope float64 }

func (p linearWeight) integral(from, to float64) float64 {
	return float64((to - from) * (p.base + p.slope*(from+to)/2))
}

// slack is taken off shares before they are weighed, since layouts may
// overlap by a ten-millionth of the width at every contact: k pieces side by
// side have k+1 contacts, so each may gain (k+1)/k of that, 2 at most.
const slack = 2e-7

// rounding is how far a share may be below a break and count as equal to it.
const rounding = 1e-12

func newDual(breaks []float64, parts []linearWeight, at []float64) *dual {
	d := &dual{breaks: breaks, parts: parts, at: at}
	sum, from := 0.0, 0.0
	for i, b := range breaks {
		sum += parts[i].integral(from, b)
		d.whole = append(d.whole, sum)
		from = b
	}
	return d
}

// identity weighs a share as it is: the bound by area.
func identity() *dual { return newDual(nil, []linearWeight{{0, 1}}, nil) }

// rounded is U(e): shares below e count nothing, those above 1-e count for
// all. 0 < e <= 1/2.
func rounded(e float64) *dual {
	if e == 0.5 {
		return newDual([]float64{0.5}, []linearWeight{{0, 0}, {1, 0}}, []float64{0.5})
	}
	return newDual([]float64{e, 1 - e}, []linearWeight{{0, 0}, {0, 1}, {1, 0}}, []float64{e, 1 - e})
}

// stepped is u(k): of k+1 equal parts of the width, a piece uses up all that
// it reaches into; a share that is a whole number of parts counts as it is.
func stepped(k int) *dual {
	var breaks, at []float64
	parts := []linearWeight{{0, 0}}
	for j := 1; j <= k; j++ {
		b := float64(j) / float64(k+1)
		breaks, at = append(breaks, b), append(at, b)
		parts = append(parts, linearWeight{float64(j) / float64(k), 0})
	}
	return newDual(breaks, parts, at)
}

// counted is phi(e): of small shares, from e to 1/2, there are at most 1/e;
// a large one takes the places of as many as no longer fit beside it.
// 0 < e <= 1/2.
func counted(e float64) *dual {
	most := math.Floor(1/e + rounding)
	breaks, at := []float64{e}, []float64{1 / most}
	parts := []linearWeight{{0, 0}, {1 / most, 0}}
	if e < 0.5 {
		breaks, at = append(breaks, 0.5), append(at, 1/most)
	} else {
		parts = parts[:1]
	}
	places := math.Floor(0.5/e - rounding) // beside a share just above 1/2
	parts = append(parts, linearWeight{1 - places/most, 0})
	for j := places; j >= 1; j-- {
		if b := 1 - float64(j*e); b > 0.5+rounding {
			breaks, at = append(breaks, b), append(at, 1-j/most)
			parts = append(parts, linearWeight{1 - (j-1)/most, 0})
		}
	}
	return newDual(breaks, parts, at)
}

// weight is the weight of one share, in safety from the slack.
func (d *dual) weight(share float64) float64 {
	i, _ := slices.BinarySearch(d.breaks, share-slack)
	// Breaks before i are below the share by more than the slack.
	if i < len(d.breaks) && d.breaks[i] <= share+rounding {
		return d.at[i]
	}
	return d.parts[i].base + float64(d.parts[i].slope*share)
}

// mean is the mean weight of a share that goes evenly from a to b.
func (d *dual) mean(a, b float64) float64 {
	if math.Abs(b-a) < 1e-9 {
		return d.weight(min(a, b))
	}
	if len(d.breaks) > 0 {
		a, b = max(0, a-slack), max(0, b-slack)
		if a == b {
			return d.weight(0)
		}
	}
	return (d.upTo(b) - d.upTo(a)) / (b - a)
}

// upTo is the integral from 0 to a share.
func (d *dual) upTo(share float64) float64 {
	i, _ := slices.BinarySearch(d.breaks, share)
	if i == 0 {
		return d.parts[0].integral(0, share)
	}
	return d.whole[i-1] + d.parts[i].integral(d.breaks[i-1], share)
}

// mostData is the number of values, at most, that are taken from the outlines
// for e.
const mostData = 16

// duals lists the functions to try for the shares that occur.
func duals(shares []float64) []*dual {
	list := []*dual{identity()}
	edges := []float64{0.5, 1. / 3, 0.25, 0.2}
	var data []float64
	for _, s := range shares {
		// By a hair to the side on which the share itself counts for more.
		e := s - 2*slack
		if s > 0.5 {
			e = 1 - s + 2*slack
		}
		if e > 0.01 && e < 0.5 {
			data = append(data, e)
		}
	}
	slices.Sort(data)
	data = slices.CompactFunc(data, func(a, b float64) bool { return b-a < 1e-4 })
	for i := range min(mostData, len(data)) {
		edges = append(edges, data[i*len(data)/min(mostData, len(data))])
	}
	for _, e := range edges {
		list = append(list, rounded(e), counted(e))
	}
	for k := 2; k <= 12; k++ {
		list = append(list, stepped(k))
	}
	return list
}
