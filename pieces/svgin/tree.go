package svgin

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"strings"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// node is an element of the document.
type node struct {
	name     string
	line     int
	attr     map[string]string // by local name; those of other namespaces as "space:local"
	children []*node
	text     string // of its own, white space as it stands
}

const (
	svgSpace   = "http://www.w3.org/2000/svg"
	linkSpace  = "http://www.w3.org/1999/xlink"
	labelSpace = "http://www.inkscape.org/namespaces/inkscape"
)

// parse the document into a tree; pictures are counted and left out.
func parse(data []byte, budget *linework.Budget) (root *node, pictures int, err error) {
	in := xml.NewDecoder(bytes.NewReader(data))
	in.CharsetReader = func(charset string, _ io.Reader) (io.Reader, error) {
		return nil, &linework.Fault{Of: linework.Encoded, Text: charset}
	}
	var open []*node
	for {
		token, err := in.Token()
		if errors.Is(err, io.EOF) && root != nil && len(open) == 0 {
			return root, pictures, nil
		}
		line, _ := in.InputPos()
		if err != nil {
			return nil, 0, notXML(err, line)
		}
		switch t := token.(type) {
		case xml.Directive:
			if bytes.Contains(bytes.ToUpper(t), []byte("ENTITY")) {
				return nil, 0, &linework.Fault{Of: linework.Entities, Line: line}
			}
		case xml.StartElement:
			if err := errors.Join(budget.Spend(found.Things, 1), budget.Depth(len(open))); err != nil {
				return nil, 0, err
			}
			n := elementOf(t, line)
			if n.name == "image" {
				pictures++
				n.attr = nil
			}
			switch {
			case len(open) > 0:
				parent := open[len(open)-1]
				parent.children = append(parent.children, n)
			case root == nil:
				root = n
			}
			open = append(open, n)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 && keepsText(open[len(open)-1].name) {
				open[len(open)-1].text += string(t)
			}
		}
	}
}

func keepsText(name string) bool {
	switch name {
	case "text", "tspan", "title", "style", "a":
		return true
	}
	return false
}

// elementOf a tag. Elements of other namespaces have no name, so that nothing draws
// them.
func elementOf(t xml.StartElement, line int) *node {
	n := &node{line: line, attr: make(map[string]string, len(t.Attr))}
	if t.Name.Space == svgSpace || t.Name.Space == "" {
		n.name = t.Name.Local
	}
	for _, a := range t.Attr {
		switch a.Name.Space {
		case "":
			n.attr[a.Name.Local] = a.Value
		case linkSpace:
			n.attr["link:"+a.Name.Local] = a.Value
		case labelSpace:
			n.attr["label:"+a.Name.Local] = a.Value
		}
	}
	return n
}

// notXML is what the reader of XML says, as a fault.
func notXML(err error, line int) error {
	var syntax *xml.SyntaxError
	var encoded *linework.Fault
	switch {
	case errors.As(err, &encoded):
		return &linework.Fault{Of: encoded.Of, Line: line, Text: encoded.Text}
	case errors.As(err, &syntax) && strings.Contains(syntax.Msg, "entity"):
		return &linework.Fault{Of: linework.Entity, Line: line}
	case errors.As(err, &syntax):
		return &linework.Fault{Of: linework.Incomplete, Line: line, Text: syntax.Msg}
	case errors.Is(err, io.EOF):
		return &linework.Fault{Of: linework.NoDrawing}
	}
	text := strings.TrimPrefix(err.Error(), "xml: ")
	return &linework.Fault{Of: linework.Unreadable, Line: line, Text: text}
}

// idsOf all elements, the first of each id.
func idsOf(root *node) map[string]*node {
	out := map[string]*node{}
	root.each(func(n *node) {
		if id := n.attr["id"]; id != "" && out[id] == nil {
			out[id] = n
		}
	})
	return out
}

// each element from the top down.
func (n *node) each(do func(*node)) {
	do(n)
	for _, child := range n.children {
		child.each(do)
	}
}

// child of that name, the first; nil where there is none.
func (n *node) child(name string) *node {
	for _, c := range n.children {
		if c.name == name {
			return c
		}
	}
	return nil
}

// title that people have given the element.
func (n *node) title() string {
	if t := n.child("title"); t != nil && strings.TrimSpace(t.text) != "" {
		return short(t.text)
	}
	for _, key := range []string{"label:label", "aria-label", "data-name", "id"} {
		if words := short(n.attr[key]); words != "" {
			return words
		}
	}
	return ""
}

// short makes words of what stands in a file: one line of a few letters.
func short(words string) string {
	words = strings.Join(strings.Fields(words), " ")
	if letters := []rune(words); len(letters) > linework.MostLetters {
		return string(letters[:linework.MostLetters])
	}
	return words
}
