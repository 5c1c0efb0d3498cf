package tracing

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/fitting"
	"ellwand/pieces/tracing/reference"
	"ellwand/pieces/tracing/region"
)

// How an outline is traced [source.OwnChoice].
const (
	lastReach  = 4.0                // pixels, once curves were drawn
	blurred    = 3                  // pixels beside a corner that blur rounds
	fineWindow = 12                 // and once curves were drawn
	fineTurn   = 22 * math.Pi / 180 // and once curves were drawn
	mostSpread = 2.0                // pixels that nearly all points may lie off the curves
	nearly     = 0.95               // of the points of a rim
	clean      = 0.3                // pixels that curves may lie off on a plain ground,
	lined      = 0.5                // and on one with lines, which the rim follows a little
)

// outline of a blob: its rim is found roughly and drawn, then found again along what
// was drawn, so that tips are not lost.
func (t *tracer) outline(b region.Blob) (Outline, error) {
	rough, err := t.rim(b)
	if err != nil {
		return Outline{}, err
	}
	points, trust := make([]orb.Point, len(rough)), make([]float64, len(rough))
	for i, p := range rough {
		points[i], trust[i] = t.camera.ToPlane(p), t.trust(p)
	}
	scale := t.camera.Scale(orb.MultiPoint(rough).Bound().Center())
	look := t.look()
	corners := fitting.Corners(points, look)
	edges, ok := fitting.Outline(fitting.Points{At: points, Trust: trust}, corners,
		fitting.Look{Gap: 2 * look.Gap, Window: look.Window}, t.tolerance()*scale)
	if !ok {
		return Outline{}, t.fault(Unclear, b)
	}
	for pass := range passes {
		if edges, ok = t.again(edges, rough[0], scale, pass); !ok {
			return Outline{}, t.fault(Unclear, b)
		}
	}
	if t.spread > mostSpread {
		return Outline{}, t.fault(Unclear, b)
	}
	out := Outline{Edges: edges}
	out.Seen, out.Corners = t.shown(edges, rough[0])
	if !near(out.Seen, rough) {
		return Outline{}, t.fault(Unclear, b)
	}
	out.Accuracy = t.accuracy(out)
	return out, nil
}

// near says whether an outline keeps to the rim that was found first: tips reach a little
// further [source.OwnChoice].
func near(line, rim []orb.Point) bool {
	const share, pixels = 0.1, 40 // [source.OwnChoice]
	box := orb.MultiPoint(rim).Bound()
	box = box.Pad(pixels + share*math.Max(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1]))
	return !slices.ContainsFunc(line, func(p orb.Point) bool { return !box.Contains(p) })
}

func (t *tracer) tolerance() float64 {
	if t.reference.Kind == reference.Squares {
		return lined
	}
	return clean
}

// passes in which the rim is found along what was drawn before: once to find corners anew,
// once to find tips along the sides that lead to them, once more along both
// [source.OwnChoice].
const passes = 3

// again finds the rim along edges that were drawn, and draws them once more.
func (t *tracer) again(edges []pieces.Path, guess orb.Point, scale float64, pass int) ([]pieces.Path, bool) {
	line, corners := laid(edges, scale*apart)
	samples, ok := t.samples(line, guess)
	if !ok {
		return nil, false
	}
	found := region.Locate(t.grey, samples, lastReach, t.lines)
	var points []orb.Point
	var trust []float64
	var at []int
	for i, e := range found {
		switch {
		case slices.Contains(corners, i):
			at = append(at, len(points))
			points, trust = append(points, line[i]), append(trust, 1)
		case e.Found && !beside(i, corners, blurred, len(line)):
			points, trust = append(points, t.camera.ToPlane(e.At)), append(trust, t.trust(e.At))
		}
	}
	if float64(len(points)) < leastFound*float64(len(line)-2*len(corners)*blurred) {
		return nil, false
	}
	gap := 1 // what lay beside the corners is gone already
	if pass == 0 {
		gap = t.look().Gap // tips were not found before
		at = fitting.Corners(points, fitting.Look{Gap: 2, Window: fineWindow, Turn: fineTurn})
	}
	t.last = drawn{points, trust, at, scale}
	edges, ok = fitting.Outline(fitting.Points{At: points, Trust: trust}, at,
		fitting.Look{Gap: gap, Window: window}, clean*scale)
	if off := offs(points, trust, edges); len(off) > 0 {
		t.spread = off[int(nearly*float64(len(off)))] / scale
	}
	return edges, ok
}

// trust of a place of the rim: little where it lies on a line of a squared ground, which
// draws it outwards or inwards.
func (t *tracer) trust(p orb.Point) float64 {
	if t.lines != nil && t.lines(p) {
		return fitting.Doubtful
	}
	return 1
}

// beside says whether a number of a closed row lies at most so far from one of others.
func beside(i int, corners []int, gap, n int) bool {
	for _, c := range corners {
		if d := (i - c + n) % n; min(d, n-d) <= gap {
			return true
		}
	}
	return false
}

// laid are places along edges, about so far apart, and which of them are corners.
func laid(edges []pieces.Path, apart float64) (line []orb.Point, corners []int) {
	for _, e := range edges {
		if len(edges) > 1 || e.Start() != e.End() || isLine(e) {
			corners = append(corners, len(line))
		}
		for _, c := range e {
			n := max(2, int(math.Ceil(c.Length()/apart)))
			for i := range n {
				line = append(line, c.At(float64(i)/float64(n)))
			}
		}
	}
	return line, corners
}

// samples of a closed line of places of the plane, in the photo.
func (t *tracer) samples(line []orb.Point, guess orb.Point) ([]region.Sample, bool) {
	out := make([]region.Sample, len(line))
	n := len(line)
	for i, p := range line {
		at, ok := t.camera.ToPicture(p, guess)
		if !ok {
			return nil, false
		}
		out[i].At, guess = at, at
	}
	for i := range out {
		// Each direction is that of the line ahead, so that corners bend none before them.
		a, b := out[i].At, out[(i+1)%n].At
		u := geometry.Unit(geometry.Sub(b, a))
		out[i].Inward = orb.Point{u[1], -u[0]}
	}
	return out, true
}

// shown is how the photo shows edges.
func (t *tracer) shown(edges []pieces.Path, guess orb.Point) (line, corners []orb.Point) {
	for _, e := range edges {
		for k, p := range e.Flatten(t.camera.Scale(guess) * 0.3) {
			at, ok := t.camera.ToPicture(p, guess)
			if !ok {
				continue
			}
			guess = at
			line = append(line, at)
			if k == 0 && len(edges) > 1 {
				corners = append(corners, at)
			}
		}
	}
	return line, corners
}

// offs of points that are trusted from edges, mm, in order of size.
func offs(points []orb.Point, trust []float64, edges []pieces.Path) []float64 {
	var line orb.LineString
	for _, e := range edges {
		line = append(line, e.Flatten(0.02)...)
	}
	var off []float64
	for i := 0; i < len(points); i += 3 {
		if trust[i] < 1 {
			continue
		}
		least := math.Inf(1)
		for k := 1; k < len(line); k++ {
			least = math.Min(least, geometry.SegmentDistance(points[i], line[k-1], line[k]))
		}
		off = append(off, least)
	}
	slices.Sort(off)
	return off
}
