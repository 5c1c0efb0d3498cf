package nofit

import "math"

// Field is a grid of places where an outline may lie, with what each costs:
// about the sum of factor x depth over the outlines that were added. A place
// takes some 2 ns an outline (BenchmarkField), an exact look eight times that
// (BenchmarkDepth); it guides only.
type Field struct {
	X, Y         float64 // the first place
	StepX, StepY float64 // to the next; 0 where there is one column or row
	NX, NY       int
	Costs        []float32 // row by row; Reset makes them 0
	columns      []uint16  // of a table, below each column; used by AddTo
}

// Reset gives the field so many columns and rows, and makes all costs 0.
func (f *Field) Reset(nx, ny int) {
	f.NX, f.NY = nx, ny
	f.Costs = append(f.Costs[:0], make([]float32, nx*ny)...)
}

// AddTo adds to each place what the outline there costs by its overlap with
// the other, which lies at (x, y): factor x depth at the nearest corner of the
// table, so it is off by up to 0.7 of a cell.
func (v *View) AddTo(f *Field, x, y, factor float64) {
	t := v.table
	firstX, stepX := float64((f.X-x)*v.scaleX)+v.originX+0.5, f.StepX*v.scaleX
	firstY, stepY := float64((f.Y-y)*v.scaleY)+v.originY+0.5, f.StepY*v.scaleY
	fromX, toX := within(firstX, stepX, v.nx, f.NX)
	fromY, toY := within(firstY, stepY, v.ny, f.NY)
	if fromX >= toX {
		return
	}
	// With the columns found again in each row BenchmarkField took a fifth more.
	columns := f.columns[:0]
	for k := fromX; k < toX; k++ {
		columns = append(columns, uint16(firstX+float64(float64(k)*stepX)))
	}
	f.columns = columns
	cost := float32(factor * t.depthUnit)
	for b := fromY; b < toY; b++ {
		row := t.depths[int32(firstY+float64(float64(b)*stepY))*v.nx:][:v.nx]
		costs := f.Costs[b*f.NX+fromX:][:len(columns)]
		for k, column := range columns {
			costs[k] += float32(cost * float32(row[column]))
		}
	}
}

// Undercut reports whether a place beside place k costs less, or as little and
// comes before it.
func (f *Field) Undercut(k int) bool {
	cost, column := f.Costs[k], k%f.NX
	return column > 0 && f.Costs[k-1] <= cost || column+1 < f.NX && f.Costs[k+1] < cost ||
		k >= f.NX && f.Costs[k-f.NX] <= cost || k+f.NX < len(f.Costs) && f.Costs[k+f.NX] < cost
}

// edge of a table, in cells, that a field leaves out: the rounding of its
// columns stays below it, and nothing overlaps there (margin).
const edge = 0.02

// within returns the range of k from 0 to n for which first + k x step lies in
// a table of so many cells.
func within(first, step float64, cells int32, n int) (from, to int) {
	low, high := edge-first, float64(cells)-edge-first
	if step == 0 {
		if low <= 0 && 0 <= high {
			return 0, n
		}
		return 0, 0
	}
	a, b := low/step, high/step
	if a > b {
		a, b = b, a
	}
	return max(0, int(math.Ceil(a))), min(n, int(math.Floor(b))+1)
}
