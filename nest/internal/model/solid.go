package model

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
	"ellwand/nest/internal/outline"
)

// part is a convex part of a shape with what a direct test of overlap reads.
type part struct {
	points []orb.Point
	sides  []convex.Side
	lo, hi orb.Point
	// A disc inside the part: two parts whose discs overlap surely do.
	centre orb.Point
	radius float64
}

// solid is a shape as convex parts, plain and grown by the gap.
type solid struct{ plain, grown []part }

func newSolid(parts [][]orb.Point, gap float64) solid {
	var s solid
	for _, p := range parts {
		s.plain = append(s.plain, newPart(p))
		if gap > 0 {
			s.grown = append(s.grown, newPart(convex.Sum(p, convex.Disc(gap))))
		}
	}
	if gap == 0 {
		s.grown = s.plain
	}
	return s
}

func newPart(points []orb.Point) part {
	p := part{points: points, sides: convex.Sides(points)}
	p.lo, p.hi = outline.Bounds(points)
	for _, q := range points {
		p.centre[0] += q[0] / float64(len(points))
		p.centre[1] += q[1] / float64(len(points))
	}
	p.radius = math.MaxFloat64
	for _, e := range p.sides {
		p.radius = math.Min(p.radius, e.C-float64(e.NX*p.centre[0])-float64(e.NY*p.centre[1]))
	}
	return p
}
