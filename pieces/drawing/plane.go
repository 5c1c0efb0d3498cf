package drawing

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// clippedLine keeps what of a line lies in the box (Liang and Barsky, 1984):
// a line for each stretch inside.
func clippedLine(line []orb.Point, box orb.Bound) [][]orb.Point {
	var out [][]orb.Point
	var current []orb.Point
	for i := 1; i < len(line); i++ {
		a, b, ok := clippedSegment(line[i-1], line[i], box)
		if !ok {
			continue
		}
		if len(current) > 0 && current[len(current)-1] == a {
			current = append(current, b)
			continue
		}
		if len(current) > 1 {
			out = append(out, current)
		}
		current = []orb.Point{a, b}
	}
	if len(current) > 1 {
		out = append(out, current)
	}
	return out
}

func clippedSegment(a, b orb.Point, box orb.Bound) (p, q orb.Point, ok bool) {
	from, to := span(a, b, box)
	return along(a, b, from), along(a, b, to), from < to
}

// span is the stretch of a segment that lies in the box, as parameters; its
// end lies before its start where there is none.
func span(a, b orb.Point, box orb.Bound) (from, to float64) {
	from, to = 0, 1
	for axis := range 2 {
		d := b[axis] - a[axis]
		if d == 0 {
			if a[axis] < box.Min[axis] || a[axis] > box.Max[axis] {
				return 1, 0
			}
			continue
		}
		t, u := (box.Min[axis]-a[axis])/d, (box.Max[axis]-a[axis])/d
		from, to = math.Max(from, math.Min(t, u)), math.Min(to, math.Max(t, u))
	}
	return from, to
}

// along is the point at t from a to b, exact at both ends.
func along(a, b orb.Point, t float64) orb.Point {
	switch t {
	case 0:
		return a
	case 1:
		return b
	}
	return orb.Point{a[0] + (b[0]-a[0])*t, a[1] + (b[1]-a[1])*t}
}

// dashed cuts a line into its strokes.
func dashed(line []orb.Point, dashes []float64) [][]orb.Point {
	var whole float64
	for _, d := range dashes {
		whole += d
	}
	if whole <= 0 {
		return [][]orb.Point{line}
	}
	var out [][]orb.Point
	stretch, left := 0, dashes[0] // left of the stretch, mm
	current := []orb.Point{line[0]}
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		length, at := distance(a, b), 0.0
		for length-at > left {
			at += left
			p := along(a, b, at/length)
			if stretch%2 == 0 {
				out = append(out, append(current, p))
			}
			stretch++
			left, current = dashes[stretch%len(dashes)], []orb.Point{p}
		}
		left -= length - at
		current = append(current, b)
	}
	if stretch%2 == 0 && len(current) > 1 {
		out = append(out, current)
	}
	return out
}

// hatching cuts lines that rise to the right, at 45 degrees and so far apart
// along x, by a ring (even-odd).
func hatching(ring []orb.Point, apart float64) [][2]orb.Point {
	box := orb.LineString(ring).Bound()
	var out [][2]orb.Point
	// Along such a line x + y stays the same.
	for sum := math.Ceil((box.Min[0]+box.Min[1])/apart) * apart; sum < box.Max[0]+box.Max[1]; sum += apart {
		var cuts []float64
		for i := 1; i < len(ring); i++ {
			a, b := ring[i-1], ring[i]
			u, v := a[0]+a[1]-sum, b[0]+b[1]-sum
			if (u > 0) != (v > 0) {
				cuts = append(cuts, a[0]+(b[0]-a[0])*u/(u-v))
			}
		}
		slices.Sort(cuts)
		for i := 0; i+1 < len(cuts); i += 2 {
			out = append(out, [2]orb.Point{{cuts[i], sum - cuts[i]}, {cuts[i+1], sum - cuts[i+1]}})
		}
	}
	return out
}

func distance(a, b orb.Point) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

func moved(line []orb.Point, by orb.Point) []orb.Point {
	if by == (orb.Point{}) {
		return line
	}
	out := make([]orb.Point, len(line))
	for i, p := range line {
		out[i] = orb.Point{p[0] + by[0], p[1] + by[1]}
	}
	return out
}
