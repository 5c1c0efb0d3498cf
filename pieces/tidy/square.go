package tidy

import (
	"cmp"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// square is a closed line of four equal sides at right angles.
type square struct {
	line int
	page int
	box  orb.Bound
	side float64 // mean of its width and height
}

// Sides of test squares, mm [source.OwnChoice].
const (
	leastSquare = 15.0
	mostSquare  = 160.0
)

// squares among the lines, that stand level.
func squares(lines []linework.Line) []square {
	var out []square
	for i, l := range lines {
		box := l.Path.Flatten(0.1).Bound()
		width, height := box.Max[0]-box.Min[0], box.Max[1]-box.Min[1]
		side := (width + height) / 2
		if !l.Closed || side < leastSquare || side > mostSquare || math.Abs(width-height) > 0.01*side {
			continue
		}
		if math.Abs(l.Path.Length()-2*(width+height)) < 0.002*side && keepsToRim(l.Path, box) {
			out = append(out, square{i, l.Page, box, side})
		}
	}
	return out
}

func keepsToRim(path pieces.Path, box orb.Bound) bool {
	rim := geometry.Corners(box)
	for _, c := range path {
		if _, ok := c.(pieces.Line); !ok || !geometry.IsOn(rim, c.At(0.5), 0.1) {
			return false
		}
	}
	return true
}

// length in words: 10 cm, 4", 100 mm, 2 inches, 2x2 in.
var length = regexp.MustCompile(`(?i)(\d+(?:[.,]\d+)?)\s*(mm|cm|inch(?:es)?|in\b|"|″)`)

// sides that a text tells, mm.
func sides(text string) []float64 {
	var out []float64
	for _, m := range length.FindAllStringSubmatch(text, 4) {
		x, err := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64)
		if err != nil {
			continue
		}
		switch strings.ToLower(m[2])[0] {
		case 'm':
			out = append(out, x)
		case 'c':
			out = append(out, x*10)
		default:
			out = append(out, x*25.4)
		}
	}
	return out
}

// scale checks a test square: one that somebody says the side of sets the scale, one
// whose side is written in or beside it is told. It gives the drawing without it.
func scale(d linework.Drawing, v found.View) (linework.Drawing, []found.Note) {
	all := squares(d.Lines)
	if len(all) > 0 && v.Square > 0 {
		return scaledBy(d, all, v.Square)
	}
	var gone []int
	var notes []found.Note
	for _, s := range all {
		if side, ok := s.written(d.Words); ok {
			gone = append(gone, s.line)
			notes = append(notes, found.Note{Kind: found.ScaleChecked, Count: 1, Size: s.side, At: s.box.Center(),
				What: inWords(side)})
		}
	}
	d.Lines = without(d.Lines, gone)
	return d, notes
}

// written side of a square, within a tenth of what it measures.
func (s square) written(words []linework.Words) (float64, bool) {
	beside := s.box.Pad(s.side / 4)
	for _, w := range words {
		if w.Page != s.page || !beside.Contains(w.At) {
			continue
		}
		for _, side := range sides(w.Text) {
			if math.Abs(side-s.side) < 0.1*side {
				return side, true
			}
		}
	}
	return 0, false
}

// scaledBy the square that is nearest to a side.
func scaledBy(d linework.Drawing, all []square, side float64) (linework.Drawing, []found.Note) {
	off := func(s square) float64 { return math.Abs(math.Log(s.side / side)) }
	nearest := slices.MinFunc(all, func(a, b square) int { return cmp.Compare(off(a), off(b)) })
	note := found.Note{Kind: found.ScaleSet, Count: 1, Size: nearest.side, At: nearest.box.Center(),
		What: inWords(side)}
	d.Lines = without(d.Lines, []int{nearest.line})
	m := pieces.Scale(side / nearest.side)
	for i := range d.Lines {
		d.Lines[i].Path = d.Lines[i].Path.Map(m)
	}
	d.Words, d.Pages = slices.Clone(d.Words), slices.Clone(d.Pages)
	for i := range d.Words {
		d.Words[i].At = m.Apply(d.Words[i].At)
	}
	for i, p := range d.Pages {
		d.Pages[i].Box = orb.Bound{Min: m.Apply(p.Box.Min), Max: m.Apply(p.Box.Max)}
	}
	return d, []found.Note{note}
}

// inWords says the side of a square as it is written on patterns.
func inWords(side float64) string {
	if inches := side / 25.4; math.Abs(inches-math.Round(inches)) < 1e-9 {
		return strconv.FormatFloat(math.Round(inches), 'g', -1, 64) + " in"
	}
	return strconv.FormatFloat(side/10, 'g', 6, 64) + " cm"
}

func without(lines []linework.Line, gone []int) []linework.Line {
	var out []linework.Line
	for i, l := range lines {
		if !slices.Contains(gone, i) {
			out = append(out, l)
		}
	}
	return out
}
