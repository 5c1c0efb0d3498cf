package edit

import (
	"fmt"
	"maps"
	"reflect"
	"slices"

	"go.yaml.in/yaml/v3"

	"ellwand/cmd/ellwand/strict"
)

// plain is a value as a tree of maps, lists and texts.
func (v Value) plain() any {
	switch {
	case v.Keys != nil:
		out := map[string]any{}
		for _, pair := range v.Keys {
			out[pair.Key] = pair.Value.plain()
		}
		return out
	case v.List != nil:
		out := make([]any, len(v.List))
		for i, one := range v.List {
			out[i] = one.plain()
		}
		return out
	}
	return v.Text
}

// texts makes texts of the single values of a tree, so that trees can be compared: what
// a number or a yes is to YAML does not matter to a file whose values are texts.
func texts(tree any) any {
	switch t := tree.(type) {
	case map[string]any:
		for key, value := range t {
			t[key] = texts(value)
		}
		return t
	case map[any]any:
		out := map[string]any{}
		for key, value := range t {
			out[fmt.Sprint(key)] = texts(value)
		}
		return out
	case []any:
		for i, value := range t {
			t[i] = texts(value)
		}
		return t
	case nil:
		return nil
	}
	return fmt.Sprint(tree)
}

// same compares two trees. A number that is written otherwise is the same.
func same(a, b any) bool {
	switch left := a.(type) {
	case map[string]any:
		right, ok := b.(map[string]any)
		return ok && maps.EqualFunc(left, right, same)
	case []any:
		right, ok := b.([]any)
		return ok && slices.EqualFunc(left, right, same)
	case string:
		right, ok := b.(string)
		return ok && (left == right || read(left) == read(right))
	}
	return reflect.DeepEqual(a, b)
}

// withValue is a tree with a value at a path; false where something else stands above it.
func withValue(tree any, path strict.Path, value any) (any, bool) {
	if len(path) == 0 {
		return value, true
	}
	step := path[0]
	if step.Key != "" {
		keys, ok := tree.(map[string]any)
		if !ok && tree != nil {
			return nil, false
		}
		if keys == nil {
			keys = map[string]any{}
		}
		inner, ok := withValue(keys[step.Key], path[1:], value)
		keys[step.Key] = inner
		return keys, ok
	}
	list, ok := tree.([]any)
	if !ok && tree != nil || step.Index > len(list) {
		return nil, false
	}
	if step.Index == len(list) {
		list = append(list, nil)
	}
	inner, ok := withValue(list[step.Index], path[1:], value)
	list[step.Index] = inner
	return list, ok
}

// withoutValue is a tree without the value at a path, which stands in it.
func withoutValue(tree any, path strict.Path) any {
	step := path[0]
	switch t := tree.(type) {
	case map[string]any:
		if len(path) == 1 {
			delete(t, step.Key)
		} else {
			t[step.Key] = withoutValue(t[step.Key], path[1:])
		}
	case []any:
		if len(path) == 1 {
			return slices.Delete(t, step.Index, step.Index+1)
		}
		t[step.Index] = withoutValue(t[step.Index], path[1:])
	}
	return tree
}

// read is a text as a YAML reader takes it for a value, and writes it again.
func read(text string) string {
	var value any
	if err := yaml.Unmarshal([]byte(text), &value); err != nil {
		return text
	}
	plain, _ := texts(value).(string)
	return plain
}
