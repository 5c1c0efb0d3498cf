package tracing

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/reference"
)

// traced is a kept picture, rendered by testdata/render.py, and its tracing.
func traced(t *testing.T, name string) (Tracing, truth) {
	data, err := os.ReadFile(filepath.Join("testdata", name+".jpg"))
	require.NoError(t, err)
	all := readTruth(t, filepath.Join("testdata", name+".json"))
	out, err := Trace(data, all.known())
	require.NoError(t, err)
	return out, all
}

// known is what the picture has as its reference.
func (t truth) known() Known {
	switch {
	case t.Scene.Square > 0:
		return Known{Square: t.Scene.Square}
	case len(t.Scene.Distances) == 2:
		var d [2]reference.Distance
		for i, ends := range t.Scene.Distances {
			d[i] = reference.Distance{From: t.Points[i][0], To: t.Points[i][1], Length: geometry.Distance(ends[0], ends[1])}
		}
		return Known{Distances: &d}
	}
	return Known{Sheet: reference.Known{Width: 210, Height: 297}}
}

// What is asked of a grid and of four sheets on a piece of 60 cm: edges within 1.5 mm,
// corners within 2 mm, areas within 0.5 %, and an error told that is not below the true
// one, and at most three times it. One sheet and a scan promise no more than they tell.
func TestPicturesOfAnotherProgram(t *testing.T) {
	tests := []struct {
		name   string
		kind   reference.Kind
		pieces int
		area   float64 // share
		most   float64 // times the true error that the told one is at most
	}{
		{"mat", reference.Squares, 3, 0.005, 3},
		{"squared", reference.Squares, 2, 0.005, 3},
		{"tips", reference.Squares, 2, 0.005, 3},
		{"four", reference.Sheets, 3, 0.005, 3},
		{"one", reference.OneSheet, 3, 0.01, 3},
		{"scan", reference.Distances, 3, 0.005, 4},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, all := traced(t, tt.name)
			assert.Equal(t, tt.kind, got.Reference.Kind)
			assert.Len(t, got.Outlines, tt.pieces)
			assert.Empty(t, got.Left)
			for _, o := range got.Outlines {
				m := measure(o, all)
				t.Logf("%s: edges %.2f mm, corners %.2f mm, area %.2f %%, told %.2f mm", m.name, m.most, m.corner, m.area*100,
					m.reported)
				assert.GreaterOrEqual(t, m.corners, m.wants, "corners of %s", m.name)
				assert.LessOrEqual(t, m.most, 1.5, m.name)
				assert.LessOrEqual(t, m.corner, 2.0, m.name)
				assert.InDelta(t, 0, m.area, tt.area, m.name)
				assert.GreaterOrEqual(t, m.reported, m.most, m.name)
				assert.LessOrEqual(t, m.reported, tt.most*m.most, m.name)
			}
		})
	}
}

// What touches, and what goes over the edge of the picture, is left out and said.
func TestShapesThatAreNoPieces(t *testing.T) {
	got, _ := traced(t, "touching")
	require.Len(t, got.Left, 2)
	var troubles []Trouble
	for _, fault := range got.Left {
		troubles = append(troubles, fault.Trouble)
	}
	assert.ElementsMatch(t, []Trouble{Touching, OverRim}, troubles)
	assert.Len(t, got.Outlines, 1)
}

// A shape that is too small for a piece is left out and said; less is a crumb.
func TestSmallShapesAreSaid(t *testing.T) {
	img := image.NewGray(image.Rect(0, 0, 600, 400)) // 1 mm a pixel
	draw.Draw(img, img.Rect, image.NewUniform(color.Gray{Y: 40}), image.Point{}, draw.Src)
	for _, paper := range []image.Rectangle{
		image.Rect(100, 100, 300, 250), image.Rect(400, 100, 420, 112), image.Rect(400, 300, 410, 309),
	} {
		draw.Draw(img, paper, image.NewUniform(color.Gray{Y: 220}), image.Point{}, draw.Src)
	}
	var file bytes.Buffer
	require.NoError(t, png.Encode(&file, img))
	got, err := Trace(file.Bytes(), Known{Distances: &[2]reference.Distance{
		{To: orb.Point{500, 0}, Length: 500}, {To: orb.Point{0, 300}, Length: 300}}})
	require.NoError(t, err)
	assert.Len(t, got.Outlines, 1)
	require.Len(t, got.Left, 1)
	assert.Equal(t, Small, got.Left[0].Trouble)
	assert.ErrorContains(t, got.Left[0], "the shape at the upper right is smaller than 6 cm^2")
}

// The picture to judge by has the size of the photo, and red where outlines are.
func TestOverlay(t *testing.T) {
	got, _ := traced(t, "scan")
	var file bytes.Buffer
	require.NoError(t, got.WriteOverlay(&file))
	picture, err := png.Decode(&file)
	require.NoError(t, err)
	assert.Equal(t, got.Width, picture.Bounds().Dx())
	at := got.Outlines[0].Seen[len(got.Outlines[0].Seen)/2]
	red, green, _, _ := picture.At(int(at[0]+0.5), int(at[1]+0.5)).RGBA()
	assert.Greater(t, red, 2*green)
}
