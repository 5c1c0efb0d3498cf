package found

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// grid finds points near others, in squares of the reach.
type grid struct {
	reach float64
	in    map[[2]int64][]int
}

func newGrid(reach float64) *grid { return &grid{reach, map[[2]int64][]int{}} }

func (g *grid) square(p orb.Point) [2]int64 {
	return [2]int64{int64(math.Floor(p[0] / g.reach)), int64(math.Floor(p[1] / g.reach))}
}

func (g *grid) add(p orb.Point, number int) {
	at := g.square(p)
	g.in[at] = append(g.in[at], number)
}

// each visits the numbers in the squares about a point.
func (g *grid) each(p orb.Point, visit func(int)) {
	at := g.square(p)
	for dx := int64(-1); dx <= 1; dx++ {
		for dy := int64(-1); dy <= 1; dy++ {
			for _, number := range g.in[[2]int64{at[0] + dx, at[1] + dy}] {
				visit(number)
			}
		}
	}
}

// nearest of the points within reach.
func (g *grid) nearest(p orb.Point, points []orb.Point) (number int, ok bool) {
	best := g.reach
	g.each(p, func(i int) {
		if d := geometry.Distance(p, points[i]); d <= best {
			number, ok, best = i, true, d
		}
	})
	return number, ok
}
