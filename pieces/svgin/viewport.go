package svgin

import (
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// sizing is a viewport: how large it is outside, and how what is in it is drawn.
type sizing struct {
	width, height float64       // mm for the outermost, units of the outer drawing for others
	inside        pieces.Motion // from its units to those outside
	user          view
	unsized       bool // nothing says how large the outermost is
	inPixels      bool // its size is in pixels
}

func (s sizing) box() orb.Bound { return orb.Bound{Max: orb.Point{s.width, s.height}} }

// outermost viewport, in mm. Where its size says nothing, or is in pixels, a unit is as
// many mm as given.
func outermost(root *node, unit float64) (sizing, error) {
	box, err := viewBox(root)
	if err != nil {
		return sizing{}, err
	}
	width, height, err := givenSize(root, box)
	if err != nil {
		return sizing{}, err
	}
	if width == 0 && height == 0 {
		if box == nil {
			return sizing{inside: pieces.Scale(unit), unsized: true}, nil
		}
		width, height = box[2], box[3]
		inside := fitted(box, width, height, "none").Then(pieces.Scale(unit))
		return sizing{width * unit, height * unit, inside, view{box[2], box[3]}, true, false}, nil
	}
	user := view{width, height}
	if box != nil {
		user = view{box[2], box[3]}
	}
	inPixels := isPlain(root)
	if !inPixels {
		unit = Pixel
	}
	inside := fitted(box, width, height, root.attr["preserveAspectRatio"]).Then(pieces.Scale(unit))
	return sizing{width * unit, height * unit, inside, user, false, inPixels}, nil
}

// isPlain says that the size is written in bare numbers or pixels, which programs
// write for want of a size as often as they mean 96 to the inch.
func isPlain(root *node) bool {
	for _, key := range []string{"width", "height"} {
		text := strings.ToLower(strings.TrimSpace(root.attr[key]))
		if text == "" || strings.HasSuffix(text, "%") {
			continue
		}
		if !strings.HasSuffix(text, "px") && !strings.ContainsAny(text[len(text)-1:], "0123456789.") {
			return false
		}
	}
	return true
}

// givenSize in pixels; the other side by the viewBox where one alone is given. 0 where
// nothing is said, or a percentage of what is not known.
func givenSize(root *node, box []float64) (width, height float64, err error) {
	read := func(key string) (float64, error) {
		text := strings.TrimSpace(root.attr[key])
		if strings.HasSuffix(text, "%") {
			return 0, nil
		}
		x, err := root.length(key, 0)
		if err == nil && x < 0 {
			err = root.fault("", &linework.Fault{Of: linework.NegativeSize, Text: key})
		}
		return x, err
	}
	if width, err = read("width"); err != nil {
		return 0, 0, err
	}
	if height, err = read("height"); err != nil {
		return 0, 0, err
	}
	if box != nil && width == 0 && height > 0 {
		width = height * box[2] / box[3]
	}
	if box != nil && height == 0 && width > 0 {
		height = width * box[3] / box[2]
	}
	return width, height, nil
}

// viewBox of an element: x, y, width, height; nil for none.
func viewBox(n *node) ([]float64, error) {
	text, ok := n.attr["viewBox"]
	if !ok {
		return nil, nil
	}
	box, err := numbers(text)
	if err == nil && (len(box) != 4 || !(box[2] > 0 && box[3] > 0)) {
		err = &linework.Fault{Of: linework.NoBox, Text: shown(text)}
	}
	if err != nil {
		return nil, n.fault("viewBox", err)
	}
	return box, nil
}

// fitted brings a viewBox into a viewport of a size by preserveAspectRatio
// [source.SVG]. Without a box nothing is moved.
func fitted(box []float64, width, height float64, how string) pieces.Motion {
	if box == nil {
		return pieces.Identity()
	}
	x, y := width/box[2], height/box[3]
	words := strings.Fields(how)
	if len(words) > 0 && words[0] == "defer" {
		words = words[1:]
	}
	align := "xMidYMid"
	if len(words) > 0 {
		align = words[0]
	}
	if align == "none" {
		return pieces.Motion{A: x, D: y, E: -box[0] * x, F: -box[1] * y}
	}
	scale := min(x, y)
	if len(words) > 1 && words[1] == "slice" {
		scale = max(x, y)
	}
	m := pieces.Motion{A: scale, D: scale, E: -box[0] * scale, F: -box[1] * scale}
	m.E += share(align, "x") * (width - box[2]*scale)
	m.F += share(align, "Y") * (height - box[3]*scale)
	return m
}

// share of the room that is left which lies before the drawing.
func share(align, axis string) float64 {
	switch {
	case strings.Contains(align, axis+"Min"):
		return 0
	case strings.Contains(align, axis+"Max"):
		return 1
	}
	return 0.5
}

// nested viewport of an <svg> or a <symbol> in a drawing.
func nested(n *node, v view, width, height float64) (sizing, error) {
	x, err := v.across(n, "x")
	if err != nil {
		return sizing{}, err
	}
	y, err := v.down(n, "y")
	if err != nil {
		return sizing{}, err
	}
	if n.name == "symbol" {
		x, y = 0, 0
	}
	box, err := viewBox(n)
	if err != nil {
		return sizing{}, err
	}
	user := view{width, height}
	if box != nil {
		user = view{box[2], box[3]}
	}
	inside := fitted(box, width, height, n.attr["preserveAspectRatio"]).Then(pieces.Move(x, y))
	return sizing{width: width, height: height, inside: inside, user: user}, nil
}
