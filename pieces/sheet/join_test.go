package sheet

import (
	"fmt"
	"image"
	"image/color"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/paper"
)

// printed is a tile as poppler prints it.
type printed struct {
	Tile
	page   *image.Gray
	cell   orb.Bound // on the page
	pixels float64   // to a mm
}

// markAt finds a matching mark near a place on a page: the middle of what has
// its grey all around: the softened edges of other lines have it too.
func (p printed) markAt(t *testing.T, near orb.Point) orb.Point {
	t.Helper()
	var sum orb.Point
	n := 0.0
	is := func(u, v int) bool { return math.Abs(float64(p.page.GrayAt(u, v).Y)-markGrey) < 10 }
	x, y, reach := int(near[0]*p.pixels), int(near[1]*p.pixels), int(p.pixels*(markSize+1))
	for v := y - reach; v <= y+reach; v++ {
		for u := x - reach; u <= x+reach; u++ {
			if is(u, v) && is(u-1, v) && is(u+1, v) && is(u, v-1) && is(u, v+1) {
				sum, n = geometry.Add(sum, orb.Point{float64(u) + 0.5, float64(v) + 0.5}), n+1
			}
		}
	}
	require.Greater(t, n, 12*p.pixels*p.pixels, "there is no mark near %v", near)
	return geometry.Times(sum, 1/n/p.pixels)
}

// marks of a side, as found on the page.
func (p printed) marks(t *testing.T, side int) [2]orb.Point {
	var out [2]orb.Point
	for i, share := range []float64{0.25, 0.75} {
		x, y := p.cell.Min[0]+share*(p.cell.Max[0]-p.cell.Min[0]), p.cell.Min[1]+share*(p.cell.Max[1]-p.cell.Min[1])
		near := map[int]orb.Point{rightSide: {p.cell.Max[0], y}, leftSide: {p.cell.Min[0], y},
			upperSide: {x, p.cell.Min[1]}, lowerSide: {x, p.cell.Max[1]}}[side]
		out[i] = p.markAt(t, near)
	}
	return out
}

// printedTiles are the tiles of a layout that are not blank.
func printedTiles(t *testing.T, layout Layout, pixels float64) []printed {
	t.Helper()
	plane, tiling := layout.Plane()
	pages, err := layout.Pages()
	require.NoError(t, err)
	before := len(pages) - tiling.Sheets(plane)
	images := rendered(t, written(t, layout), before+1, len(pages), 25.4*pixels, 0)
	var out []printed
	for _, tile := range tiling.Tiles(plane) {
		if tile.Blank {
			continue
		}
		page := pages[before+len(out)]
		corner := orb.Point{cornerOf(tiling.Columns, page.Width, tiling.Paper),
			cornerOf(tiling.Rows, page.Height, tiling.Paper)}
		cell := orb.Bound{Min: corner, Max: geometry.Add(corner, geometry.Sub(tile.Box.Max, tile.Box.Min))}
		out = append(out, printed{tile, images[len(out)], cell, pixels})
	}
	return out
}

// joined lays the pages side by side by their marks alone, each on the one it
// was joined to first, and returns what is black on them.
func joined(t *testing.T, layout Layout, pixels float64) *image.Gray {
	t.Helper()
	plane, _ := layout.Plane()
	width, height := plane.Extent()
	out := image.NewGray(image.Rect(0, 0, int((width+20)*pixels), int((height+20)*pixels)))
	for i := range out.Pix {
		out.Pix[i] = 255
	}
	known := map[[2]int]printed{} // their boxes as found
	for _, p := range printedTiles(t, layout, pixels) {
		found := p.Box.Min // of one that is joined to nothing before it
		for _, join := range []struct {
			own, theirs int
			before      [2]int
		}{{upperSide, lowerSide, [2]int{p.Row - 1, p.Column}}, {leftSide, rightSide, [2]int{p.Row, p.Column - 1}}} {
			other, ok := known[join.before]
			if !ok {
				continue
			}
			own, theirs := p.marks(t, join.own), other.marks(t, join.theirs)
			shift := geometry.Times(geometry.Add(geometry.Sub(theirs[0], own[0]), geometry.Sub(theirs[1], own[1])), 0.5)
			found = geometry.Add(geometry.Add(other.Box.Min, geometry.Sub(p.cell.Min, other.cell.Min)), shift)
			assert.InDelta(t, 0, geometry.Distance(found, p.Box.Min), 0.1, "%s, by its marks", p.Name())
		}
		p.Box.Min = found
		known[[2]int{p.Row, p.Column}] = p
		p.paste(out)
	}
	return out
}

// paste puts the cell on the canvas, as wide as its trim line, which is left
// on one of two that are joined: every pixel of the canvas takes the one in
// which its middle lies. What is not black is not of the pieces.
func (p printed) paste(on *image.Gray) {
	const rim = 0.3
	pixels := p.pixels
	shift := geometry.Sub(p.cell.Min, p.Box.Min)
	first, end := geometry.Add(p.Box.Min, orb.Point{-rim, -rim}), geometry.Add(geometry.Sub(p.cell.Max, shift),
		orb.Point{rim, rim})
	for v := int(first[1] * pixels); v < int(end[1]*pixels); v++ {
		for u := int(first[0] * pixels); u < int(end[0]*pixels); u++ {
			x, y := int(float64(u)+0.5+shift[0]*pixels), int(float64(v)+0.5+shift[1]*pixels)
			if image.Pt(x, y).In(p.page.Rect) && p.page.Pix[y*p.page.Stride+x] < 70 {
				on.SetGray(u+20, v+20, color.Gray{})
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
		is := func(x, y int) bool { return image.Pt(x, y).In(img.Rect) && wanted(img.Pix[y*img.Stride+x]) }
		stack := []image.Point{from}
		for len(stack) > 0 { // row by row
			p := stack[len(stack)-1]
			stack = stack[:len(stack)-1]
			if !is(p.X, p.Y) {
				continue
			}
			first, end := p.X, p.X+1
			for is(first-1, p.Y) {
				first--
			}
			for is(end, p.Y) {
				end++
			}
			for x := first; x < end; x++ {
				img.Pix[p.Y*img.Stride+x] = level
				for _, y := range []int{p.Y - 1, p.Y + 1} {
					if is(x, y) && (x == first || !is(x-1, y)) {
						stack = append(stack, image.Pt(x, y))
					}
				}
			}
			n += float64(end - first)
			box = box.Union(orb.Bound{Min: orb.Point{float64(first), float64(p.Y)},
				Max: orb.Point{float64(end), float64(p.Y + 1)}})
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

// joinedLayout has its pieces where four sheets meet.
func joinedLayout(t *testing.T, paper paper.Paper) Layout {
	cuff := withAllowance(pieces.Rectangle("cuff", 120, 60), 10)
	x, y := paper.Cell()
	y = math.Max(y, 210)
	return Layout{Title: "Smock for Ilse Marlow", Paper: paper, Figures: []DrawnPiece{
		figureOf(t, sleeve(0.5)).Map(onto(x-75, y+80)),
		figureOf(t, disc(60)).Map(onto(x-7, y+150)),
		figureOf(t, cuff).Map(onto(x+110, y+40)),
	}}
}

// TestTilesJoinToTheOutlines joins the printed pages by their marks and
// compares every cutting line with the true one: extents within 0.2 mm, and
// the area within a rim of 0.2 mm. Margins and half overlaps are whole pixels
// and broken ones; those of the largest sheets, seen more coarsely, whole.
func TestTilesJoinToTheOutlines(t *testing.T) {
	for _, c := range []struct {
		paper                   string
		margin, overlap, pixels float64
	}{
		{"a0", 10, 12, 5}, {"a1", 9, 20, 5}, {"a2", 4.2, 24.6, 8}, {"a3", 6, 21, 8}, {"a4", 10, 12, 8}, {"a4", 4.3, 11,
			8}, {"a5", 5, 10, 8},
		{"letter", 6.35, 12.7, 8}, {"letter", 10, 13, 8}, {"legal", 12, 17, 8}, {"tabloid", 7.5, 15, 8},
		{"330mmx480mm", 6, 20, 8}, {"480mmx330mm", 6, 21, 8}, {"9inx14in", 3, 19, 8},
	} {
		t.Run(fmt.Sprintf("%s margin %g overlap %g", c.paper, c.margin, c.overlap), func(t *testing.T) {
			t.Parallel()
			paper := named(t, c.paper)
			paper.Margin, paper.Overlap = c.margin, c.overlap
			layout := joinedLayout(t, paper)
			img := joined(t, layout, c.pixels)
			var seeds []image.Point
			for _, f := range layout.Figures {
				at := geometry.Add(f.Sizes[0].Cutting.Bound().Center(), orb.Point{7, 7})
				seeds = append(seeds, image.Pt(int(at[0]*c.pixels)+20, int(at[1]*c.pixels)+20))
			}
			areas, boxes := enclosed(img, seeds)
			for i, f := range layout.Figures {
				ring := f.Sizes[0].Cutting
				around := planar.Length(orb.LineString(ring))
				outer := math.Abs(planar.Area(ring)) + around*cuttingWidth/2
				assert.InDelta(t, outer, areas[i]/c.pixels/c.pixels, 0.2*around, f.Label[0])
				want := ring.Bound().Pad(cuttingWidth / 2)
				for axis := range 2 {
					assert.InDelta(t, want.Min[axis], (boxes[i].Min[axis]-20)/c.pixels, 0.2, f.Label[0])
					assert.InDelta(t, want.Max[axis], (boxes[i].Max[axis]-20)/c.pixels, 0.2, f.Label[0])
				}
			}
			assert.InDelta(t, math.Pi*60*60, math.Abs(planar.Area(layout.Figures[1].Sizes[0].Cutting)), 5)
		})
	}
}
