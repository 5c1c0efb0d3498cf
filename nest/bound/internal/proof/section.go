package proof

import (
	"slices"

	"github.com/paulmach/orb"
)

// slab is one connected part of the upright sections of an outline, over a
// stretch of x: their length goes evenly from first to last.
type slab struct {
	x0, x1      float64
	first, last float64
}

type rail struct{ left, right float64 }

// side of an outline, its left end first.
type side [2]orb.Point

// sections cuts an outline into slabs at every corner. With a gap, each
// section is lengthened by half of it at both ends: what no other piece so
// lengthened may use. Where two sections of one outline are nearer than the
// gap, the ends between them stay, so that they do not count twice.
func sections(ring orb.Ring, gap float64) []slab {
	edges, cuts := rightward(ring)
	var (
		slabs  []slab
		active []side
		rails  []rail
	)
	for i := 1; i < len(cuts); i++ {
		x0, x1 := cuts[i-1], cuts[i]
		for len(edges) > 0 && edges[0][0][0] <= x0 {
			active, edges = append(active, edges[0]), edges[1:]
		}
		active = slices.DeleteFunc(active, func(e side) bool { return e[1][0] <= x0 })
		rails = rails[:0]
		for _, e := range active {
			rails = append(rails, rail{heightAt(e, x0), heightAt(e, x1)})
		}
		slices.SortFunc(rails, func(a, b rail) int {
			if a.left+a.right < b.left+b.right {
				return -1
			}
			return 1
		})
		for j := 0; j+1 < len(rails); j += 2 {
			more := 0.0
			if j == 0 || apart(rails[j-1], rails[j]) >= gap {
				more += gap / 2
			}
			if j+2 >= len(rails) || apart(rails[j+1], rails[j+2]) >= gap {
				more += gap / 2
			}
			low, high := rails[j], rails[j+1]
			slabs = append(slabs, slab{x0, x1, max(0, high.left-low.left) + more, max(0, high.right-low.right) + more})
		}
	}
	return slabs
}

func apart(low, high rail) float64 { return min(high.left-low.left, high.right-low.right) }

// rightward returns the edges that are not upright, left end first and by
// their left ends, and the sorted x of all corners.
func rightward(ring orb.Ring) (edges []side, cuts []float64) {
	edges, cuts = make([]side, 0, len(ring)), make([]float64, 0, len(ring))
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		cuts = append(cuts, a[0])
		if a[0] > b[0] {
			a, b = b, a
		}
		if a[0] < b[0] {
			edges = append(edges, side{a, b})
		}
	}
	slices.SortFunc(edges, func(e, f side) int {
		switch {
		case e[0][0] < f[0][0]:
			return -1
		case e[0][0] > f[0][0]:
			return 1
		}
		return 0
	})
	slices.Sort(cuts)
	return edges, slices.Compact(cuts)
}

func heightAt(e side, x float64) float64 {
	t := min(1, max(0, (x-e[0][0])/(e[1][0]-e[0][0])))
	return float64((1-t)*e[0][1]) + float64(t*e[1][1])
}

// weigh is the integral over x of the weights of all sections, up to a limit
// of x.
func weigh(slabs []slab, d *dual, width, limit float64) float64 {
	sum := 0.0
	for _, s := range slabs {
		if s.x0 >= limit {
			continue
		}
		if s.x1 > limit {
			t := (limit - s.x0) / (s.x1 - s.x0)
			s.x1, s.last = limit, float64((1-t)*s.first)+float64(t*s.last)
		}
		sum += float64((s.x1 - s.x0) * d.mean(s.first/width, s.last/width))
	}
	return sum
}
