package pdfin

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/linework"
)

// drawing are the operators that draw a path, and those that set the pen
// [source.PDF17].
var drawing = map[string]func(s *shower, o operands){
	"m": func(s *shower, o operands) { s.atNumbers(o, 2, func(v []float64) { s.begin(orb.Point{v[0], v[1]}) }) },
	"l": func(s *shower, o operands) {
		s.atNumbers(o, 2, func(v []float64) { s.chain.LineTo(orb.Point{v[0], v[1]}) })
	},
	"c":  func(s *shower, o operands) { s.atNumbers(o, 6, s.curve) },
	"v":  func(s *shower, o operands) { s.atNumbers(o, 4, s.curveFromHere) },
	"y":  func(s *shower, o operands) { s.atNumbers(o, 4, func(v []float64) { s.curve(append(v, v[2], v[3])) }) },
	"h":  func(s *shower, _ operands) { s.chain.Close() },
	"re": func(s *shower, o operands) { s.atNumbers(o, 4, s.rectangle) },
	"w":  func(s *shower, o operands) { s.atNumbers(o, 1, func(v []float64) { s.width = math.Abs(v[0]) }) },
	"d":  func(s *shower, o operands) { s.setDashes(o) },

	"G": setStroke, "RG": setStroke, "K": setStroke, "SC": setStroke, "SCN": setStroke,
	"g": setFill, "rg": setFill, "k": setFill, "sc": setFill, "scn": setFill,
	"CS": func(s *shower, _ operands) { s.stroke = black },
	"cs": func(s *shower, _ operands) { s.fill = black },
}

func setStroke(s *shower, o operands) { s.stroke = colour(o.all()) }

func setFill(s *shower, o operands) { s.fill = colour(o.all()) }

// atNumbers does something with so many numbers, where they are there.
func (s *shower) atNumbers(o operands, many int, do func(v []float64)) {
	if v, ok := o.numbers(many); ok {
		do(v)
	}
}

// begin a line. A new path is drawn through the matrix as it is now.
func (s *shower) begin(p orb.Point) {
	s.chain.Through(s.by)
	s.chain.MoveTo(p)
}

func (s *shower) curve(v []float64) {
	s.chain.CurveTo(orb.Point{v[0], v[1]}, orb.Point{v[2], v[3]}, orb.Point{v[4], v[5]})
}

func (s *shower) curveFromHere(v []float64) {
	s.chain.CurveTo(s.chain.At(), orb.Point{v[0], v[1]}, orb.Point{v[2], v[3]})
}

func (s *shower) rectangle(v []float64) {
	x, y, w, h := v[0], v[1], v[2], v[3]
	s.begin(orb.Point{x, y})
	s.chain.LineTo(orb.Point{x + w, y})
	s.chain.LineTo(orb.Point{x + w, y + h})
	s.chain.LineTo(orb.Point{x, y + h})
	s.chain.Close()
}

func (s *shower) setDashes(o operands) {
	if len(o) < 2 || o[len(o)-2].kind != array {
		return
	}
	s.dashes = nil
	total := 0.0
	for _, t := range o[len(o)-2].list {
		if t.kind == numeric && t.number >= 0 {
			s.dashes = append(s.dashes, t.number)
			total += t.number
		}
	}
	if total == 0 || len(s.dashes) > 20 {
		s.dashes = nil
	}
}

// how a path is painted.
type how struct{ closes, strokes, fills bool }

// painting are the operators that paint a path, and end it [source.PDF17].
var painting = map[string]how{
	"S": {strokes: true}, "s": {closes: true, strokes: true},
	"f": {fills: true}, "F": {fills: true}, "f*": {fills: true},
	"B": {strokes: true, fills: true}, "B*": {strokes: true, fills: true},
	"b": {closes: true, strokes: true, fills: true}, "b*": {closes: true, strokes: true, fills: true},
	"n": {},
}

// paint the path, and take it for the clip where that was asked for.
func (s *shower) paint(how how) error {
	if how.closes {
		s.chain.Close()
	}
	lines, err := s.chain.Lines()
	if err != nil {
		return err
	}
	s.chain = linework.NewChain(s.by, s.d.budget)
	if how.strokes || how.fills && s.fill != "#ffffff" {
		s.add(lines, s.pen(how.strokes, how.fills))
	}
	if s.clipping {
		s.clip = common(s.clip, boxAbout(lines))
		s.clipping = false
	}
	return nil
}

// add lines to the drawing, as far as the clip shows them.
func (s *shower) add(lines []linework.Stretch, pen linework.Pen) {
	here := layer{}
	if len(s.marks) > 0 {
		here = s.marks[len(s.marks)-1]
	}
	for _, line := range lines {
		for _, part := range linework.Clip(line, s.clip) {
			s.out.Lines = append(s.out.Lines, linework.Line{
				Path: part.Path, Closed: part.Closed, Group: -1, Layer: here.name, Hidden: here.hidden, Page: s.index, Pen: pen,
			})
		}
	}
}

// boxAbout the points of lines; one that holds nothing where there are none.
func boxAbout(lines []linework.Stretch) orb.Bound {
	points := orb.MultiPoint{}
	for _, line := range lines {
		points = append(points, orb.MultiPoint(line.Path.Flatten(0.1))...)
	}
	if len(points) == 0 {
		return orb.Bound{Min: orb.Point{1, 1}, Max: orb.Point{-1, -1}}
	}
	return points.Bound()
}
