package job

import (
	"fmt"
	"reflect"
	"strings"

	"github.com/goccy/go-yaml/ast"
)

// shape compares the nodes of a file with the types of File: every key known,
// every value of the right kind. It notes the line of every value by its path,
// for what Resolve has to say later.
type shape struct {
	faults *Faults
	lines  map[string]int
}

// check walks one node. The path is empty at the top: "cloths[0].width".
func (s *shape) check(node ast.Node, want reflect.Type, path string) {
	if want.Kind() == reflect.Pointer {
		want = want.Elem()
	}
	line := node.GetToken().Position.Line
	if _, empty := node.(*ast.NullNode); empty {
		if want.Kind() == reflect.Struct && path != "" {
			s.faults.add(line, "%s has no value: write {} after the colon for the usual one, or indent its keys below it", place(path))
			return
		}
		s.faults.add(line, "%s has no value: give one or remove the line", place(path))
		return
	}
	switch want.Kind() {
	case reflect.Struct, reflect.Map:
		s.mapping(node, want, path)
	case reflect.Slice:
		s.sequence(node, want, path)
	default:
		s.scalar(node, path)
	}
}

func (s *shape) mapping(node ast.Node, want reflect.Type, path string) {
	values, ok := pairs(node)
	if !ok {
		s.faults.add(node.GetToken().Position.Line, "%s should hold keys with values, but is %s; %s", place(path), kind(node), asMapping(node, want))
		return
	}
	known := keys(want)
	for _, pair := range values {
		key := written(pair.Key)
		line := pair.Key.GetToken().Position.Line
		inner := key
		if path != "" {
			inner = path + "." + key
		}
		s.lines[inner] = line
		if want.Kind() == reflect.Map {
			s.check(pair.Value, want.Elem(), inner)
			continue
		}
		field, found := known[key]
		if !found {
			s.faults.add(line, "unknown key %q in %s; %s", key, place(path), hint(key, names(want)))
			continue
		}
		s.check(pair.Value, field, inner)
	}
}

// asMapping says how to write what stands where keys should be: a single value
// is most likely meant for the first key.
func asMapping(node ast.Node, want reflect.Type) string {
	switch node.(type) {
	case *ast.StringNode, *ast.IntegerNode, *ast.FloatNode:
		if want.Kind() == reflect.Struct && want != reflect.TypeFor[File]() {
			return fmt.Sprintf("write {%s: %s}", names(want)[0], written(node))
		}
	}
	return "write each key on a line of its own, indented below it"
}

func (s *shape) sequence(node ast.Node, want reflect.Type, path string) {
	list, ok := node.(*ast.SequenceNode)
	if !ok {
		s.faults.add(node.GetToken().Position.Line, "%s should be a list, each entry after a dash (or [a, b]), but is %s", place(path), kind(node))
		return
	}
	for i, value := range list.Values {
		inner := fmt.Sprintf("%s[%d]", path, i)
		s.lines[inner] = value.GetToken().Position.Line
		if mapping, ok := pairs(value); ok && len(mapping) > 0 {
			s.lines[inner] = mapping[0].Key.GetToken().Position.Line
		}
		s.check(value, want.Elem(), inner)
	}
}

func (s *shape) scalar(node ast.Node, path string) {
	switch node.(type) {
	case *ast.StringNode, *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.LiteralNode, *ast.InfinityNode, *ast.NanNode:
	default:
		s.faults.add(node.GetToken().Position.Line, "%s should be a single value, but is %s", place(path), kind(node))
	}
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

// names returns the keys of a struct in the order of its fields.
func names(want reflect.Type) []string {
	var out []string
	for i := range want.NumField() {
		if key := want.Field(i).Tag.Get("yaml"); key != "" {
			out = append(out, key)
		}
	}
	return out
}

// place names a path for a reader: "the job", "cloths[0].width" as "width of
// cloth 1".
func place(path string) string {
	if path == "" {
		return "the job"
	}
	parts := strings.Split(path, ".")
	for i, part := range parts {
		name, index, found := strings.Cut(strings.TrimSuffix(part, "]"), "[")
		if !found {
			continue
		}
		var n int
		fmt.Sscanf(index, "%d", &n)
		parts[i] = fmt.Sprintf("%s, entry %d", name, n+1)
	}
	return strings.Join(parts, ": ")
}

func kind(node ast.Node) string {
	switch node.(type) {
	case *ast.SequenceNode:
		return "a list"
	case *ast.MappingNode, *ast.MappingValueNode:
		return "a set of keys"
	case *ast.AnchorNode, *ast.AliasNode, *ast.TagNode, *ast.MergeKeyNode:
		return "a YAML anchor, alias or tag, which a job file does not use"
	}
	return fmt.Sprintf("the single value %q", written(node))
}
