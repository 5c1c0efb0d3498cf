package dxf

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

const (
	// written, mm, is how far chords that are written lie from their curves, and grid
	// what their points are rounded to [source.OwnChoice].
	written = 0.01
	grid    = 0.001
	// turnAngle, degrees, is a bend from which a point is a turn point
	// [source.OwnChoice].
	turnAngle = 20
	// notchGrid, mm, is what the places of notches along an edge are rounded to, and
	// strokesApart how far apart the two slits of a double notch are [source.OwnChoice].
	notchGrid    = 0.01
	strokesApart = 6
)

// rim is the boundary of a piece as it is written.
type rim struct {
	points []orb.Point // not closed
	turns  []bool
}

// rimOf a piece: its cutting line, of a half that of the half. A line that came as a
// cutting line is written as it came.
func rimOf(p pieces.Piece) (rim, error) {
	ring, asItCame := orb.Ring(nil), true
	for _, e := range p.Edges {
		asItCame = asItCame && e.Allowance == 0
	}
	starts := map[orb.Point]bool{}
	if asItCame {
		ring = p.Boundary(written)
		for _, e := range p.Edges {
			starts[rounded(e.Path.Start())] = true
		}
	} else {
		var err error
		if ring, err = p.CuttingOutline(written); err != nil {
			return rim{}, err
		}
	}
	out := rim{points: apart(ring)}
	out.turns = make([]bool, len(out.points))
	first := -1
	for i, q := range out.points {
		out.turns[i] = out.angle(i) > turnAngle || starts[q] || out.isFoldEnd(p, i)
		if out.turns[i] && first < 0 {
			first = i
		}
	}
	first = max(first, 0)
	out.points = append(out.points[first:len(out.points):len(out.points)], out.points[:first]...)
	out.turns = append(out.turns[first:len(out.turns):len(out.turns)], out.turns[:first]...)
	if len(out.turns) > 0 {
		out.turns[0] = true
	}
	return out, nil
}

func rounded(p orb.Point) orb.Point {
	return orb.Point{math.Round(p[0]/grid) * grid, math.Round(p[1]/grid) * grid}
}

// apart are the points of a closed line, rounded, without those on the one before.
func apart(line []orb.Point) []orb.Point {
	var out []orb.Point
	for _, p := range line {
		p = rounded(p)
		if len(out) == 0 || geometry.Distance(out[len(out)-1], p) > grid/2 {
			out = append(out, p)
		}
	}
	for len(out) > 1 && geometry.Distance(out[0], out[len(out)-1]) <= grid/2 {
		out = out[:len(out)-1]
	}
	return out
}

func (r rim) angle(i int) float64 {
	n := len(r.points)
	u := geometry.Sub(r.points[i], r.points[(i+n-1)%n])
	v := geometry.Sub(r.points[(i+1)%n], r.points[i])
	return math.Abs(math.Atan2(geometry.Cross(u, v), geometry.Dot(u, v))) * 180 / math.Pi
}

// onFold, mm, is how near a written point lies to the fold that it is on
// [source.OwnChoice].
const onFold = 2 * grid

func (r rim) isOnFold(p pieces.Piece, i int) bool {
	fold, ok := p.Edge(p.Fold)
	n := len(r.points)
	return ok && p.Fold != seams.None && geometry.LineDistance(r.points[(i+n)%n], fold.Path.Start(),
		fold.Path.End()) <= onFold
}

// isFoldEnd says that the boundary comes to the fold, or leaves it, at a point.
func (r rim) isFoldEnd(p pieces.Piece, i int) bool {
	return r.isOnFold(p, i) && r.isOnFold(p, i-1) != r.isOnFold(p, i+1)
}

// fold of the boundary, from its start to its end; false where there is none.
func (r rim) fold(p pieces.Piece) (from, to orb.Point, ok bool) {
	for i := range r.points {
		if r.isOnFold(p, i) && !r.isOnFold(p, i-1) {
			from, ok = r.points[i], true
		}
		if r.isOnFold(p, i) && !r.isOnFold(p, i+1) {
			to = r.points[i]
		}
	}
	return from, to, ok
}

// place on the boundary nearest to a point: along the stretch from a turn point.
func (r rim) place(to orb.Point) (turn int, along float64) {
	n := len(r.points)
	best := math.Inf(1)
	start, before := 0, 0.0
	for i := range r.points {
		if r.turns[i] {
			start, before = i, 0
		}
		a, b := r.points[i], r.points[(i+1)%n]
		step := geometry.Distance(a, b)
		if d := geometry.SegmentDistance(to, a, b); d < best-grid/10 {
			part := geometry.Dot(geometry.Sub(to, a), geometry.Unit(geometry.Sub(b, a)))
			best, turn, along = d, start, before+math.Min(step, math.Max(0, part))
		}
		before += step
	}
	return turn, along
}

// length of the stretch from a turn point to the next.
func (r rim) length(turn int) float64 {
	n, out := len(r.points), 0.0
	for i := turn; i == turn || !r.turns[i%n]; i++ {
		out += geometry.Distance(r.points[i%n], r.points[(i+1)%n])
	}
	return out
}

// at is the point so far along the stretch from a turn point, and the direction there,
// degrees.
func (r rim) at(turn int, along float64) (p orb.Point, direction float64) {
	n := len(r.points)
	for i := turn; ; i++ {
		a, b := r.points[i%n], r.points[(i+1)%n]
		step := geometry.Distance(a, b)
		if along <= step || r.turns[(i+1)%n] {
			d := geometry.Sub(b, a)
			return geometry.Between(a, b, math.Min(1, along/step)), math.Atan2(d[1], d[0]) * 180 / math.Pi
		}
		along -= step
	}
}
