package nofit

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
)

// Build makes the table of two outlines, each given by convex parts whose
// common bounding box is centred on (0, 0).
//
// A positive gap keeps them that far apart. cellsAcross is the number of cells
// on the long side, 8 or more. limit is the depth up to which they only touch.
func Build(a, b [][]orb.Point, gap float64, cellsAcross int, limit float64) *Table {
	pairs := pairsOf(a, grown(b, gap))
	t := frame(pairs, cellsAcross)
	t.limit = limit
	sums, boundary := t.classify(pairs)
	t.list(sums, boundary)
	t.fillDepth()
	t.trim()
	return t
}

// trim lets go of what only the making of a table needs.
func (t *Table) trim() {
	t.edges, t.stretches = nil, nil
	t.planes = append([]plane(nil), t.planes...)
}

// margin of the grid around the region, in cells.
const margin = 0.37

func frame(pairs []pair, cellsAcross int) *Table {
	t := &Table{}
	for _, p := range pairs {
		t.HalfX = math.Max(t.HalfX, math.Max(p.x1, -p.x0))
		t.HalfY = math.Max(t.HalfY, math.Max(p.y1, -p.y0))
	}
	t.side = 2 * math.Max(t.HalfX, t.HalfY) / float64(cellsAcross)
	t.scale = 1 / t.side
	t.startX, t.startY = t.HalfX+float64(margin*t.side), t.HalfY+float64(margin*t.side)
	t.nx = int(math.Ceil(2*t.startX*t.scale)) + 1
	t.ny = int(math.Ceil(2*t.startY*t.scale)) + 1
	t.cells = make([]cell, t.nx*t.ny)
	return t
}

// crossing says that the boundary of a sum enters a cell.
type crossing struct{ cell, sum int32 }

// classify marks the cells that lie inside one sum and returns the others that sums
// touch. Pairs whose box is full already are not summed: of drafted pieces that is half.
func (t *Table) classify(pairs []pair) ([]region, []crossing) {
	var sums []region
	touched := make([]crossing, 0, 4*len(t.cells))
	for _, p := range pairs {
		if t.isFull(p.box) {
			continue
		}
		sums = append(sums, newRegion(convex.Sum(p.a, p.b)))
		touched = t.scan(&sums[len(sums)-1], int32(len(sums)-1), touched)
	}
	kept := touched[:0]
	for _, c := range touched {
		if t.cells[c.cell].class != inside {
			kept = append(kept, c)
		}
	}
	return sums, kept
}

// isFull reports whether all cells of a box lie inside a sum.
func (t *Table) isFull(b box) bool {
	y0, y1 := t.column(b.y0, t.startY, t.ny), t.column(b.y1, t.startY, t.ny)
	x0, x1 := t.column(b.x0, t.startX, t.nx), t.column(b.x1, t.startX, t.nx)
	for iy := y0; iy <= y1; iy++ {
		for _, c := range t.cells[iy*t.nx+x0 : iy*t.nx+x1+1] {
			if c.class != inside {
				return false
			}
		}
	}
	return true
}

// scan goes through the rows of cells that a sum reaches. A convex sum holds a
// cell when it holds its corners; it touches the cells between its leftmost
// and rightmost points in the row.
func (t *Table) scan(r *region, k int32, touched []crossing) []crossing {
	y0, y1 := t.column(r.y0, t.startY, t.ny), t.column(r.y1, t.startY, t.ny)
	rise := r.rising()
	lineLeft, lineRight := rise.line(r, t.cornerY(y0))
	for iy := y0; iy <= y1; iy++ {
		low, high := t.cornerY(iy), t.cornerY(iy+1)
		nextLeft, nextRight := rise.line(r, high)
		in0, in1 := max(lineLeft, nextLeft), min(lineRight, nextRight)
		lineLeft, lineRight = nextLeft, nextRight
		left, right := rise.extent(low, high)
		if left > right {
			continue
		}
		x0, x1 := t.column(left, t.startX, t.nx), t.column(right, t.startX, t.nx)
		x := t.cornerX(x0)
		for ix := x0; ix <= x1; ix++ {
			cell, next := iy*t.nx+ix, t.cornerX(ix+1)
			if c := &t.cells[cell]; c.class != inside {
				if x >= in0 && next <= in1 {
					c.class = inside
				} else {
					touched = append(touched, crossing{int32(cell), k})
				}
			}
			x = next
		}
	}
	return touched
}

// list stores, for each cell on the boundary, the half-planes that cross it
// and the stretches of boundary in it.
func (t *Table) list(sums []region, crossings []crossing) {
	// Of each cell, where its sums begin in members: in maps it took a tenth of Build.
	begins := make([]int32, len(t.cells)+1)
	for _, c := range crossings {
		begins[c.cell+1]++
	}
	for k := range t.cells {
		begins[k+1] += begins[k]
	}
	members, ends := make([]int32, len(crossings)), append([]int32(nil), begins...)
	for _, c := range crossings {
		members[ends[c.cell]] = c.sum
		ends[c.cell]++
	}
	var work cellWork
	for _, c := range crossings {
		if from := begins[c.cell]; from >= 0 {
			begins[c.cell] = -1
			t.listCell(sums, c.cell, members[from:ends[c.cell]], &work)
		}
	}
}

func (t *Table) listCell(sums []region, cell int32, members []int32, work *cellWork) {
	ix, iy := int(cell)%t.nx, int(cell)/t.nx
	x0, y0 := t.cornerX(ix), t.cornerY(iy)
	x1, y1 := t.cornerX(ix+1), t.cornerY(iy+1)
	work.local, work.planes = work.local[:0], work.planes[:0]
	for _, k := range members {
		from := len(work.planes)
		all, state := cutPlanes(sums[k].planes, x0, y0, x1, y1, work.planes)
		work.planes = all
		planes := all[from:]
		if state == inside {
			t.cells[cell].class = inside
			return
		}
		if state == clear {
			continue
		}
		work.local = append(work.local, localSum{planes})
	}
	if len(work.local) == 0 {
		return
	}
	work.dropCovered()
	t.cells[cell].class = firstList + int32(len(t.planes))
	edges := int32(len(t.edges))
	for i := range work.local {
		planes := work.local[i].planes
		t.planes = append(t.planes, planes...)
		t.planes[len(t.planes)-1].closes = closesSum
		t.addEdges(work, i, x0, y0, x1, y1)
	}
	t.planes[len(t.planes)-1].closes = closesList
	t.stretches = append(t.stretches, stretch{cell, edges, int32(len(t.edges))})
}

// cutPlanes appends the half-planes that the box is not wholly inside of;
// clear when the box is wholly outside one, inside when it is inside all.
func cutPlanes(planes []plane, x0, y0, x1, y1 float64, to []plane) ([]plane, int) {
	cut := to
	for _, p := range planes {
		far, near := x1, x0
		if p.nx < 0 {
			far, near = x0, x1
		}
		top, bottom := y1, y0
		if p.ny < 0 {
			top, bottom = y0, y1
		}
		if float64(p.nx*near)+float64(p.ny*bottom) >= p.c {
			return to, clear
		}
		if float64(p.nx*far)+float64(p.ny*top) > p.c {
			cut = append(cut, p)
		}
	}
	if len(cut) == len(to) {
		return to, inside
	}
	return cut, firstList
}

// addEdges stores the stretches of the boundary of one sum that lie in the
// cell and inside no other sum. Where edges of two sums coincide, clipping
// against the others drawn in by a little keeps one of them.
func (t *Table) addEdges(work *cellWork, i int, x0, y0, x1, y1 float64) {
	local := work.local
	inset := 1e-7 * (t.HalfX + t.HalfY)
	for k, p := range local[i].planes {
		s, ok := lineInBox(p, x0, y0, x1, y1)
		if !ok {
			continue
		}
		for m, q := range local[i].planes {
			if m != k && ok {
				s, ok = s.keepInside(q, inset)
			}
		}
		if !ok {
			continue
		}
		t.edges = append(t.edges, work.outsideOthers(s, i, inset)...)
	}
}
