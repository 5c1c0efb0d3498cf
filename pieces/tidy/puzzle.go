package tidy

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// usualOverlaps of sheets whose frames lie over each other, mm [source.CommonPractice].
var usualOverlaps = []float64{0, 5, 6.35, 10, 12.7, 15, 20, 25.4}

// leastAgree is how many lines must go on from sheet to sheet at least, so that how
// they lie is believed; mostDiffer the share of those that need not [source.OwnChoice].
const (
	leastAgree = 3
	mostDiffer = 0.35
)

// candidate is a tiling with how well its lines go on.
type candidate struct {
	tiling
	agree, differ int
}

func (c candidate) isPlausible() bool {
	return c.agree >= leastAgree && float64(c.differ) <= mostDiffer*float64(c.agree+c.differ)
}

func (c candidate) worth() int { return c.agree - c.differ }

// puzzle finds how sheets lie beside each other: of the cells that their frames and
// marks allow, and the orders that their labels or their numbers give, that in which
// the lines go on best from sheet to sheet. Not ok where none is plausible, or two that
// differ are as good.
func puzzle(d linework.Drawing, pages []int, levels, uprights []place, v found.View) (tiling, bool) {
	known := crossingsOf(d.Lines)
	overlaps := usualOverlaps
	if v.OverlapSaid {
		overlaps = []float64{v.Overlap}
	}
	var best, second candidate
	for _, cell := range cells(levels, uprights, d.Pages[pages[0]].Box) {
		for _, overlap := range overlaps {
			for _, spots := range orders(d, pages, v) {
				t := tiling{cell: cell, overlap: overlap, spots: spots}.sized()
				if across, down := t.step(); across <= 0 || down <= 0 {
					continue
				}
				c := candidate{tiling: t}
				c.agree, c.differ = known.score(t)
				if c.agree == best.agree && c.differ == best.differ && c.cell.Equal(best.cell) && sameOrder(c.spots, best.spots) {
					best.unsure = true
				}
				switch {
				case c.worth() > best.worth() || c.worth() == best.worth() && isFiner(c, best):
					if !sameOrder(c.spots, best.spots) {
						second = best
					}
					best = c
				case c.worth() > second.worth() && !sameOrder(c.spots, best.spots):
					second = c
				}
			}
		}
	}
	if v.Rows != nil && best.agree > 0 {
		return best.tiling, true // somebody says so
	}
	return best.tiling, best.isPlausible() && best.worth() > second.worth()
}

// isFiner of two tilings in which as many lines go on: that with fewer at odds, then
// with the larger cell.
func isFiner(a, b candidate) bool {
	if a.differ != b.differ {
		return a.differ < b.differ
	}
	return area(a.cell) > area(b.cell)+1
}

func area(b orb.Bound) float64 { return (b.Max[0] - b.Min[0]) * (b.Max[1] - b.Min[1]) }

func sameOrder(a, b map[int]spot) bool {
	if len(a) != len(b) {
		return false
	}
	for page, s := range a {
		if b[page] != s {
			return false
		}
	}
	return true
}

// cells that lines at these places frame, each more than half as wide and as high as
// the paper.
func cells(levels, uprights []place, paper orb.Bound) []orb.Bound {
	pairs := func(all []place, axis int) [][2]float64 {
		var at []float64
		for _, p := range all[:min(len(all), mostPlaces)] {
			at = append(at, p.at)
		}
		slices.Sort(at)
		var out [][2]float64
		for i := range at {
			for j := i + 1; j < len(at); j++ {
				if at[j]-at[i] > (paper.Max[axis]-paper.Min[axis])/2 {
					out = append(out, [2]float64{at[i], at[j]})
				}
			}
		}
		return out
	}
	var out []orb.Bound
	for _, x := range pairs(uprights, 0) {
		for _, y := range pairs(levels, 1) {
			out = append(out, orb.Bound{Min: orb.Point{x[0], y[0]}, Max: orb.Point{x[1], y[1]}})
		}
	}
	return out
}

// orders in which sheets may lie: as somebody says, as their labels say, or row by row
// or column by column in the order of the file.
func orders(d linework.Drawing, pages []int, v found.View) []map[int]spot {
	if v.Rows != nil {
		return []map[int]spot{spotsIn(v.Rows)}
	}
	if spots := labelled(d.Words, pages); spots != nil {
		return []map[int]spot{spots, turned(spots)}
	}
	var out []map[int]spot
	n := len(pages)
	for columns := 1; columns <= n; columns++ {
		if n%columns != 0 {
			continue
		}
		spots := map[int]spot{}
		for i, page := range pages {
			spots[page] = spot{i / columns, i % columns}
		}
		out = append(out, spots)
		if columns > 1 && columns < n {
			byColumn := map[int]spot{}
			for i, page := range pages {
				byColumn[page] = spot{i % columns, i / columns}
			}
			out = append(out, byColumn)
		}
	}
	return out
}

// turned puts rows in the place of columns.
func turned(spots map[int]spot) map[int]spot {
	out := map[int]spot{}
	for page, s := range spots {
		out[page] = spot{s.column, s.row}
	}
	return out
}

// wholePaper is the tiling of sheets that have no marks, as somebody says.
func wholePaper(d linework.Drawing, v found.View) tiling {
	spots := spotsIn(v.Rows)
	box := orb.Bound{Max: orb.Point{math.Inf(1), math.Inf(1)}}
	for page := range spots {
		if page < len(d.Pages) {
			box.Max[0] = math.Min(box.Max[0], d.Pages[page].Box.Max[0])
			box.Max[1] = math.Min(box.Max[1], d.Pages[page].Box.Max[1])
		}
	}
	return tiling{cell: box, overlap: v.Overlap, spots: spots}.sized()
}
