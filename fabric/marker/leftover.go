package marker

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces/geometry"
)

// leftover is a rectangle of cloth that no piece touches, in the frame of the
// lay.
type leftover struct {
	box   orb.Bound
	plies int
}

const (
	// centimetreCell and inchCell are how finely left-over cloth is looked for,
	// mm: to the centimetre or the half inch below.
	centimetreCell, inchCell = 10.0, 12.7
	// leastSide and mostLeftovers keep to what is worth folding away.
	leastSide     = 100.0
	mostLeftovers = 8
)

// leftovers finds the largest rectangles that are left over, one after the
// other, none over another and none over the edge of a part, in whole cells of
// that size. They are not the best division of the rest, but what one sees.
func leftovers(plan lay.Plan, cell float64) []leftover {
	var out []leftover
	for i, part := range partsOf(plan) {
		g := newFreeCells(part, cell)
		for _, l := range plan.Pieces {
			if l.Part == i || len(plan.Parts) < 2 {
				g.take(orb.Ring(l.Outline))
			}
		}
		for _, zone := range plan.Zones {
			g.take(zone)
		}
		for range mostLeftovers {
			box, ok := g.largest()
			if !ok {
				break
			}
			out = append(out, leftover{box, part.Plies})
			g.take(ringOf(box))
		}
	}
	slices.SortStableFunc(out, func(a, b leftover) int { return cmp.Compare(areaOf(b.box), areaOf(a.box)) })
	return out[:min(len(out), mostLeftovers)]
}

// partsOf are the parts of the lay to the end of the cloth.
func partsOf(plan lay.Plan) []lay.Part {
	parts := slices.Clone(plan.Parts)
	if len(parts) == 0 {
		parts = []lay.Part{plan.PartOf(lay.Laid{})}
	}
	for i, p := range parts {
		if p.X+p.Length > plan.Length-1 {
			parts[i].Length = purchase.OnTable(plan) - p.X
		}
	}
	return parts
}

func ringOf(b orb.Bound) orb.Ring {
	return orb.Ring{b.Min, {b.Max[0], b.Min[1]}, b.Max, {b.Min[0], b.Max[1]}, b.Min}
}

func areaOf(b orb.Bound) float64 { return (b.Max[0] - b.Min[0]) * (b.Max[1] - b.Min[1]) }

// freeCells are the squares of a part that nothing touches.
type freeCells struct {
	cell          float64 // side, mm
	corner        orb.Point
	columns, rows int
	taken         []bool
}

func newFreeCells(part lay.Part, cell float64) *freeCells {
	g := &freeCells{cell: cell, corner: orb.Point{part.X, part.Y}}
	g.columns, g.rows = max(0, int((part.Length+1e-6)/cell)), max(0, int((part.Width+1e-6)/cell))
	g.taken = make([]bool, g.columns*g.rows)
	return g
}

func (g *freeCells) box(column, row int) orb.Bound {
	low := orb.Point{g.corner[0] + float64(column)*g.cell, g.corner[1] + float64(row)*g.cell}
	return orb.Bound{Min: low, Max: orb.Point{low[0] + g.cell, low[1] + g.cell}}
}

// take marks the cells that a shape touches; what only meets their edge does
// not.
func (g *freeCells) take(ring orb.Ring) {
	b := ring.Bound()
	first, last := g.index(b.Min[0], 0), g.index(b.Max[0], 0)
	low, high := g.index(b.Min[1], 1), g.index(b.Max[1], 1)
	for column := max(0, first); column <= min(last, g.columns-1); column++ {
		for row := max(0, low); row <= min(high, g.rows-1); row++ {
			at := row*g.columns + column
			inner := g.box(column, row).Pad(-1e-3)
			g.taken[at] = g.taken[at] || geometry.Crosses(ring, inner) || geometry.Inside(ring, inner.Center())
		}
	}
}

func (g *freeCells) index(at float64, axis int) int {
	return int(math.Floor((math.Max(-1e9, math.Min(at, 1e9)) - g.corner[axis]) / g.cell))
}

// largest is the rectangle of free cells with the greatest area, both of its
// sides worth keeping.
func (g *freeCells) largest() (orb.Bound, bool) {
	least := int(math.Ceil(leastSide/g.cell - 1e-9))
	var found orb.Bound
	best := 0
	heights := make([]int, g.columns) // of free cells above, to this row
	for row := range g.rows {
		for column := range heights {
			heights[column]++
			if g.taken[row*g.columns+column] {
				heights[column] = 0
			}
		}
		for from := range heights {
			height := heights[from]
			for to := from; to < g.columns && height >= least; to++ {
				height = min(height, heights[to])
				if size := height * (to - from + 1); height >= least && to-from+1 >= least && size > best {
					best = size
					found = orb.Bound{Min: g.box(from, row-height+1).Min, Max: g.box(to, row).Max}
				}
			}
		}
	}
	return found, best > 0
}
