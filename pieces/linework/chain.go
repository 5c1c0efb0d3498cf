package linework

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
)

// same, mm, is how near two points are one [source.OwnChoice].
const same = 1e-7

// Chain draws the lines of a path one curve after the other, through a matrix that may
// stretch and slant them. The zero value is of no use; see NewChain.
type Chain struct {
	by       pieces.Motion
	budget   *Budget
	start    orb.Point // in the frame of the path
	at       orb.Point
	open     pieces.Path // through the matrix
	finished []Stretch
	err      error
}

// Stretch is a line of a path.
type Stretch struct {
	Path   pieces.Path
	Closed bool
}

// NewChain draws through a matrix.
func NewChain(by pieces.Motion, budget *Budget) *Chain { return &Chain{by: by, budget: budget} }

// Through another matrix are drawn the lines that begin from now on.
func (c *Chain) Through(by pieces.Motion) {
	c.finish(false)
	c.by = by
}

// At is where the path has come to, in its own frame.
func (c *Chain) At() orb.Point { return c.at }

// MoveTo begins a line.
func (c *Chain) MoveTo(p orb.Point) {
	c.finish(false)
	c.start, c.at = p, p
}

// LineTo goes straight on.
func (c *Chain) LineTo(p orb.Point) {
	c.add(pieces.Line{From: c.by.Apply(c.at), To: c.by.Apply(p)}, p)
}

// CurveTo goes on by a cubic Bezier curve.
func (c *Chain) CurveTo(p1, p2, p3 orb.Point) {
	m := c.by
	c.add(pieces.Bezier{P0: m.Apply(c.at), P1: m.Apply(p1), P2: m.Apply(p2), P3: m.Apply(p3)}, p3)
}

// ArcTo goes on by an arc of a circle that begins where the path has come to. Where
// the matrix keeps it no circle, it is drawn by Bezier curves (see EllipseTo).
func (c *Chain) ArcTo(arc pieces.Arc) {
	if !keepsCircles(c.by) {
		m := pieces.Motion{A: arc.Radius, D: arc.Radius, E: arc.Centre[0], F: arc.Centre[1]}
		c.EllipseTo(m, arc.Begin, arc.Sweep)
		return
	}
	c.add(arc.Map(c.by), arc.End())
}

// finest is the most that one Bezier curve turns of an ellipse: within 1e-7 of its
// radius of the true one [source.OwnChoice].
const finest = math.Pi / 8

// EllipseTo goes on by the image of a stretch of the unit circle under a matrix, which
// begins where the path has come to. Each Bezier curve has its ends and its tangents.
func (c *Chain) EllipseTo(m pieces.Motion, begin, sweep float64) {
	n := math.Max(1, math.Ceil(math.Abs(sweep)/finest))
	step := sweep / n
	reach := 4.0 / 3 * math.Tan(step/4)
	for i := range int(n) {
		a := begin + step*float64(i)
		sinA, cosA := math.Sincos(a)
		sinB, cosB := math.Sincos(a + step)
		c.CurveTo(m.Apply(orb.Point{cosA - reach*sinA, sinA + reach*cosA}),
			m.Apply(orb.Point{cosB + reach*sinB, sinB - reach*cosB}), m.Apply(orb.Point{cosB, sinB}))
	}
}

func keepsCircles(m pieces.Motion) bool {
	size := math.Hypot(m.A, m.C)
	turned := math.Hypot(m.A-m.D, m.B+m.C) <= 1e-9*size
	mirrored := math.Hypot(m.A+m.D, m.B-m.C) <= 1e-9*size
	return turned || mirrored
}

// Close goes straight back to where the line began, and ends it.
func (c *Chain) Close() {
	if len(c.open) > 0 {
		from, to := c.open.End(), c.open.Start()
		if geometry.Distance(from, to) > same {
			c.add(pieces.Line{From: from, To: to}, c.start)
		}
	}
	c.finish(true)
	c.at = c.start
}

// Lines that were drawn, and the first thing that was wrong.
func (c *Chain) Lines() ([]Stretch, error) {
	c.finish(false)
	return c.finished, c.err
}

func (c *Chain) add(curve pieces.Curve, to orb.Point) {
	from := c.at
	c.at = to
	if c.err != nil {
		return
	}
	if c.err = c.budget.Spend(found.Vertices, 1); c.err != nil {
		return
	}
	if c.err = reachable(curve); c.err != nil {
		return
	}
	if from == to && curve.Length() <= same {
		return
	}
	if _, straight := curve.(pieces.Line); straight && geometry.Distance(curve.Start(), curve.End()) <= same {
		return
	}
	c.open = append(c.open, curve)
}

func (c *Chain) finish(closed bool) {
	if len(c.open) > 0 && c.err == nil {
		if c.err = c.budget.Spend(found.Things, 1); c.err == nil {
			isClosed := closed || len(c.open) > 1 && geometry.Distance(c.open.Start(), c.open.End()) <= same
			c.finished = append(c.finished, Stretch{c.open, isClosed})
		}
	}
	c.open = nil
}
