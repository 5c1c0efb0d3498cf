package tidy

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// placed is a drawing on one plane.
type placed struct {
	linework.Drawing
	sheets []found.PlacedSheet
	notes  []found.Note
}

// plane lays the sheets of a drawing on one plane: joined by their frames or trim marks
// where lines go on from one to another, else each by itself.
func plane(d linework.Drawing, v found.View) (placed, error) {
	pages, err := pagesOf(d, v)
	if err != nil {
		return placed{}, err
	}
	if len(pages) == 1 && v.Rows == nil {
		return placed{Drawing: only(d, pages)}, nil
	}
	used := only(d, pages)
	shared := severalOf(len(pages))
	levels, uprights := places(straights(used.Lines, 0), shared), places(straights(used.Lines, 1), shared)
	framed := framedPages(d, pages, levels, uprights)
	used.Lines = withoutFurniture(used, len(framed))
	if v.Rows != nil && v.OverlapSaid && (len(levels) < 2 || len(uprights) < 2) {
		return joinedBy(wholePaper(d, v), used, len(pages)), nil
	}
	if len(framed) > 1 {
		if t, ok := puzzle(used, framed, levels, uprights, v); ok {
			return joinedBy(t, used, len(framed)), nil
		}
	}
	if len(pages) <= fewSheets {
		if t, ok := fewJoined(used, pages, v); ok {
			if t.unsure && t.cell.Equal(d.Pages[pages[len(pages)-1]].Box) {
				return placed{}, &linework.Fault{Of: linework.OverlapUnsure, Text: t.inWords()}
			}
			return joinedBy(t, used, len(t.spots)), nil
		}
	}
	if v.Rows != nil {
		return joinedBy(wholePaper(d, v), used, len(pages)), nil
	}
	if n := cutOff(used); n > 0 {
		return placed{}, &linework.Fault{Of: linework.SheetsUnjoined, Number: n}
	}
	return apart(only(d, pages), pages), nil
}

// fewSheets are so few that each may have marks of its own alone [source.OwnChoice].
const fewSheets = 4

// fewJoined puts a few sheets together of which each has its own marks, or the rim of its
// paper where it has none. The first may be one of instructions.
func fewJoined(d linework.Drawing, pages []int, v found.View) (tiling, bool) {
	levels, uprights := places(straights(d.Lines, 0), 1), places(straights(d.Lines, 1), 1)
	paper := d.Pages[pages[len(pages)-1]].Box
	levels = append(levels[:min(len(levels), mostPlaces-2)], place{at: paper.Min[1]}, place{at: paper.Max[1]})
	uprights = append(uprights[:min(len(uprights), mostPlaces-2)], place{at: paper.Min[0]}, place{at: paper.Max[0]})
	for _, sheets := range [][]int{pages, pages[1:]} {
		if len(sheets) < 2 {
			break
		}
		if t, ok := puzzle(d, sheets, levels, uprights, v); ok {
			return t, true
		}
	}
	return tiling{}, false
}

// pagesOf the drawing that count, from 0.
func pagesOf(d linework.Drawing, v found.View) ([]int, error) {
	asked := v.Pages
	for _, row := range v.Rows {
		asked = append(asked[:len(asked):len(asked)], row...)
	}
	var out []int
	for _, page := range asked {
		if page > len(d.Pages) {
			return nil, &linework.Fault{Of: linework.NoSuchPage, Number: page, Known: len(d.Pages)}
		}
		if page > 0 && !slices.Contains(out, page-1) {
			out = append(out, page-1)
		}
	}
	if len(out) > 0 {
		slices.Sort(out)
		return out, nil
	}
	for page := range d.Pages {
		if slices.ContainsFunc(d.Lines, func(l linework.Line) bool { return l.Page == page }) {
			out = append(out, page)
		}
	}
	if len(out) == 0 {
		return nil, &linework.Fault{Of: linework.NoLines}
	}
	return out, nil
}

// only the lines and words of some pages.
func only(d linework.Drawing, pages []int) linework.Drawing {
	out := d
	out.Lines, out.Words = nil, nil
	for _, l := range d.Lines {
		if slices.Contains(pages, l.Page) {
			out.Lines = append(out.Lines, l)
		}
	}
	for _, w := range d.Words {
		if slices.Contains(pages, w.Page) {
			out.Words = append(out.Words, w)
		}
	}
	return out
}

// framedPages are those with a frame or marks on two sides at least, or a mark and a label:
// not one that only has instructions.
func framedPages(d linework.Drawing, pages []int, levels, uprights []place) []int {
	marks := map[int]map[int]bool{}
	for axis, all := range [2][]place{levels, uprights} {
		for _, s := range straights(d.Lines, axis) {
			for i, p := range all {
				if math.Abs(p.at-s.at) <= near {
					if marks[s.page] == nil {
						marks[s.page] = map[int]bool{}
					}
					marks[s.page][2*i+axis] = true
				}
			}
		}
	}
	var out []int
	for _, p := range pages {
		if len(marks[p]) >= 2 || len(marks[p]) == 1 && labelled(d.Words, []int{p}) != nil {
			out = append(out, p)
		}
	}
	return out
}

func joinedBy(t tiling, d linework.Drawing, many int) placed {
	out := placed{}
	d.Words = slices.DeleteFunc(ownWords(d.Words, many), func(w linework.Words) bool {
		_, isLabel := spotOf(strings.TrimSpace(w.Text))
		return isLabel
	})
	d.Lines = withoutFrames(d.Lines, t, many)
	out.Drawing, out.sheets = t.joined(d)
	out.notes = []found.Note{{Kind: found.Joined, Count: many, What: t.inWords(), Size: t.overlap}}
	return out
}

// withoutFrames leaves out what runs along the sides of the cells and is drawn so on
// several sheets; a line of the pattern that lies there is of another kind.
func withoutFrames(lines []linework.Line, t tiling, many int) []linework.Line {
	pages := map[kind]map[int]bool{}
	for _, l := range lines {
		if k := kindOf(l); isOn(l, t.cell, t.overlap) {
			if pages[k] == nil {
				pages[k] = map[int]bool{}
			}
			pages[k][l.Page] = true
		}
	}
	most := severalOf(many)
	return slices.DeleteFunc(lines, func(l linework.Line) bool {
		return len(pages[kindOf(l)]) >= most && isOn(l, t.cell, t.overlap)
	})
}

// severalOf sheets have a mark that those at the rim may lack.
func severalOf(sheets int) int { return max(2, (sheets*2+4)/5) }

// inWords lists the sheets as they lie, row by row: "1 2 3/4 5 6".
func (t tiling) inWords() string {
	pages := map[spot]int{}
	for page, s := range t.spots {
		pages[s] = page + 1
	}
	var rows []string
	for r := range t.rows {
		var row []string
		for c := range t.columns {
			row = append(row, fmt.Sprint(pages[spot{r, c}]))
		}
		rows = append(rows, strings.Join(row, " "))
	}
	return strings.Join(rows, "/")
}

// cutOff counts the open lines that end at the rim of their sheet.
func cutOff(d linework.Drawing) int {
	const rim = 12 // mm, that printers leave white [source.OwnChoice]
	n := 0
	for _, l := range d.Lines {
		if l.Closed || l.Path.Length() < 2*rim {
			continue
		}
		inner := d.Pages[l.Page].Box.Pad(-rim)
		if from, to := l.Ends(); !inner.Contains(from) || !inner.Contains(to) {
			n++
		}
	}
	return n
}

// apart lays sheets that do not go together under each other.
func apart(d linework.Drawing, pages []int) placed {
	out := placed{}
	y := 0.0
	moves := map[int]pieces.Motion{}
	for _, p := range pages {
		box := d.Pages[p].Box
		const between = 20 // mm [source.OwnChoice]
		y -= box.Max[1] - box.Min[1] + between
		moves[p] = pieces.Move(0, y)
		out.sheets = append(out.sheets, found.PlacedSheet{Page: p + 1, Box: orb.Bound{
			Min: moves[p].Apply(box.Min), Max: moves[p].Apply(box.Max)}})
	}
	for _, l := range d.Lines {
		l.Path = l.Path.Map(moves[l.Page])
		l.Page = 0
		out.Lines = append(out.Lines, l)
	}
	for _, w := range d.Words {
		w.At, w.Page = moves[w.Page].Apply(w.At), 0
		out.Words = append(out.Words, w)
	}
	return out
}
