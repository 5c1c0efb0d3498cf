package fitting

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// stretch of points, each with how far along it lies, from 0 to 1.
type stretch struct {
	points []orb.Point
	along  []float64
	trust  []float64
	length float64
}

// weights of the points before any is seen to be far off.
func (s stretch) weights() []float64 { return slices.Clone(s.trust) }

// How it is seen whether points lie on a line [source.OwnChoice].
const (
	seenOver     = 9  // points: over which noise is levelled
	doubtfulOver = 41 // points, where a line of the ground draws some off
	leastFirm    = 40 // trusted points, and
	leastShare   = 5  // one of so many points: fewer do not tell what is a line
)

// off is how far the points lie off a line at most, after noise was levelled: the median
// of so many beside each other, of those that are trusted; and of many more beside each
// other of all, where others are among them.
func (s stretch) off(line func(float64) orb.Point) float64 {
	firm := s.firm()
	most := s.levelled(line, firm, seenOver)
	if len(firm) < len(s.points) {
		all := make([]int, len(s.points))
		for i := range all {
			all[i] = i
		}
		most = math.Max(most, s.levelled(line, all, doubtfulOver))
	}
	return most
}

// levelled is how far some of the points lie off a line at most, the median of so many.
func (s stretch) levelled(line func(float64) orb.Point, some []int, over int) float64 {
	off := make([]float64, len(some))
	for i, k := range some {
		t := s.along[k]
		ahead, behind := line(math.Min(t+1e-3, 1)), line(math.Max(t-1e-3, 0))
		across := geometry.Left(geometry.Unit(geometry.Sub(ahead, behind)))
		off[i] = geometry.Dot(geometry.Sub(s.points[k], line(t)), across)
	}
	most := 0.0
	for i := 0; i+over <= len(off); i += over / 3 {
		most = math.Max(most, math.Abs(median(off[i:i+over])))
	}
	return most
}

func median(values []float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[len(sorted)/2]
}

// firm are the numbers of the points that are trusted; of all where those are few.
func (s stretch) firm() []int {
	var all, out []int
	for i, trust := range s.trust {
		all = append(all, i)
		if trust == 1 {
			out = append(out, i)
		}
	}
	if len(out) < leastFirm || len(out)*leastShare < len(all) {
		return all
	}
	return out
}
