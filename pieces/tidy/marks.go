package tidy

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// upright and level lines that stand at the same place of several sheets are frames or
// trim marks, not the pattern.

const (
	// near, mm, is how near two places are the same on two sheets [source.OwnChoice].
	near = 0.4
	// shortestMark, mm, of a frame or a trim mark [source.OwnChoice].
	shortestMark = 2.0
	// mostPlaces of lines across the sheets that are looked at, each way.
	mostPlaces = 10 // [source.OwnChoice]
)

// place is a coordinate at which lines stand on several sheets.
type place struct {
	at     float64
	sheets int
	length float64 // of all of them
}

// straight is a level or upright line of a sheet.
type straight struct {
	page     int
	at       float64
	from, to float64
}

// straights of all sheets that run along an axis: 0 for level ones, whose place is
// their y; 1 for upright ones.
func straights(lines []linework.Line, axis int) []straight {
	var out []straight
	for _, line := range lines {
		for _, c := range line.Path {
			l, ok := c.(pieces.Line)
			if !ok || math.Abs(l.From[1-axis]-l.To[1-axis]) > 0.02 {
				continue
			}
			from, to := l.From[axis], l.To[axis]
			if math.Abs(to-from) >= shortestMark {
				out = append(out, straight{line.Page, (l.From[1-axis] + l.To[1-axis]) / 2, min(from, to), max(from, to)})
			}
		}
	}
	return out
}

// places at which lines along an axis stand on at least so many sheets, those first
// that are longest.
func places(all []straight, sheets int) []place {
	slices.SortStableFunc(all, func(a, b straight) int { return cmp.Compare(a.at, b.at) })
	var out []place
	for i := 0; i < len(all); {
		first := i
		seen := map[int]bool{}
		sum, length := 0.0, 0.0
		for ; i < len(all) && all[i].at-all[first].at <= near; i++ {
			seen[all[i].page] = true
			sum += all[i].at
			length += all[i].to - all[i].from
		}
		if len(seen) >= sheets {
			out = append(out, place{sum / float64(i-first), len(seen), length})
		}
	}
	slices.SortStableFunc(out, func(a, b place) int { return -cmp.Compare(a.length, b.length) })
	return out
}

// isOn says that a line runs along the sides of a cell, or of those beside it.
func isOn(line linework.Line, cell orb.Bound, overlap float64) bool {
	for _, c := range line.Path {
		l, ok := c.(pieces.Line)
		if !ok {
			return false
		}
		on := false
		for axis := range 2 {
			low, high := cell.Min[1-axis], cell.Max[1-axis]
			for _, at := range [4]float64{low, high, low + overlap, high - overlap} {
				on = on || math.Abs(l.From[1-axis]-at) <= near && math.Abs(l.To[1-axis]-l.From[1-axis]) <= 0.02
			}
		}
		if !on {
			return false
		}
	}
	return true
}

// withoutFurniture leaves out lines that stand at the same place of most sheets, and do not cross the
// whole sheet: frames, marks, a name in outlines.
func withoutFurniture(d linework.Drawing, sheets int) []linework.Line {
	type spot [6]int
	spotOf := func(l linework.Line) spot {
		from, to := l.Ends()
		middle := l.Path.At(l.Path.Length() / 2)
		var out spot
		for i, x := range [6]float64{from[0], from[1], to[0], to[1], middle[0], middle[1]} {
			out[i] = int(math.Round(x * 5))
		}
		return out
	}
	most := max(2, (sheets*3+4)/5)
	pages := map[spot]map[int]bool{}
	for _, l := range d.Lines {
		k := spotOf(l)
		if pages[k] == nil {
			pages[k] = map[int]bool{}
		}
		pages[k][l.Page] = true
	}
	return slices.DeleteFunc(slices.Clone(d.Lines), func(l linework.Line) bool {
		return len(pages[spotOf(l)]) >= most && (l.Closed || !crosses(l, d.Pages[l.Page].Box))
	})
}

// crosses says that a line goes over most of a sheet.
func crosses(l linework.Line, paper orb.Bound) bool {
	box := l.Path.Flatten(1).Bound()
	most := func(axis int) bool {
		return box.Max[axis]-box.Min[axis] > 0.7*(paper.Max[axis]-paper.Min[axis])
	}
	return most(0) || most(1)
}

// ownWords leaves out words that stand at the same place of most sheets, whatever they
// are: the labels of the sheets.
func ownWords(words []linework.Words, sheets int) []linework.Words {
	spotOf := func(w linework.Words) [2]int { return [2]int{int(math.Round(w.At[0])), int(math.Round(w.At[1]))} }
	pages := map[[2]int]map[int]bool{}
	for _, w := range words {
		k := spotOf(w)
		if pages[k] == nil {
			pages[k] = map[int]bool{}
		}
		pages[k][w.Page] = true
	}
	most := max(2, (sheets*2+4)/5)
	return slices.DeleteFunc(slices.Clone(words), func(w linework.Words) bool { return len(pages[spotOf(w)]) >= most })
}
