package layout

import (
	"cmp"
	"slices"
)

// OverlapArea returns the area that two regions have in common.
//
// Both are cut into slabs by an upright line through every corner. Within a
// slab each is a stack of trapezoids, and what two trapezoids share is the
// integral of a concave function made of at most three straight parts. An
// edge that is misplaced by rounding changes the area by no more than the
// rounding times its length, so contacts of any kind are safe.
func (p *Region) OverlapArea(q *Region) float64 {
	low, high := max(p.box.Min[0], q.box.Min[0]), min(p.box.Max[0], q.box.Max[0])
	if low >= high || p.box.Min[1] >= q.box.Max[1] || q.box.Min[1] >= p.box.Max[1] {
		return 0
	}
	cuts := slabCuts(p, q, low, high)
	sweepP, sweepQ := sweep{rest: p.rightward}, sweep{rest: q.rightward}
	area := 0.0
	for i := 1; i < len(cuts); i++ {
		x0, x1 := cuts[i-1], cuts[i]
		spansP, spansQ := sweepP.advance(x0, x1), sweepQ.advance(x0, x1)
		for a := 0; a+1 < len(spansP); a += 2 {
			for b := 0; b+1 < len(spansQ); b += 2 {
				area += float64((x1 - x0) * sharedHeight(spansP[a], spansP[a+1], spansQ[b], spansQ[b+1]))
			}
		}
	}
	return area
}

// slabCuts returns the sorted x of all corners between low and high, and
// these two.
func slabCuts(p, q *Region, low, high float64) []float64 {
	cuts := []float64{low, high}
	for _, s := range []*Region{p, q} {
		for _, e := range s.edges {
			if e.a[0] > low && e.a[0] < high {
				cuts = append(cuts, e.a[0])
			}
		}
	}
	slices.Sort(cuts)
	return slices.Compact(cuts)
}

// rail is an edge within a slab: its y at the two sides.
type rail struct{ left, right float64 }

// sweep follows the edges of a shape from slab to slab.
type sweep struct {
	rest   []segment // not reached yet, by their left ends
	active []segment
	rails  []rail
}

// advance returns the edges that cross the slab, from the lowest up: they
// bound the inside in pairs. The result is good until the next call.
func (s *sweep) advance(x0, x1 float64) []rail {
	for len(s.rest) > 0 && s.rest[0].a[0] <= x0 {
		s.active = append(s.active, s.rest[0])
		s.rest = s.rest[1:]
	}
	s.active = slices.DeleteFunc(s.active, func(e segment) bool { return e.b[0] <= x0 })
	s.rails = s.rails[:0]
	for _, e := range s.active {
		s.rails = append(s.rails, rail{e.heightAt(x0), e.heightAt(x1)})
	}
	slices.SortFunc(s.rails, func(a, b rail) int { return cmp.Compare(a.left+a.right, b.left+b.right) })
	return s.rails
}

// heightAt returns the y of an edge, left end first, at x.
func (e segment) heightAt(x float64) float64 {
	t := min(1, max(0, (x-e.a[0])/(e.b[0]-e.a[0])))
	return float64((1-t)*e.a[1]) + float64(t*e.b[1])
}

// sharedHeight returns the mean height that two trapezoids share, each
// between a lower and an upper rail of one slab.
func sharedHeight(lowP, highP, lowQ, highQ rail) float64 {
	height := func(t float64) float64 {
		return min(highP.at(t), highQ.at(t)) - max(lowP.at(t), lowQ.at(t))
	}
	if max(highP.left, highP.right) <= min(lowQ.left, lowQ.right) ||
		max(highQ.left, highQ.right) <= min(lowP.left, lowP.right) {
		return 0
	}
	stops := [4]float64{0, crossing(highP, highQ), crossing(lowP, lowQ), 1}
	if stops[1] > stops[2] {
		stops[1], stops[2] = stops[2], stops[1]
	}
	mean := 0.0
	for i := 1; i < 4; i++ {
		mean += float64((stops[i] - stops[i-1]) * positiveMean(height(stops[i-1]), height(stops[i])))
	}
	return mean
}

func (r rail) at(t float64) float64 { return float64((1-t)*r.left) + float64(t*r.right) }

// crossing returns where two rails cross, from 0 to 1, or 0.
func crossing(a, b rail) float64 {
	left, right := a.left-b.left, a.right-b.right
	if (left < 0) == (right < 0) || left == right {
		return 0
	}
	return min(1, max(0, left/(left-right)))
}

// positiveMean returns the mean of the positive part of a value that goes
// evenly from a to b.
func positiveMean(a, b float64) float64 {
	switch {
	case a <= 0 && b <= 0:
		return 0
	case a >= 0 && b >= 0:
		return (a + b) / 2
	}
	top := max(a, b)
	return top * top / (2 * (top - min(a, b)))
}
