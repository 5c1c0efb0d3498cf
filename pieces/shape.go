package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// joinTolerance is how near, in mm, two things must be to count as meeting:
// the ends of neighbouring edges, a dart's legs and its mouth.
const joinTolerance = 0.001

// Edge returns the edge of that name.
func (p Piece) Edge(name seams.Name) (Edge, bool) {
	for _, e := range p.Edges {
		if e.Name == name {
			return e, true
		}
	}
	return Edge{}, false
}

// SeamOutline is the seam line as drawn (the half piece, when it is cut on the
// fold): closed, counter-clockwise, its chords within the tolerance (mm) of
// the curves; where that is not known the cutting line. A piece without edges
// gives an empty ring.
func (p Piece) SeamOutline(tolerance float64) orb.Ring {
	if seam, err := p.AtSeam(); err == nil {
		p = seam
	}
	return p.Boundary(tolerance)
}

// Boundary is the line of the edges as they stand, be it the seam line or a
// cutting line that came from elsewhere: closed, counter-clockwise, its chords
// within the tolerance (mm) of the curves.
func (p Piece) Boundary(tolerance float64) orb.Ring {
	var ring orb.Ring
	for _, e := range p.Edges {
		points := e.Path.Flatten(tolerance)
		if len(points) > 0 {
			ring = append(ring, points[:len(points)-1]...)
		}
	}
	if len(ring) > 0 {
		ring = append(ring, ring[0])
	}
	return ring
}

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
	out.Accuracy *= m.scale()
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
	e.Path, e.Allowance, e.Included = e.Path.Map(m), e.Allowance*m.scale(), e.Included*m.scale()
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

// finite reports whether every number is one.
func finite(numbers ...float64) bool {
	for _, x := range numbers {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}
