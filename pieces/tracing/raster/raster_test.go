package raster

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// marked is a picture that is dark but for a light corner, upper left.
func marked() *image.Gray {
	out := image.NewGray(image.Rect(0, 0, 160, 120))
	for y := range 30 {
		for x := range 40 {
			out.SetGray(x, y, color.Gray{Y: 200})
		}
	}
	return out
}

// exif has the tag of the orientation alone.
func exif(order binary.AppendByteOrder, name string, o uint16) []byte {
	out := order.AppendUint32(order.AppendUint16([]byte(name), 42), 8)
	out = order.AppendUint16(order.AppendUint16(order.AppendUint16(out, 1), 0x0112), 3)
	return order.AppendUint32(order.AppendUint16(order.AppendUint16(order.AppendUint32(out, 1), o), 0), 0)
}

func jpegWith(t *testing.T, o uint16) []byte {
	var file bytes.Buffer
	require.NoError(t, jpeg.Encode(&file, marked(), nil))
	body := append([]byte("Exif\x00\x00"), exif(binary.BigEndian, "MM", o)...)
	segment := binary.BigEndian.AppendUint16([]byte{0xff, 0xe1}, uint16(len(body)+2))
	out := append([]byte{0xff, 0xd8}, append(segment, body...)...)
	return append(out, file.Bytes()[2:]...)
}

// The light corner goes where each orientation puts it: (left, top) for 1, and so on
// (JEITA CP-3451: what the first row and the first column of the file show).
func TestOrientation(t *testing.T) {
	corners := map[uint16][2]bool{1: {true, true}, 2: {false, true}, 3: {false, false}, 4: {true, false},
		5: {true, true}, 6: {false, true}, 7: {false, false}, 8: {true, false}, 9: {true, true}}
	for o, want := range corners {
		photo, err := Decode(jpegWith(t, o))
		require.NoError(t, err)
		wide := o < 5 || o > 8
		assert.Equal(t, wide, photo.Width > photo.Height, "orientation %d", o)
		g := photo.Channel(Mixes[0])
		for _, left := range []bool{true, false} {
			for _, top := range []bool{true, false} {
				x, y := 5, 5
				if !left {
					x = g.Width - 6
				}
				if !top {
					y = g.Height - 6
				}
				assert.Equal(t, want == [2]bool{left, top}, g.At(x, y) > 100, "orientation %d", o)
			}
		}
	}
}

func TestOrientationOfPNG(t *testing.T) {
	var file bytes.Buffer
	require.NoError(t, png.Encode(&file, marked()))
	body := exif(binary.LittleEndian, "II", 6)
	chunk := append(binary.BigEndian.AppendUint32(nil, uint32(len(body))), append([]byte("eXIf"), body...)...)
	head := len("\x89PNG\r\n\x1a\n") + 25 // with the chunk IHDR
	data := append(bytes.Clone(file.Bytes()[:head]), append(chunk, 0, 0, 0, 0)...)
	assert.Equal(t, Orientation(6), orientationOf(append(data, file.Bytes()[head:]...)))
	for cut := range data {
		assert.NotPanics(t, func() { orientationOf(data[:cut]) })
	}
}

func TestMedianRemovesLinesAndKeepsEdges(t *testing.T) {
	g := New(40, 40)
	for i := range g.Values {
		if i%40 >= 20 || i/40 == 7 { // a line across the dark half
			g.Values[i] = 200
		}
	}
	m := g.Median(2)
	assert.Zero(t, m.At(10, 7))
	assert.Zero(t, m.At(18, 20))
	assert.EqualValues(t, 200, m.At(21, 20))
}

func TestBlurredKeepsTheSum(t *testing.T) {
	g := New(41, 41)
	g.Values[20*41+20] = 1000
	sum := 0.0
	for _, v := range g.Blurred(2).Values {
		sum += float64(v)
	}
	assert.InDelta(t, 1000, sum, 0.1)
}

// Shadow takes half the light from white paper and from brown: their shares of blue stay
// apart, as brightness does not.
func TestBlueness(t *testing.T) {
	white, brown := [3]float32{238, 238, 236}, [3]float32{186, 150, 110}
	dark := func(p [3]float32) [3]float32 { return [3]float32{p[0] / 2, p[1] / 2, p[2] / 2} }
	assert.InEpsilon(t, Blueness.of(white), Blueness.of(dark(white)), 0.02)
	assert.InEpsilon(t, Blueness.of(brown), Blueness.of(dark(brown)), 0.06)
	assert.Greater(t, Blueness.of(dark(white)), 1.5*Blueness.of(brown))
	assert.Less(t, Mixes[0].of(dark(white)), Mixes[0].of(brown))
}

// Every fortieth pixel of every fortieth row, from the middle of the first forty.
func TestSparse(t *testing.T) {
	picture := image.NewGray(image.Rect(0, 0, 160, 120))
	for i := range picture.Pix {
		picture.Pix[i] = uint8(i%160 + i/160)
	}
	var file bytes.Buffer
	require.NoError(t, png.Encode(&file, picture))
	photo, err := Decode(file.Bytes())
	require.NoError(t, err)
	assert.Equal(t, []float32{40, 80, 120, 160, 80, 120, 160, 200, 120, 160, 200, 240}, photo.Sparse(Mixes[1], 4, nil))
	assert.Equal(t, []float32{80, 120},
		photo.Sparse(Mixes[1], 4, func(p orb.Point) bool { return p[0] < 80 && p[1] > 40 && p[1] < 80 }))
}
