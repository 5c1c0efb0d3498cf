// Package bounds proves lengths that no layout on a strip can beat.
//
// The main bound looks at upright sections. At every x of the strip, the
// sections of the pieces laid there are intervals of [0, width] that do not
// overlap. So a dual feasible function (see dual) of their lengths, as shares
// of the width, adds up to 1 at most; and integrated over x, to the length of
// the strip at most. Swapping integral and sum, each piece contributes the
// integral over its own outline, wherever it lies; with several turns, the
// least of them. This holds for outlines of any shape, however they interlock.
//
// The functions are those of Fekete and Schepers (Math. Programming 91, 2001),
// which include the bounds of Martello and Toth (Discrete Applied Mathematics
// 28, 1990) for items that do not pass each other.
//
// With the identity, this is the bound by area. With a function that counts
// sections above one half as 1 and all others as nothing, it is the queue of
// the pieces that cannot pass each other.
package bounds

import (
	"math"

	"github.com/paulmach/orb"
)

// Piece is an outline of which copies are laid.
type Piece struct {
	Copies int
	// Outlines are the turned outlines, one an allowed turn: at least one.
	Outlines []orb.Ring
	// Pins say for each outline which edge of the strip it must touch; nil
	// for none.
	Pins []Pin
	// Tilts says that the outlines may also be tilted: then only Area and
	// Least are known of them.
	Tilts bool
	Area  float64
	// Least is the least extent along x, over all turns and tilts.
	Least float64
	// Turns are all that are allowed, mirror images among them; nil when there
	// is no lattice.
	Turns []Turned
}

// Pin is the edge of the strip that an outline must touch.
type Pin int

const (
	// Free outlines need touch nothing.
	Free Pin = iota
	// Low outlines touch y = 0.
	Low
	// High outlines touch y = width.
	High
)

// Strip is what the pieces are laid on: zones may not be used. Only zones
// that lie within the strip, and do not meet one another's bounding boxes,
// are made use of.
type Strip struct {
	Width, Gap float64
	// Reach is how far a piece may reach into another, or lie off its lattice.
	Reach float64
	Zones []orb.Ring
}

// Length returns a length that no layout can beat: the largest x of its
// pieces is at least that.
func Length(strip Strip, pieces []Piece) float64 {
	best := 0.0
	for _, p := range pieces {
		best = max(best, p.Least)
	}
	best = max(best, bySections(strip, pieces), byPins(strip, pieces))
	return max(best, byQueue(strip, pieces))
}

// bySections is the bound described above. A gap widens the strip by half of
// it on both sides, as it does the sections.
func bySections(strip Strip, pieces []Piece) float64 {
	width := strip.Width + strip.Gap
	cut := make([][][]slab, len(pieces))
	var shares []float64
	for i, p := range pieces {
		if p.Tilts {
			continue
		}
		for _, outline := range p.Outlines {
			slabs := sections(outline, strip.Gap)
			cut[i] = append(cut[i], slabs)
			for _, s := range slabs {
				shares = append(shares, s.first/width, s.last/width)
			}
		}
	}
	zones := strip.usableZones()
	best := 0.0
	for i, d := range duals(shares) {
		sum := 0.0
		for j, p := range pieces {
			switch {
			case !p.Tilts:
				sum += float64(p.Copies) * leastWeight(cut[j], d, width)
			case i == 0: // the identity: the area, whatever the tilt
				sum += float64(p.Copies) * p.Area / width
			}
		}
		best = max(best, lengthen(sum, zones, d, width))
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
