package sheet

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
)

// figure is one piece in one size being drawn on the plane. Its edges run
// so that the inside lies to the left of travel in the numbers.
type figure struct {
	*drawing.Picture
	piece pieces.Piece
	ring  orb.Ring
}

// drawTolerance of the lines other than the cutting line, mm.
const drawTolerance = 0.05

// cutting draws the line to cut along, open along the fold, which is not cut.
func (f figure) cutting(pen drawing.Pen, named bool) {
	fold, ok := f.piece.Edge(f.piece.Fold)
	if !ok || f.piece.Fold == "" {
		f.Line(pen, f.ring...)
		return
	}
	points := openedAt(f.ring, fold.Path)
	f.Line(pen, points...)
	f.Line(foldLine, points[len(points)-1], points[0])
	if named {
		f.foldMark(fold.Path)
	}
}

// foldMark draws the usual bracket whose arrows point at the fold.
func (f figure) foldMark(fold pieces.Path) {
	u, length := fold.Tangent(0), fold.Length()
	in := left(u)
	inset, rise := math.Min(length*0.12, 40), math.Min(8, length/8)
	a, b := fold.At(inset), fold.At(length-inset)
	f.Line(fineLine, a, plus(a, times(in, rise)), plus(b, times(in, rise)), b)
	for _, tip := range []orb.Point{a, b} {
		tip = plus(tip, times(in, 0.6))
		f.Area(0, tip, plus(plus(tip, times(in, 3)), times(u, 1)), plus(plus(tip, times(in, 3)), times(u, -1)))
	}
	size := math.Min(4, rise*0.6)
	f.along("on the fold", plus(fold.At(length/2), times(in, rise/2)), u, size, 0, false)
}

// openedAt returns the points of a ring from one end of the stretch that lies
// along the fold round to the other.
func openedAt(ring orb.Ring, fold pieces.Path) []orb.Point {
	points := ring[:len(ring)-1]
	from, u := fold.Start(), fold.Tangent(0)
	off := func(p orb.Point) float64 { return math.Abs(dot(minus(p, from), left(u))) }
	best, least := 0, math.Inf(1)
	for i, p := range points {
		if far := math.Max(off(p), off(points[(i+1)%len(points)])); far < least {
			best, least = i, far
		}
	}
	return append(slices.Clone(points[best+1:]), points[:best+1]...)
}

func (f figure) seam() {
	for _, e := range f.piece.Edges {
		if e.Name != f.piece.Fold && e.Allowance > 0 {
			f.Line(seamLine, e.Path.Flatten(drawTolerance)...)
		}
	}
}

// allowances writes how wide each allowance is, between the cutting and the
// seam line, where no notch is.
func (f figure) allowances(inches bool) {
	const size = 2.6
	unit := measure.Centimetre
	if inches {
		unit = measure.Inch
	}
	for _, e := range f.piece.Edges {
		if e.Name == f.piece.Fold || e.Allowance < size+1.5 {
			continue
		}
		words := "allowance " + measure.Length(e.Allowance).Format(unit)
		length, width := e.Path.Length(), drawing.Width(words, size/drawing.Point, false)
		for _, share := range []float64{0.5, 0.35, 0.65, 0.2, 0.8} {
			if at := length * share; at > width && at < length-width && !f.hasNotch(e.Name, at, width/2+3) {
				u := e.Path.Tangent(at)
				f.along(words, plus(e.Path.At(at), times(left(u), -e.Allowance/2)), u, size, 0, false)
				break
			}
		}
	}
}

// hasNotch reports whether a notch is that near to a place on an edge.
func (f figure) hasNotch(edge string, at, near float64) bool {
	for _, n := range f.piece.Notches {
		if n.Edge == edge && math.Abs(n.At-at) < near+6*float64(n.Count-1) {
			return true
		}
	}
	return false
}

// notches draws each stroke across the allowance, or 5 mm inward where there
// is none, square to the seam line; several strokes are 6 mm apart.
func (f figure) notches() {
	for _, n := range f.piece.Notches {
		e, _ := f.piece.Edge(n.Edge)
		for k := range n.Count {
			at := n.At + 6*(float64(k)-float64(n.Count-1)/2)
			from, u := e.Path.At(at), e.Path.Tangent(at)
			reach := e.Allowance
			if reach < 2 {
				reach = -5
			}
			f.Line(notchLine, from, plus(from, times(left(u), -reach)))
		}
	}
}

func (f figure) darts(pen drawing.Pen, drilled bool) {
	for _, t := range f.piece.Darts {
		f.Line(pen, t.Start, t.Apex, t.End)
		if drilled {
			f.drill(t.Apex)
		}
		if t.Mouth == "" {
			f.Line(pen, t.Start, t.OtherApex, t.End)
			if drilled {
				f.drill(t.OtherApex)
			}
		}
	}
}

// drill draws a drill hole: a small circle with a point in it.
func (f figure) drill(at orb.Point) {
	f.Circle(fineLine, at, 1.5)
	f.Disc(0, at, 0.4)
}

func (f figure) marks() {
	for _, m := range f.piece.Marks {
		if m.Path == nil {
			f.drill(m.At)
			f.along(m.Name, plus(m.At, orb.Point{0, -3.5}), orb.Point{1, 0}, 3.5, 0, false)
			continue
		}
		f.Line(markLine, m.Path.Flatten(drawTolerance)...)
		at, u, size := f.nameOf(m)
		f.along(m.Name, at, u, size, 0.9*size, false)
	}
}

// nameOf finds where along a marked line its name stands clear of the
// grainline and the darts: the point of the line, its direction there and the
// size of the letters.
func (f figure) nameOf(m pieces.Mark) (at, u orb.Point, size float64) {
	length := m.Path.Length()
	size = math.Min(3.5, 0.8*length/math.Max(0.1, drawing.Width(m.Name, 1/drawing.Point, false)))
	half := size*drawing.Width(m.Name, 1/drawing.Point, false)/2 + 1
	for _, share := range []float64{0.25, 0.75, 0.12, 0.88, 0.5, 0.38, 0.62} {
		at, u = m.Path.At(length*share), m.Path.Tangent(length*share)
		if along := length * share; along < half || along > length-half {
			continue
		}
		if f.isClear(orb.LineString{minus(at, times(u, half)), plus(at, times(u, half))}, 2*size) {
			return at, u, size
		}
	}
	return m.Path.At(length * 0.25), m.Path.Tangent(length * 0.25), size
}

// isClear reports whether the grainline and the darts keep so far from a line
// that is nearly straight.
func (f figure) isClear(line orb.LineString, by float64) bool {
	box := grown(line.Bound(), by)
	if drawing.Crosses([]orb.Point{f.piece.Grain.From, f.piece.Grain.To}, box) {
		return false
	}
	for _, t := range f.piece.Darts {
		if drawing.Crosses([]orb.Point{t.Start, t.Apex, t.End}, box) {
			return false
		}
	}
	return true
}

// grain draws the grainline with its head at the end that points up.
func (f figure) grain() {
	g := f.piece.Grain
	length := distance(g.From, g.To)
	u := times(minus(g.To, g.From), 1/length)
	side := left(u)
	size := math.Min(9, length/4)
	neck := plus(g.To, times(u, -size))
	f.Line(grainLine, g.From, neck)
	f.Line(grainLine, plus(g.From, times(side, size/3)), plus(g.From, times(side, -size/3)))
	f.Area(0, g.To, plus(neck, times(side, size/3)), plus(neck, times(side, -size/3)))
	if letters := f.grainLetters(); letters > 0 {
		f.along(drawing.GrainText(f.piece), plus(g.From, times(minus(neck, g.From), 0.5)), u, letters, 0.9*letters, false)
	}
}

// grainLetters is the height of the words on the grainline, mm; 0 where they
// would be too small to be read, and are left out.
func (f figure) grainLetters() float64 {
	g := f.piece.Grain
	length := distance(g.From, g.To)
	shaft := length - math.Min(9, length/4)
	letters := math.Min(4, 0.95*shaft/drawing.Width(drawing.GrainText(f.piece), 1/drawing.Point, false))
	if letters < leastText {
		return 0
	}
	return letters
}

// sizeNames writes the size beside its line, on each long edge: the sizes one
// after the other along the edge, so that no two meet.
func (f figure) sizeNames(index int) {
	for _, e := range f.piece.Edges {
		length := e.Path.Length()
		if length < 60 || e.Name == f.piece.Fold {
			continue
		}
		at := length * (float64(index%10) + 1) / 11
		u := e.Path.Tangent(at)
		out := plus(e.Path.At(at), times(left(u), -e.Allowance))
		f.along(f.piece.Size, plus(out, times(left(u), 2.2)), u, 3, 0, true)
	}
}

// along writes words along a direction, never upside down, raised by so much
// from the middle of the letters; the size is their height in mm.
func (f figure) along(words string, at, u orb.Point, size, raise float64, isBold bool) {
	angle := math.Atan2(-u[1], u[0]) * 180 / math.Pi
	if angle > 90+1e-9 {
		angle -= 180
	}
	if angle <= -90+1e-9 {
		angle += 180
	}
	sin, cos := math.Sincos(angle * math.Pi / 180)
	down := 0.35*size - raise
	f.Write(drawing.Text{Words: words, At: orb.Point{at[0] + sin*down, at[1] + cos*down},
		Points: size / drawing.Point, Bold: isBold, Align: drawing.Centre, Angle: angle})
}
