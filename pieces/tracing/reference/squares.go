package reference

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/raster"
)

// shrinks that are tried: how many pixels, each way, become one [source.OwnChoice].
var shrinks = [3]int{2, 1, 4}

// OfSquares fits the camera to the lines of a ground, which make squares of that side
// in mm. The error is ErrNoSquares.
func OfSquares(g *raster.Grey, side float64) (Found, error) {
	var best seen
	for _, shrink := range shrinks {
		small := g.Shrunk(shrink)
		for _, sign := range [2]float32{1, -1} { // lines brighter than the ground, and darker ones
			s, ok := see(g, crossings(small, sign), side, shrink)
			if ok && s.good() > best.good() {
				best = s
			}
			if best.good() > goodEnough {
				return best.Found, nil
			}
		}
	}
	if best.good() <= 0 {
		return Found{}, ErrNoSquares
	}
	return best.Found, nil
}

// seen is a lattice with its camera.
type seen struct {
	Found
	full   float64 // how many of the crossings in the box about it were seen, as a share
	square float64 // how far pixels are from square by the camera
	off    float64 // how far they lie off, as a share of a step
}

// leastFull of a lattice that is believed, and how much its being off counts
// [source.OwnChoice].
const (
	leastFull  = 0.2
	offCounts  = 4
	goodEnough = 0.5 // to look no further
)

// good is how good a lattice is; 0 or less for one that is not believed.
func (s seen) good() float64 {
	if s.full < leastFull || s.square > mostUnsquare {
		return 0
	}
	return s.full - offCounts*s.off
}

// again is how often crossings are collected by the camera that those before gave [source.OwnChoice].
const again = 3

// see the lattice among crossings of a picture that was shrunk.
func see(g *raster.Grey, places []orb.Point, side float64, by int) (seen, bool) {
	for i, p := range places {
		places[i] = orb.Point{raster.Grown(p[0], by), raster.Grown(p[1], by)}
	}
	l := grown(places, by)
	if l == nil {
		return seen{}, false
	}
	index := nearOf(places)
	c, first := camera.Of(g.Width, g.Height), true
	var fit camera.Fit
	for range again {
		pixels, plane, _ := l.listed(side)
		var err error
		if first {
			if c, err = c.Perspective(pixels, plane); err != nil {
				return seen{}, false
			}
			first = false
		}
		if fit, err = fitted(&c, pixels, plane); err != nil {
			return seen{}, false
		}
		if l = index.collect(c, l, side); len(l) < leastNodes {
			return seen{}, false
		}
	}
	l = l.halved().halved()
	pixels, plane, _ := l.listed(side)
	fit, err := fitted(&c, pixels, plane)
	if err != nil {
		return seen{}, false
	}
	l = l.within(c, side, clearlyOff*fit.Sigma)
	if l = l.halved().halved(); len(l) < leastNodes {
		return seen{}, false
	}
	pixels, plane, count := l.listed(side)
	if c, err = c.Perspective(pixels, plane); err != nil {
		return seen{}, false
	}
	if fit, err = fitted(&c, pixels, plane); err != nil {
		return seen{}, false
	}
	out := seen{Found: Found{
		Kind: Squares, Camera: c, Sigma: fit.Sigma, Covariance: fit.Covariance, Count: count, Marks: pixels,
		Box: orb.MultiPoint(plane).Bound().Pad(side),
	}}
	out.off = fit.Sigma * c.Scale(orb.MultiPoint(pixels).Bound().Center()) / side
	out.square = unsquare(c)
	out.full = float64(len(pixels)) / float64((count[0]+1)*(count[1]+1))
	return out, true
}
