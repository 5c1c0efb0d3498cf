package strict

import (
	"reflect"
	"slices"
	"strings"
)

// Mapping is a set of keys that stand together in a file.
type Mapping struct {
	// Place is where it stands: "cloths.repeat"; empty at the top of the file.
	Place string
	Keys  []Key
}

// Key is one key as the reference has it.
type Key struct {
	Name   string
	Needed bool
	// Value says what is written after it: "length", "list of texts"; Holds is the same
	// for programs.
	Value string
	Holds Holds
	// Words to choose from, the usual one first; empty where any value may stand.
	Words []string
	// Keys is the place of the mapping that stands below it; empty for others.
	Keys string
	Text string
}

// Holds is what is written after a key.
type Holds int

// What may be written after a key.
const (
	HoldsText Holds = iota
	HoldsLength
	HoldsCount
	HoldsYesNo
	HoldsWord
	// HoldsKeys: keys with values of their own, which the reference describes.
	HoldsKeys
	// HoldsEntries: a list of such keys.
	HoldsEntries
	// HoldsList: a list of single values.
	HoldsList
	// HoldsSeveral: a single value or keys.
	HoldsSeveral
)

// holds says what is written after a key of a type.
func holds(of reflect.Type) Holds {
	switch of {
	case reflect.TypeFor[Measure]():
		return HoldsLength
	case reflect.TypeFor[Count]():
		return HoldsCount
	case reflect.TypeFor[YesNo]():
		return HoldsYesNo
	}
	if of.Kind() == reflect.Pointer {
		of = of.Elem()
	}
	_, isShaped := reflect.Zero(of).Interface().(Shaped)
	_, isOptional := reflect.Zero(of).Interface().(Optional)
	_, isWorded := reflect.Zero(of).Interface().(Worded)
	switch {
	case isShaped || isOptional:
		return HoldsSeveral
	case of.Kind() == reflect.Struct || of.Kind() == reflect.Map:
		return HoldsKeys
	case of.Kind() == reflect.Slice && holds(of.Elem()) == HoldsKeys:
		return HoldsEntries
	case of.Kind() == reflect.Slice:
		return HoldsList
	case isWorded:
		return HoldsWord
	}
	return HoldsText
}

// Reference describes every key of a file, from the type that it is read into:
// mappings that stand higher first. One that may stand in several places is
// described once, at the first of them. Apart are types whose keys are described
// apart, with the place where that is.
func Reference(of reflect.Type, apart map[reflect.Type]string) []Mapping {
	var out []Mapping
	places := map[reflect.Type]string{}
	type waiting struct {
		place string
		of    reflect.Type
	}
	queue := []waiting{{"", of}}
	for len(queue) > 0 {
		next := queue[0]
		queue = queue[1:]
		mapping := Mapping{Place: next.place}
		for i := range next.of.NumField() {
			if next.of.Field(i).Tag.Get("yaml") == "" {
				continue
			}
			key, below := keyOf(next.of.Field(i))
			if place, is := apart[next.of.Field(i).Type]; is {
				key.Keys = place
			}
			if below != nil {
				place := strings.TrimPrefix(next.place+"."+key.Name, ".")
				if first, described := places[below]; described {
					place = first
				} else {
					places[below] = place
					queue = append(queue, waiting{place, below})
				}
				key.Keys = place
			}
			mapping.Keys = append(mapping.Keys, key)
		}
		out = append(out, mapping)
	}
	return out
}

// keyOf describes a field; below is the type of the keys below it, or nil.
func keyOf(field reflect.StructField) (key Key, below reflect.Type) {
	key = Key{
		Name:   field.Tag.Get("yaml"),
		Needed: slices.Contains(strings.Split(field.Tag.Get("jsonschema"), ","), "required"),
		Text:   DescriptionOf(field),
	}
	key.Value, key.Words, below = valueOf(field.Type)
	key.Holds = holds(field.Type)
	return key, below
}

// valueOf says in words what stands after a key.
func valueOf(of reflect.Type) (value string, words []string, below reflect.Type) {
	switch of {
	case reflect.TypeFor[Text]():
		return "text", nil, nil
	case reflect.TypeFor[Measure]():
		return "length", nil, nil
	case reflect.TypeFor[Count]():
		return "whole number", nil, nil
	case reflect.TypeFor[YesNo]():
		return "yes or no", nil, nil
	}
	if of.Kind() == reflect.Pointer {
		return valueOf(of.Elem())
	}
	if several, ok := reflect.Zero(of).Interface().(Shaped); ok {
		return valueOfShapes(several.Shapes())
	}
	switch of.Kind() {
	case reflect.Struct:
		return "keys", nil, of
	case reflect.Map:
		value, _, _ := valueOf(of.Elem())
		return "keys with a " + value + " each", nil, nil
	case reflect.Slice:
		value, _, below := valueOf(of.Elem())
		if below != nil {
			return "list of entries", nil, below
		}
		first, rest, _ := strings.Cut(value, " ")
		return strings.TrimSpace("list of " + first + "s " + rest), nil, nil
	}
	if choice, ok := reflect.Zero(of).Interface().(Worded); ok {
		return "word", choice.Words(), nil
	}
	return "text", nil, nil
}

// valueOfShapes names each shape of a value.
func valueOfShapes(all []reflect.Type) (value string, words []string, below reflect.Type) {
	var values []string
	for _, one := range all {
		value, _, keys := valueOf(one)
		values = append(values, value)
		if keys != nil {
			below = keys
		}
	}
	return strings.Join(values, ", or "), nil, below
}
