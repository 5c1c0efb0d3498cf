package region

import (
	"math"
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/tracing/raster"
)

// rim of a paper of brightness 200 that begins at x = 50.3, on a ground of 50 with a line
// of 130 that meets it between y = 28 and 33.
func lined() (*raster.Grey, []Sample) {
	g := raster.New(100, 60)
	for y := range g.Height {
		for x := range g.Width {
			ground := 50.0
			if y >= 28 && y <= 33 {
				ground = 130
			}
			share := math.Min(math.Max(float64(x)+0.5-50.3, 0), 1)
			g.Values[y*g.Width+x] = float32(ground + share*(200-ground))
		}
	}
	var samples []Sample
	for y := 15; y < 45; y++ {
		samples = append(samples, Sample{At: orb.Point{50, float64(y)}, Inward: orb.Point{1, 0}})
	}
	return g, samples
}

// Where a line of the ground meets the rim, brightness midway to the ground lies outside of
// the paper; that midway to the line is where it begins.
func TestLocateOnLinesOfTheGround(t *testing.T) {
	g, samples := lined()
	on := func(p orb.Point) bool { return p[1] >= 26 && p[1] <= 35 }
	plain, told := Locate(g, samples, 4, nil), Locate(g, samples, 4, on)
	most := 0.0
	for i, e := range told {
		require.True(t, e.Found, i)
		assert.InDelta(t, 50.3, e.At[0], 0.12, "y = %g", samples[i].At[1])
		if !plain[i].Found {
			most = math.Inf(1)
			continue
		}
		most = math.Max(most, math.Abs(plain[i].At[0]-50.3))
	}
	assert.Greater(t, most, 0.25, "without being told the line draws the rim off")
}

func TestContrast(t *testing.T) {
	between, clear := Contrast([]float32{10, 10, 10, 12, 90, 90, 92, 90})
	assert.InDelta(t, 40*40, between, 80)
	assert.Greater(t, clear, 0.99)
	var even []float32
	for i := range 100 {
		even = append(even, float32(i))
	}
	_, clear = Contrast(even)
	assert.InDelta(t, 0.75, clear, 0.01, "two halves of what is evenly spread (Otsu 1979)")
	between, clear = Contrast([]float32{7, 7, 7})
	assert.Zero(t, between)
	assert.Zero(t, clear)
}

// A blob goes as far as the picture does, and its rim counts the sides of pixels there.
func TestBlobThatFillsThePicture(t *testing.T) {
	c := Classes{Width: 4, Height: 3, Step: 1, Bright: slices.Repeat([]bool{true}, 12)}
	all := c.Blobs(true, 1).All
	require.Len(t, all, 1)
	assert.Equal(t, 12, all[0].Area)
	assert.Equal(t, 2*(4+3), all[0].Rim)
}

// The width of a rise goes from a fifth to four fifths of it, or to where the profile ends.
func TestWidthOfARise(t *testing.T) {
	for _, c := range []struct {
		shares []float64
		at     int
		want   float64
	}{
		{[]float64{0, 0, 0.1, 0.3, 0.5, 0.7, 0.9, 1}, 4, 4},
		{[]float64{0, 0, 1, 1}, 1, 1},
		{[]float64{0.3, 0.4, 0.6, 0.7}, 1, 3},
	} {
		share := func(i int) float64 { return c.shares[i] }
		assert.InDelta(t, c.want*stride, width(share, c.at, len(c.shares)), 1e-9, "%v", c.shares)
	}
}
