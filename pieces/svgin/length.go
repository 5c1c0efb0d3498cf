package svgin

import (
	"cmp"
	"errors"
	"math"
	"strings"

	"ellwand/pieces/linework"
)

// Pixel of CSS in mm: 96 to the inch [source.SVG].
const Pixel = 25.4 / 96

// pixels in each unit of CSS [source.SVG]. A font's own size is not known: what
// is given in it is taken as of 16 pixels, as browsers do without more.
var pixels = map[string]float64{
	"": 1, "px": 1, "in": 96, "cm": 96 / 2.54, "mm": 96 / 25.4, "q": 96 / 101.6, "pt": 96.0 / 72, "pc": 16,
	"em": 16, "rem": 16, "ex": 8,
}

// length in units of the drawing; a percentage is one of the whole.
func length(text string, whole float64) (float64, error) {
	s := scanner{text: strings.TrimSpace(text)}
	x, err := s.number()
	if err != nil {
		return 0, err
	}
	unit := strings.ToLower(strings.TrimSpace(s.text[s.at:]))
	if unit == "%" {
		return x / 100 * whole, nil
	}
	size, ok := pixels[unit]
	if !ok {
		return 0, &linework.Fault{Of: linework.NoLength, Text: text}
	}
	return x * size, nil
}

// view is the size of the viewport in units of the drawing, that percentages are of.
type view struct{ width, height float64 }

func (v view) diagonal() float64 { return math.Hypot(v.width, v.height) / math.Sqrt2 }

// across and down read a length of an element, 0 where it is not given.
func (v view) across(n *node, key string) (float64, error) { return n.length(key, v.width) }
func (v view) down(n *node, key string) (float64, error)   { return n.length(key, v.height) }

func (n *node) length(key string, whole float64) (float64, error) {
	text, ok := n.attr[key]
	if !ok || strings.TrimSpace(text) == "" || strings.TrimSpace(text) == "auto" {
		return 0, nil
	}
	x, err := length(text, whole)
	if err != nil {
		return 0, n.fault(key, err)
	}
	return x, nil
}

// fault of the element, or of its attribute if that is named, with its line. Of too much
// it is the file that has it.
func (n *node) fault(attribute string, err error) error {
	var one *linework.Fault
	if !errors.As(err, &one) {
		return err
	}
	here := *one
	here.Line, here.Element, here.Attribute = n.line, n.name, cmp.Or(one.Attribute, attribute)
	return &here
}

// inAttribute says in which attribute a fault is.
func inAttribute(name string, err error) error {
	var one *linework.Fault
	if !errors.As(err, &one) {
		return err
	}
	here := *one
	here.Attribute = name
	return &here
}
