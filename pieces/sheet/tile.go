package sheet

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/paper"
)

// Pages draws every tile that is not blank at full size on a page of its own,
// with its name, and on each side that is joined to another page the trim
// line and two matching marks.
func (t Tiling) Pages(plane Plane) []drawing.Page {
	tiles := t.Tiles(plane)
	of := t.Sheets(plane)
	var out []drawing.Page
	for _, tile := range tiles {
		if tile.Blank {
			continue
		}
		out = append(out, t.page(plane, tiles, tile, fmt.Sprintf("sheet %d of %d", len(out)+1, of)))
	}
	return out
}

// tilePage is a tile being drawn.
type tilePage struct {
	*drawing.Picture
	tile  Tile
	paper paper.Paper
	cell  orb.Bound // between the trim lines, on the page
	inner orb.Bound // within the margins
	// drawn is what of the plane is on this page, in the frame of the plane,
	// and shift brings it to the page.
	drawn *drawing.Picture
	shift orb.Point
}

// isFree reports whether a box on the page is free of what is drawn of the
// plane.
func (p tilePage) isFree(box orb.Bound) bool {
	return p.drawn.IsFree(orb.Bound{Min: geometry.Sub(box.Min, p.shift), Max: geometry.Sub(box.Max, p.shift)})
}

func (t Tiling) page(plane Plane, tiles []Tile, tile Tile, count string) drawing.Page {
	page := drawing.Page{Width: t.Paper.Width, Height: t.Paper.Height}
	if t.Paper.IsRoll() {
		page.Width = tile.Box.Max[0] - tile.Box.Min[0] + 2*t.Paper.Margin + t.Paper.Overlap
	}
	corner := orb.Point{cornerOf(t.Columns, page.Width, t.Paper), cornerOf(t.Rows, page.Height, t.Paper)}
	p := tilePage{Picture: &drawing.Picture{}, tile: tile, paper: t.Paper}
	p.cell = orb.Bound{Min: corner, Max: geometry.Add(corner, geometry.Sub(tile.Box.Max, tile.Box.Min))}
	p.inner = orb.Bound{Min: orb.Point{t.Paper.Margin, t.Paper.Margin},
		Max: orb.Point{page.Width - t.Paper.Margin, page.Height - t.Paper.Margin}}
	p.shift = geometry.Sub(corner, tile.Box.Min)
	p.drawn = plane.Picture.Within(tile.Box.Pad(t.Paper.Overlap / 2))
	for side := range 4 {
		if other, ok := neighbour(tiles, tile, side); ok {
			p.joint(side, other.Name())
		}
	}
	p.name(plane.Title, count)
	shown := p.cell.Pad(t.Paper.Overlap / 2)
	p.Window(shown, plane.Picture, p.shift)
	page.Window(p.inner, p.Picture, orb.Point{})
	return page
}

// cornerOf is where the cell begins on a page: within the margin and half the
// overlap, or, where there is nothing to join and it is larger than that,
// within the margin.
func cornerOf(cuts []float64, extent float64, paper paper.Paper) float64 {
	usual := paper.Margin + paper.Overlap/2
	if len(cuts) > 2 {
		return usual
	}
	return math.Min(usual, math.Max(paper.Margin, (extent-cuts[1])/2))
}

// Sides of a tile.
const (
	rightSide = iota
	lowerSide
	leftSide
	upperSide
)

// neighbour is the tile that is joined on a side, unless there is none or it
// is left out.
func neighbour(tiles []Tile, of Tile, side int) (Tile, bool) {
	row, column := of.Row, of.Column
	switch side {
	case rightSide:
		column++
	case lowerSide:
		row++
	case leftSide:
		column--
	case upperSide:
		row--
	}
	for _, t := range tiles {
		if t.Row == row && t.Column == column && !t.Blank {
			return t, true
		}
	}
	return Tile{}, false
}

// name writes the tile's name large and light, and under it what it belongs
// to: in its lower left corner or, where a piece or a mark is drawn there, in
// another corner or the first place that is free.
func (p tilePage) name(title, count string) {
	const points, small = 36.0, 7.0
	at, words := orb.Point{p.cell.Min[0] + 5, p.cell.Max[1] - 11}, count
	for _, try := range []string{title + ", " + count, drawing.Shortened(title, small, false, 50) + ", " + count,
		count} {
		width := math.Max(drawing.Width(p.tile.Name(), points, true), drawing.Width(try, small, false))
		if place, ok := p.placeFor(width); ok {
			at, words = place, try
			break
		}
	}
	p.Write(drawing.Text{Words: p.tile.Name(), At: at, Points: points, Bold: true, Grey: 175})
	p.Write(drawing.Text{Words: words, At: geometry.Add(at, orb.Point{0, 5}), Points: small, Grey: 110})
}

// placeFor finds where a name of that width is clear of everything.
func (p tilePage) placeFor(width float64) (orb.Point, bool) {
	left, right := p.cell.Min[0]+5, p.cell.Max[0]-5-width
	if right < left {
		return orb.Point{}, false
	}
	high, low := p.cell.Min[1]+16, p.cell.Max[1]-11
	places := []orb.Point{{left, low}, {right, low}, {left, high}, {right, high}}
	for y := low; y > high; y -= 12 {
		for x := left; x < right; x += 12 {
			places = append(places, orb.Point{x, y})
		}
	}
	for _, place := range places {
		box := orb.Bound{Min: geometry.Add(place, orb.Point{-1, -10}),
			Max: geometry.Add(place, orb.Point{width + 1, 6})}
		if p.isFree(box) && p.Picture.IsFree(box) {
			return place, true
		}
	}
	return orb.Point{}, false
}

// A matching mark: half its diagonal, mm, and its grey, on which lines of the
// pieces still show.
const (
	markSize = 5.0
	markGrey = 170
)

// joint draws the trim line of a side, through to the margins, and on it the
// marks, which the neighbour shows in the same places, and its name.
func (p tilePage) joint(side int, other string) {
	at := func(along, in float64) orb.Point { // from the side inwards
		switch side {
		case rightSide:
			return orb.Point{p.cell.Max[0] - in, p.cell.Min[1] + along}
		case leftSide:
			return orb.Point{p.cell.Min[0] + in, p.cell.Min[1] + along}
		case lowerSide:
			return orb.Point{p.cell.Min[0] + along, p.cell.Max[1] - in}
		}
		return orb.Point{p.cell.Min[0] + along, p.cell.Min[1] + in}
	}
	length, angle := p.cell.Max[0]-p.cell.Min[0], 0.0
	if side == leftSide || side == rightSide {
		length, angle = p.cell.Max[1]-p.cell.Min[1], 90
	}
	p.Line(trimLine, at(-p.paper.Overlap/2, 0), at(length+p.paper.Overlap/2, 0))
	for _, share := range []float64{0.25, 0.75} {
		middle := length * share
		mark := []orb.Point{at(middle-markSize, 0), at(middle, markSize), at(middle+markSize, 0), at(middle, -markSize),
			at(middle-markSize, 0)}
		p.Area(markGrey, mark...)
		p.Line(markRim, mark...)
	}
	// Words stand on their line: below the trim line they need their height.
	in := 1.2
	if side == upperSide || side == leftSide {
		in = 3.4
	}
	words := "trim; " + other + " joins here"
	half := drawing.Width(words, 7, false) / 2
	middle := length / 2
	for _, share := range []float64{0.5, 0.4, 0.6, 0.33, 0.67, 0.1, 0.9} {
		along := length * share
		onMark := math.Min(math.Abs(share-0.25), math.Abs(share-0.75))*length < half+markSize+1
		beyond := along < half+5 || along > length-half-5
		if onMark || beyond {
			continue
		}
		if p.isFree(orb.MultiPoint{at(along-half, 0.3), at(along+half, 3.8)}.Bound()) {
			middle = along
			break
		}
		// Beyond the trim line, on what may be cut off, there is room as well.
		if p.paper.Overlap/2 > 4 && p.isFree(orb.MultiPoint{at(along-half, -0.3), at(along+half, -3.8)}.Bound()) {
			middle, in = along, in-4.6
			break
		}
	}
	p.Write(drawing.Text{Words: words, At: at(middle, in), Points: 7, Grey: 90, Align: drawing.Centre, Angle: angle})
}

// paperOutline is a rectangle of the plane as a ring.
func paperOutline(width, height float64) orb.Ring {
	return orb.Ring{{0, 0}, {width, 0}, {width, height}, {0, height}, {0, 0}}
}
