package strict

import (
	"reflect"

	"github.com/goccy/go-yaml/ast"

	"ellwand/pieces/language"
)

// Shaped is a value that may be written in several shapes: as a text, a list or
// keys. Its zero value names the type that each shape is read into.
type Shaped interface{ Shapes() []reflect.Type }

// shapeFor is the type that a node is held against: of a value that may be written
// in several shapes, the one of the node's, or else the first.
func shapeFor(node ast.Node, want reflect.Type) reflect.Type {
	several, ok := reflect.Zero(want).Interface().(Shaped)
	if !ok {
		return want
	}
	all := several.Shapes()
	for _, one := range all {
		_, isList := node.(*ast.SequenceNode)
		_, isMapping := pairs(node)
		switch one.Kind() {
		case reflect.Slice:
			if isList {
				return one
			}
		case reflect.Struct, reflect.Map:
			if isMapping {
				return one
			}
		default:
			if !isList && !isMapping {
				return one
			}
		}
	}
	return all[0]
}

// check walks one node. The path is empty at the top.
func (s *shape) check(node ast.Node, want reflect.Type, path Path) {
	if want.Kind() == reflect.Pointer {
		want = want.Elem()
	}
	want = shapeFor(node, want)
	line := node.GetToken().Position.Line
	if _, empty := node.(*ast.NullNode); empty {
		if want.Kind() == reflect.Struct && len(path) > 0 {
			s.fault(path, line, WrongShape,
				"%s has no value: write {} after the colon for the usual one, or indent its keys below it",
				"%s hat keinen Wert: schreiben Sie {} hinter den Doppelpunkt, wenn es das Übliche sein "+
					"soll, oder rücken Sie die Schlüssel darunter ein", s.place(path))
			return
		}
		s.fault(path, line, WrongShape, "%s has no value: give one or remove the line",
			"%s hat keinen Wert: geben Sie einen an, oder nehmen Sie die Zeile weg", s.place(path))
		return
	}
	if _, orNone := reflect.Zero(want).Interface().(Optional); orNone && IsNone(node) {
		return
	}
	switch want.Kind() {
	case reflect.Struct, reflect.Map:
		s.mapping(node, want, path)
	case reflect.Slice:
		s.sequence(node, want, path)
	default:
		if want == reflect.TypeFor[Measure]() {
			*s.lines.measures = append(*s.lines.measures, path)
		}
		s.scalar(node, path)
	}
}

func (s *shape) mapping(node ast.Node, want reflect.Type, path Path) {
	values, ok := pairs(node)
	if !ok {
		s.fault(path, node.GetToken().Position.Line, WrongShape, "%s should hold keys with values, but is %s; %s",
			"%s besteht aus Schlüsseln mit Werten; hier steht %s; %s",
			s.place(path), kind(node), s.asMapping(node, want))
		return
	}
	known := keys(want)
	if len(path) > 0 && !s.withinEntries(path, node.GetToken().Position.Line, len(values)) {
		return
	}
	for i, pair := range values {
		key := Written(pair.Key)
		line := pair.Key.GetToken().Position.Line
		inner := path.Key(key)
		s.lines.note(inner, line)
		if want.Kind() == reflect.Map {
			s.check(pair.Value, want.Elem(), inner)
			continue
		}
		field, found := known[key]
		if !found && i > 0 && isDecimals(pair) {
			s.fault(inner, line, WrongShape, "%s: between braces a comma parts two entries; write %s: %s.%s",
				"%s: zwischen Klammern trennt ein Komma zwei Einträge; schreiben Sie %s: %s.%s",
				s.place(path),
				Written(values[i-1].Key), Written(values[i-1].Value), key)
			continue
		}
		if !found {
			s.fault(inner, line, Unknown, "unknown key %q in %s; %s",
				"der Schlüssel %q ist nicht bekannt (%s); %s", key, s.place(path), Hint(key, Names(want)))
			continue
		}
		s.check(pair.Value, field, inner)
	}
}

// isDecimals says that a key is what a decimal comma leaves between braces: a
// number, perhaps with a unit, and no value.
func isDecimals(pair *ast.MappingValueNode) bool {
	_, empty := pair.Value.(*ast.NullNode)
	key := Written(pair.Key)
	return empty && key != "" && key[0] >= '0' && key[0] <= '9'
}

// asMapping says how to write what stands where keys should be: a single value
// is most likely meant for the first key.
func (s *shape) asMapping(node ast.Node, want reflect.Type) language.Sentence {
	switch node.(type) {
	case *ast.StringNode, *ast.IntegerNode, *ast.FloatNode:
		if want.Kind() == reflect.Struct && want != s.form.of {
			return language.Say("write {%s: %s}", "schreiben Sie {%s: %s}", Names(want)[0], Written(node))
		}
	}
	return language.Say("write each key on a line of its own, indented below it",
		"schreiben Sie jeden Schlüssel in eine eigene Zeile, darunter eingerückt")
}

func (s *shape) sequence(node ast.Node, want reflect.Type, path Path) {
	list, ok := node.(*ast.SequenceNode)
	if !ok {
		s.fault(path, node.GetToken().Position.Line, WrongShape,
			"%s should be a list, each entry after a dash (or [a, b]), but is %s",
			"%s ist eine Liste, jeder Eintrag hinter einem Strich (oder [a, b]); hier steht %s",
			s.place(path), kind(node))
		return
	}
	if !s.withinEntries(path, node.GetToken().Position.Line, len(list.Values)) {
		return
	}
	for i, value := range list.Values {
		inner := path.Entry(i)
		s.lines.note(inner, firstLine(value))
		s.check(value, want.Elem(), inner)
	}
}

func (s *shape) scalar(node ast.Node, path Path) {
	switch node.(type) {
	case *ast.StringNode, *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.LiteralNode, *ast.InfinityNode,
		*ast.NanNode:
		s.withinText(path, node.GetToken().Position.Line, Written(node))
	default:
		s.fault(path, node.GetToken().Position.Line, WrongShape, "%s should be a single value, but is %s",
			"%s ist ein einzelner Wert; hier steht %s", s.place(path),
			kind(node))
	}
}

// firstLine of a node: of a mapping, that of its first key.
func firstLine(node ast.Node) int {
	if mapping, ok := pairs(node); ok && len(mapping) > 0 {
		node = mapping[0].Key
	}
	return node.GetToken().Position.Line
}

// pairs returns the keys and values of a mapping; the reader gives a mapping
// of one key a node type of its own.
func pairs(node ast.Node) ([]*ast.MappingValueNode, bool) {
	switch n := node.(type) {
	case *ast.MappingNode:
		return n.Values, true
	case *ast.MappingValueNode:
		return []*ast.MappingValueNode{n}, true
	}
	return nil, false
}

// keys returns the keys of a struct with the types of their values.
func keys(want reflect.Type) map[string]reflect.Type {
	out := map[string]reflect.Type{}
	if want.Kind() != reflect.Struct {
		return out
	}
	for i := range want.NumField() {
		if key := want.Field(i).Tag.Get("yaml"); key != "" {
			out[key] = want.Field(i).Type
		}
	}
	return out
}

// Names returns the keys of a struct in the order of its fields.
func Names(want reflect.Type) []string {
	var out []string
	for i := range want.NumField() {
		if key := want.Field(i).Tag.Get("yaml"); key != "" {
			out = append(out, key)
		}
	}
	return out
}

func kind(node ast.Node) language.Sentence {
	switch node.(type) {
	case *ast.SequenceNode:
		return language.Say("a list", "eine Liste")
	case *ast.MappingNode, *ast.MappingValueNode:
		return language.Say("a set of keys", "eine Reihe von Schlüsseln")
	case *ast.AnchorNode, *ast.AliasNode, *ast.TagNode, *ast.MergeKeyNode:
		return language.Say("a YAML anchor, alias or tag, which a file of ours does not use",
			"ein Anker, Alias oder Tag von YAML, den unsere Dateien nicht haben")
	}
	return language.Say("the single value %q", "der einzelne Wert %q", Written(node))
}
