package sheet

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// air about words, mm, where they are to keep off lines.
const air = 0.3

// along are words along a direction, never upside down, with the middle of
// their letters raised by so much from a place; the size is their height in
// mm.
func along(words string, at, u orb.Point, size, raise float64, isBold bool) drawing.Text {
	angle := math.Atan2(-u[1], u[0]) * 180 / math.Pi
	if angle > 90+1e-9 {
		angle -= 180
	}
	if angle <= -90+1e-9 {
		angle += 180
	}
	sin, cos := math.Sincos(angle * math.Pi / 180)
	down := 0.35*size - raise
	return drawing.Text{Words: words, At: orb.Point{at[0] + sin*down, at[1] + cos*down},
		Points: size / drawing.Point, Bold: isBold, Align: drawing.Centre, Angle: angle}
}

// shares of the length of a line at which its words are tried, the best first.
var shares = []float64{0.5, 0.35, 0.65, 0.2, 0.8, 0.27, 0.42, 0.58, 0.73, 0.12, 0.88}

// beside writes words beside a line where they touch nothing, as large as
// given or somewhat smaller; it reports whether there was such a place.
func (f pieceDrawing) beside(words string, line pieces.Path, size float64) bool {
	length := line.Length()
	for _, letters := range []float64{size, 0.8 * size, 0.6 * size} {
		half := drawing.Width(words, letters/drawing.Point, false)/2 + 0.5
		for _, share := range shares {
			at := length * share
			if letters < leastText || at < half || at > length-half {
				continue
			}
			for _, raise := range []float64{0.9 * letters, -0.9 * letters} {
				text := along(words, line.At(at), line.Tangent(at), letters, raise, false)
				if f.HasRoomFor(text, 0.1*letters) {
					f.Write(text)
					return true
				}
			}
		}
	}
	return false
}

// names writes what the lines are: the fold, the marks and the grainline.
func (f pieceDrawing) names() {
	if fold, ok := f.piece.Edge(f.piece.Fold); ok && f.piece.Fold != seams.None {
		f.foldMark(fold.Path)
	}
	for _, m := range f.piece.Marks {
		if m.Path == nil {
			f.namePoint(m)
			continue
		}
		length := m.Path.Length()
		size := math.Min(3.5, 0.8*length/math.Max(0.1, drawing.Width(m.Name.String(), 1/drawing.Point, false)))
		if !f.beside(m.Name.String(), m.Path, size) {
			f.Write(along(m.Name.String(), m.Path.At(length*0.25), m.Path.Tangent(length*0.25), size, 0.9*size, false))
		}
	}
	neck, _ := f.neck()
	f.beside(drawing.GrainText(f.piece), pieces.Path{pieces.Line{From: f.piece.Grain.From, To: neck}}, 4)
}

// namePoint writes the name of a marked point above, below or beside it.
func (f pieceDrawing) namePoint(m pieces.Mark) {
	const size = 3.5
	half := drawing.Width(m.Name.String(), size/drawing.Point, false)/2 + 3
	places := []orb.Point{{0, -3.5}, {0, 4.5}, {half, 0}, {-half, 0}, {half, -3.5}, {-half, -3.5}, {half, 4.5},
		{-half, 4.5}}
	text := along(m.Name.String(), geometry.Add(m.At, places[0]), orb.Point{1, 0}, size, 0, false)
	for _, place := range places {
		other := along(m.Name.String(), geometry.Add(m.At, place), orb.Point{1, 0}, size, 0, false)
		if f.HasRoomFor(other, air) {
			text = other
			break
		}
	}
	f.Write(text)
}

// foldMark draws the usual bracket whose arrows point at the fold.
func (f pieceDrawing) foldMark(fold pieces.Path) {
	u, length := fold.Tangent(0), fold.Length()
	in := geometry.Left(u)
	inset, rise := math.Min(length*0.12, 40), math.Min(8, length/8)
	a, b := fold.At(inset), fold.At(length-inset)
	f.Line(fineLine, a, geometry.Add(a, geometry.Times(in, rise)), geometry.Add(b, geometry.Times(in, rise)), b)
	for _, tip := range []orb.Point{a, b} {
		tip = geometry.Add(tip, geometry.Times(in, 0.6))
		f.Area(0, tip, geometry.Add(geometry.Add(tip, geometry.Times(in, 3)), geometry.Times(u, 1)),
			geometry.Add(geometry.Add(tip, geometry.Times(in, 3)), geometry.Times(u, -1)))
	}
	size := math.Min(4, rise*0.6)
	text := along("on the fold", geometry.Add(fold.At(length/2), geometry.Times(in, rise/2)), u, size, 0, false)
	for _, share := range shares {
		other := along(text.Words, geometry.Add(fold.At(length*share), geometry.Times(in, rise/2)), u, size, 0, false)
		if f.HasRoomFor(other, 0) {
			text = other
			break
		}
	}
	f.Write(text)
}

// allowances writes how wide each allowance is, between the cutting and the
// seam line.
func (f pieceDrawing) allowances(inches bool) {
	const size = 2.6
	say := measure.SystemOf(inches).Size
	for _, e := range f.piece.Edges {
		if e.Name == f.piece.Fold || e.Allowance < size+1.5 {
			continue
		}
		words := "allowance " + say(e.Allowance)
		length, width := e.Path.Length(), drawing.Width(words, size/drawing.Point, false)
		for _, share := range shares {
			at := length * share
			u := e.Path.Tangent(at)
			text := along(words, geometry.Add(e.Path.At(at), geometry.Times(geometry.Left(u), -e.Allowance/2)), u, size,
				0, false)
			if at > width && at < length-width && f.HasRoomFor(text, air) {
				f.Write(text)
				break
			}
		}
	}
}

// sizeNames writes the name of a size on its line, which is broken for it, or
// beside it where lines run so close that it would touch another: on each long
// edge, the sizes one after the other along it.
func (f DrawnPiece) sizeNames(all []pieceDrawing, shared pieceDrawing, index int) {
	own := all[index]
	isFree := func(text drawing.Text, besideOwn bool) bool {
		for i, other := range all {
			if (i != index || besideOwn) && !other.HasRoomFor(text, air) {
				return false
			}
		}
		return shared.HasRoomFor(text, air)
	}
	for _, e := range own.piece.Edges {
		if e.Path.Length() < leastNamed || e.Name == own.piece.Fold {
			continue
		}
		if text, isOn, ok := nameOnEdge(e, own.piece.Size, index, isFree); ok {
			if isOn {
				shared.Area(255, text.Outline()...)
			}
			shared.Write(text)
		}
	}
}

// leastNamed is the length of an edge that is named, mm.
const leastNamed = 60.0

// nameOnEdge finds where a size stands on its cutting line along an edge, or
// beside it.
func nameOnEdge(e pieces.Edge, size string, index int,
	isFree func(text drawing.Text, besideOwn bool) bool) (text drawing.Text, isOn, ok bool) {
	length, usual := e.Path.Length(), (float64(index%10)+1)/11
	for _, letters := range []float64{3, 2.5, 2} {
		for _, away := range []float64{0, 0.04, -0.04, 0.09, -0.09, 0.15, -0.15, 0.25, -0.25} {
			share := usual + away
			if share < 0.05 || share > 0.95 {
				continue
			}
			u := e.Path.Tangent(length * share)
			at := geometry.Add(e.Path.At(length*share), geometry.Times(geometry.Left(u), -e.Allowance))
			if text = along(size, at, u, letters, 0, true); isFree(text, false) {
				return text, true, true
			}
			for _, in := range []float64{0.8 * letters, -0.8 * letters} {
				beside := geometry.Add(at, geometry.Times(geometry.Left(u), in))
				if text = along(size, beside, u, letters, 0, true); isFree(text, true) {
					return text, false, true
				}
			}
		}
	}
	return text, false, false
}
