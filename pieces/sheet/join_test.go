package sheet

import (
	"image"
	"image/color"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pixels to a mm, of the pages joined in the tests: 127 dpi.
const pixels = 5.0

// markAt finds a matching mark near a place on a page: the middle of what has
// its grey.
func markAt(t *testing.T, page *image.Gray, near orb.Point) orb.Point {
	t.Helper()
	var sum orb.Point
	n := 0.0
	reach := int(pixels * (markSize + 1))
	for y := int(near[1]*pixels) - reach; y <= int(near[1]*pixels)+reach; y++ {
		for x := int(near[0]*pixels) - reach; x <= int(near[0]*pixels)+reach; x++ {
			if v := page.GrayAt(x, y).Y; v > markGrey-10 && v < markGrey+10 {
				sum, n = plus(sum, orb.Point{float64(x) + 0.5, float64(y) + 0.5}), n+1
			}
		}
	}
	require.Greater(t, n, 300.0, "there is no mark near %v", near)
	return times(sum, 1/n/pixels)
}

// marksOf a side, as found on the page.
func marksOf(t *testing.T, page *image.Gray, cell orb.Bound, side int) [2]orb.Point {
	var out [2]orb.Point
	for i, share := range []float64{0.25, 0.75} {
		x, y := cell.Min[0]+share*(cell.Max[0]-cell.Min[0]), cell.Min[1]+share*(cell.Max[1]-cell.Min[1])
		near := map[int]orb.Point{rightSide: {cell.Max[0], y}, leftSide: {cell.Min[0], y}, upperSide: {x, cell.Min[1]}, lowerSide: {x, cell.Max[1]}}[side]
		out[i] = markAt(t, page, near)
	}
	return out
}

// joined lays the pages side by side by their marks alone, each on the one it
// was joined to first, and returns what is black on them.
func joined(t *testing.T, layout Layout) *image.Gray {
	t.Helper()
	plane, tiling := layout.Plane()
	path := written(t, layout)
	pages, err := layout.Pages()
	require.NoError(t, err)
	tiles := tiling.Tiles(plane)
	number := len(pages) - tiling.Sheets(plane) // of pages before the tiles
	sheets := map[[2]int]*image.Gray{}
	for _, tile := range tiles {
		if !tile.Blank {
			number++
			sheets[[2]int{tile.Row, tile.Column}] = rendered(t, path, number, 127, 0)
		}
	}
	corner := layout.Paper.Margin + layout.Paper.Overlap/2
	cellWidth, cellHeight := layout.Paper.Cell()
	cell := orb.Bound{Min: orb.Point{corner, corner}, Max: orb.Point{corner + cellWidth, corner + cellHeight}}
	width, height := plane.Extent()
	out := image.NewGray(image.Rect(0, 0, int((width+20)*pixels), int((height+20)*pixels)))
	for i := range out.Pix {
		out.Pix[i] = 255
	}
	// Where the corner of each page's cell comes to lie.
	lies := map[[2]int]orb.Point{}
	for _, tile := range tiles {
		at := [2]int{tile.Row, tile.Column}
		page := sheets[at]
		if page == nil {
			continue
		}
		lies[at] = tile.Box.Min // of one that is joined to nothing before it
		for _, join := range []struct {
			own, theirs int
			before      [2]int
		}{{upperSide, lowerSide, [2]int{tile.Row - 1, tile.Column}}, {leftSide, rightSide, [2]int{tile.Row, tile.Column - 1}}} {
			other, known := lies[join.before]
			if !known {
				continue
			}
			own, theirs := marksOf(t, page, cell, join.own), marksOf(t, sheets[join.before], cell, join.theirs)
			shift := times(plus(minus(theirs[0], own[0]), minus(theirs[1], own[1])), 0.5)
			found := plus(other, shift)
			assert.InDelta(t, 0, distance(found, tile.Box.Min), 0.1, "%s, by its marks", tile.Name())
			lies[at] = found
		}
		paste(out, page, cell, lies[at])
	}
	return out
}

// paste puts the cell of a page on the canvas; what is not black is not of
// the pieces.
func paste(on, page *image.Gray, cell orb.Bound, at orb.Point) {
	for y := int(cell.Min[1] * pixels); y < int(cell.Max[1]*pixels); y++ {
		for x := int(cell.Min[0] * pixels); x < int(cell.Max[0]*pixels); x++ {
			if page.Pix[y*page.Stride+x] < 70 {
				u := int(math.Round(at[0]*pixels+float64(x)-cell.Min[0]*pixels)) + 20
				v := int(math.Round(at[1]*pixels+float64(y)-cell.Min[1]*pixels)) + 20
				on.SetGray(u, v, color.Gray{})
			}
		}
	}
}

// enclosed floods from a corner and returns, for the shape around a pixel, the
// area in pixels and the box that the flood does not reach.
func enclosed(img *image.Gray, seeds []image.Point) (areas []float64, boxes []orb.Bound) {
	const flooded, counted = 254, 253
	fill := func(from image.Point, level uint8, wanted func(uint8) bool) (n float64, box orb.Bound) {
		box = orb.Bound{Min: orb.Point{math.Inf(1), math.Inf(1)}, Max: orb.Point{math.Inf(-1), math.Inf(-1)}}
		stack := []image.Point{from}
		for len(stack) > 0 {
			p := stack[len(stack)-1]
			stack = stack[:len(stack)-1]
			if !p.In(img.Rect) || !wanted(img.Pix[p.Y*img.Stride+p.X]) {
				continue
			}
			img.Pix[p.Y*img.Stride+p.X] = level
			n++
			x, y := float64(p.X), float64(p.Y)
			box.Min = orb.Point{min(box.Min[0], x), min(box.Min[1], y)}
			box.Max = orb.Point{max(box.Max[0], x+1), max(box.Max[1], y+1)}
			stack = append(stack, p.Add(image.Pt(1, 0)), p.Add(image.Pt(-1, 0)), p.Add(image.Pt(0, 1)), p.Add(image.Pt(0, -1)))
		}
		return n, box
	}
	fill(image.Pt(0, 0), flooded, func(v uint8) bool { return v == 255 })
	for _, seed := range seeds {
		n, box := fill(seed, counted, func(v uint8) bool { return v == 255 || v < 100 })
		areas, boxes = append(areas, n), append(boxes, box)
	}
	return areas, boxes
}

// TestTilesJoinToTheOutlines joins the printed pages by their marks and
// compares every cutting line with the true one: extents within 0.2 mm, and
// the area within a rim of 0.2 mm.
func TestTilesJoinToTheOutlines(t *testing.T) {
	for _, name := range []string{"a4", "330mmx480mm"} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			layout := testLayout(t, named(t, name))
			if name != "a4" { // half an overlap and a margin are whole pixels
				layout.Paper = layout.Paper.Turned()
				layout.Paper.Margin, layout.Paper.Overlap = 6, 20
			}
			img := joined(t, layout)
			var seeds []image.Point
			for _, f := range layout.Figures {
				c := plus(f.Sizes[0].Cutting.Bound().Center(), orb.Point{7, 7})
				seeds = append(seeds, image.Pt(int(c[0]*pixels)+20, int(c[1]*pixels)+20))
			}
			areas, boxes := enclosed(img, seeds)
			for i, f := range layout.Figures {
				ring := f.Sizes[0].Cutting
				around := planar.Length(orb.LineString(ring))
				outer := math.Abs(planar.Area(ring)) + around*cuttingWidth/2
				assert.InDelta(t, outer, areas[i]/pixels/pixels, 0.2*around, f.Label[0])
				want := grown(ring.Bound(), cuttingWidth/2)
				for axis := range 2 {
					assert.InDelta(t, want.Min[axis], (boxes[i].Min[axis]-20)/pixels, 0.2, f.Label[0])
					assert.InDelta(t, want.Max[axis], (boxes[i].Max[axis]-20)/pixels, 0.2, f.Label[0])
				}
			}
			assert.InDelta(t, math.Pi*110*110, math.Abs(planar.Area(layout.Figures[1].Sizes[0].Cutting)), 10)
		})
	}
}
