package drawing

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Change is how a picture is drawn differently as a whole.
type Change struct {
	// Scale of everything; 0 leaves it.
	Scale float64
	// Pen makes another pen of each; nil leaves them. It is asked before the scale.
	Pen func(Pen) Pen
	// Grey makes another of each, of lines, areas and words; nil leaves them.
	Grey func(int) int
	// LeastText is the least size of words, points, before the scale.
	LeastText float64
}

// Changed is the picture drawn differently; its windows are left out.
func (p *Picture) Changed(c Change) *Picture {
	if c.Scale == 0 {
		c.Scale = 1
	}
	if c.Pen == nil {
		c.Pen = func(pen Pen) Pen { return pen }
	}
	if c.Grey == nil {
		c.Grey = func(grey int) int { return grey }
	}
	out := &Picture{}
	for _, it := range p.items {
		if changed := c.item(it); changed != nil {
			out.items = append(out.items, changed)
		}
	}
	return out
}

func (c Change) item(it item) item {
	switch it := it.(type) {
	case stroke:
		it.pen = c.pen(it.pen)
		it.line = c.points(it.line)
		it.path = it.path.Map(pieces.Scale(c.Scale))
		return it
	case area:
		it.grey, it.ring = c.Grey(it.grey), c.points(it.ring)
		return it
	case Text:
		it.Grey = c.Grey(it.Grey)
		it.At = c.point(it.At)
		it.Points = math.Max(it.Points, c.LeastText) * c.Scale
		return it
	case heading:
		it.box = c.box(it.box)
		return it
	case ending:
		it.box = c.box(it.box)
		return it
	case layerMark:
		it.box = c.box(it.box)
		return it
	case layerEnd:
		it.box = c.box(it.box)
		return it
	}
	return nil
}

func (c Change) pen(pen Pen) Pen {
	pen = c.Pen(pen)
	pen.Grey = c.Grey(pen.Grey)
	pen.Width *= c.Scale
	dashes := make([]float64, len(pen.Dashes))
	for i, d := range pen.Dashes {
		dashes[i] = d * c.Scale
	}
	pen.Dashes = dashes
	return pen
}

func (c Change) point(p orb.Point) orb.Point { return orb.Point{p[0] * c.Scale, p[1] * c.Scale} }

func (c Change) points(line []orb.Point) []orb.Point {
	out := make([]orb.Point, len(line))
	for i, p := range line {
		out[i] = c.point(p)
	}
	return out
}

func (c Change) box(b orb.Bound) orb.Bound {
	return orb.Bound{Min: c.point(b.Min), Max: c.point(b.Max)}
}
