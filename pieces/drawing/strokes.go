package drawing

import "github.com/paulmach/orb"

// Strokes calls visit with every line of the page as it lies on the paper, also with
// what windows show of other pictures, whether it lies within them or not.
func (p Page) Strokes(visit func(line []orb.Point)) { p.strokes(orb.Point{}, visit) }

func (p *Picture) strokes(shift orb.Point, visit func(line []orb.Point)) {
	for _, one := range p.items {
		switch one := one.(type) {
		case stroke:
			line := make([]orb.Point, len(one.line))
			for i, q := range one.line {
				line[i] = orb.Point{q[0] + shift[0], q[1] + shift[1]}
			}
			visit(line)
		case window:
			one.picture.strokes(orb.Point{shift[0] + one.shift[0], shift[1] + one.shift[1]}, visit)
		}
	}
}
