package edit

import (
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"ellwand/cmd/ellwand/strict"
)

// Order gives the keys that may stand in the mapping at a path, in their order.
type Order func(path strict.Path) []string

// set a value at a path.
func (d *document) set(path strict.Path, value Value, keys Order) (string, error) {
	if at, found := d.locate(path); found && len(path) > 0 {
		return d.replace(at, value), nil
	}
	for i := len(path) - 1; i >= 0; i-- {
		above, found := d.locate(path[:i])
		if !found {
			continue
		}
		nested, ok := within(path[i+1:], value)
		if !ok {
			return "", ErrNoPlace
		}
		var order []string
		if keys != nil {
			order = keys(path[:i])
		}
		return d.add(above, path[i], nested, order)
	}
	return "", ErrNoPlace
}

// within nests a value in the keys and first entries of a path.
func within(path strict.Path, value Value) (Value, bool) {
	for i := len(path) - 1; i >= 0; i-- {
		switch step := path[i]; {
		case step.Key != "":
			value = Value{Keys: []Pair{{step.Key, value}}}
		case step.Index == 0:
			value = Value{List: []Value{value}}
		default:
			return value, false
		}
	}
	return value, true
}

// replace what stands at a place.
func (d *document) replace(at place, value Value) string {
	from, to := d.begin(at.value), d.end(at.value)
	inFlow := at.in.Style&yaml.FlowStyle != 0
	switch {
	case inFlow:
		return d.splice(from, to, space(at.value)+value.flow())
	case value.isText() && at.value.Kind == yaml.ScalarNode && at.value.Style&(yaml.LiteralStyle|yaml.FoldedStyle) == 0:
		return d.splice(from, to, space(at.value)+scalar(value.Text, false))
	case at.key == nil:
		indent := at.value.Column - 1
		return d.splice(from, to, strings.TrimPrefix(value.entry(indent-2, d.ending), "- "))
	}
	colon := d.end(at.key)
	colon += strings.IndexByte(d.text[colon:], ':') + 1
	return d.splice(colon, to, value.behind(at.key.Column-1+2, d.ending))
}

// scalarAt is a single value as it is written at a place.
func (d *document) scalarAt(at place, value Value) string {
	return space(at.value) + scalar(value.Text, at.in != nil && at.in.Style&yaml.FlowStyle != 0)
}

// space before a value that is written where none stands.
func space(n *yaml.Node) string {
	if n.Kind == yaml.ScalarNode && n.Value == "" && n.Style == 0 {
		return " "
	}
	return ""
}

// add a key or an entry to what stands at a place.
func (d *document) add(above place, step strict.Step, value Value, order []string) (string, error) {
	in := above.value
	switch {
	case in == nil && step.Key != "":
		text := d.text
		if text != "" && !strings.HasSuffix(text, "\n") {
			text += d.ending
		}
		return text + Pair{step.Key, value}.line(0, d.ending) + d.ending, nil
	case in == nil:
		return "", ErrNoPlace
	case in.Kind == yaml.ScalarNode && in.Tag == "!!null" && above.in != nil:
		nested, ok := within(strict.Path{step}, value)
		if !ok {
			return "", ErrNoPlace
		}
		return d.replace(above, nested), nil
	case step.Key != "" && in.Kind == yaml.MappingNode:
		return d.addKey(above, Pair{step.Key, value}, order), nil
	case step.Key == "" && in.Kind == yaml.SequenceNode && step.Index == len(in.Content):
		return d.addEntry(above, value), nil
	}
	return "", ErrNoPlace
}

func (d *document) addKey(above place, pair Pair, order []string) string {
	in := above.value
	if in.Style&yaml.FlowStyle != 0 {
		if len(in.Content) == 0 && above.in != nil && above.in.Style&yaml.FlowStyle == 0 && above.key != nil {
			return d.replace(above, Value{Keys: []Pair{pair}})
		}
		return d.addInFlow(in, scalar(pair.Key, true)+": "+pair.Value.flow())
	}
	indent := in.Content[0].Column - 1
	if last := before(in, pair.Key, order); last >= 0 {
		end := d.endOfLine(d.end(in.Content[last+1]))
		return d.splice(end, end, d.ending+strings.Repeat(" ", indent)+pair.line(indent, d.ending))
	}
	from := d.begin(in.Content[0])
	return d.splice(from, from, pair.line(indent, d.ending)+d.ending+strings.Repeat(" ", indent))
}

// before is the index of the key of a mapping that another one is to follow; -1 where it
// goes first.
func before(in *yaml.Node, key string, order []string) int {
	rank := slices.Index(order, key)
	if rank < 0 {
		return len(in.Content) - 2
	}
	out := -1
	for i := 0; i < len(in.Content); i += 2 {
		if other := slices.Index(order, in.Content[i].Value); other <= rank {
			out = i
		}
	}
	return out
}

func (d *document) addInFlow(in *yaml.Node, text string) string {
	if len(in.Content) > 0 {
		end := d.end(in.Content[len(in.Content)-1])
		return d.splice(end, end, ", "+text)
	}
	from := d.begin(in) + 1
	return d.splice(from, from, text)
}

func (d *document) addEntry(above place, value Value) string {
	in := above.value
	if in.Style&yaml.FlowStyle != 0 {
		if len(in.Content) == 0 && above.in != nil && above.in.Style&yaml.FlowStyle == 0 && above.key != nil {
			return d.replace(above, Value{List: []Value{value}})
		}
		return d.addInFlow(in, value.flow())
	}
	end := d.endOfLine(d.end(in.Content[len(in.Content)-1]))
	indent := in.Column - 1
	return d.splice(end, end, d.ending+strings.Repeat(" ", indent)+value.entry(indent, d.ending))
}
