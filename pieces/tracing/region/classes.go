// Package region parts a photo into a ground and the paper on it, and finds the rims of
// the paper to fractions of a pixel.
//
// Places are pixels of the picture that is handed in, y down, as in raster.
package region

import (
	"errors"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
)

// ErrFlat is said of a picture without two clearly different brightnesses.
var ErrFlat = errors.New("nothing stands out from its ground")

// Classes says of every pixel of a small picture whether it is of the brighter class.
type Classes struct {
	Width, Height int
	Bright        []bool
	// Step is how many pixels of the picture, each way, one of these stands for.
	Step int
	// counts says which of them the classes were found by.
	counts []bool
}

// How the classes are found [source.OwnChoice].
const (
	wide       = 900  // pixels of the small picture along its longer side, about
	specks     = 1    // half the side of the median that removes specks, small pixels
	dark       = 4    // added to brightness before its logarithm, against the noise of black
	rounds     = 8    // of parting and levelling the light
	cell       = 8    // pixels of the small picture over which light is the same
	smooth     = 0.07 // of the longer side: how fast light changes
	leastRatio = 1.25 // of the brightness of the two classes
)

// Part finds the two classes under a light that is not even: both are parted at one
// threshold, the light is levelled so that each is even, and so on (Wells, Grimson,
// Kikinis and Jolesz 1996: Adaptive segmentation of MRI data). The error is ErrFlat.
// Where within is not nil, only what it says of the places of the picture counts.
func Part(g *raster.Grey, within func(orb.Point) bool) (Classes, error) {
	step := max(1, int(math.Round(float64(max(g.Width, g.Height))/wide)))
	small := g.Shrunk(step).Median(specks)
	n := len(small.Values)
	c := Classes{Width: small.Width, Height: small.Height, Bright: make([]bool, n), Step: step, counts: make([]bool, n)}
	level := make([]float64, n)
	for i, v := range small.Values {
		level[i] = math.Log(float64(v) + dark)
		at := orb.Point{raster.Grown(float64(i%c.Width), step), raster.Grown(float64(i/c.Width), step)}
		c.counts[i] = within == nil || within(at)
	}
	apart := 0.0
	for range rounds {
		low, high := c.part(level)
		apart = high - low
		c.levelled(level, low, high)
	}
	if !(apart > math.Log(leastRatio)) {
		return c, ErrFlat
	}
	return c, nil
}

// part at the threshold of Otsu (1979: A threshold selection method from gray-level
// histograms); the means of the classes.
func (c *Classes) part(level []float64) (low, high float64) {
	least, most := math.Inf(1), math.Inf(-1)
	for i, v := range level {
		if c.counts[i] {
			least, most = math.Min(least, v), math.Max(most, v)
		}
	}
	const bins = 256 // [source.OwnChoice]
	size := (most - least) / bins
	if !(size > 0) {
		return least, least
	}
	var count, sum [bins]float64
	for k, v := range level {
		if c.counts[k] {
			i := min(int((v-least)/size), bins-1)
			count[i]++
			sum[i] += v
		}
	}
	at := otsu(count[:], sum[:])
	var n, total [2]float64
	for i, v := range level {
		class := 0
		c.Bright[i] = (v-least)/size >= float64(at)
		if c.Bright[i] {
			class = 1
		}
		if c.counts[i] {
			n[class]++
			total[class] += v
		}
	}
	return total[0] / math.Max(n[0], 1), total[1] / math.Max(n[1], 1)
}

// otsu is the bin at which the upper class begins.
func otsu(count, sum []float64) int {
	n, total := 0.0, 0.0
	for i := range count {
		n += count[i]
		total += sum[i]
	}
	best, at := -1.0, 0
	below, sumBelow := 0.0, 0.0
	for i := range len(count) - 1 {
		below += count[i]
		sumBelow += sum[i]
		if above := n - below; below > 0 && above > 0 {
			d := sumBelow/below - (total-sumBelow)/above
			if between := below * above * d * d; between > best {
				best, at = between, i+1
			}
		}
	}
	return at
}

// levelled takes from the levels how far the light about each pixel differs from that
// of its class.
func (c *Classes) levelled(level []float64, low, high float64) {
	rest := raster.New(c.Width, c.Height)
	for i, v := range level {
		mean := low
		if c.Bright[i] {
			mean = high
		}
		if c.counts[i] {
			rest.Values[i] = float32(v - mean)
		}
	}
	coarse := rest.Shrunk(cell)
	light := coarse.Blurred(smooth * float64(max(coarse.Width, coarse.Height)))
	for y := range c.Height {
		for x := range c.Width {
			level[y*c.Width+x] -= light.Between((float64(x)+0.5)/cell-0.5, (float64(y)+0.5)/cell-0.5)
		}
	}
}

// At says whether a place of the picture is of the bright class.
func (c Classes) At(p orb.Point) bool {
	x, y := int((p[0]+0.5)/float64(c.Step)), int((p[1]+0.5)/float64(c.Step))
	return c.Bright[min(max(y, 0), c.Height-1)*c.Width+min(max(x, 0), c.Width-1)]
}

// Contrast is how far two classes of brightnesses lie apart: their variance between, in
// squares of brightness; and how clearly, as a share of all variance (Otsu 1979).
func Contrast(values []float32) (between, clear float64) {
	count, sum := make([]float64, 256), make([]float64, 256)
	n, total, squares := 0.0, 0.0, 0.0
	for _, v := range values {
		i := min(max(int(v), 0), 255)
		count[i]++
		sum[i] += float64(v)
		n, total, squares = n+1, total+float64(v), squares+float64(v)*float64(v)
	}
	at := otsu(count, sum)
	below, sumBelow := 0.0, 0.0
	for i := range at {
		below += count[i]
		sumBelow += sum[i]
	}
	if below == 0 || below == n {
		return 0, 0
	}
	d := sumBelow/below - (total-sumBelow)/(n-below)
	between = below / n * (1 - below/n) * d * d
	return between, between / math.Max(squares/n-total/n*total/n, 1e-9)
}
