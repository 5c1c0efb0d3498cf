package check

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// motion is the move of a piece as the plan says it: mirrored in x, turned, moved.
func motion(l lay.Laid) pieces.Motion {
	m := pieces.Turn(l.Turn).Then(pieces.Move(l.X, l.Y))
	if l.Mirrored {
		return pieces.Motion{A: -1, D: 1}.Then(m)
	}
	return m
}

// covers reports whether a point lies inside a ring (even-odd rule).
func covers(ring orb.Ring, p orb.Point) bool {
	inside := false
	for i := 1; i < len(ring); i++ {
		a, b := ring[i-1], ring[i]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(p[1]-a[1])/(b[1]-a[1])*(b[0]-a[0]) {
			inside = !inside
		}
	}
	return inside
}

// This file is the geometry of the proof, apart from that of the plan.

// distance of two points.
func distance(a, b orb.Point) float64 {
	dx, dy := a[0]-b[0], a[1]-b[1]
	return math.Sqrt(dx*dx + dy*dy)
}

// off is how far a point lies from a line of chords.
func off(line orb.Ring, p orb.Point) float64 {
	least := math.Inf(1)
	for i := 1; i < len(line); i++ {
		least = math.Min(least, toChord(line[i-1], line[i], p))
	}
	return least
}

// toChord is how far a point lies from the chord from a to b.
func toChord(a, b, p orb.Point) float64 {
	length := distance(a, b)
	if length == 0 {
		return distance(a, p)
	}
	along := ((p[0]-a[0])*(b[0]-a[0]) + (p[1]-a[1])*(b[1]-a[1])) / length
	if along <= 0 {
		return distance(a, p)
	}
	if along >= length {
		return distance(b, p)
	}
	return math.Abs((b[0]-a[0])*(p[1]-a[1])-(b[1]-a[1])*(p[0]-a[0])) / length
}

// area of a closed ring, mm2, by trapezia; positive when counter-clockwise.
func area(ring orb.Ring) float64 {
	sum := 0.0
	for i := 1; i < len(ring); i++ {
		sum += (ring[i-1][0] - ring[i][0]) * (ring[i-1][1] + ring[i][1]) / 2
	}
	return sum
}

// closed repeats the first point of a ring at its end.
func closed(ring orb.Ring) orb.Ring {
	if len(ring) == 0 || ring.Closed() {
		return ring
	}
	return append(ring[:len(ring):len(ring)], ring[0])
}

// moved is a ring moved.
func moved(m pieces.Motion, ring orb.Ring) orb.Ring {
	var out orb.Ring
	for _, p := range ring {
		out = append(out, m.Apply(p))
	}
	return out
}

// angle of the direction from one point to another, degrees. It is that of math, not of
// what it proves; the last bit, in which processors may differ, is far below any tolerance.
func angle(from, to orb.Point) float64 {
	return 180 / math.Pi * math.Atan2(to[1]-from[1], to[0]-from[0])
}

// growth gives the factors along and across the grainline by which a piece is cut
// larger, because the cloth will shrink; on the bias each direction loses
// something of both, and the larger is safe, as it is for what may lie either way.
func growth(c cloth.Cloth, lie pieces.GrainLie) (along, across float64) {
	along, across = 1/(1-c.Shrinkage.Warp), 1/(1-c.Shrinkage.Weft)
	switch {
	case !c.Shrinkage.CutFirst:
		return 1, 1
	case lie == pieces.CrossGrain:
		return across, along
	case lie == pieces.Bias, lie == pieces.EitherGrain:
		return math.Max(along, across), math.Max(along, across)
	}
	return along, across
}

// grown is where a point of a piece asked lies on the piece as it is cut.
func grown(c cloth.Cloth, piece pieces.Piece, at orb.Point) orb.Point {
	along, across := growth(c, piece.Grain.Lie)
	ux, uy := piece.Grain.To[0]-piece.Grain.From[0], piece.Grain.To[1]-piece.Grain.From[1]
	length := math.Sqrt(ux*ux + uy*uy)
	ux, uy = ux/length, uy/length
	a, b := along*(ux*at[0]+uy*at[1]), across*(ux*at[1]-uy*at[0])
	return orb.Point{a*ux - b*uy, a*uy + b*ux}
}

// widthLaid is the width of the cloth from edge to edge as it is laid, mm: what is
// wetted first has lost some of it.
func widthLaid(c cloth.Cloth) float64 {
	if c.Shrinkage.CutFirst {
		return c.Width
	}
	return c.Width - c.Width*c.Shrinkage.Weft
}

// axisOf the open cloth: 0 along, 1 across.
func axisOf(across bool) int {
	if across {
		return 1
	}
	return 0
}
