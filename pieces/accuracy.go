package pieces

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// AtMost is the piece as large as it may be: cut outside its outline by its
// accuracy, on every edge but the fold. What is laid so has room for the true one;
// only where two allowances differ along one line may their step lie elsewhere.
func (p Piece) AtMost() Piece {
	if p.Accuracy == 0 {
		return p
	}
	out := p
	out.Edges = slices.Clone(p.Edges)
	for i, e := range p.Edges {
		if e.Name != p.Fold {
			out.Edges[i].Allowance = e.Allowance + p.Accuracy
		}
	}
	return out
}

// AtLeast is the piece as small as it may be: its cutting outline, cut inside by
// its accuracy everywhere but on the fold, as one edge without allowance beside the
// fold. The true one covers all of it, so that what is proven of it is proven. It
// reports false where nothing is left of it.
func (p Piece) AtLeast() (Piece, bool) {
	if p.Accuracy == 0 {
		return p, true
	}
	ring, err := p.CuttingOutline(trimTolerance)
	if err != nil {
		return p, false
	}
	around, onFold := p.partedAtFold(ring)
	out := p
	out.Accuracy, out.Darts, out.Notches = 0, nil, nil
	out.Edges = []Edge{{Name: seams.Edge, Path: around}}
	if len(onFold) > 0 {
		out.Edges = append(out.Edges, Edge{Name: p.Fold, Path: onFold})
	}
	out, err = out.Trimmed(func(e Edge) float64 {
		if e.Name == p.Fold {
			return 0
		}
		return p.Accuracy + 2*trimTolerance
	})
	if err != nil {
		return p, false
	}
	for _, n := range p.Notches {
		if e, ok := p.Edge(n.Edge); ok && n.Edge != p.Fold {
			at := out.Edges[0].Path.nearest(e.Path.At(n.At))
			out.Notches = append(out.Notches, Notch{Edge: seams.Edge, At: at, Count: n.Count, Match: n.Match})
		}
	}
	return out, true
}

// partedAtFold gives a ring as the chain of lines that leaves the fold and comes
// back to it, and the one line on the fold; all round where there is no fold.
func (p Piece) partedAtFold(ring orb.Ring) (around, onFold Path) {
	fold, ok := p.Edge(p.Fold)
	points := []orb.Point(ring[:len(ring)-1])
	if p.Fold != seams.None && ok {
		from, to := fold.Path.Start(), fold.Path.End()
		points = OpenedAt(ring, from, to)
		u := geometry.Unit(geometry.Sub(to, from))
		for _, end := range []*orb.Point{&points[0], &points[len(points)-1]} { // exactly on the line of the fold
			*end = geometry.Add(from, geometry.Times(u, geometry.Dot(geometry.Sub(*end, from), u)))
		}
		onFold = Path{Line{points[len(points)-1], points[0]}}
	} else {
		points = append(points, points[0])
	}
	points = apart(points)
	for i := 1; i < len(points); i++ {
		around = append(around, Line{points[i-1], points[i]})
	}
	return around, onFold
}
