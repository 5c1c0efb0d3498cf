package sheet

import (
	"math"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/paper"
)

// Plane is everything that is printed, before it is cut into tiles. It begins
// at (0, 0).
type Plane struct {
	Title   string
	Picture *drawing.Picture
	// Shapes are the closed outlines that must be on the paper: tiles that
	// none of them reaches are left out.
	Shapes []orb.Ring
	// Reach is how far the plane reaches at least.
	Reach orb.Point
}

// Extent is how far the plane reaches.
func (p Plane) Extent() (width, height float64) {
	width, height = p.Reach[0], p.Reach[1]
	for _, ring := range p.Shapes {
		b := ring.Bound()
		width, height = math.Max(width, b.Max[0]), math.Max(height, b.Max[1])
	}
	return width, height
}

// Tiling cuts a plane into the tiles between neighbouring cuts, each of which
// goes onto a sheet of the paper. Both lists of cuts begin with 0 and rise.
type Tiling struct {
	Paper         paper.Paper
	Columns, Rows []float64
}

// Tile is one piece of the plane.
type Tile struct {
	Row, Column int // from 0
	Box         orb.Bound
	// Blank says that no shape reaches it, so that it is left out.
	Blank bool
}

// Name of the tile: the letter of its row and the number of its column, "B3".
func (t Tile) Name() string { return rowLetter(t.Row) + strconv.Itoa(t.Column+1) }

// rowLetter counts A to Z, then AA, AB.
func rowLetter(row int) string {
	letters := ""
	for row >= 0 {
		letters = string(rune('A'+row%26)) + letters
		row = row/26 - 1
	}
	return letters
}

// EvenTiling cuts the plane into tiles of the size of the sheet; on a roll,
// into rows alone. What fits within the margins is not cut at all.
func EvenTiling(plane Plane, paper paper.Paper) Tiling {
	width, height := plane.Extent()
	cellWidth, cellHeight := paper.Cell()
	columns := []float64{0, width}
	if !paper.IsRoll() {
		columns = evenCuts(width, cellWidth, paper.Overlap)
	}
	return Tiling{paper, columns, evenCuts(height, cellHeight, paper.Overlap)}
}

// cutTolerance, mm: what reaches so little over a cut is no reason for one
// more sheet, since every sheet shows more than that beyond its trim line.
const cutTolerance = 0.05

// evenCuts cuts an extent into cells. A single cell may use the overlap too.
func evenCuts(extent, cell, overlap float64) []float64 {
	if extent > cell && extent <= cell+overlap+cutTolerance {
		return []float64{0, extent}
	}
	n := max(1, int(math.Ceil((extent-cutTolerance)/cell)))
	out := make([]float64, n+1)
	for i := range out {
		out[i] = float64(i) * cell
	}
	return out
}

// Tiles of the plane, row by row, blank ones included.
func (t Tiling) Tiles(plane Plane) []Tile {
	var out []Tile
	for row := range len(t.Rows) - 1 {
		for column := range len(t.Columns) - 1 {
			box := orb.Bound{Min: orb.Point{t.Columns[column], t.Rows[row]},
				Max: orb.Point{t.Columns[column+1], t.Rows[row+1]}}
			out = append(out, Tile{row, column, box, isBlank(box, plane.Shapes)})
		}
	}
	return out
}

// Sheets is how many tiles are not blank.
func (t Tiling) Sheets(plane Plane) int {
	n := 0
	for _, tile := range t.Tiles(plane) {
		if !tile.Blank {
			n++
		}
	}
	return n
}

func isBlank(box orb.Bound, shapes []orb.Ring) bool {
	inner := orb.Bound{Min: geometry.Add(box.Min, orb.Point{cutTolerance, cutTolerance}),
		Max: geometry.Sub(box.Max, orb.Point{cutTolerance, cutTolerance})}
	for _, ring := range shapes {
		if geometry.Crosses(ring, inner) || geometry.Inside(ring, inner.Center()) {
			return false
		}
	}
	return true
}
