package proof

import (
	"math"

	"github.com/paulmach/orb"
)

// mostWeighed is how many ends of slabs are weighed, by all functions together, some times
// what 50 garments ask for (our own choice). Those of the first, the area, always are.
const mostWeighed = 16_000_000

// bySections is the bound described above. A gap widens the strip by half of
// it on both sides, as it does the sections. It may stop at one that is more than enough.
func bySections(strip Strip, pieces []Piece, enough float64) float64 {
	width := strip.Width + strip.Gap
	cut := make([][][]slab, len(pieces))
	var shares []float64
	for i, p := range pieces {
		if p.Tilts {
			continue
		}
		for _, outline := range p.Outlines {
			slabs := strip.sections(outline)
			cut[i] = append(cut[i], slabs)
			for _, s := range slabs {
				shares = append(shares, s.first/width, s.last/width)
			}
		}
	}
	zones := strip.usableZones()
	best := 0.0
	for i, d := range some(duals(shares), mostWeighed/(1+len(shares))) {
		sum := 0.0
		for j, p := range pieces {
			switch {
			case !p.Tilts:
				sum += float64(float64(p.Copies) * leastWeight(cut[j], d, width))
			case i == 0: // the identity: the area, whatever the tilt
				sum += float64(p.Copies) * p.Area / width
			}
		}
		if best = max(best, lengthen(sum, zones, d, width)); best > enough {
			break
		}
	}
	return best
}

func leastWeight(turns [][]slab, d *dual, width float64) float64 {
	least := math.Inf(1)
	for _, slabs := range turns {
		least = min(least, weigh(slabs, d, width, math.Inf(1)))
	}
	return least
}

// lengthen adds to a length what the zones within it take up, and those
// within that, and so on: every step is a bound.
func lengthen(sum float64, zones []slab, d *dual, width float64) float64 {
	length := sum
	for range 50 {
		longer := sum + weigh(zones, d, width, length)
		if longer <= length*(1+1e-12) {
			break
		}
		length = longer
	}
	return length
}

// usableZones returns the sections of zones, shortened by what the widened
// pieces may reach over them.
func (s Strip) usableZones() []slab {
	var slabs []slab
	var used []orb.Bound
zones:
	for _, zone := range s.Zones {
		box := zone.Bound()
		if box.Min[0] < 0 || box.Min[1] < 0 || box.Max[1] > s.Width {
			continue
		}
		for _, other := range used {
			if box.Intersects(other) {
				continue zones
			}
		}
		used = append(used, box)
		for _, part := range sections(zone, 0) {
			part.first, part.last = part.first-s.Gap, part.last-s.Gap
			if min(part.first, part.last) > 0 {
				slabs = append(slabs, part)
			}
		}
	}
	return slabs
}
