package tracing

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/tracing/raster"
	"ellwand/pieces/tracing/reference"
)

// Over a black photo, faded to a grey of 40, lie every mark, every side of an outline, and
// a cross where a shape was left out: by hand.
func TestOverlayByHand(t *testing.T) {
	var file bytes.Buffer
	require.NoError(t, png.Encode(&file, image.NewGray(image.Rect(0, 0, 200, 100))))
	photo, err := raster.Decode(file.Bytes())
	require.NoError(t, err)
	seen := []orb.Point{{60, 20}, {140, 20}, {140, 80}, {60, 80}}
	got := Tracing{Width: 200, Height: 100, Step: 1, photo: photo,
		Reference: reference.Found{Marks: []orb.Point{{20, 30}, {30, 30}}},
		Outlines:  []Outline{{Seen: seen, Corners: seen[:1]}}, Left: []*Fault{{At: orb.Point{0.9, 0.5}}}}.overlay()
	solid := func(c color.NRGBA) color.RGBA { return color.RGBA{c.R, c.G, c.B, 255} }
	for place, want := range map[image.Point]color.RGBA{
		{X: 20, Y: 30}: solid(referenceColour), {X: 30, Y: 30}: solid(referenceColour),
		{X: 100, Y: 20}: solid(outlineColour), {X: 140, Y: 50}: solid(outlineColour),
		{X: 100, Y: 80}: solid(outlineColour), {X: 60, Y: 50}: solid(outlineColour),
		{X: 60, Y: 20}: solid(cornerColour), {X: 180, Y: 50}: solid(leftOutColour),
		{X: 100, Y: 23}: {40, 40, 40, 255}, {X: 57, Y: 50}: {40, 40, 40, 255}, // beside a line
		{X: 25, Y: 30}: {40, 40, 40, 255}, {X: 5, Y: 90}: {40, 40, 40, 255},
	} {
		assert.Equal(t, want, got.RGBAAt(place.X, place.Y), "%v", place)
	}
}

// A photo that is worked on shrunk has its places back where they were once it is grown.
func TestShrunkIsGrownBack(t *testing.T) {
	for step, side := range map[int]int{1: 1000, 2: 6000, 3: 10000} {
		s := scene{photo: &raster.Photo{Width: side, Height: side}}
		require.Equal(t, step, s.photo.Step())
		p := orb.Point{raster.Grown(100, step), raster.Grown(250, step)}
		assert.InDeltaSlice(t, []float64{100, 250}, []float64{s.shrunk(p)[0], s.shrunk(p)[1]}, 1e-9)
	}
}
