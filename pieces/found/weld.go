package found

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/outline"
)

// Flattening, mm, is how far chords may lie from a curve that is neither an arc of a
// circle nor a Bezier curve, such as that of an ellipse [source.OwnChoice].
const Flattening = 0.01

const (
	// same, mm, is how near two points are one: far below what is cut, above what
	// files round to [source.OwnChoice].
	same = 0.001
	// UsualGap, mm, is up to which ends are joined where nothing else was said: seen
	// on paper as a touching of lines [source.OwnChoice].
	UsualGap = 0.5
)

// gap up to which ends are joined, mm.
func (o Options) gap() float64 {
	if o.Gap > 0 {
		return o.Gap
	}
	return UsualGap
}

// moved is a curve between other ends, which are near its own: a Bezier curve with its
// controls moved along, an arc as high over its chord as before.
func moved(c pieces.Curve, from, to orb.Point) pieces.Curve {
	if from == c.Start() && to == c.End() {
		return c
	}
	switch c := c.(type) {
	case pieces.Bezier:
		return pieces.Bezier{P0: from, P1: geometry.Add(c.P1, geometry.Sub(from, c.P0)),
			P2: geometry.Add(c.P2, geometry.Sub(to, c.P3)), P3: to}
	case pieces.Arc:
		if rise := outline.RiseOf(c); rise != 0 && math.Abs(c.Sweep) < 1.5*math.Pi && from != to {
			return outline.Arc(from, to, rise)
		}
		return c
	}
	return pieces.Line{From: from, To: to}
}

// weld makes the curves of a chain meet exactly, and, of a closed one, its ends; count
// and size are those of the gaps of more than a thousandth that were closed.
func weld(path pieces.Path, closed bool) (out pieces.Path, count int, size float64) {
	out = append(out, path...)
	for i := range out {
		k := i + 1
		if k == len(out) {
			if !closed {
				break
			}
			k = 0
		}
		end, start := out[i].End(), out[k].Start()
		if end == start {
			continue
		}
		if gap := geometry.Distance(end, start); gap > same {
			count, size = count+1, math.Max(size, gap)
		}
		at := geometry.Between(end, start, 0.5)
		if i == k {
			out[i] = moved(out[i], at, at)
			continue
		}
		out[i] = moved(out[i], out[i].Start(), at)
		out[k] = moved(out[k], at, out[k].End())
	}
	return out, count, size
}

// isEmpty says that a curve has no length to speak of.
func isEmpty(c pieces.Curve) bool {
	return geometry.Distance(c.Start(), c.End()) <= same && !(c.Length() > 2*same)
}

// seen are the points of a curve to see by where it runs: of a large one more coarsely,
// so that few points are enough whatever is drawn.
func seen(c pieces.Curve) orb.LineString {
	const share = 20_000 // of the size of a curve, that its chords may lie off [source.OwnChoice]
	size := 0.0
	switch c := c.(type) {
	case pieces.Bezier:
		size = geometry.Distance(c.P0, c.P1) + geometry.Distance(c.P1, c.P2) + geometry.Distance(c.P2, c.P3)
	case pieces.Arc:
		size = 2 * c.Radius
	}
	return c.Flatten(math.Max(Flattening, size/share))
}

// ring of a closed path in chords to see by, closed.
func ring(path pieces.Path) orb.Ring {
	var out orb.Ring
	for _, c := range path {
		points := seen(c)
		out = append(out, points[:len(points)-1]...)
	}
	if len(out) > 0 {
		out = append(out, out[0])
	}
	return out
}

// pathOf the steps.
func pathOf(steps []Step) pieces.Path {
	out := make(pieces.Path, len(steps))
	for i, s := range steps {
		out[i] = s.Curve
	}
	return out
}

// Smoothed draws smooth lines through the points of curves in place of their chords.
func Smoothed(steps []Step) []Step {
	out := make([]Step, 0, len(steps))
	first := 0
	for first < len(steps) && steps[first].Begins == Smooth {
		first++
	}
	if first == len(steps) {
		return steps
	}
	round := append(append([]Step(nil), steps[first:]...), steps[:first]...)
	for i := 0; i < len(round); {
		end := i + 1
		points := []orb.Point{round[i].Start(), round[i].End()}
		for end < len(round) && round[end].Begins == Smooth {
			points = append(points, round[end].End())
			end++
		}
		begins := round[i].Begins
		for _, c := range outline.Through(points) {
			out = append(out, Step{Curve: c, Begins: begins})
			begins = Smooth
		}
		i = end
	}
	return out
}
