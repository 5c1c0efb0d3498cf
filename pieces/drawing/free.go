package drawing

import (
	"math"

	"github.com/paulmach/orb"
)

// Within is what of the picture may reach into a box, so that the room in it
// is looked for among fewer lines.
func (p *Picture) Within(box orb.Bound) *Picture {
	out := &Picture{}
	for _, it := range p.items {
		if it.bound().Intersects(box) {
			out.items = append(out.items, it)
		}
	}
	return out
}

// IsFree reports whether no line and no words touch a box. Areas and the width
// of the lines do not count.
func (p *Picture) IsFree(box orb.Bound) bool {
	for _, it := range p.items {
		taken := false
		switch it := it.(type) {
		case stroke:
			taken = Crosses(it.line, box)
		case Text:
			ring := it.outline()
			taken = Crosses(ring, box) || Inside(ring, box.Center())
		case window:
			if it.box.Intersects(box) {
				back := orb.Point{-it.shift[0], -it.shift[1]}
				taken = !it.picture.IsFree(movedBox(common(box, it.box), back))
			}
		}
		if taken {
			return false
		}
	}
	return true
}

// outline is the rectangle about the words as they stand, from a little below
// the line to the height of the letters.
func (t Text) outline() orb.Ring {
	sin, cos := math.Sincos(t.Angle * math.Pi / 180)
	size, from := t.Points*Point, -t.start()
	to := from + Width(t.Words, t.Points, t.Bold)
	at := func(u, v float64) orb.Point {
		return orb.Point{t.At[0] + u*cos + v*sin, t.At[1] - u*sin + v*cos}
	}
	below, above := 0.22*size, -0.75*size
	return orb.Ring{at(from, below), at(to, below), at(to, above), at(from, above), at(from, below)}
}
