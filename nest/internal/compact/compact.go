// Package compact draws all pieces of a layout together at once, by linear
// programs: each pair of near pieces keeps to its side of a line, and the
// length is made least (Li and Milenkovic 1995, doi
// 10.1016/0377-2217(95)00021-H; Gomes and Oliveira 2006, doi
// 10.1016/j.ejor.2004.09.008).
package compact

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
	"ellwand/nest/internal/model"
)

// Shorten moves the pieces of a layout, each by at most the reach in x and in
// y, so that the strip becomes as short as one linear program can make it.
// Pieces that overlap a little are parted, for which the strip may grow. It
// returns the new spots, or false when the program has no answer. The result
// still has to be tested for overlap.
func Shorten(m *model.Model, spots []model.Spot, reach float64) ([]model.Spot, bool) {
	p := newProgram(m, spots, reach)
	values, ok := p.lp.solve(p.start)
	if !ok {
		return nil, false
	}
	out := append([]model.Spot(nil), spots...)
	for i := range out {
		if k := p.x[i]; k >= 0 {
			out[i].X = p.low[k] + values[k]
		}
		if k := p.y[i]; k >= 0 {
			out[i].Y = p.low[k] + values[k]
		}
	}
	return out, true
}

// program is the linear program of one layout. Variables are the free
// coordinates, each measured from the low end of its range, and the length.
type program struct {
	m     *model.Model
	spots []model.Spot
	reach float64
	x, y  []int     // variable of each piece's coordinate, or -1
	low   []float64 // of each variable
	start []float64
	lp    linear
}

func newProgram(m *model.Model, spots []model.Spot, reach float64) *program {
	p := &program{m: m, spots: spots, reach: reach, x: make([]int, len(spots)), y: make([]int, len(spots))}
	length := 0.0
	for _, s := range spots {
		length = max(length, s.X+m.Shapes[s.Shape].HalfX)
	}
	for _, i := range leftToRight(spots) {
		p.addPiece(i)
	}
	p.addLength(length)
	p.addPairs()
	return p
}

func (p *program) addPiece(i int) {
	s, piece := p.spots[i], &p.m.Pieces[i]
	sh := &p.m.Shapes[s.Shape]
	p.x[i], p.y[i] = -1, -1
	if piece.PeriodX == 0 {
		p.x[i] = p.addVariable(s.X, sh.HalfX, math.Inf(1))
	}
	if piece.PeriodY == 0 && !sh.Low && !sh.High {
		low, high := p.m.RangeY(s.Shape)
		p.y[i] = p.addVariable(s.Y, low, high)
	}
}

// addVariable adds a coordinate within its range and the reach of where it
// is now.
func (p *program) addVariable(now, low, high float64) int {
	low, high = max(low, now-p.reach), min(high, now+p.reach)
	k := len(p.low)
	p.low = append(p.low, low)
	p.start = append(p.start, now-low)
	p.lp.addRow(0, term{k, 1})
	p.lp.addRow(low-high, term{k, -1})
	return k
}

func (p *program) addLength(length float64) {
	k := len(p.low)
	p.low = append(p.low, 0)
	p.start = append(p.start, length)
	p.lp.variables = k + 1
	p.lp.least = k
	for i, s := range p.spots {
		half := p.m.Shapes[s.Shape].HalfX
		if p.x[i] < 0 {
			p.lp.addRow(s.X+half, term{k, 1})
			continue
		}
		p.lp.addRow(p.low[p.x[i]]+half, term{k, 1}, term{p.x[i], -1})
	}
}

// addPairs keeps apart the pieces that could meet within the reach.
func (p *program) addPairs() {
	order := leftToRight(p.spots)
	var widest float64
	for _, s := range p.spots {
		widest = max(widest, p.m.Shapes[s.Shape].HalfX)
	}
	far := 2*p.reach + p.m.Gap
	for a, i := range order {
		s := p.spots[i]
		half := p.m.Shapes[s.Shape].HalfX
		for _, j := range order[a+1:] {
			o := p.spots[j]
			if o.X-s.X > half+widest+far {
				break
			}
			p.separate(i, j, s, o)
		}
		for _, f := range p.m.Fixed {
			p.separate(i, -1, s, f)
		}
	}
}

// separate adds, for each two convex parts that could meet, the line that
// keeps them farthest apart now. j is -1 for a fixed shape. Parts whose boxes
// stay apart are passed over before they are summed: most are, and the search
// on the swim set made an eighth more passes.
func (p *program) separate(i, j int, s, o model.Spot) {
	sa, sb := &p.m.Shapes[s.Shape], &p.m.Shapes[o.Shape]
	far := 2*p.reach + p.m.Gap
	dx, dy := o.X-s.X, o.Y-s.Y
	if math.Abs(dx) > sa.HalfX+sb.HalfX+far || math.Abs(dy) > sa.HalfY+sb.HalfY+far {
		return
	}
	gap := p.m.Gap
	if p.m.Bases[sa.Base].Obstacle || p.m.Bases[sb.Base].Obstacle {
		gap = 0
	}
	parts := p.m.PartsOf(s.Shape)
	boxes := make([]orb.Bound, len(parts))
	for k, a := range parts {
		boxes[k] = orb.MultiPoint(a).Bound()
	}
	for _, b := range p.m.PartsOf(o.Shape) {
		b = convex.Negate(b)
		if gap > 0 {
			b = convex.Sum(b, convex.Disc(gap))
		}
		box := orb.MultiPoint(b).Bound()
		for k, a := range parts {
			if apart(boxes[k], box, dx, dy, 2*p.reach) {
				continue
			}
			if nx, ny, c, ok := bestLine(a, b, dx, dy, 2*p.reach); ok {
				p.keep(i, j, s, o, nx, ny, c)
			}
		}
	}
}

// apart reports whether an offset, changed by the reach along both axes, stays
// outside the sum of two boxes.
func apart(a, b orb.Bound, dx, dy, reach float64) bool {
	return dx-reach > a.Max[0]+b.Max[0] || dx+reach < a.Min[0]+b.Min[0] ||
		dy-reach > a.Max[1]+b.Max[1] || dy+reach < a.Min[1]+b.Min[1]
}

// bestLine finds the edge of the sum of a and b that the offset lies farthest
// outside of; false when even moves by the reach cannot bring it inside.
func bestLine(a, b []orb.Point, dx, dy, reach float64) (nx, ny, c float64, ok bool) {
	most := math.Inf(-1)
	for _, side := range convex.Sides(convex.Sum(a, b)) {
		away := float64(side.NX*dx) + float64(side.NY*dy) - side.C
		if away > reach*(math.Abs(side.NX)+math.Abs(side.NY)) {
			return 0, 0, 0, false
		}
		if away > most {
			most, nx, ny, c = away, side.NX, side.NY, side.C
		}
	}
	return nx, ny, c, true
}

// keep adds n . (place of j - place of i) >= c.
func (p *program) keep(i, j int, s, o model.Spot, nx, ny, c float64) {
	terms := make([]term, 0, 4)
	add := func(variable int, factor, now float64) {
		if variable < 0 {
			c -= float64(factor * now)
			return
		}
		c -= float64(factor * p.low[variable])
		terms = append(terms, term{variable, factor})
	}
	add(p.x[i], -nx, s.X)
	add(p.y[i], -ny, s.Y)
	if j < 0 {
		add(-1, nx, o.X)
		add(-1, ny, o.Y)
	} else {
		add(p.x[j], nx, o.X)
		add(p.y[j], ny, o.Y)
	}
	if len(terms) > 0 {
		p.lp.addRow(c, terms...)
	}
}
