package drawing

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
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
	from, to := geometry.Within(a, b, box)
	return geometry.Between(a, b, from), geometry.Between(a, b, to), from < to
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
		length, at := geometry.Distance(a, b), 0.0
		for length-at > left {
			at += left
			p := geometry.Between(a, b, at/length)
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
