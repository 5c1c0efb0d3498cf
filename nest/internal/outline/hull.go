package outline

import (
	"sort"

	"github.com/paulmach/orb"
)

// Hull returns the convex hull, counter-clockwise and open (Andrew's monotone
// chain, 1979).
func Hull(points []orb.Point) []orb.Point {
	sorted := append([]orb.Point(nil), points...)
	sort.Slice(sorted, func(i, j int) bool {
		if sorted[i][0] != sorted[j][0] {
			return sorted[i][0] < sorted[j][0]
		}
		return sorted[i][1] < sorted[j][1]
	})
	lower := chain(sorted)
	for i, j := 0, len(sorted)-1; i < j; i, j = i+1, j-1 {
		sorted[i], sorted[j] = sorted[j], sorted[i]
	}
	upper := chain(sorted)
	return append(lower[:len(lower)-1], upper[:len(upper)-1]...)
}

func chain(sorted []orb.Point) []orb.Point {
	var out []orb.Point
	for _, p := range sorted {
		for len(out) >= 2 && Cross(out[len(out)-2], out[len(out)-1], p) <= 0 {
			out = out[:len(out)-1]
		}
		out = append(out, p)
	}
	return out
}
