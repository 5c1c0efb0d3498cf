package svgin

import (
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// walker draws the elements, one after the other.
type walker struct {
	ids     map[string]*node
	rules   []rule
	drawing linework.Drawing
	budget  *linework.Budget
}

// state is what an element hands down.
type state struct {
	by    pieces.Motion // to mm, y up
	view  view
	style style
	group int
	layer string
	depth int
	using []*node // elements that are being used
	// called is what the element is called that shows this one in its place; may be empty.
	called string
}

// nameOf an element: that of what shows it in its place goes before its own.
func (s state) nameOf(n *node) string {
	if s.called != "" {
		return s.called
	}
	return n.title()
}

func (s state) styled(n *node, rules []rule) state {
	s.style = s.style.under(n, rules)
	return s
}

func (w *walker) children(n *node, s state) error {
	s.depth++
	if err := w.budget.Depth(s.depth); err != nil {
		return n.fault("", err)
	}
	for _, child := range n.children {
		if err := w.element(child, s); err != nil {
			return err
		}
		if n.name == "switch" && child.name != "" {
			return nil // the first that is understood
		}
	}
	return nil
}

func (w *walker) element(n *node, s state) error {
	if err := w.budget.Spend(found.Things, 1); err != nil { // again where it is used again
		return n.fault("", err)
	}
	s = s.styled(n, w.rules)
	if s.style.gone {
		return nil
	}
	if text, ok := n.attr["transform"]; ok {
		m, err := transform(text)
		if err != nil {
			return n.fault("", err)
		}
		s.by = m.Then(s.by)
	}
	if draw, ok := shapes[n.name]; ok {
		return w.shape(n, s, draw)
	}
	switch n.name {
	case "g", "a", "switch":
		return w.group(n, s)
	case "svg":
		return w.viewport(n, n, s)
	case "use":
		return w.use(n, s)
	case "text":
		return w.text(n, s)
	}
	return nil
}

// group of elements; the outermost are layers.
func (w *walker) group(n *node, s state) error {
	name := s.nameOf(n)
	s.called = ""
	w.drawing.Groups = append(w.drawing.Groups, linework.Group{Name: name, Parent: s.group, About: n.about()})
	if s.group < 0 || n.attr["label:groupmode"] == "layer" {
		s.layer = name
	}
	s.group = len(w.drawing.Groups) - 1
	return w.children(n, s)
}

// viewport draws what is in an <svg> or a <symbol>, at the size that the element which
// shows it has.
func (w *walker) viewport(n, shownBy *node, s state) error {
	width, height, err := viewportSize(n, shownBy, s.view)
	if err != nil {
		return err
	}
	size, err := nested(n, s.view, width, height)
	if err != nil {
		return err
	}
	s.by, s.view = size.inside.Then(s.by), size.user
	return w.group(n, s)
}

func viewportSize(n, shownBy *node, v view) (width, height float64, err error) {
	width, height = v.width, v.height
	for _, from := range []*node{n, shownBy} {
		if x, err := from.length("width", v.width); err != nil {
			return 0, 0, err
		} else if x > 0 {
			width = x
		}
		if y, err := from.length("height", v.height); err != nil {
			return 0, 0, err
		} else if y > 0 {
			height = y
		}
	}
	return width, height, nil
}

// use shows another element at a place of its own.
func (w *walker) use(n *node, s state) error {
	name := n.attr["href"]
	if name == "" {
		name = n.attr["link:href"]
	}
	if !strings.HasPrefix(name, "#") {
		return n.fault("", &linework.Fault{Of: linework.UsesAnother, Text: shown(name)})
	}
	used := w.ids[name[1:]]
	if used == nil {
		return n.fault("", &linework.Fault{Of: linework.UsesNothing, Text: shown(name)})
	}
	for _, outer := range s.using {
		if outer == used {
			return n.fault("", &linework.Fault{Of: linework.ShowsItself, Text: shown(name)})
		}
	}
	if err := w.budget.Depth(len(s.using)); err != nil {
		return n.fault("", err)
	}
	x, err := s.view.across(n, "x")
	if err != nil {
		return err
	}
	y, err := s.view.down(n, "y")
	if err != nil {
		return err
	}
	s.by = pieces.Move(x, y).Then(s.by)
	s.using = append(s.using[:len(s.using):len(s.using)], used)
	if name := linework.Given(n.title()); name != "" && s.called == "" {
		s.called = name
	}
	s.depth++
	if used.name == "symbol" {
		return w.viewport(used, n, s.styled(used, w.rules))
	}
	return w.element(used, s)
}

// shape puts the lines of an element into the drawing.
func (w *walker) shape(n *node, s state, draw func(*node, view, *linework.Chain) error) error {
	turn := s.by.A*s.by.D - s.by.B*s.by.C
	if math.Abs(turn) < 1e-12 || math.IsNaN(turn) || math.IsInf(turn, 0) {
		return n.fault("", &linework.Fault{Of: linework.ScaledToNothing})
	}
	chain := linework.NewChain(s.by, w.budget)
	if err := draw(n, s.view, chain); err != nil {
		return err
	}
	lines, err := chain.Lines()
	if err != nil {
		return n.fault("", err)
	}
	pen, err := s.style.pen(s.view, math.Sqrt(math.Abs(turn)))
	if err != nil {
		return n.fault("stroke", err)
	}
	if s.style.hidden || pen.Colour == "" && (pen.Fill == "" || pen.Fill == "#ffffff") {
		return nil
	}
	for _, line := range lines {
		w.drawing.Lines = append(w.drawing.Lines, linework.Line{
			Path: line.Path, Closed: line.Closed, Name: s.nameOf(n), Group: s.group, Layer: s.layer, Pen: pen, About: n.about(),
		})
	}
	return nil
}

// text puts words into the drawing, a line for each element of its own place.
func (w *walker) text(n *node, s state) error {
	x, errX := number(n.attr["x"])
	y, errY := number(n.attr["y"])
	if errX != nil || errY != nil {
		x, y = 0, 0
	}
	size, err := length(fontSize(n), 0)
	if err != nil {
		size = 0
	}
	if words := short(n.words()); words != "" && !s.style.hidden {
		if err := w.budget.Spend(found.Words, 1); err != nil {
			return n.fault("", err)
		}
		w.drawing.Words = append(w.drawing.Words, linework.Words{
			Text: words, At: s.by.Apply(orb.Point{x, y}), Group: s.group, Layer: s.layer,
			Size: size * math.Sqrt(math.Abs(s.by.A*s.by.D-s.by.B*s.by.C)),
		})
	}
	return nil
}

func fontSize(n *node) string {
	if text := declarations(n.attr["style"])["font-size"]; text != "" {
		return text
	}
	return n.attr["font-size"]
}

// number is the first of a list, in units of the drawing.
func number(text string) (float64, error) {
	first := strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == ' ' })
	if len(first) == 0 {
		return 0, nil
	}
	return length(first[0], 0)
}

// words of an element and of those in it, parted where they begin at places of their
// own.
func (n *node) words() string {
	out := n.text
	for _, child := range n.children {
		if child.name == "tspan" || child.name == "a" || child.name == "textPath" {
			out += " " + child.words()
		}
	}
	return out
}

// about is what the element says in keys of our own.
func (n *node) about() map[string]string {
	var out map[string]string
	for key, value := range n.attr {
		if name, ok := strings.CutPrefix(key, "data-"); ok {
			if out == nil {
				out = map[string]string{}
			}
			out[name] = value
		}
	}
	return out
}
