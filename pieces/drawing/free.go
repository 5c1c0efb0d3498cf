package drawing

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
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
			taken = geometry.Crosses(it.line, box)
		case Text:
			ring := it.Outline()
			taken = geometry.Crosses(ring, box) || geometry.Inside(ring, box.Center())
		case window:
			if it.box.Intersects(box) {
				back := geometry.Times(it.shift, -1)
				taken = !it.picture.IsFree(movedBox(geometry.Common(box, it.box), back))
			}
		}
		if taken {
			return false
		}
	}
	return true
}

// HasRoomFor reports whether words, with so much air about them in mm, would
// touch no line and no other words. Areas, windows and the width of the lines
// do not count.
func (p *Picture) HasRoomFor(t Text, air float64) bool {
	sin, cos := math.Sincos(t.Angle * math.Pi / 180)
	straight := func(line []orb.Point) []orb.Point { // as it lies where the words lie level
		out := make([]orb.Point, len(line))
		for i, q := range line {
			x, y := q[0]-t.At[0], q[1]-t.At[1]
			out[i] = orb.Point{x*cos - y*sin, x*sin + y*cos}
		}
		return out
	}
	taken := t.Outline()
	near, box := taken.Bound().Pad(air), orb.LineString(straight(taken)).Bound().Pad(air)
	for _, it := range p.items {
		if !it.bound().Intersects(near) {
			continue
		}
		switch it := it.(type) {
		case stroke:
			if geometry.Crosses(straight(it.line), box) {
				return false
			}
		case Text:
			if ring := straight(it.Outline()); geometry.Crosses(ring, box) || geometry.Inside(ring, box.Center()) {
				return false
			}
		}
	}
	return true
}

// Lines are all lines of the picture, stretch by stretch, and the rectangles
// in which its words stand: what Room keeps off. Areas and windows do not
// count.
func (p *Picture) Lines() [][2]orb.Point {
	var out [][2]orb.Point
	add := func(line []orb.Point) {
		for i := 1; i < len(line); i++ {
			out = append(out, [2]orb.Point{line[i-1], line[i]})
		}
	}
	for _, it := range p.items {
		switch it := it.(type) {
		case stroke:
			add(it.line)
		case Text:
			add(it.Outline())
		}
	}
	return out
}

// Outline is the rectangle about the words as they stand, from a little below
// the line to the height of the letters.
func (t Text) Outline() orb.Ring {
	sin, cos := math.Sincos(t.Angle * math.Pi / 180)
	size, from := t.Points*Point, -t.start()
	to := from + Width(t.Words, t.Points, t.Bold)
	at := func(u, v float64) orb.Point {
		return orb.Point{t.At[0] + u*cos + v*sin, t.At[1] - u*sin + v*cos}
	}
	below, above := 0.22*size, -0.75*size
	return orb.Ring{at(from, below), at(to, below), at(to, above), at(from, above), at(from, below)}
}
