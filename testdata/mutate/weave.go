package main

import (
	"cmp"
	"slices"
	"strings"
)

// stitch is a text put into another at a place, in the stead of what stands until
// another one.
type stitch struct {
	at, until int
	text      string
	// Where several are at one place: first what closes a bracket, the inner one first,
	// then what opens one, the outer one first, then what replaces.
	kind, depth, number int
}

// weave puts all edits of a file into its text. Edits are within each other or apart.
func weave(source string, edits []edit) string {
	var stitches []stitch
	for i, e := range edits {
		stitches = append(stitches,
			stitch{e.to, e.to, e.behind, 0, -e.from, -i},
			stitch{e.from, e.from, e.before, 1, -e.to, i})
		if e.until > e.at {
			stitches = append(stitches, stitch{e.at, e.until, e.operator, 2, 0, 0})
		}
	}
	slices.SortFunc(stitches, func(a, b stitch) int {
		return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(a.kind, b.kind), cmp.Compare(a.depth, b.depth),
			cmp.Compare(a.number, b.number))
	})
	var out strings.Builder
	done := 0
	for _, s := range stitches {
		out.WriteString(source[done:s.at])
		out.WriteString(s.text)
		done = s.until
	}
	out.WriteString(source[done:])
	return out.String()
}
