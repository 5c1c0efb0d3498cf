package found

import (
	"encoding/binary"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Drawing joins the lines of the sheet to outlines: the outer boundary of what hangs
// together in a group. What lies in an outline is what is inside its piece. The errors
// are *TooMuch.
func (s LooseLines) Drawing(o Options) (Drawing, error) {
	out := Drawing{Title: s.Title, Notes: slices.Clone(s.Notes)}
	strokes, twice := distinct(s.Strokes)
	out.note(LineTwice, twice, 0)
	var closed []closedLine
	var open []Stroke
	for _, group := range groups(strokes) {
		rings, rest, count, size := joined(group, o.gap())
		out.note(ClosedGap, count, size)
		closed, open = append(closed, rings...), append(open, rest...)
	}
	if err := o.Limits.Check(Outlines, len(closed)); err != nil {
		return out, err
	}
	nest(closed)
	at := out.addPieces(closed)
	out.addInner(closed, at)
	out.addOpen(closed, at, open)
	out.addPoints(closed, at, s.Points)
	out.addTexts(closed, at, s.Texts)
	return out, nil
}

// distinct strokes, those without a length left out, and how many were drawn twice.
func distinct(all []Stroke) (out []Stroke, twice int) {
	seen := map[string]bool{}
	for _, s := range all {
		if len(s.Path) == 0 || len(s.Path) == 1 && isEmpty(s.Path[0]) {
			continue
		}
		k := courseOf(s.Path)
		if seen[k] {
			twice++
			continue
		}
		seen[k] = true
		out = append(out, s)
	}
	return out, twice
}

// courseOf a line, the same in either direction: its points and the middles of its curves,
// rounded.
func courseOf(line pieces.Path) string {
	points := []orb.Point{line.Start()}
	for _, c := range line {
		points = append(points, c.At(0.5), c.End())
	}
	var forth, back []byte
	for i, p := range points {
		q := points[len(points)-1-i]
		for axis := range p {
			forth = binary.AppendVarint(forth, int64(math.Round(p[axis]/same)))
			back = binary.AppendVarint(back, int64(math.Round(q[axis]/same)))
		}
	}
	return min(string(forth), string(back))
}

// groups of the strokes, in the order in which they begin.
func groups(all []Stroke) [][]Stroke {
	at := map[string]int{}
	var out [][]Stroke
	for _, s := range all {
		i, ok := at[s.Group]
		if !ok {
			i = len(out)
			at[s.Group] = i
			out = append(out, nil)
		}
		out[i] = append(out[i], s)
	}
	return out
}

// joined strokes of a group: the outlines, and the strokes that are on none.
func joined(group []Stroke, gap float64) (closed []closedLine, rest []Stroke, count int, size float64) {
	lines := make([]pieces.Path, len(group))
	for i, s := range group {
		lines[i] = s.Path
	}
	g, count, size := newGraph(lines, gap)
	rings, on := g.outlines()
	for _, walk := range rings {
		c := closedLine{group: group[walk[0].line].Group, outer: -1}
		for _, w := range walk {
			c.path = append(c.path, g.path(w)...)
			if c.name == "" {
				c.name = group[w.line].Name
			}
		}
		c.path, _, _ = weld(c.path, true)
		c.measure()
		closed = append(closed, c)
	}
	for i, s := range group {
		if !on[i] {
			rest = append(rest, s)
		}
	}
	return closed, rest, count, size
}
