package tidy

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// tiling is how sheets lie beside each other.
type tiling struct {
	cell    orb.Bound // the frame or trim box, in the frame of each sheet
	overlap float64
	spots   map[int]spot // by page
	rows    int
	columns int
	// unsure says that lines go on as well by another overlap.
	unsure bool
}

// step from one sheet to the next, across and down.
func (t tiling) step() (across, down float64) {
	return t.cell.Max[0] - t.cell.Min[0] - t.overlap, t.cell.Max[1] - t.cell.Min[1] - t.overlap
}

// joined lays the lines and words of the sheets on one plane, as far as their cells show
// them. Those of sheets that lie nowhere are left out.
func (t tiling) joined(d linework.Drawing) (linework.Drawing, []found.PlacedSheet) {
	out := linework.Drawing{Groups: d.Groups, Pictures: d.Pictures}
	across, down := t.step()
	moves := map[int]pieces.Motion{}
	windows := map[int]orb.Bound{}
	var sheets []found.PlacedSheet
	for page, s := range t.spots {
		moves[page] = pieces.Move(float64(s.column)*across-t.cell.Min[0], float64(-s.row)*down-t.cell.Min[1])
		windows[page] = t.window(s, d.Pages[page].Box)
		box := geometry.Common(windows[page], t.cell)
		m := moves[page]
		sheets = append(sheets, found.PlacedSheet{Page: page + 1,
			Box: orb.Bound{Min: m.Apply(box.Min), Max: m.Apply(box.Max)}})
	}
	slices.SortFunc(sheets, func(a, b found.PlacedSheet) int { return a.Page - b.Page })
	for _, line := range d.Lines {
		move, ok := moves[line.Page]
		if !ok {
			continue
		}
		for _, part := range linework.Clip(linework.Stretch{Path: line.Path, Closed: line.Closed}, windows[line.Page]) {
			one := line
			one.Path, one.Closed, one.Page = part.Path.Map(move), part.Closed, 0
			out.Lines = append(out.Lines, one)
		}
	}
	for _, w := range d.Words {
		if move, ok := moves[w.Page]; ok && windows[w.Page].Contains(w.At) {
			w.At, w.Page = move.Apply(w.At), 0
			out.Words = append(out.Words, w)
		}
	}
	return out, sheets
}

// window of a sheet: its cell, without what the sheet to the right of it and that below
// it show as well; as far as the paper goes where no sheet lies beside it.
func (t tiling) window(s spot, paper orb.Bound) orb.Bound {
	box := t.cell
	if t.has(spot{s.row, s.column + 1}) {
		box.Max[0] -= t.overlap
	} else {
		box.Max[0] = paper.Max[0]
	}
	if t.has(spot{s.row + 1, s.column}) {
		box.Min[1] += t.overlap
	} else {
		box.Min[1] = paper.Min[1]
	}
	if !t.has(spot{s.row, s.column - 1}) {
		box.Min[0] = paper.Min[0]
	}
	if !t.has(spot{s.row - 1, s.column}) {
		box.Max[1] = paper.Max[1]
	}
	return box
}

func (t tiling) has(s spot) bool {
	for _, other := range t.spots {
		if other == s {
			return true
		}
	}
	return false
}

// spotsIn rows of sheets, by their numbers from 1; 0 where none lies.
func spotsIn(rows [][]int) map[int]spot {
	out := map[int]spot{}
	for r, row := range rows {
		for c, page := range row {
			if page > 0 {
				out[page-1] = spot{r, c}
			}
		}
	}
	return out
}

// sized fills in how many rows and columns there are.
func (t tiling) sized() tiling {
	t.rows, t.columns = 0, 0
	for _, s := range t.spots {
		t.rows, t.columns = max(t.rows, s.row+1), max(t.columns, s.column+1)
	}
	return t
}

// crossings are the places at which lines cross the sides of cells.
type crossings struct {
	lines map[int][]orb.LineString // of each page
	known map[side][]float64
}

// side of a cell on a sheet: where it stands, and whether it is upright.
type side struct {
	page int
	axis int // 0: upright, at x; 1: level, at y
	at   float64
	low  float64
	high float64
}

func crossingsOf(lines []linework.Line) *crossings {
	c := &crossings{lines: map[int][]orb.LineString{}, known: map[side][]float64{}}
	for _, line := range lines {
		c.lines[line.Page] = append(c.lines[line.Page], line.Path.Flatten(0.2))
	}
	return c
}

// reach, mm, is how far from a side a line may end that was cut there [source.OwnChoice].
const reach = 0.3

// at a side, the places at which lines cross it or end on it, in their order.
func (c *crossings) at(s side) []float64 {
	if known, ok := c.known[s]; ok {
		return known
	}
	var out []float64
	for _, line := range c.lines[s.page] {
		for i := 1; i < len(line); i++ {
			if x, ok := crossing(line[i-1], line[i], s); ok {
				out = append(out, x)
			}
		}
	}
	slices.Sort(out)
	out = slices.CompactFunc(out, func(a, b float64) bool { return math.Abs(a-b) < 0.3 })
	c.known[s] = out
	return out
}

// crossing of a side by a stretch, within the side.
func crossing(a, b orb.Point, s side) (float64, bool) {
	u, v := a[s.axis]-s.at, b[s.axis]-s.at
	if math.Abs(u-v) < 1e-9 || math.Min(u, v) > reach || math.Max(u, v) < -reach {
		return 0, false
	}
	t := u / (u - v)
	if t < 0 {
		t = 0
	} else if t > 1 {
		t = 1
	}
	x := a[1-s.axis] + t*(b[1-s.axis]-a[1-s.axis])
	const rim = 0.5 // frames meet there [source.OwnChoice]
	return x, x > s.low+rim && x < s.high-rim
}

// match counts the crossings of two sides that agree, and those that do not.
func match(a, b []float64, shift float64) (agree, differ int) {
	const within = 0.7 // mm: the thickness of a line, as people cut paper [source.OwnChoice]
	i, j := 0, 0
	for i < len(a) && j < len(b) {
		switch d := a[i] - b[j] + shift; {
		case math.Abs(d) <= within:
			agree, i, j = agree+1, i+1, j+1
		case d < 0:
			differ, i = differ+1, i+1
		default:
			differ, j = differ+1, j+1
		}
	}
	return agree, differ + len(a) - i + len(b) - j
}

// score of a tiling: how many lines go on from sheet to sheet, and how many do not.
func (c *crossings) score(t tiling) (agree, differ int) {
	pages := map[spot]int{}
	for page, s := range t.spots {
		pages[s] = page
	}
	x0, x1, y0, y1 := t.cell.Min[0], t.cell.Max[0], t.cell.Min[1], t.cell.Max[1]
	o := t.overlap
	for s, page := range pages {
		if right, ok := pages[spot{s.row, s.column + 1}]; ok {
			a, d := match(c.at(side{page: page, axis: 0, at: x1 - o, low: y0, high: y1}),
				c.at(side{page: right, axis: 0, at: x0, low: y0, high: y1}), 0)
			agree, differ = agree+a, differ+d
		}
		if below, ok := pages[spot{s.row + 1, s.column}]; ok {
			a, d := match(c.at(side{page: page, axis: 1, at: y0 + o, low: x0, high: x1}),
				c.at(side{page: below, axis: 1, at: y1, low: x0, high: x1}), 0)
			agree, differ = agree+a, differ+d
		}
	}
	return agree, differ
}
