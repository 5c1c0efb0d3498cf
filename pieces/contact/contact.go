// Package contact draws pieces small beside each other on one page, all to one scale:
// a contact sheet.
//
// Lengths are millimetres.
package contact

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// Sheet is what is drawn.
type Sheet struct {
	Title string
	// Pieces as they are drawn: one cut on the fold as its half.
	Pieces []pieces.Piece
	// Shapes that are no pieces yet.
	Shapes []Shape
	// Cropped ends the page below the last of them.
	Cropped bool
}

// Shape is an outline that was found, whatever is wrong with it.
type Shape struct {
	Number int
	Name   string // may be empty
	// Lines of the outline, and those inside.
	Lines, Inner []pieces.Path
	// Fold lies on the fold; nil of most.
	Fold pieces.Path
	// Faults are places to be pointed at.
	Faults []orb.Point
}

// The page is an A4 sheet across; more pieces than it holds make it longer
// [source.OwnChoice].
const (
	width, height = 297.0, 210.0
	margin        = 12.0
	head          = 14.0 // room for the title
	gap           = 8.0  // between pieces
	words         = 12.0 // room below each piece for its name
	least         = 26.0 // width of the room of a piece
)

// scales that are tried, the largest first [source.OwnChoice].
var scales = []float64{1, 2, 4, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200}

// tolerance, mm, of outlines, far below what is seen at any scale [source.OwnChoice].
const tolerance = 0.1

// Page draws the sheet. The error is that of a piece without a cutting outline.
func (s Sheet) Page() (drawing.Page, error) {
	var all []drawn
	for i, p := range s.Pieces {
		cutting, err := p.CuttingOutline(tolerance)
		if err != nil {
			return drawing.Page{}, err
		}
		all = append(all, shape{i + 1, p, cutting})
	}
	for _, one := range s.Shapes {
		if len(one.Lines) > 0 {
			all = append(all, one)
		}
	}
	scale, places, deep := arranged(all)
	page := drawing.Page{Width: width, Height: math.Max(height, deep+margin)}
	if s.Cropped {
		page.Height = deep
	}
	title := fmt.Sprintf("%s, scale 1 : %g", s.Title, scale)
	page.Write(drawing.Text{Words: title, At: orb.Point{margin, margin + 4}, Points: 12, Bold: true})
	for i, one := range all {
		one.draw(&page.Picture, room{places[i], one.bound(), scale})
	}
	return page, nil
}

// shape is a piece with its cutting line and its number.
type shape struct {
	number  int
	piece   pieces.Piece
	cutting orb.Ring
}

func (s shape) bound() orb.Bound { return s.cutting.Bound() }

// drawn is what is drawn into a room of its own.
type drawn interface {
	bound() orb.Bound
	draw(on *drawing.Picture, in room)
}

// size of the room of what is drawn, on paper.
func size(d drawn, scale float64) (across, down float64) {
	box := d.bound()
	return math.Max(least, (box.Max[0]-box.Min[0])/scale), (box.Max[1]-box.Min[1])/scale + words
}

// room that something is drawn into: its upper left corner, y down.
type room struct {
	at    orb.Point
	box   orb.Bound
	scale float64
}

func (r room) to(p orb.Point) orb.Point {
	return orb.Point{r.at[0] + (p[0]-r.box.Min[0])/r.scale, r.at[1] + (r.box.Max[1]-p[1])/r.scale}
}

func (r room) line(on *drawing.Picture, pen drawing.Pen, points []orb.Point) {
	out := make([]orb.Point, len(points))
	for i, p := range points {
		out[i] = r.to(p)
	}
	on.Line(pen, out...)
}

// below what is drawn, where its words begin.
func (r room) below() orb.Point {
	return orb.Point{r.at[0], r.at[1] + (r.box.Max[1]-r.box.Min[1])/r.scale + 4}
}

// arranged gives every shape the upper left corner of its room, at the largest scale
// that the page holds, and how far down the page is filled.
func arranged(all []drawn) (scale float64, places []orb.Point, deep float64) {
	for _, scale = range scales {
		var widest float64
		if places, widest, deep = inRows(all, scale); widest <= width-margin && deep <= height-margin {
			break
		}
	}
	return scale, places, deep
}

// inRows puts the shapes into rows.
func inRows(all []drawn, scale float64) (places []orb.Point, widest, deep float64) {
	x, y, tallest := margin, margin+head, 0.0
	for _, s := range all {
		across, down := size(s, scale)
		if x > margin && x+across > width-margin {
			x, y, tallest = margin, y+tallest+gap, 0
		}
		places = append(places, orb.Point{x, y})
		tallest, widest = math.Max(tallest, down), math.Max(widest, x+across)
		x += across + gap
	}
	return places, widest, y + tallest
}

var (
	cutPen   = drawing.Pen{Width: 0.35}
	seamPen  = drawing.Pen{Width: 0.15, Dashes: []float64{1.5, 1}}
	foldPen  = drawing.Pen{Width: 0.35, Dashes: []float64{4, 1, 0.6, 1}}
	grainPen = drawing.Pen{Width: 0.2}
)

// draw a shape into its room.
func (s shape) draw(on *drawing.Picture, in room) {
	line := func(pen drawing.Pen, points []orb.Point) { in.line(on, pen, points) }
	if fold, ok := s.piece.Edge(s.piece.Fold); ok && s.piece.Fold != seams.None {
		line(cutPen, pieces.OpenedAt(s.cutting, fold.Path.Start(), fold.Path.End()))
		line(foldPen, fold.Path.Flatten(tolerance))
	} else {
		line(cutPen, s.cutting)
	}
	line(seamPen, s.piece.SeamOutline(tolerance))
	for _, d := range s.piece.Darts {
		line(seamPen, []orb.Point{d.Start, d.Apex, d.End})
	}
	for _, m := range s.piece.Marks {
		if m.Path != nil {
			line(grainPen, m.Path.Flatten(tolerance))
		}
	}
	s.grain(on, in.to)
	below := in.below()
	name := fmt.Sprintf("%d  %s", s.number, s.piece.Name)
	if s.piece.Size != "" {
		name += ", " + s.piece.Size
	}
	on.Write(drawing.Text{Words: name, At: below, Points: 7.5, Bold: true})
	on.Write(drawing.Text{Words: drawing.CutText(s.piece), At: orb.Point{below[0], below[1] + 3.6}, Points: 6.5})
}

// grain is an arrow with its head at the upper end.
func (s shape) grain(on *drawing.Picture, to func(orb.Point) orb.Point) {
	from, end := to(s.piece.Grain.From), to(s.piece.Grain.To)
	length := math.Hypot(end[0]-from[0], end[1]-from[1])
	if length == 0 {
		return
	}
	u := orb.Point{(end[0] - from[0]) / length, (end[1] - from[1]) / length}
	tip := math.Min(2, length/3)
	on.Line(grainPen, from, end)
	back := orb.Point{end[0] - tip*u[0], end[1] - tip*u[1]}
	on.Area(0, end, orb.Point{back[0] - tip/3*u[1], back[1] + tip/3*u[0]},
		orb.Point{back[0] + tip/3*u[1], back[1] - tip/3*u[0]})
}

func (s Shape) bound() orb.Bound {
	box := chords(s.Lines[0]).Bound()
	for _, line := range s.Lines {
		box = box.Union(chords(line).Bound())
	}
	return box
}

// chords of a line, of a large one as coarse as it is drawn.
func chords(line pieces.Path) orb.LineString {
	const share = 5000 // of its size [source.OwnChoice]
	ends := geometry.Distance(line.Start(), line.End())
	for _, c := range line {
		if a, ok := c.(pieces.Arc); ok {
			ends = math.Max(ends, a.Radius)
		}
	}
	return line.Flatten(math.Max(tolerance, ends/share))
}

// faultRadius, mm on paper, of the ring about a fault [source.OwnChoice].
const faultRadius = 3

// foldMark is the line of an edge that lies on the fold: mm on paper [source.OwnChoice].
var foldMark = drawing.Pen{Width: 1.1, Dashes: []float64{4, 1, 0.6, 1}}

// draw an outline that was found, its number in its middle.
func (s Shape) draw(on *drawing.Picture, in room) {
	for _, line := range s.Lines {
		in.line(on, cutPen, chords(line))
	}
	for _, line := range s.Inner {
		in.line(on, grainPen, chords(line))
	}
	if s.Fold != nil {
		in.line(on, foldMark, chords(s.Fold))
	}
	for _, at := range s.Faults {
		on.Circle(drawing.Pen{Width: 0.5}, in.to(at), faultRadius)
	}
	name := fmt.Sprintf("%d  %s", s.Number, s.Name)
	on.Write(drawing.Text{Words: name, At: in.below(), Points: 7.5, Bold: true})
}
