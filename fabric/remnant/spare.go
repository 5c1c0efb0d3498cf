package remnant

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
)

// spareStep, mm, is how finely the free cloth is looked at [source.OwnChoice].
const spareStep = 2.0

// spareOf looks for what is left of a usable length.
func spareOf(p lay.Plan, usable float64) Spare {
	shift := 0.0
	if p.Lay == lay.FoldedAcross { // the fold is in the middle of all that there is
		shift = (usable - p.Taken) / 2
	}
	var outlines []orb.Ring
	first, last := usable, 0.0
	for _, l := range p.Pieces {
		for _, ply := range bed.PliesAt(p.Parts[l.Part], l.Outline.Bound().Center()[1]) {
			var ring orb.Ring
			for _, q := range l.Outline {
				q = ply.ToCloth.Apply(q)
				ring = append(ring, orb.Point{q[0] + shift, q[1]})
			}
			outlines = append(outlines, ring)
			box := ring.Bound()
			first, last = math.Min(first, box.Min[0]), math.Max(last, box.Max[0])
		}
	}
	low, high := p.Cloth.Selvedge, bed.UsableWidth(lay.Open, p.Cloth)+p.Cloth.Selvedge
	for _, flaw := range p.Cloth.Flaws {
		parts, err := geometry.Clipped(geometry.Closed(flaw.Outline), 0, low, usable, high)
		if err != nil {
			return Spare{CleanEnd: math.Max(0, math.Max(usable-last, first))}
		}
		outlines = append(outlines, parts...)
	}
	out := largestFree(outlines, low, usable, high)
	out.CleanEnd = math.Max(0, math.Max(usable-last, first))
	return out
}

// grid of the cloth: taken says which cells something reaches into.
type grid struct {
	columns, rows int
	low           float64
	taken         []bool
}

func (g grid) take(column, from, to int) {
	for row := max(from, 0); row <= min(to, g.rows-1); row++ {
		g.taken[column*g.rows+row] = true
	}
}

// largestFree is the largest rectangle of free cells.
func largestFree(outlines []orb.Ring, low, length, high float64) Spare {
	g := grid{columns: int(length / spareStep), rows: int((high - low) / spareStep), low: low}
	if g.columns <= 0 || g.rows <= 0 {
		return Spare{}
	}
	g.taken = make([]bool, g.columns*g.rows)
	for _, ring := range outlines {
		g.add(ring)
	}
	return g.largest()
}

// add takes every cell that an outline reaches into.
func (g grid) add(ring orb.Ring) {
	const touch = 1e-3 // mm: what only touches a cell leaves it free [source.OwnChoice]
	box := ring.Bound()
	for column := max(0, int(box.Min[0]/spareStep)); column < g.columns; column++ {
		from, to := float64(column)*spareStep+touch, float64(column+1)*spareStep-touch
		if from > box.Max[0] {
			return
		}
		var crossings []float64
		for i := 1; i < len(ring); i++ {
			a, b := ring[i-1], ring[i]
			if a[0] > b[0] {
				a, b = b, a
			}
			if b[0] < from || a[0] > to {
				continue
			}
			at := func(x float64) float64 {
				if b[0] == a[0] {
					return a[1]
				}
				return a[1] + (b[1]-a[1])*(x-a[0])/(b[0]-a[0])
			}
			y0, y1 := at(math.Max(from, a[0])), at(math.Min(to, b[0]))
			if b[0] == a[0] {
				y0, y1 = a[1], b[1]
			}
			g.takeBetween(column, math.Min(y0, y1)+touch, math.Max(y0, y1)-touch)
			if middle := (from + to) / 2; a[0] <= middle && b[0] > middle {
				crossings = append(crossings, at(middle))
			}
		}
		slices.Sort(crossings)
		for i := 1; i < len(crossings); i += 2 {
			g.takeBetween(column, crossings[i-1]+touch, crossings[i]-touch)
		}
	}
}

func (g grid) takeBetween(column int, from, to float64) {
	if to >= from {
		g.take(column, int(math.Floor((from-g.low)/spareStep)), int(math.Floor((to-g.low)/spareStep)))
	}
}

// largest finds the largest free rectangle by the stack of rising bars: for
// each column, how far back each row is free (common knowledge of algorithms,
// linear in the cells).
func (g grid) largest() Spare {
	var best Spare
	back := make([]int, g.rows+1)
	for column := range g.columns {
		for row := range g.rows {
			back[row]++
			if g.taken[column*g.rows+row] {
				back[row] = 0
			}
		}
		var stack []int // rows whose bars rise
		for row := 0; row <= g.rows; row++ {
			for len(stack) > 0 && back[stack[len(stack)-1]] >= back[row] {
				long := back[stack[len(stack)-1]]
				stack = stack[:len(stack)-1]
				from := 0
				if len(stack) > 0 {
					from = stack[len(stack)-1] + 1
				}
				length, width := float64(long)*spareStep, float64(row-from)*spareStep
				if length*width > best.Length*best.Width {
					best = Spare{
						X: float64(column+1-long) * spareStep, Y: g.low + float64(from)*spareStep,
						Length: length, Width: width,
					}
				}
			}
			stack = append(stack, row)
		}
	}
	return best
}

// Overhangs lists the pieces of a lay that reach beyond the end of a length of
// cloth, mm, worst first.
func Overhangs(plan lay.Plan, usable float64) []Overhang {
	const least = 0.05 // mm [source.OwnChoice]
	length := plan.Length - (plan.Taken-usable)/bed.AcrossPlies(plan.Lay)
	var out []Overhang
	for _, l := range plan.Pieces {
		if by := l.Outline.Bound().Max[0] - length; by > least {
			out = append(out, Overhang{Name: l.Name, Garment: l.Garment, By: by})
		}
	}
	slices.SortStableFunc(out, func(a, b Overhang) int { return int(math.Copysign(1, b.By-a.By)) })
	return out
}
