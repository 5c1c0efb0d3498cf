package steps

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// The pens of a drawing.
var (
	seamPen  = drawing.Pen{Width: 0.5}
	foldPen  = drawing.Pen{Width: 0.5, Dashes: []float64{6, 1.5, 1, 1.5}}
	dartPen  = drawing.Pen{Width: 0.3}
	guidePen = drawing.Pen{Width: 0.3, Grey: 90, Dashes: []float64{2, 1}}
	linePen  = drawing.Pen{Width: 0.15, Grey: 140, Dashes: []float64{0.8, 0.8}}
	thinPen  = drawing.Pen{Width: 0.15, Grey: 110}
)

// scales are the denominators at which a piece is drawn.
var scales = []float64{1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40}

// room around the drawing for numbers, mm.
const numberRoom = 6.0

// draw puts the piece into a place of a width at an upper edge, no taller than
// given, and returns the height that it took and its scale.
func (c content) draw(to *drawing.Picture, left, top, width, tallest float64) (height, scale float64) {
	f, height := placed(c, c.bound(), to, left, top, width, tallest)
	f.drawLines()
	f.drawNumbers()
	return height, f.scale
}

// placed is the drawing of what lies in a box, at the largest scale that the
// place has room for, and its height on paper.
func placed(c content, box orb.Bound, to *drawing.Picture,
	left, top, width, tallest float64) (f *pieceDrawing, height float64) {
	w, h := box.Max[0]-box.Min[0], box.Max[1]-box.Min[1]
	scale := math.Max(w/(width-2*numberRoom), h/(tallest-2*numberRoom))
	for _, s := range scales {
		if s >= scale {
			scale = s
			break
		}
	}
	return &pieceDrawing{content: c, to: to, scale: scale, shift: orb.Point{
		left + width/2 - (box.Min[0]+w/2)/scale, top + numberRoom + box.Max[1]/scale,
	}}, h/scale + 2*numberRoom
}

// bound of the piece with all points and guides of its draft.
func (c content) bound() orb.Bound {
	box := c.piece.SeamOutline(1).Bound()
	for _, p := range c.sheet.Points {
		box = box.Extend(p.At)
	}
	for _, g := range c.sheet.Guides {
		box = box.Union(g.Path.Flatten(1).Bound())
	}
	return box
}

func (f *pieceDrawing) drawLines() {
	points := f.sheet.Points
	for _, step := range f.sheet.Steps {
		if step.From > 0 {
			f.line(linePen, f.at(points[step.From-1].At), f.at(points[step.To-1].At))
		}
	}
	for _, m := range f.piece.Marks {
		f.path(thinPen, m.Path)
	}
	for _, g := range f.sheet.Guides {
		f.path(guidePen, g.Path)
	}
	for _, d := range f.piece.Darts {
		f.line(dartPen, f.at(d.Start), f.at(d.Apex), f.at(d.End))
		if d.Mouth == seams.None {
			f.line(dartPen, f.at(d.Start), f.at(d.OtherApex), f.at(d.End))
		}
	}
	for _, e := range f.piece.Edges {
		pen := seamPen
		if e.Name == f.piece.Fold {
			pen = foldPen
		}
		f.path(pen, e.Path)
	}
	f.drawNotches()
	f.drawGrain()
	f.drawSeamNames()
}

// drawNotches draws strokes across the seam.
func (f *pieceDrawing) drawNotches() {
	const half, apart = 1.2, 1.0
	for _, n := range f.piece.Notches {
		edge, ok := f.piece.Edge(n.Edge)
		if !ok {
			continue
		}
		for i := range n.Count {
			at := n.At + (float64(i)-float64(n.Count-1)/2)*apart*f.scale
			square := construct.Square(edge.Path.Tangent(at))
			p := edge.Path.At(at)
			f.to.Line(dartPen, f.at(construct.Go(p, square, half*f.scale)),
				f.at(construct.Go(p, square, -half*f.scale)))
		}
	}
}

// drawGrain draws the grainline, its point towards "this end up".
func (f *pieceDrawing) drawGrain() {
	from, to := f.at(f.piece.Grain.From), f.at(f.piece.Grain.To)
	if from == to {
		return
	}
	f.line(thinPen, from, to)
	way := construct.Direction(from, to)
	side := construct.Square(way)
	foot := construct.Go(to, way, -2.5)
	f.to.Area(thinPen.Grey, to, construct.Go(foot, side, 0.8), construct.Go(foot, side, -0.8))
}

// drawSeamNames writes along each edge what it is, where there is room: along
// the outside.
func (f *pieceDrawing) drawSeamNames() {
	const size, away = 6.5, 1.2
	for _, e := range f.piece.Edges {
		words := e.Name.Seam().String()
		length := e.Path.Length()
		wide := drawing.Width(words, size, false)
		if !e.Name.IsFirst() || length/f.scale < wide+6 {
			continue
		}
		middle := f.at(e.Path.At(length / 2))
		a, b := f.at(e.Path.At(length/2-wide*f.scale/2)), f.at(e.Path.At(length/2+wide*f.scale/2))
		way := construct.Direction(a, b)
		// On paper the outside of the outline lies to the left of its way.
		out := orb.Point{-way[1], way[0]}
		angle := -math.Atan2(way[1], way[0]) * 180 / math.Pi
		gap := away + sag(middle, a, out)
		if angle > 91 || angle < -89 {
			angle += 180
			gap += 0
		} else {
			gap += 0.72 * size * drawing.Point
		}
		at := construct.Go(middle, out, gap)
		f.to.Write(drawing.Text{Words: words, At: at, Points: size, Grey: 90, Align: drawing.Centre, Angle: angle})
		f.takeAlong(construct.Go(middle, out, away+1), way, wide)
	}
}

// sag is how far the words must stand off further for a curve that bulges
// outward under their ends.
func sag(middle, end, out orb.Point) float64 {
	return math.Max(0, (end[0]-middle[0])*out[0]+(end[1]-middle[1])*out[1])
}

// takeAlong keeps numbers off words that run along a line.
func (f *pieceDrawing) takeAlong(middle, way orb.Point, wide float64) {
	for k := -0.5; k <= 0.5; k += 0.1 {
		p := construct.Go(middle, way, k*wide)
		f.taken = append(f.taken, geometry.Box(p, orb.Point{1, 1}))
	}
}
