package tracing

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/found"
	"ellwand/pieces/tracing/reference"
	"ellwand/testdata/sample"
)

// pngOf has a header of that size and no pixels.
func pngOf(width, height uint32) []byte {
	head := binary.BigEndian.AppendUint32([]byte("IHDR"), width)
	head = append(binary.BigEndian.AppendUint32(head, height), 8, 2, 0, 0, 0)
	out := append([]byte("\x89PNG\r\n\x1a\n"), 0, 0, 0, 13)
	out = append(out, head...)
	return binary.BigEndian.AppendUint32(out, crc32.ChecksumIEEE(head))
}

// painted is a picture of one colour with light rectangles.
func painted(width, height int, boxes ...image.Rectangle) *image.Gray {
	out := image.NewGray(image.Rect(0, 0, width, height))
	for i := range out.Pix {
		out.Pix[i] = 60
	}
	for _, box := range boxes {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for x := box.Min.X; x < box.Max.X; x++ {
				out.SetGray(x, y, color.Gray{Y: 220})
			}
		}
	}
	return out
}

func encoded(t testing.TB, picture image.Image) []byte {
	var out bytes.Buffer
	require.NoError(t, png.Encode(&out, picture))
	return out.Bytes()
}

func distances(a, b float64) found.Reference {
	return found.Reference{Distances: []found.Distance{
		{From: orb.Point{10, 10}, To: orb.Point{210, 10}, Length: a}, {From: orb.Point{10, 10}, To: orb.Point{10, 110},
			Length: b},
	}}
}

func TestRefused(t *testing.T) {
	squares := found.Reference{Square: 10}
	piece := encoded(t, painted(400, 300, image.Rect(100, 60, 300, 200)))
	tests := []struct {
		name      string
		data      []byte
		reference found.Reference
		want      string
	}{
		{"no reference", piece, found.Reference{}, "a photo needs something of a known size"},
		{"huge", pngOf(60_000, 60_000), squares, "has 60000 x 60000 pixels"},
		{"wide", pngOf(100_000, 300), squares, "pixels, more than 25 million"},
		{"broken", pngOf(1000, 1000), squares, "cannot be read"},
		{"no picture", []byte("\xff\xd8\xffnothing"), squares, "cannot be read"},
		{"small", encoded(t, painted(50, 50)), squares, "too few pixels"},
		{"plain", encoded(t, painted(400, 300)), distances(200, 100), "nothing stands out"},
		{"no squares", piece, squares, "no squared ground was found"},
		{"no sheet", piece, found.Reference{Sheet: [2]float64{100, 500}}, "no sheet of that size"},
		{"slanting", piece, distances(200, 110), "do not agree"},
		{"no length", piece, found.Reference{Distances: []found.Distance{{Length: 5}, {Length: 5}}}, "has no length"},
		{"over the edge", encoded(t, painted(400, 300, image.Rect(300, 60, 400, 200))), distances(200, 100),
			"at the right goes over the picture's edge"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			o := found.Options{Reference: tt.reference}
			o.Limits[found.Outlines] = 100
			_, err := Read(tt.data, o)
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

// A rectangle comes in as one, upright, with its corners.
func TestRectangle(t *testing.T) {
	o := found.Options{Reference: distances(400, 200)}
	o.Limits[found.Outlines] = 100
	drawing, err := Read(encoded(t, painted(400, 300, image.Rect(100, 60, 300, 200))), o)
	require.NoError(t, err)
	require.Len(t, drawing.Pieces, 1)
	outline := drawing.Pieces[0].Outline
	require.Len(t, outline, 4)
	var corners orb.MultiPoint
	for _, step := range outline {
		assert.Equal(t, found.Corner, step.Begins)
		corners = append(corners, step.Start())
	}
	box := corners.Bound()
	assert.InDelta(t, 400, box.Max[0], 0.5)
	assert.InDelta(t, 280, box.Max[1], 0.5)
	assert.InDelta(t, 0, box.Min[0], 0.01)
	clean, _, err := found.Clean(drawing.Pieces[0], o)
	require.NoError(t, err)
	assert.Len(t, clean.Outline, 4)
}

func FuzzTrace(f *testing.F) {
	sample.MinimizeBriefly()
	var photo bytes.Buffer
	require.NoError(f, jpeg.Encode(&photo, painted(160, 120, image.Rect(40, 30, 120, 90)), nil))
	f.Add(photo.Bytes(), byte(0))
	f.Add(encoded(f, painted(160, 120, image.Rect(20, 20, 60, 80), image.Rect(80, 20, 150, 100))), byte(1))
	f.Add(pngOf(200, 200), byte(2))
	f.Fuzz(func(t *testing.T, data []byte, kind byte) {
		if header, _, err := image.DecodeConfig(bytes.NewReader(data)); err == nil && header.Width*header.Height > 1<<16 {
			return // larger ones are slow, not other
		}
		known := []Known{{Square: 10}, {Sheet: reference.Known{Width: 210, Height: 297}}, {Distances: &[2]reference.Distance{
			{From: orb.Point{0, 0}, To: orb.Point{90, 0}, Length: 90}, {From: orb.Point{0, 0}, To: orb.Point{0, 90}, Length: 90},
		}}}[kind%3]
		got, err := Trace(data, known)
		if err != nil {
			assert.NotEmpty(t, err.Error())
			return
		}
		for _, o := range got.Outlines {
			assert.Greater(t, o.Accuracy, 0.0)
			assert.NotEmpty(t, o.Edges)
		}
	})
}
