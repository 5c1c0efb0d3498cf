package pieces

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// Unfolded is the piece that is cut on the fold, laid whole: itself and its
// mirror image about the fold edge, which is gone; the fold is cleared. A
// piece without a fold is returned as it is.
//
// An edge that met the fold runs on over it as one edge under its own name;
// the mirror image of any other edge is called "NAME mirrored". Notches, darts
// and marks are there twice, the images under such names too, except what lies
// on the fold line and so is its own image; a half dart with its apex on the
// fold becomes one dart. The grainline, the counts and the allowances stay.
func (p Piece) Unfolded() Piece {
	at := slices.IndexFunc(p.Edges, func(e Edge) bool { return e.Name == p.Fold })
	if p.Fold == seams.None || at < 0 || len(p.Edges) < 2 {
		return p
	}
	fold := p.Edges[at].Path
	u := unfolding{half: p, mirror: MirrorAbout(fold.Start(), fold.End())}
	u.edges = append(slices.Clone(p.Edges[at+1:]), p.Edges[:at]...)
	out := p
	out.Fold = seams.None
	out.Edges = u.wholeEdges()
	out.Notches = u.notches()
	out.Darts = u.darts()
	out.Marks = u.marks()
	return out
}

// unfolding holds the half piece and its edges from the end of the fold edge
// round to its start.
type unfolding struct {
	half   Piece
	edges  []Edge
	mirror Motion
}

func (u unfolding) first() seams.Name { return u.edges[0].Name }

func (u unfolding) last() seams.Name { return u.edges[len(u.edges)-1].Name }

func (u unfolding) image(e Edge) Edge {
	e = e.mapped(u.mirror)
	e.Name = e.Name.Mirrored()
	return e
}

// wholeEdges runs from the first edge, joined to its image before it, to the
// last, joined to its image after it, and then the other images.
func (u unfolding) wholeEdges() []Edge {
	n := len(u.edges)
	if n == 1 {
		whole := u.edges[0]
		whole.Path = append(slices.Clone(whole.Path), u.image(whole).Path...)
		return []Edge{whole}
	}
	out := slices.Clone(u.edges)
	out[0].Path = append(u.image(u.edges[0]).Path, u.edges[0].Path...)
	out[n-1].Path = append(slices.Clone(u.edges[n-1].Path), u.image(u.edges[n-1]).Path...)
	for i := n - 2; i > 0; i-- {
		out = append(out, u.image(u.edges[i]))
	}
	return out
}

// notches places those on a joined edge by the new length of that edge.
func (u unfolding) notches() []Notch {
	var out []Notch
	for _, n := range u.half.Notches {
		e, ok := u.half.Edge(n.Edge)
		if !ok || n.Edge == u.half.Fold {
			continue
		}
		length := e.Path.Length()
		image := n
		switch {
		case n.Edge == u.last():
			image.At = 2*length - n.At
		case n.Edge == u.first():
			n.At, image.At = length+n.At, length-n.At
		default:
			image.Edge, image.At = n.Edge.Mirrored(), length-n.At
		}
		out = append(out, n)
		if image.Edge != n.Edge || math.Abs(image.At-n.At) > joinTolerance {
			out = append(out, image)
		}
	}
	return out
}

func (u unfolding) darts() []Dart {
	var out []Dart
	for _, d := range u.half.Darts {
		image := d.mapped(u.mirror)
		if whole, ok := u.wholeDart(d, image); ok {
			out = append(out, whole)
			continue
		}
		image.Name, image.Mouth = d.Name.Mirrored(), d.Mouth.Mirrored()
		out = append(out, d, image)
	}
	return out
}

// wholeDart joins a half dart on the fold to its image.
func (u unfolding) wholeDart(d, image Dart) (Dart, bool) {
	switch on := u.half.onFold; {
	case !on(d.Apex) || d.Mouth == seams.None && !on(d.OtherApex):
		return Dart{}, false
	case on(d.Start):
		d.Start = image.Start
	case on(d.End):
		d.End = image.End
	default:
		return Dart{}, false
	}
	return d, true
}

func (u unfolding) marks() []Mark {
	var out []Mark
	for _, m := range u.half.Marks {
		out = append(out, m)
		if u.isOwnImage(m) {
			continue
		}
		m.Name, m.Path, m.At = m.Name.Mirrored(), m.Path.Map(u.mirror), u.mirror.Apply(m.At)
		out = append(out, m)
	}
	return out
}

func (u unfolding) isOwnImage(m Mark) bool {
	points := []orb.Point{m.At}
	if m.Path != nil {
		points = m.Path.Flatten(checkTolerance)
	}
	return !slices.ContainsFunc(points, func(q orb.Point) bool { return !u.half.onFold(q) })
}
