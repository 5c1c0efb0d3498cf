package reference

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
)

// How crossings are seen [source.OwnChoice].
const (
	lineBlur      = 1.2    // pixels: a line narrower than twice that is seen best
	mostCrossings = 40_000 // the strongest are kept
	overNoise     = 3.0    // standard deviations of the noise: what brightness bends more than
	leastNoise    = 0.1    // levels of brightness: JPEG hides less
	tile          = 32     // pixels: the side of a part of the photo that may have no lines
	calm          = 0.2    // of the parts have none
)

// crossings of lines that are brighter than their ground (sign 1) or darker (-1): where
// brightness is bent the same way in all directions, as the determinant of its second
// derivatives says (Beaudet 1978: Rotationally invariant image operators). Along a
// line it vanishes.
func crossings(g *raster.Grey, sign float32) []orb.Point {
	smooth := g.Blurred(lineBlur)
	strength, bend := raster.New(g.Width, g.Height), raster.New(g.Width, g.Height)
	for y := 1; y < g.Height-1; y++ {
		for x := 1; x < g.Width-1; x++ {
			i := y*g.Width + x
			v := smooth.Values
			across := v[i-1] + v[i+1] - 2*v[i]
			down := v[i-g.Width] + v[i+g.Width] - 2*v[i]
			if sign*across >= 0 || sign*down >= 0 {
				continue
			}
			mixed := (v[i+g.Width+1] + v[i-g.Width-1] - v[i+g.Width-1] - v[i-g.Width+1]) / 4
			if s := across*down - mixed*mixed; s > 0 {
				strength.Values[i] = s
				bend.Values[i] = s / max(across+down, -across-down) // the weaker bend, about
			}
		}
	}
	return peaks(strength, bend, overNoise*noise(smooth))
}

// noise of the second derivatives in the parts of the photo where they are least: their
// standard deviation by the lower quartile of their sizes, which lines reach less than
// their median; of a normal distribution it is 0.3186 standard deviations.
func noise(smooth *raster.Grey) float32 {
	var all, sizes []float32
	for top := 1; top+tile < smooth.Height; top += tile {
		for left := 1; left+tile < smooth.Width; left += tile {
			sizes = sizes[:0]
			for y := top; y < top+tile; y += 3 {
				for x := left; x < left+tile; x += 3 {
					v := smooth.At(x-1, y) + smooth.At(x+1, y) - 2*smooth.At(x, y)
					sizes = append(sizes, max(v, -v))
				}
			}
			slices.Sort(sizes)
			all = append(all, sizes[len(sizes)/4]/0.3186)
		}
	}
	if len(all) == 0 {
		return leastNoise
	}
	slices.Sort(all)
	return max(all[int(calm*float64(len(all)))], leastNoise)
}

// peak of the strength, and how much brightness bends there.
type peak struct {
	at   orb.Point
	bend float32
}

// peaks are the places where the strength is greatest, between pixels by the paraboloid
// through the nine about it, and brightness bends more than so much.
func peaks(s, bend *raster.Grey, least float32) []orb.Point {
	var found []peak
	for y := 2; y < s.Height-2; y++ {
		for x := 2; x < s.Width-2; x++ {
			i := y*s.Width + x
			v := s.Values[i]
			if v <= 0 || bend.Values[i] < least || !isPeak(s, i, v) {
				continue
			}
			found = append(found, peak{refined(s, x, y), bend.Values[i]})
		}
	}
	slices.SortStableFunc(found, func(a, b peak) int {
		switch {
		case a.bend > b.bend:
			return -1
		case a.bend < b.bend:
			return 1
		}
		return 0
	})
	found = found[:min(len(found), mostCrossings)]
	out := make([]orb.Point, len(found))
	for i, p := range found {
		out[i] = p.at
	}
	return out
}

func isPeak(s *raster.Grey, i int, v float32) bool {
	for dy := -1; dy <= 1; dy++ {
		for dx := -1; dx <= 1; dx++ {
			k := i + dy*s.Width + dx
			if w := s.Values[k]; w > v || (w == v && k < i) {
				return false
			}
		}
	}
	return true
}

func refined(s *raster.Grey, x, y int) orb.Point {
	at := func(dx, dy int) float64 { return float64(s.At(x+dx, y+dy)) }
	gx, gy := (at(1, 0)-at(-1, 0))/2, (at(0, 1)-at(0, -1))/2
	xx, yy := at(1, 0)+at(-1, 0)-2*at(0, 0), at(0, 1)+at(0, -1)-2*at(0, 0)
	xy := (at(1, 1) + at(-1, -1) - at(1, -1) - at(-1, 1)) / 4
	det := xx*yy - xy*xy
	if !(det > 0) {
		return orb.Point{float64(x), float64(y)}
	}
	dx, dy := (xy*gy-yy*gx)/det, (xy*gx-xx*gy)/det
	if math.Abs(dx) > 1 || math.Abs(dy) > 1 {
		dx, dy = 0, 0
	}
	return orb.Point{float64(x) + dx, float64(y) + dy}
}
