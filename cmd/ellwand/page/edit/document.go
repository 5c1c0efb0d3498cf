package edit

import (
	"strings"

	"go.yaml.in/yaml/v3"

	"ellwand/cmd/ellwand/strict"
)

// document is a YAML text with its tree and where its lines begin.
type document struct {
	text   string
	root   *yaml.Node // nil of an empty text
	lines  []int      // where each begins, in bytes
	ending string     // of a line
}

// parsed reads a text.
func parsed(text string) (*document, error) {
	var whole yaml.Node
	if err := yaml.Unmarshal([]byte(text), &whole); err != nil {
		return nil, ErrNoPlace
	}
	d := &document{text: text, lines: []int{0}, ending: "\n"}
	for i := range len(text) {
		if text[i] == '\n' {
			d.lines = append(d.lines, i+1)
		}
	}
	if strings.Contains(text, "\r\n") {
		d.ending = "\r\n"
	}
	if len(whole.Content) > 0 {
		d.root = whole.Content[0]
	}
	return d, nil
}

// place is a value in its document.
type place struct {
	// key that it stands behind; nil of an entry of a list.
	key, value *yaml.Node
	// in is the mapping or list that holds it, nil at the top; at is its index there: of
	// the key, or of the entry.
	in *yaml.Node
	at int
}

// isOnly says that nothing else stands in the mapping or list.
func (p place) isOnly() bool {
	return p.in != nil && (p.key != nil && len(p.in.Content) == 2 || p.key == nil && len(p.in.Content) == 1)
}

// locate finds the value at a path.
func (d *document) locate(path strict.Path) (place, bool) {
	at := place{value: d.root}
	for _, step := range path {
		if at.value == nil {
			return place{}, false
		}
		in, found := at.value, false
		switch {
		case step.Key != "" && in.Kind == yaml.MappingNode:
			for i := 0; i < len(in.Content); i += 2 {
				if in.Content[i].Value == step.Key {
					at, found = place{key: in.Content[i], value: in.Content[i+1], in: in, at: i}, true
				}
			}
		case step.Key == "" && in.Kind == yaml.SequenceNode && step.Index < len(in.Content):
			at, found = place{value: in.Content[step.Index], in: in, at: step.Index}, true
		}
		if !found {
			return place{}, false
		}
	}
	return at, true
}

// offset of a line and a column, both from 1, in bytes. Columns count characters.
func (d *document) offset(line, column int) int {
	at := d.lines[line-1]
	if line == 1 && strings.HasPrefix(d.text, "\ufeff") {
		at += len("\ufeff")
	}
	for range column - 1 {
		if at >= len(d.text) {
			return len(d.text)
		}
		at++
		for at < len(d.text) && d.text[at]&0xC0 == 0x80 {
			at++
		}
	}
	return at
}

// begin of a node, in bytes.
func (d *document) begin(n *yaml.Node) int { return d.offset(n.Line, n.Column) }

// endOfLine is where the line that holds a byte ends, before its ending.
func (d *document) endOfLine(at int) int {
	end := strings.IndexByte(d.text[at:], '\n')
	if end < 0 {
		return len(d.text)
	}
	end += at
	if end > 0 && d.text[end-1] == '\r' && end-1 >= at {
		end--
	}
	return end
}

// startOfLine is where the line that holds a byte begins.
func (d *document) startOfLine(at int) int { return strings.LastIndexByte(d.text[:at], '\n') + 1 }

// splice puts a text in the place of some bytes.
func (d *document) splice(from, to int, text string) string {
	return d.text[:from] + text + d.text[to:]
}
