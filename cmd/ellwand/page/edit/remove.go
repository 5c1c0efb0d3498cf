package edit

import (
	"strings"

	"go.yaml.in/yaml/v3"
)

// remove what stands at a place, with its key and the comment behind it; comments on
// lines of their own stay.
func (d *document) remove(at place) string {
	if at.in.Style&yaml.FlowStyle != 0 {
		return d.removeFromFlow(at)
	}
	first := at.value
	if at.key != nil {
		first = at.key
	}
	from, to := d.begin(first), d.end(at.value)
	line := d.startOfLine(from)
	if at.key == nil {
		from = line + strings.LastIndexByte(d.text[line:from], '-')
	}
	lead := d.text[line:from]
	next := d.after(d.endOfLine(to))
	if strings.TrimSpace(lead) == "" {
		return d.splice(line, next, "")
	}
	return d.removeBesideDash(at, line, from, next)
}

// removeBesideDash removes the first key of an entry: the next one takes its place.
// Comments between the two move above the entry.
func (d *document) removeBesideDash(at place, line, from, next int) string {
	if at.key == nil || at.at+2 >= len(at.in.Content) {
		return d.splice(from, next, "")
	}
	follows := d.begin(at.in.Content[at.at+2])
	between := d.text[next:d.startOfLine(follows)]
	dash := strings.Repeat(" ", indentOf(d.text[line:from]))
	var comments strings.Builder
	for _, comment := range strings.SplitAfter(between, "\n") {
		if strings.TrimSpace(comment) != "" {
			comments.WriteString(dash + strings.TrimLeft(comment, " "))
		}
	}
	return d.text[:line] + comments.String() + d.text[line:from] + d.text[follows:]
}

func (d *document) removeFromFlow(at place) string {
	size := 1
	first := at.value
	if at.key != nil {
		size, first = 2, at.key
	}
	from, to := d.begin(first), d.end(at.value)
	switch {
	case at.at+size < len(at.in.Content):
		to = d.begin(at.in.Content[at.at+size])
	case at.at > 0:
		from = d.end(at.in.Content[at.at-1])
	}
	return d.splice(from, to, "")
}
