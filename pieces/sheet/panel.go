package sheet

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/paper"
	"ellwand/pieces/safety"
)

// Sizes of the panel: the title, the squares by which the print is measured,
// the map of the sheets and how to join them. mm.
const (
	panelWidth  = 186.0
	panelHeight = 224.0
	// SquareRoom is the width and height that Squares needs.
	SquareRoom = 104.0
	fourInches = 101.6
	headRoom   = 19.0
)

// PanelRoom is the room to keep free at the upper left of the plane for the
// panel. It is 0 where the sheet is so small that the panel has a sheet of
// its own.
func PanelRoom(paper paper.Paper) (width, height float64) {
	w, h := paper.Cell()
	if paper.IsRoll() || w < panelWidth || h < panelHeight || w*h < 2.2*panelWidth*panelHeight {
		return 0, 0
	}
	return panelWidth + 6, panelHeight + 6
}

// Squares draws a square of 10 cm and one of 4 in that share the corner at
// the lower left, so that a print is measured in either unit; at is the upper
// left corner of the larger one.
func Squares(on *drawing.Picture, at orb.Point) {
	pen := drawing.Pen{Width: 0.2, Blunt: true}
	low := at[1] + fourInches
	for _, side := range []float64{100, fourInches} {
		on.Frame(pen, orb.Bound{Min: orb.Point{at[0], low - side}, Max: orb.Point{at[0] + side, low}})
	}
	for i, line := range []string{"Measure before you cut:", "the inner square is 10 cm,", "the outer square 4 in,",
		"each way."} {
		on.Write(drawing.Text{Words: line, At: orb.Point{at[0] + 50, low - 60 + 6*float64(i)}, Points: 11, Bold: i == 0,
			Align: drawing.Centre})
	}
	on.Write(drawing.Text{Words: "Other sizes? Print again at 100 %, without fitting to the page.",
		At: orb.Point{at[0] + 50, low - 32}, Points: 7.5, Align: drawing.Centre})
}

// panel is what stands before the pieces.
type panel struct {
	layout Layout
	tiling Tiling
	plane  Plane
	tiles  []Tile
}

// head writes the title and what there is to print.
func (p panel) head(on *drawing.Picture, at orb.Point, width float64) {
	on.Write(drawing.Text{Words: drawing.Shortened(p.layout.Title, 15, true, width),
		At: geometry.Add(at, orb.Point{0, 6}), Points: 15, Bold: true})
	on.Write(drawing.Text{Words: drawing.Shortened(p.contents(), 9, false, width),
		At: geometry.Add(at, orb.Point{0, 12}), Points: 9})
	on.Line(fineLine, geometry.Add(at, orb.Point{0, 15}), geometry.Add(at, orb.Point{width, 15}))
}

func (p panel) contents() string {
	sheets := p.tiling.Sheets(p.plane)
	text := fmt.Sprintf("Pieces at full size, on %d sheets", sheets)
	if sheets == 1 {
		text = "Pieces at full size, on one sheet"
	}
	return text + " of " + p.layout.paperName() + p.blanks()
}

func (p panel) blanks() string {
	switch n := len(p.tiles) - p.tiling.Sheets(p.plane); n {
	case 0:
		return ""
	case 1:
		return "; a blank one is left out"
	default:
		return fmt.Sprintf("; %d blank ones are left out", n)
	}
}

// pageMap draws how the sheets lie, the pieces on them in outline, as large
// as the room allows.
func (p panel) pageMap(on *drawing.Picture, at orb.Point, width, height float64) {
	on.Write(drawing.Text{Words: "How the sheets lie", At: geometry.Add(at, orb.Point{0, 4}), Points: 10, Bold: true})
	at, height = geometry.Add(at, orb.Point{0, mapHead}), height-mapHead
	whole := p.tiles[len(p.tiles)-1].Box.Max
	scale := math.Min(width/whole[0], height/whole[1])
	place := func(q orb.Point) orb.Point { return geometry.Add(at, geometry.Times(q, scale)) }
	for _, tile := range p.tiles {
		if !tile.Blank {
			on.Box(232, orb.Bound{Min: place(tile.Box.Min), Max: place(tile.Box.Max)})
		}
	}
	for _, ring := range p.plane.Shapes {
		line := make([]orb.Point, len(ring))
		for i, q := range ring {
			line[i] = place(q)
		}
		on.Area(255, line...)
		on.Line(drawing.Pen{Width: 0.15}, line...)
	}
	for _, tile := range p.tiles {
		box := orb.Bound{Min: place(tile.Box.Min), Max: place(tile.Box.Max)}
		pen := drawing.Pen{Width: 0.3}
		if tile.Blank {
			pen = drawing.Pen{Width: 0.1, Grey: 130, Dashes: []float64{1, 1}}
		}
		on.Frame(pen, box)
		if !tile.Blank {
			size := math.Min(5, math.Min((box.Max[0]-box.Min[0])*0.32, (box.Max[1]-box.Min[1])*0.4))
			name := drawing.Text{Words: tile.Name(), At: geometry.Add(box.Center(), orb.Point{0, 0.36 * size}),
				Points: size / drawing.Point, Bold: true, Align: drawing.Centre}
			on.Area(255, name.Outline()...)
			on.Write(name)
		}
	}
}

// words say how to print and to join.
func (p panel) words() []string {
	out := []string{
		"Print at 100 % (“actual size”), never “fit to page”, and measure the squares before anything else.",
		"Sheet B3 is the third in the second row. The map shows how they lie; sheets that would be blank are not " +
			"printed.",
	}
	if p.tiling.Sheets(p.plane) > 1 {
		out = append(out,
			"Join a row first: cut one of two neighbours along its trim line (thin, dashed), lay it on the trim line "+
				"of the other so that the grey marks meet, and glue or tape it. Then join the rows.",
			safety.Paper)
	}
	out = append(out, "Solid line: cut. Short dashes: sew. Long dash and dot, with a bracket: lay on the fold, do "+
		"not cut. Strokes across the allowance are notches.")
	if size, ok := p.layout.nested(); ok {
		out = append(out, "Nested sizes: each has its own dashes, named in the key on the piece and on its lines, "+
			"which are for cutting. The fine grey line is the seam line of "+size+
			"; the seam allowances of every size are as wide as stands along its edges.")
	}
	return append(append(out, safety.Cutting(p.layout.Youngest)...), p.layout.Notes...)
}

// writeWords returns how far down the words reach.
func (p panel) writeWords(on *drawing.Picture, at orb.Point, width float64) float64 {
	const points, step = 9.0, 4.2
	y := at[1]
	for _, item := range p.words() {
		on.Write(drawing.Text{Words: "•", At: orb.Point{at[0], y}, Points: points})
		for _, line := range drawing.Wrapped(item, points, false, width-4) {
			on.Write(drawing.Text{Words: line, At: orb.Point{at[0] + 4, y}, Points: points})
			y += step
		}
		y += 1.2
	}
	return y
}

// draw puts the whole panel at a place, with the map beside the squares or,
// where there is so much room below the words that it comes out larger, there.
func (p panel) draw(on *drawing.Picture, at orb.Point, height float64) {
	p.head(on, at, panelWidth)
	top := geometry.Add(at, orb.Point{0, headRoom})
	Squares(on, top)
	down := p.writeWords(on, geometry.Add(top, orb.Point{0, SquareRoom + 6}), panelWidth)
	beside, below := panelWidth-SquareRoom-6, at[1]+height-down-2
	whole := p.tiles[len(p.tiles)-1].Box.Max
	if math.Min(beside/whole[0], SquareRoom/whole[1]) < math.Min(panelWidth/whole[0], (below-mapHead)/whole[1]) {
		p.pageMap(on, orb.Point{at[0], down + 2}, panelWidth, below)
		return
	}
	p.pageMap(on, geometry.Add(top, orb.Point{SquareRoom + 6, 0}), beside, SquareRoom)
}

// mapHead is the height of the words above the map, mm.
const mapHead = 7.0

// pages are the panel on sheets of its own: one, or two where the sheet is
// narrow.
func (p panel) pages(paper paper.Paper) []drawing.Page {
	if paper.Width > paper.Height {
		paper = paper.Turned()
	}
	newPage := func() drawing.Page { return drawing.Page{Width: paper.Width, Height: paper.Height} }
	width, height := paper.Width-2*paper.Margin, paper.Height-2*paper.Margin
	at := orb.Point{paper.Margin, paper.Margin}
	first := newPage()
	if width >= panelWidth && height >= panelHeight {
		p.draw(&first.Picture, at, height)
		return []drawing.Page{first}
	}
	p.head(&first.Picture, at, width)
	Squares(&first.Picture, geometry.Add(at, orb.Point{math.Max(0, width-SquareRoom) / 2, headRoom}))
	second := newPage()
	down := p.writeWords(&second.Picture, geometry.Add(at, orb.Point{0, 5}), width)
	p.pageMap(&second.Picture, orb.Point{at[0], down + 2}, width, at[1]+height-down-2)
	return []drawing.Page{first, second}
}
