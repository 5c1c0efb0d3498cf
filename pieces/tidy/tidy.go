// Package tidy makes out the pattern in a drawing as people draw them: sheets that go
// beside each other, dashes drawn stroke by stroke, lines that several sizes share,
// words drawn as outlines, a square to check the print by.
package tidy

import (
	"cmp"
	"fmt"
	"slices"

	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// usualGap, mm, up to which ends of lines are joined [source.OwnChoice].
const usualGap = 0.5

// Drawing of the lines of a file: the part that the view of the options says, joined to
// outlines. The errors are *linework.Fault; of files that hold too much
// *found.TooMuch.
func Drawing(from linework.Drawing, o found.Options) (found.Drawing, error) {
	from, notes := scale(from, o.View)
	d, err := plane(from, o.View)
	if err != nil {
		return found.Drawing{}, err
	}
	d.notes = append(notes, d.notes...)
	d.Lines = withoutLettering(d.Lines)
	if len(d.Lines) == 0 {
		return found.Drawing{}, &linework.Fault{Of: linework.NoLines}
	}
	lines, joined := dashes(d.Lines)
	if joined > 0 {
		d.notes = append(d.notes, found.Note{Kind: found.DashesJoined, Count: joined})
	}
	all, of := kinds(lines)
	if err := choose(all, of, lines, o.View); err != nil {
		return found.Drawing{}, err
	}
	chosen, taken := taken(lines, all, of, gapOf(o))
	if taken > 0 {
		d.notes = append(d.notes, found.Note{Kind: found.SharedTaken, Count: taken})
	}
	if n := chosenKinds(all); n > 1 && len(o.View.Lines)+len(o.View.Layers) == 0 {
		d.notes = append(d.notes, found.Note{Kind: found.KindsMixed, Count: n})
	}
	out, err := drawn(chosen, d, o)
	count(out.Pieces)
	out.Overview = &found.Overview{Kinds: all, Sheets: d.sheets}
	return out, err
}

func gapOf(o found.Options) float64 {
	if o.Gap > 0 {
		return o.Gap
	}
	return usualGap
}

func chosenKinds(all []found.LineKind) int {
	n := 0
	for _, k := range all {
		if k.Chosen {
			n++
		}
	}
	return n
}

// taken are the lines of the kinds that are chosen, those of each joined at their ends,
// and completed by what they share with others.
func taken(lines []linework.Line, all []found.LineKind, of []int, gap float64) ([]linework.Line, int) {
	open := make([][]linework.Line, len(all))
	var chosen, others []linework.Line
	add := func(k int, l ...linework.Line) {
		if all[k].Chosen {
			chosen = append(chosen, l...)
		} else if all[k].Colour != "" {
			others = append(others, l...)
		}
	}
	for i, l := range lines {
		if l.Closed {
			add(of[i], l) // in the order of the file
		} else {
			open[of[i]] = append(open[of[i]], l)
		}
	}
	for k := range all {
		add(k, chains(open[k], gap)...)
	}
	return shared(chosen, others)
}

// drawn joins the lines to outlines: all together, or each group by itself.
func drawn(lines []linework.Line, d placed, o found.Options) (found.Drawing, error) {
	if !o.View.ByGroup {
		lines = namedByGroup(lines, d.Groups)
		out, err := sheetOf(lines, d.Words, "").Drawing(o)
		out.Notes = append(d.notes, out.Notes...)
		return out, err
	}
	out := found.Drawing{Notes: d.notes}
	var order []int
	for _, l := range lines {
		if !slices.Contains(order, l.Group) {
			order = append(order, l.Group)
		}
	}
	for _, g := range order {
		in := slices.DeleteFunc(slices.Clone(lines), func(l linework.Line) bool { return l.Group != g })
		words := slices.DeleteFunc(slices.Clone(d.Words), func(w linework.Words) bool { return w.Group != g })
		one, err := sheetOf(in, words, groupName(d.Groups, g)).Drawing(o)
		if err != nil {
			return out, err
		}
		for _, n := range one.Notes {
			if n.Piece > 0 {
				n.Piece += len(out.Pieces)
			}
			out.Notes = append(out.Notes, n)
		}
		out.Pieces = append(out.Pieces, one.Pieces...)
	}
	return out, o.Limits.Check(found.Outlines, len(out.Pieces))
}

// namedByGroup gives the longest closed line of a group the name of the group, where all
// others of it lie inside that line: the group is one piece.
func namedByGroup(lines []linework.Line, groups []linework.Group) []linework.Line {
	longest := map[int]int{}
	for i, l := range lines {
		if l.Group < 0 || !l.Closed {
			continue
		}
		at, ok := longest[l.Group]
		if !ok || l.Path.Length() > lines[at].Path.Length() {
			longest[l.Group] = i
		}
	}
	out := slices.Clone(lines)
	for g, i := range longest {
		box := lines[i].Path.Flatten(1).Bound().Pad(1)
		alone := !slices.ContainsFunc(lines, func(l linework.Line) bool {
			return l.Group == g && l.Closed && !geometry.Holds(box, l.Path.Flatten(1).Bound())
		})
		if alone && linework.Given(out[i].Name) == "" {
			out[i].Name = groupName(groups, g)
		}
	}
	return out
}

func groupName(groups []linework.Group, g int) string {
	for ; g >= 0; g = groups[g].Parent {
		if name := linework.Given(groups[g].Name); name != "" {
			return name
		}
	}
	return ""
}

// sheetOf lines and words; the longest closed line has the name of the group, if it has
// none of its own.
func sheetOf(lines []linework.Line, words []linework.Words, name string) found.LooseLines {
	out := found.LooseLines{}
	longest, at := 0.0, -1
	for i, l := range lines {
		stroke := found.Stroke{Path: l.Path, Name: linework.Given(l.Name)}
		if l.Closed { // it is joined to nothing, even where another lies on it
			stroke.Group = fmt.Sprint("closed ", i)
		}
		if length := l.Path.Length(); l.Closed && length > longest {
			longest, at = length, len(out.Strokes)
		}
		out.Strokes = append(out.Strokes, stroke)
	}
	if at >= 0 && out.Strokes[at].Name == "" {
		out.Strokes[at].Name = name
	}
	words = slices.Clone(words)
	slices.SortStableFunc(words, func(a, b linework.Words) int { // what says how many are cut names nothing
		return cmp.Compare(len(cut.FindString(a.Text)), len(cut.FindString(b.Text)))
	})
	for _, w := range words {
		out.Texts = append(out.Texts, found.Text{Words: w.Text, At: w.At, Height: w.Size})
	}
	return out
}
