package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// Rectangle is a piece of that width and height in mm, its lower left corner
// at (0, 0), cut once, without allowances, its grainline along the height.
// Its edges are "bottom", "right", "top" and "left".
func Rectangle(name string, width, height float64) Piece {
	corners := []orb.Point{{0, 0}, {width, 0}, {width, height}, {0, height}}
	p := Piece{Name: name, Cut: 1, Grain: Grain{
		From: orb.Point{width / 2, float64(height * 0.2)},
		To:   orb.Point{width / 2, float64(height * 0.8)},
	}}
	for i, edge := range []seams.Name{seams.Bottom, seams.Right, seams.Top, seams.Left} {
		p.Edges = append(p.Edges, Edge{Name: edge, Path: Path{Line{corners[i], corners[(i+1)%4]}}})
	}
	return p
}

// Mirrored is the mirror image, left to right: x becomes -x. The names stay.
func (p Piece) Mirrored() Piece { return p.Map(MirrorX()) }

// Map moves the piece with everything on it. A motion that mirrors runs the
// edges the other way, so that the outline stays counter-clockwise; the
// places of notches follow. One that scales makes the allowances larger too.
func (p Piece) Map(m Motion) Piece {
	out := p
	out.Grain.From, out.Grain.To = m.Apply(p.Grain.From), m.Apply(p.Grain.To)
	out.Accuracy = float64(out.Accuracy * m.scale())
	out.Edges, out.Notches, out.Darts, out.Marks = nil, nil, nil, nil
	for _, e := range p.Edges {
		out.Edges = append(out.Edges, e.mapped(m))
	}
	if m.Mirrors() {
		for i, j := 0, len(out.Edges)-1; i < j; i, j = i+1, j-1 {
			out.Edges[i], out.Edges[j] = out.Edges[j], out.Edges[i]
		}
	}
	for _, n := range p.Notches {
		if e, ok := p.Edge(n.Edge); ok && m.Mirrors() {
			n.At = e.Path.Length() - n.At
		}
		n.At = float64(n.At * m.scale())
		out.Notches = append(out.Notches, n)
	}
	for _, d := range p.Darts {
		out.Darts = append(out.Darts, d.mapped(m))
	}
	for _, k := range p.Marks {
		k.Path, k.At = k.Path.Map(m), m.Apply(k.At)
		out.Marks = append(out.Marks, k)
	}
	return out
}

func (e Edge) mapped(m Motion) Edge {
	e.Path, e.Allowance, e.Included = e.Path.Map(m), float64(e.Allowance*m.scale()), float64(e.Included*m.scale())
	if m.Mirrors() {
		e.Path = e.Path.Reverse()
	}
	return e
}

func (d Dart) mapped(m Motion) Dart {
	d.Start, d.End = m.Apply(d.Start), m.Apply(d.End)
	d.Apex = m.Apply(d.Apex)
	if d.Mouth == seams.None {
		d.OtherApex = m.Apply(d.OtherApex)
	}
	if m.Mirrors() {
		d.Start, d.End = d.End, d.Start
	}
	return d
}
