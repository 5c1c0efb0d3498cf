package edit

import (
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"go.yaml.in/yaml/v3"

	"ellwand/cmd/ellwand/strict"
)

// scalar writes a text so that it is read as it is; between brackets where flow is set.
func scalar(text string, flow bool) string {
	if isPlain(text, flow) {
		return text
	}
	var node yaml.Node
	node.SetString(text)
	node.Style = yaml.DoubleQuotedStyle
	out, err := yaml.Marshal(&node)
	if written := strings.TrimSuffix(string(out), "\n"); err == nil && !strings.Contains(written, "\n") {
		return written
	}
	return strconv.Quote(text)
}

// isPlain says that a text needs no quotation marks: both readers take it for one value
// that is written so.
func isPlain(text string, flow bool) bool {
	if text == "" || text != strings.TrimSpace(text) || strings.ContainsAny(text, "\n\r\t#&*!|>%@`") ||
		flow && strings.ContainsAny(text, ",[]{}") {
		return false
	}
	var tree yaml.Node
	if yaml.Unmarshal([]byte("k: "+text+"\n"), &tree) != nil {
		return false
	}
	pair := tree.Content[0].Content
	if len(pair) != 2 || pair[1].Kind != yaml.ScalarNode || pair[1].Value != text || pair[1].Tag == "!!null" {
		return false
	}
	file, err := parser.ParseBytes([]byte("k: "+text+"\n"), 0)
	if err != nil {
		return false
	}
	value, ok := file.Docs[0].Body.(*ast.MappingNode)
	return ok && len(value.Values) == 1 && isValueOf(value.Values[0].Value, text)
}

func isValueOf(node ast.Node, text string) bool {
	_, isScalar := node.(ast.ScalarNode)
	_, isNull := node.(*ast.NullNode)
	return isScalar && !isNull && strict.Written(node) == text
}

// behind writes a value behind its key or dash, lines below it indented by so much. A
// single value begins with a space.
func (v Value) behind(indent int, ending string) string {
	switch {
	case v.isText():
		return " " + scalar(v.Text, false)
	case v.isShort():
		return " " + v.flow()
	}
	var out strings.Builder
	for _, pair := range v.Keys {
		out.WriteString(ending + strings.Repeat(" ", indent) + pair.line(indent, ending))
	}
	for _, one := range v.List {
		out.WriteString(ending + strings.Repeat(" ", indent) + one.entry(indent, ending))
	}
	return out.String()
}

// line of a key with its value.
func (p Pair) line(indent int, ending string) string {
	return scalar(p.Key, false) + ":" + p.Value.behind(indent+2, ending)
}

// entry of a list: its dash and its value, of which the first key stands beside the dash.
func (v Value) entry(indent int, ending string) string {
	if v.isText() || v.isShort() || v.List != nil {
		return "-" + v.behind(indent+2, ending)
	}
	lines := v.behind(indent+2, ending)
	return "- " + strings.TrimLeft(strings.TrimPrefix(lines, ending), " ")
}

// isShort says that a value is written between brackets: nothing, or a few single values
// in a list, as the corners of a cloth are.
func (v Value) isShort() bool {
	if v.isText() || len(v.Keys) > 0 {
		return false
	}
	for _, one := range v.List {
		if !one.isText() {
			return false
		}
	}
	return true
}

// flow writes a value between brackets.
func (v Value) flow() string {
	switch {
	case v.isText():
		return scalar(v.Text, true)
	case v.Keys != nil:
		var parts []string
		for _, pair := range v.Keys {
			parts = append(parts, scalar(pair.Key, true)+": "+pair.Value.flow())
		}
		return "{" + strings.Join(parts, ", ") + "}"
	}
	var parts []string
	for _, one := range v.List {
		parts = append(parts, one.flow())
	}
	return "[" + strings.Join(parts, ", ") + "]"
}
