package region

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
)

// Sample is a place near a rim, and the direction into the paper, of length 1.
type Sample struct{ At, Inward orb.Point }

// Edge is where the rim was found along a sample. Where it was not, Found is false.
type Edge struct {
	At    orb.Point
	Found bool
	// Wide is over how many pixels brightness goes from a fifth to four fifths.
	Wide float64
}

// How a rim is looked for [source.OwnChoice].
const (
	stride  = 0.5 // pixels along a profile
	plateau = 4.0 // pixels on each side, beyond the reach, that show paper and ground
	beside  = 2   // profiles to each side, a pixel apart, of which the mean is taken
	around  = 12  // samples to each side whose paper and ground are seen together
	// leastContrast of paper and ground, in steps of 255.
	leastContrast = 10.0
	// leastShare of the usual contrast along the rim: less is left in shadow.
	leastShare = 0.2
)

// Locate finds the rim along each sample of a closed line, at most so many pixels from
// it: where brightness is midway between that of the paper and that of the ground
// beside it. The first such place outwards from the paper counts. Where the ground has a
// line there, as lined says, it is midway to the brightness of that line; nil for a plain
// ground.
func Locate(g *raster.Grey, samples []Sample, reach float64, lined func(orb.Point) bool) []Edge {
	profiles := make([][]float64, len(samples))
	inside, outside := make([]float64, len(samples)), make([]float64, len(samples))
	half := int(math.Ceil((reach + plateau) / stride))
	flat := int(plateau / stride)
	for i, s := range samples {
		profiles[i] = profile(g, s, half)
		inside[i], outside[i] = median(profiles[i][2*half+1-flat:]), median(profiles[i][:flat])
	}
	seen := contrasting(inside, outside)
	paper, ground := running(inside, seen), running(outside, seen)
	out := make([]Edge, len(samples))
	for i, s := range samples {
		if !seen[i] || !g.Holds(s.At[0], s.At[1], reach+plateau+beside) {
			continue
		}
		there := ground[i]
		if lined != nil && lined(s.At) {
			there = besideSteepest(profiles[i], half, int(reach/stride))
		}
		at, wide, ok := crossed(profiles[i], half, flat, there, paper[i])
		if ok {
			out[i] = Edge{orb.Point{s.At[0] + at*s.Inward[0], s.At[1] + at*s.Inward[1]}, true, wide}
		}
	}
	return out
}

// contrasting says which samples show paper on one side and ground on the other: not
// those at the tip of a corner, narrower than the reach.
func contrasting(inside, outside []float64) []bool {
	differ := make([]float64, len(inside))
	for i := range inside {
		differ[i] = inside[i] - outside[i]
	}
	usual := median(differ)
	out := make([]bool, len(inside))
	for i, d := range differ {
		out[i] = d/usual > leastShare
	}
	return out
}

// profile of brightness from outside to inside, of so many strides each way.
func profile(g *raster.Grey, s Sample, half int) []float64 {
	out := make([]float64, 2*half+1)
	for i := range out {
		d := float64(i-half) * stride
		for k := -beside; k <= beside; k++ {
			x := s.At[0] + d*s.Inward[0] - float64(k)*s.Inward[1]
			y := s.At[1] + d*s.Inward[1] + float64(k)*s.Inward[0]
			out[i] += g.Between(x, y) / (2*beside + 1)
		}
	}
	return out
}

// besideSteepest is the brightness just outside of where a profile first rises steeply,
// seen from the paper, within so many strides of its middle: that of a line of the ground
// which meets the rim there or runs along it.
func besideSteepest(profile []float64, half, reach int) float64 {
	const wide, from, to = 2, 3, 4 // strides [source.OwnChoice]
	const steep = 0.5              // of the steepest rise [source.OwnChoice]
	sign := 1.0
	if profile[len(profile)-1] < profile[0] {
		sign = -1
	}
	rise := func(i int) float64 { return sign * (profile[i+wide] - profile[i-wide]) }
	most := 0.0
	for i := half - reach; i <= half+reach; i++ {
		most = math.Max(most, rise(i))
	}
	first := half
	for i := half + reach; i >= half-reach; i-- {
		if rise(i) >= steep*most && rise(i) >= rise(i-1) && rise(i) >= rise(i+1) {
			first = i
			break
		}
	}
	sum, n := 0.0, 0.0
	for i := max(first-to, 0); i <= first-from; i++ {
		sum, n = sum+profile[i], n+1
	}
	return sum / math.Max(n, 1)
}

// crossed is how far inward of the sample the profile crosses the middle.
func crossed(profile []float64, half, flat int, ground, paper float64) (at, wide float64, ok bool) {
	if math.Abs(paper-ground) < leastContrast {
		return 0, 0, false
	}
	share := func(i int) float64 { return (profile[i] - ground) / (paper - ground) }
	start := len(profile) - 1 - flat/2
	if !(share(start) >= 0.6) {
		return 0, 0, false
	}
	for i := start - 1; i > 0; i-- {
		here, before := share(i), share(i+1)
		if here >= 0.5 || share(i-1) >= 0.5 {
			continue
		}
		t := (before - 0.5) / (before - here)
		at = (float64(i+1-half) - t) * stride
		return at, width(share, i, len(profile)), true
	}
	return 0, 0, false
}

// width of the rise through a crossing, from a fifth to four fifths.
func width(share func(int) float64, at, n int) float64 {
	low, high := at, at
	for low > 0 && share(low) > 0.2 {
		low--
	}
	for high < n-1 && share(high) < 0.8 {
		high++
	}
	return float64(high-low) * stride
}

func median(values []float64) float64 {
	sorted := slices.Clone(values)
	slices.Sort(sorted)
	return sorted[len(sorted)/2]
}

// running median of a closed row of values, of those that count.
func running(values []float64, counts []bool) []float64 {
	n := len(values)
	reach := min(around, (n-1)/2)
	out, window := make([]float64, n), make([]float64, 0, 2*around+1)
	for i := range values {
		window = window[:0]
		for k := -reach; k <= reach; k++ {
			if at := (i + k + n) % n; counts[at] {
				window = append(window, values[at])
			}
		}
		if len(window) > 0 {
			out[i] = median(window)
		}
	}
	return out
}

// Samples of a closed line of places, counter-clockwise as it is seen, so many pixels
// apart, after it was smoothed over so many.
func Samples(rim []orb.Point, apart, over float64) []Sample {
	line := evenly(rim, apart)
	n := len(line)
	reach := min(int(math.Ceil(over/apart/2)), (n-1)/2)
	smoothed := make([]orb.Point, n)
	for i := range line {
		sum := orb.Point{}
		for k := -reach; k <= reach; k++ {
			p := line[(i+k+n)%n]
			sum[0], sum[1] = sum[0]+p[0], sum[1]+p[1]
		}
		smoothed[i] = orb.Point{sum[0] / float64(2*reach+1), sum[1] / float64(2*reach+1)}
	}
	out := make([]Sample, n)
	for i, p := range smoothed {
		a, b := smoothed[(i-1+n)%n], smoothed[(i+1)%n]
		dx, dy := b[0]-a[0], b[1]-a[1]
		size := math.Hypot(dx, dy) + 1e-12
		out[i] = Sample{p, orb.Point{dy / size, -dx / size}} // the left hand, y down
	}
	return out
}

// evenly spaced places on a closed line, about so far apart.
func evenly(rim []orb.Point, apart float64) []orb.Point {
	length := 0.0
	for i, p := range rim {
		q := rim[(i+1)%len(rim)]
		length += math.Hypot(q[0]-p[0], q[1]-p[1])
	}
	n := max(8, int(length/apart))
	out := make([]orb.Point, 0, n)
	step, gone := length/float64(n), 0.0
	for i, p := range rim {
		q := rim[(i+1)%len(rim)]
		d := math.Hypot(q[0]-p[0], q[1]-p[1])
		for len(out) < n && float64(len(out))*step < gone+d {
			t := (float64(len(out))*step - gone) / d
			out = append(out, orb.Point{p[0] + t*(q[0]-p[0]), p[1] + t*(q[1]-p[1])})
		}
		gone += d
	}
	return out
}
