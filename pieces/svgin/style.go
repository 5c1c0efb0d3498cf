package svgin

import (
	"strings"

	"ellwand/pieces/linework"
)

// style is what an element hands down to those in it, and how itself is drawn.
type style struct {
	stroke, fill, width, dashes string
	hidden                      bool // visibility, which is handed down
	gone                        bool // display: none, with all that is in it
}

func rootStyle() style { return style{stroke: "none", fill: "black", width: "1", dashes: "none"} }

// properties that are looked at.
var properties = []string{"stroke", "fill", "stroke-width", "stroke-dasharray", "visibility", "display"}

// under is the style of an element within this one: its attributes, then the rules of
// style sheets, then its own style.
func (s style) under(n *node, rules []rule) style {
	set := map[string]string{}
	for _, key := range properties {
		if v, ok := n.attr[key]; ok {
			set[key] = v
		}
	}
	for _, r := range rules {
		if r.fits(n) {
			for key, v := range r.set {
				set[key] = v
			}
		}
	}
	for key, v := range declarations(n.attr["style"]) {
		set[key] = v
	}
	return s.with(set)
}

func (s style) with(set map[string]string) style {
	pick := func(into *string, key string) {
		if v := strings.TrimSpace(set[key]); v != "" && v != "inherit" {
			*into = v
		}
	}
	pick(&s.stroke, "stroke")
	pick(&s.fill, "fill")
	pick(&s.width, "stroke-width")
	pick(&s.dashes, "stroke-dasharray")
	switch strings.TrimSpace(set["visibility"]) {
	case "hidden", "collapse":
		s.hidden = true
	case "visible":
		s.hidden = false
	}
	s.gone = strings.TrimSpace(set["display"]) == "none"
	return s
}

// pen of the style; scale is how much larger than written the lines are drawn.
func (s style) pen(v view, scale float64) (linework.Pen, error) {
	pen := linework.Pen{Colour: colour(s.stroke), Fill: colour(s.fill)}
	width, err := length(s.width, v.diagonal())
	if err != nil {
		return pen, err
	}
	pen.Width = max(0, width) * scale
	if s.dashes == "none" {
		return pen, nil
	}
	total := 0.0
	for _, text := range strings.FieldsFunc(s.dashes, func(r rune) bool { return strings.ContainsRune(", \t\r\n", r) }) {
		d, err := length(text, v.diagonal())
		if err != nil {
			return pen, err
		}
		total += max(0, d)
		pen.Dashes = append(pen.Dashes, max(0, d)*scale)
	}
	if total == 0 {
		pen.Dashes = nil
	}
	return pen, nil
}
