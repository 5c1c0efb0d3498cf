package strict

import (
	"fmt"
	"strings"

	"ellwand/pieces/language"
)

// Path leads from the top of a file to a value in it, by keys and by the
// entries of lists. The empty one is the whole file.
type Path []Step

// Step is a key of a mapping, or when the key is empty an entry of a list.
type Step struct {
	Key   string
	Index int // from 0
}

// Top is the path of a key at the top.
func Top(key string) Path { return Path{}.Key(key) }

// Key is the path of a key inside.
func (p Path) Key(key string) Path { return append(p[:len(p):len(p)], Step{Key: key}) }

// Entry is the path of an entry of the list.
func (p Path) Entry(index int) Path { return append(p[:len(p):len(p)], Step{Index: index}) }

// String writes the path as programs do: "garments[0].sleeve.head_height".
func (p Path) String() string {
	var out strings.Builder
	for i, step := range p {
		switch {
		case step.Key == "":
			fmt.Fprintf(&out, "[%d]", step.Index)
		case i > 0:
			out.WriteString("." + step.Key)
		default:
			out.WriteString(step.Key)
		}
	}
	return out.String()
}

// Place names the path for a reader: "cloths, entry 1: width". The empty one is
// called by the name of the whole.
func (p Path) Place(whole language.Sentence) language.Sentence {
	if len(p) == 0 {
		return whole
	}
	var out []language.Sentence
	for _, step := range p {
		if step.Key == "" {
			out[len(out)-1] = language.Say("%s, entry %d", "%s, Eintrag %d", out[len(out)-1], step.Index+1)
			continue
		}
		out = append(out, language.Name(step.Key))
	}
	return language.Join(": ", out...)
}

// Lines of a file by path.
type Lines struct {
	of   map[string]int
	keys map[string][]Path // that stand inside a path, in the order of the file
	// measures are the paths of all lengths.
	measures *[]Path
}

func newLines() Lines {
	return Lines{of: map[string]int{}, keys: map[string][]Path{}, measures: &[]Path{}}
}

// ID tells paths apart, whatever their keys hold.
func (p Path) ID() string {
	var out strings.Builder
	for _, step := range p {
		fmt.Fprintf(&out, "%q%d", step.Key, step.Index)
	}
	return out.String()
}

// note the line of a path.
func (l Lines) note(p Path, line int) {
	l.of[p.ID()] = line
	if len(p) > 0 {
		above := p[:len(p)-1].ID()
		l.keys[above] = append(l.keys[above], p)
	}
}

// Has says that a path itself stands in the file.
func (l Lines) Has(p Path) bool { _, found := l.of[p.ID()]; return found }

// Of is the line of a path, or of the nearest one above it that stands in the
// file; 0 where there is no file.
func (l Lines) Of(p Path) int {
	for {
		if line, found := l.of[p.ID()]; found {
			return line
		}
		if len(p) == 0 {
			return 0
		}
		p = p[:len(p)-1]
	}
}

// Within are the paths of the keys that stand inside a path, in the order of the
// file.
func (l Lines) Within(p Path) []Path { return l.keys[p.ID()] }

// Measures are the paths of all lengths in the file, in its order.
func (l Lines) Measures() []Path {
	if l.measures == nil {
		return nil
	}
	return *l.measures
}
