package fitting

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Points of an outline, one after the other all round.
type Points struct {
	At []orb.Point
	// Trust says how much each counts, from 0 to 1; nil where all count alike. Curves need
	// not keep to those of less than 1.
	Trust []float64
}

// Doubtful is the trust in points of which something is known to draw them off
// [source.OwnChoice].
const Doubtful = 0.4

// Outline draws the edges between the corners of a closed row of points, each a line or
// a smooth chain of curves within the tolerance (mm); one that closes smoothly where
// there is no corner. The edges meet exactly. It reports false where the points are too
// few, or their sides do not meet.
func Outline(points Points, corners []int, look Look, tolerance float64) ([]pieces.Path, bool) {
	if len(points.At) < leastPoints {
		return nil, false
	}
	r := ringOf(points.At)
	r.trust = points.Trust
	if len(corners) == 0 {
		all := r.stretch(0, len(points.At)-1, 0, r.length)
		round := all.smoothest(ends{how: closed}, tolerance)
		return []pieces.Path{round.path()}, len(round.places) > 0
	}
	places, straight := r.meetings(corners, look, tolerance)
	var out []pieces.Path
	for k := range corners {
		from, to := places[k], places[(k+1)%len(places)]
		if straight[k] {
			out = append(out, pieces.Path{pieces.Line{From: from, To: to}})
			continue
		}
		between := r.between(corners, k, look)
		path := between.smoothest(ends{fixed, from, to}, tolerance).path()
		if len(path) == 0 {
			path = pieces.Path{pieces.Line{From: from, To: to}}
		}
		out = append(out, path)
	}
	return out, true
}

// leastPoints of an outline [source.OwnChoice].
const leastPoints = 24

// meetings are where the sides of each corner meet, and which edges are straight.
func (r ring) meetings(corners []int, look Look, tolerance float64) (places []orb.Point, straight []bool) {
	n := len(corners)
	lines := make([]parabola, n)
	straight = make([]bool, n)
	for k := range corners {
		lines[k], straight[k] = r.line(corners, k, look, tolerance)
	}
	for k, at := range corners {
		before, after := (k+n-1)%n, k
		a, fits := r.side(corners, before, look, tolerance, true)
		b, also := r.side(corners, after, look, tolerance, false)
		if straight[before] {
			a, fits = lines[before], true
		}
		if straight[after] {
			b, also = lines[after], true
		}
		places = append(places, r.points[at])
		if !fits || !also {
			continue
		}
		a, b = nearestTo(a, r.points[at]), nearestTo(b, r.points[at])
		place, meets := meet(a, b)
		if meets && geometry.Distance(place, r.points[at]) <= r.reachOf(at, look)*drawnOut(a.direction(0), b.direction(0)) {
			places[k] = place
		}
	}
	return places, straight
}

// drawnOut is how much longer a corner is, the sharper it is, from the directions before
// and after it: what blur takes away is as wide as it is, and the longer the sharper
// [source.Geometry].
func drawnOut(before, after orb.Point) float64 {
	const most = ofLines
	inside := math.Pi - math.Abs(math.Atan2(geometry.Cross(before, after), geometry.Dot(before, after)))
	return math.Min(math.Max(1/math.Tan(inside/2), 1), most)
}

// reachOf is how far a corner may lie from its point: blur takes tips away.
func (r ring) reachOf(at int, look Look) float64 {
	_, from := r.at(at - look.Gap - look.Window/2)
	_, to := r.at(at + look.Gap + look.Window/2)
	return to - from
}

// nearestTo counts the way along a parabola from about where it is nearest to a point.
func nearestTo(p parabola, at orb.Point) parabola {
	d := p.direction(0)
	s := geometry.Dot(geometry.Sub(at, p[0]), d) / math.Max(geometry.Dot(d, d), 1e-12)
	return parabola{p.place(s), p.direction(s), p[2]}
}

// kept of the k-th edge: the numbers of its first and last point that blur left alone,
// which rounds a tip so many times farther at most.
func (r ring) kept(corners []int, k int, look Look, farther float64) (from, to int) {
	from, to = corners[k], corners[(k+1)%len(corners)]
	if to <= from {
		to += len(r.points)
	}
	most := (to - from) / 4
	return from + min(r.gap(from, look, farther), most), to - min(r.gap(to, look, farther), most)
}

// gap beside a corner: blur rounds the more, the sharper it is.
func (r ring) gap(at int, look Look, farther float64) int {
	tip, _ := r.at(at)
	before, _ := r.at(at - look.Gap - 2*look.Window)
	after, _ := r.at(at + look.Gap + 2*look.Window)
	return int(float64(look.Gap) * math.Min(farther, drawnOut(geometry.Sub(tip, before), geometry.Sub(after, tip))))
}

// line along the whole of an edge, and whether it is one.
func (r ring) line(corners []int, k int, look Look, tolerance float64) (parabola, bool) {
	from, to := r.kept(corners, k, look, ofLines)
	if to-from < 3 {
		return parabola{}, false
	}
	first, zero := r.at(from)
	last, end := r.at(to)
	s := r.stretch(from, to, zero, end-zero)
	fit, ok := s.spline(ends{fixed, first, last}, 1)
	if !ok {
		return parabola{}, false
	}
	// The straight line that is nearest to all points, those that are far off counted
	// less as the curve through them says.
	weights := s.weights()
	reweigh(weights, s, fit)
	p, ok := s.weightedLine(weights)
	if !ok {
		return parabola{}, false
	}
	line := func(t float64) orb.Point { return p.place(t * s.length) }
	return p, s.levelled(line, s.firm(), seenOver) <= tolerance
}

// weightedLine is the line of least squares across it (Pearson 1901), the way counted
// from where the stretch begins.
func (s stretch) weightedLine(weights []float64) (parabola, bool) {
	var sum float64
	var mean orb.Point
	for i, p := range s.points {
		sum += weights[i]
		mean = geometry.Add(mean, geometry.Times(p, weights[i]))
	}
	mean = geometry.Times(mean, 1/sum)
	var xx, xy, yy float64
	for i, p := range s.points {
		d := geometry.Sub(p, mean)
		xx, xy, yy = xx+weights[i]*d[0]*d[0], xy+weights[i]*d[0]*d[1], yy+weights[i]*d[1]*d[1]
	}
	sin, cos := math.Sincos(math.Atan2(2*xy, xx-yy) / 2)
	u := orb.Point{cos, sin}
	first, last := s.points[0], s.points[len(s.points)-1]
	if geometry.Dot(u, geometry.Sub(last, first)) < 0 {
		u = geometry.Times(u, -1)
	}
	start := geometry.Add(mean, geometry.Times(u, geometry.Dot(u, geometry.Sub(first, mean))))
	return parabola{start, u, {}}, !math.IsNaN(cos)
}

// How far tips are drawn on, in times of the blur: lines to a tip of 14 degrees, curves
// less, since they bend [source.OwnChoice].
const (
	ofLines  = 8.0
	ofCurves = 2.0
)

// closer to its points than the curve that is kept lies the one that is drawn on to a
// corner [source.OwnChoice].
const closer = 0.5

// side of a corner as a parabola: the end of the smooth curve through the points of its
// edge, the last end or the first.
func (r ring) side(corners []int, k int, look Look, tolerance float64, last bool) (parabola, bool) {
	from, to := r.kept(corners, k, look, ofCurves)
	if to-from < pointsAKnot {
		return parabola{}, false
	}
	_, zero := r.at(from)
	_, end := r.at(to)
	s := r.stretch(from, to, zero, end-zero)
	curve := s.smoothest(ends{how: free}, tolerance*closer)
	if len(curve.places) == 0 {
		return parabola{}, false
	}
	return curve.end(last, s.length), true
}

// between the corners of an edge, what blur left alone; its way runs from corner to
// corner.
func (r ring) between(corners []int, k int, look Look) stretch {
	from, to := r.kept(corners, k, look, 1)
	_, zero := r.at(corners[k])
	end := corners[(k+1)%len(corners)]
	if end <= corners[k] {
		end += len(r.points)
	}
	_, last := r.at(end)
	return r.stretch(from, to, zero, last-zero)
}

// stretch of the points from one number to another, along a way that begins at zero and
// is so long.
func (r ring) stretch(from, to int, zero, length float64) stretch {
	s := stretch{length: length}
	for i := from; i <= to; i++ {
		p, along := r.at(i)
		s.points = append(s.points, p)
		s.along = append(s.along, (along-zero)/length)
		s.trust = append(s.trust, r.trusted(i))
	}
	return s
}
