package packing

import (
	"context"
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb/planar"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
)

func rectangles(t testing.TB, n int, width, height float64) []sheet.DrawnPiece {
	t.Helper()
	var out []sheet.DrawnPiece
	for i := range n {
		f, err := sheet.NewDrawnPiece(pieces.Rectangle(fmt.Sprintf("panel %d", i+1), width, height))
		require.NoError(t, err)
		out = append(out, f)
	}
	return out
}

func polygon(t *testing.T, f sheet.DrawnPiece) geom.Polygon {
	var flat []float64
	for _, p := range f.Sizes[0].Cutting {
		flat = append(flat, p[0], p[1])
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))})
}

// TestPackKeepsPiecesApart asks another library for the overlaps, and that
// nothing was mirrored or lost.
func TestPackKeepsPiecesApart(t *testing.T) {
	for _, name := range []string{"a4", "a2"} {
		paper, err := paper.Parse(name, measure.Millimetre)
		require.NoError(t, err)
		figures := rectangles(t, 5, 150, 240)
		layout, err := Pack(context.Background(), figures, paper, Options{Passes: 3, Seed: 1})
		require.NoError(t, err)
		require.Len(t, layout.Figures, len(figures))
		right, down := sheet.PanelRoom(layout.Paper)
		for i, f := range layout.Figures {
			box := f.Sizes[0].Cutting.Bound()
			assert.True(t, box.Min[0] > -1e-6 && box.Min[1] > -1e-6)
			assert.True(t, box.Min[0] > right-1e-6 || box.Min[1] > down-1e-6, "off the panel")
			for _, other := range layout.Figures[:i] {
				common, err := geom.Intersection(polygon(t, f).AsGeometry(), polygon(t, other).AsGeometry())
				require.NoError(t, err)
				assert.InDelta(t, 0, common.Area(), 1e-6)
			}
		}
		plane, tiling := layout.Plane()
		cellWidth, cellHeight := layout.Paper.Cell()
		least := math.Ceil(5 * 150 * 240 / (cellWidth * cellHeight))
		assert.GreaterOrEqual(t, float64(tiling.Sheets(plane)), least)
		assert.LessOrEqual(t, float64(tiling.Sheets(plane)), least+2)
	}
}

// TestPackTurnsNothingOver: a piece keeps its sense of rotation to the eye,
// that is, the other one in a frame with y down.
func TestPackTurnsNothingOver(t *testing.T) {
	f, err := sheet.NewDrawnPiece(pieces.Rectangle("strap", 60, 400))
	require.NoError(t, err)
	assert.Positive(t, planar.Area(f.Sizes[0].Cutting))
	paper, err := paper.Parse("a3", measure.Millimetre)
	require.NoError(t, err)
	layout, err := Pack(context.Background(), []sheet.DrawnPiece{f}, paper, Options{Passes: 1})
	require.NoError(t, err)
	assert.Negative(t, planar.Area(layout.Figures[0].Sizes[0].Cutting))
}

func TestPackRefuses(t *testing.T) {
	paper, err := paper.Parse("a4", measure.Millimetre)
	require.NoError(t, err)
	_, err = Pack(context.Background(), nil, paper, Options{})
	assert.ErrorContains(t, err, "no piece to print")
	paper.Margin = 80
	_, err = Pack(context.Background(), rectangles(t, 1, 10, 10), paper, Options{})
	assert.ErrorContains(t, err, "for the pieces")
}

func BenchmarkPack(b *testing.B) {
	paper, _ := paper.Parse("a4", measure.Millimetre)
	for _, count := range []int{5, 15} {
		figures := rectangles(b, count, 130, 240)
		b.Run(fmt.Sprintf("pieces=%d", count), func(b *testing.B) {
			for b.Loop() {
				layout, err := Pack(context.Background(), figures, paper, Options{Passes: 20})
				if err != nil || len(layout.Figures) != count {
					b.Fatal(err)
				}
			}
		})
	}
}
