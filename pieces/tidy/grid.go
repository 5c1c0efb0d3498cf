package tidy

import (
	"math"

	"github.com/paulmach/orb"
)

// mostNear ends of lines that are looked at in a cell [source.OwnChoice].
const mostNear = 24

// grid finds what lies about a place.
type grid struct {
	size  float64
	cells map[[2]int][]int
}

func newGrid(size float64) *grid { return &grid{size, map[[2]int][]int{}} }

func (g *grid) cell(p orb.Point) [2]int {
	return [2]int{int(math.Floor(p[0] / g.size)), int(math.Floor(p[1] / g.size))}
}

func (g *grid) add(p orb.Point, what int) {
	c := g.cell(p)
	if len(g.cells[c]) < mostNear {
		g.cells[c] = append(g.cells[c], what)
	}
}

// about a place, at most mostNear from each cell.
func (g *grid) about(p orb.Point) []int {
	var out []int
	g.visit(p, func(what int) { out = append(out, what) })
	return out
}

// visit what lies about a place, in the order of about.
func (g *grid) visit(p orb.Point, see func(what int)) {
	c := g.cell(p)
	for dx := -1; dx <= 1; dx++ {
		for dy := -1; dy <= 1; dy++ {
			for _, what := range g.cells[[2]int{c[0] + dx, c[1] + dy}] {
				see(what)
			}
		}
	}
}
