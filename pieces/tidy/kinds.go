package tidy

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// kind is how lines are drawn: those of one kind are taken or left together.
type kind struct {
	layer, colour, dashes string
	width                 int // in steps of 0.05 mm
	filled                bool
}

func kindOf(line linework.Line) kind {
	k := kind{layer: line.Layer, colour: line.Pen.Colour, width: int(math.Round(line.Pen.Width * 20))}
	if line.Pen.Colour == "" {
		return kind{layer: line.Layer, filled: true}
	}
	var texts []string
	for _, d := range line.Pen.Dashes {
		texts = append(texts, fmt.Sprintf("%.1f", d))
	}
	k.dashes = strings.Join(texts, " ")
	return k
}

// kinds of the lines, those first of which there is most; which lines belong to each.
func kinds(lines []linework.Line) (out []found.LineKind, of []int) {
	at := map[kind]int{}
	of = make([]int, len(lines))
	for i, line := range lines {
		k := kindOf(line)
		n, ok := at[k]
		if !ok {
			n = len(out)
			at[k] = n
			out = append(out, found.LineKind{Layer: line.Layer, Colour: line.Pen.Colour,
				Width: line.Pen.Width, Dashes: line.Pen.Dashes})
		}
		of[i] = n
		out[n].Lines = append(out[n].Lines, line.Path)
	}
	order := make([]int, len(out))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return -cmp.Compare(out[a].Length(), out[b].Length()) })
	sorted := make([]found.LineKind, len(out))
	rank := make([]int, len(out))
	for number, i := range order {
		sorted[number] = out[i]
		sorted[number].Number = number + 1
		rank[i] = number
	}
	for i := range of {
		of[i] = rank[of[i]]
	}
	return sorted, of
}

// choose marks the kinds that a view asks for; without any, all that are shown and are
// drawn as lines.
func choose(all []found.LineKind, of []int, lines []linework.Line, v found.View) error {
	for _, n := range v.Lines {
		if n < 1 || n > len(all) {
			return &linework.Fault{Of: linework.NoSuchLines, Number: n, Known: len(all)}
		}
		all[n-1].Chosen = true
	}
	for _, name := range v.Layers {
		known := false
		for i := range all {
			if strings.EqualFold(all[i].Layer, name) {
				all[i].Chosen, known = true, true
			}
		}
		if !known {
			return &linework.Fault{Of: linework.NoSuchLayer, Text: name, Names: layerNames(all)}
		}
	}
	if len(v.Lines)+len(v.Layers) > 0 {
		return nil
	}
	for i, line := range lines {
		if !line.Hidden && line.Pen.Colour != "" {
			all[of[i]].Chosen = true
		}
	}
	if !slices.ContainsFunc(all, func(k found.LineKind) bool { return k.Chosen }) {
		for i := range all { // nothing but filled areas, or hidden layers
			all[i].Chosen = true
		}
	}
	return nil
}

func layerNames(all []found.LineKind) []string {
	var names []string
	for _, k := range all {
		if k.Layer != "" && !slices.Contains(names, k.Layer) {
			names = append(names, k.Layer)
		}
	}
	return names
}

// withoutLettering leaves out areas of the size of letters that are filled without a
// line: words that were drawn as outlines.
func withoutLettering(lines []linework.Line) []linework.Line {
	const letter = 25 // mm [source.OwnChoice]
	return slices.DeleteFunc(slices.Clone(lines), func(l linework.Line) bool {
		if l.Pen.Colour != "" {
			return false
		}
		box := sizeOf(l.Path)
		return box[0] < letter && box[1] < letter
	})
}

// sizeOf is the width and the height of a path.
func sizeOf(path pieces.Path) [2]float64 {
	box := path.Flatten(0.5).Bound()
	return [2]float64{box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]}
}
