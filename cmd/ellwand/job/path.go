package job

import (
	"fmt"
	"strings"
)

// Path leads from the top of a job file to a value in it, by keys and by the
// entries of lists. The empty one is the whole file.
type Path []Step

// Step is a key of a mapping, or when the key is empty an entry of a list.
type Step struct {
	Key   string
	Index int // from 0
}

// top is the path of a key at the top.
func top(key string) Path { return Path{}.Key(key) }

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

// place names the path for a reader: "the job", "cloths, entry 1: width".
func (p Path) place() string {
	if len(p) == 0 {
		return "the job"
	}
	var out []string
	for _, step := range p {
		if step.Key == "" {
			out[len(out)-1] += fmt.Sprintf(", entry %d", step.Index+1)
			continue
		}
		out = append(out, step.Key)
	}
	return strings.Join(out, ": ")
}

// lines of a file by path.
type lines struct {
	of   map[string]int
	keys map[string][]Path // that stand inside a path, in the order of the file
}

func newLines() lines { return lines{of: map[string]int{}, keys: map[string][]Path{}} }

// id tells paths apart, whatever their keys hold.
func (p Path) id() string {
	var out strings.Builder
	for _, step := range p {
		fmt.Fprintf(&out, "%q%d", step.Key, step.Index)
	}
	return out.String()
}

// note the line of a path.
func (l lines) note(p Path, line int) {
	l.of[p.id()] = line
	if len(p) > 0 {
		above := p[:len(p)-1].id()
		l.keys[above] = append(l.keys[above], p)
	}
}

// has says that a path itself stands in the file.
func (l lines) has(p Path) bool { _, found := l.of[p.id()]; return found }

// line of a path, or of the nearest one above it that stands in the file.
func (l lines) line(p Path) int {
	for {
		if line, found := l.of[p.id()]; found {
			return line
		}
		if len(p) == 0 {
			return 0
		}
		p = p[:len(p)-1]
	}
}
