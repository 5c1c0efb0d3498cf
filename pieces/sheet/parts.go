package sheet

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// pieceDrawing is one piece in one size being drawn on the plane. Its edges run
// so that the inside lies to the left of travel in the numbers.
type pieceDrawing struct {
	*drawing.Picture
	piece pieces.Piece
	ring  orb.Ring
}

// cutting draws the line to cut along, open along the fold, which is not cut.
func (f pieceDrawing) cutting(pen drawing.Pen) {
	fold, ok := f.piece.Edge(f.piece.Fold)
	if !ok || f.piece.Fold == seams.None {
		f.Line(pen, f.ring...)
		return
	}
	f.Line(pen, pieces.OpenedAt(f.ring, fold.Path.Start(), fold.Path.End())...)
}

// fold draws the line that lies on the fold.
func (f pieceDrawing) fold() {
	fold, ok := f.piece.Edge(f.piece.Fold)
	if !ok || f.piece.Fold == seams.None {
		return
	}
	points := pieces.OpenedAt(f.ring, fold.Path.Start(), fold.Path.End())
	f.Line(foldLine, points[len(points)-1], points[0])
}

func (f pieceDrawing) seam(pen drawing.Pen) {
	for _, e := range f.piece.Edges {
		if e.Name != f.piece.Fold && e.Allowance > 0 {
			f.Curve(pen, e.Path)
		}
	}
}

// notches draws each stroke across the allowance, or 5 mm inward where there
// is none, square to the seam line; several strokes are 6 mm apart.
func (f pieceDrawing) notches() {
	for _, n := range f.piece.Notches {
		e, _ := f.piece.Edge(n.Edge)
		for k := range n.Count {
			at := n.At + 6*(float64(k)-float64(n.Count-1)/2)
			from, u := e.Path.At(at), e.Path.Tangent(at)
			reach := e.Allowance
			if reach < 2 {
				reach = -5
			}
			f.Line(notchLine, from, geometry.Add(from, geometry.Times(geometry.Left(u), -reach)))
		}
	}
}

// shortNotch is the length of a notch where sizes are nested, mm: a stroke
// across the allowance would cross the lines of other sizes.
const shortNotch = 3.0

// shortNotches draws each stroke from the cutting line inward.
func (f pieceDrawing) shortNotches() {
	for _, n := range f.piece.Notches {
		e, _ := f.piece.Edge(n.Edge)
		for k := range n.Count {
			at := n.At + 6*(float64(k)-float64(n.Count-1)/2)
			in := geometry.Left(e.Path.Tangent(at))
			from := geometry.Add(e.Path.At(at), geometry.Times(in, -e.Allowance))
			f.Line(notchLine, from, geometry.Add(from, geometry.Times(in, shortNotch)))
		}
	}
}

func (f pieceDrawing) darts(pen drawing.Pen, drilled bool) {
	for _, t := range f.piece.Darts {
		f.Line(pen, t.Start, t.Apex, t.End)
		if drilled {
			f.drill(t.Apex)
		}
		if t.Mouth == seams.None {
			f.Line(pen, t.Start, t.OtherApex, t.End)
			if drilled {
				f.drill(t.OtherApex)
			}
		}
	}
}

// drill draws a drill hole: a small circle with a point in it.
func (f pieceDrawing) drill(at orb.Point) {
	f.Circle(fineLine, at, 1.5)
	f.Disc(0, at, 0.4)
}

func (f pieceDrawing) marks() {
	for _, m := range f.piece.Marks {
		if m.Path == nil {
			f.drill(m.At)
			continue
		}
		f.Curve(markLine, m.Path)
	}
}

// neck of the grainline: where its head begins, which is so long, mm.
func (f pieceDrawing) neck() (at orb.Point, head float64) {
	g := f.piece.Grain
	length := geometry.Distance(g.From, g.To)
	head = math.Min(9, length/4)
	return geometry.Add(g.To, geometry.Times(geometry.Sub(g.From, g.To), head/length)), head
}

// grain draws the grainline with its head at the end that points up.
func (f pieceDrawing) grain() {
	g := f.piece.Grain
	neck, size := f.neck()
	side := geometry.Left(geometry.Times(geometry.Sub(g.To, g.From), 1/geometry.Distance(g.From, g.To)))
	f.Line(grainLine, g.From, g.To)
	f.Line(grainLine, geometry.Add(g.From, geometry.Times(side, size/3)),
		geometry.Add(g.From, geometry.Times(side, -size/3)))
	f.Area(0, g.To, geometry.Add(neck, geometry.Times(side, size/3)), geometry.Add(neck, geometry.Times(side, -size/3)))
}
