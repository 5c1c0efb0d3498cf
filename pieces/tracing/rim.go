package tracing

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/fitting"
	"ellwand/pieces/tracing/region"
)

// How the first rim is found [source.OwnChoice].
const (
	apart      = 1.0                // pixels between the points of a rim
	roundness  = 3.0                // small pixels over which it is smoothed
	firstReach = 2.0                // small pixels, and
	moreReach  = 3.0                // pixels: how far from the blob the rim is looked for
	window     = 16                 // pixels beside a corner that show its sides
	firstTurn  = 35 * math.Pi / 180 // of a corner
	leastFound = 0.6                // of a rim: what must be seen of it
)

// look for corners along the first rim, which the median has rounded.
func (s *scene) look() fitting.Look {
	gap := 4 * s.classes.Step
	return fitting.Look{Gap: gap, Window: max(window, gap*3/2), Turn: firstTurn}
}

// rim of a blob to fractions of a pixel.
func (s *scene) rim(b region.Blob) ([]orb.Point, error) {
	step := float64(s.classes.Step)
	samples := region.Samples(b.Border(), apart, roundness*step)
	found := region.Locate(s.grey, samples, firstReach*step+moreReach, nil)
	var out []orb.Point
	var widths []float64
	for _, e := range found {
		if e.Found {
			out, widths = append(out, e.At), append(widths, e.Wide)
		}
	}
	if float64(len(out)) < leastFound*float64(len(samples)) {
		return nil, s.fault(Unclear, b)
	}
	slices.Sort(widths)
	if widths[len(widths)/2] > mostBlur {
		return nil, s.fault(Blurred, b)
	}
	return out, nil
}

// mostBlur of a rim, pixels, beyond which a photo is too blurred [source.OwnChoice].
const mostBlur = 9.0
