package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Enlarged returns the pieces as they are cut from a cloth that is washed
// later: longer along the warp and wider along the weft by what will be lost; as
// the rules have them cut; and as large as their accuracy lets them be.
func Enlarged(c cloth.Cloth, all []pieces.Piece) []pieces.Piece {
	s := c.Shrinkage
	all = atMost(asRuled(c, all))
	if !s.CutFirst || s.Warp == 0 && s.Weft == 0 {
		return all
	}
	out := make([]pieces.Piece, len(all))
	for i, piece := range all {
		along, across := growth(s, piece.Grain.Lie)
		out[i] = stretched(piece, along, across)
	}
	return out
}

// growth gives the factors along and across the grainline. On the bias each
// direction of the piece loses something of both, depending on which diagonal
// it lies on; the larger factor is safe on either, and for what may lie along or across.
func growth(s cloth.Shrinkage, lie pieces.GrainLie) (along, across float64) {
	warp, weft := 1/(1-s.Warp), 1/(1-s.Weft)
	switch lie {
	case pieces.CrossGrain:
		return weft, warp
	case pieces.Bias, pieces.EitherGrain:
		both := math.Max(warp, weft)
		return both, both
	}
	return warp, weft
}

// stretched makes a piece longer along its grainline and across it. The
// allowances grow by the larger factor: a cloth that shrinks by 5 % takes
// less than 1 mm off an allowance.
func stretched(p pieces.Piece, along, across float64) pieces.Piece {
	m := stretching(motion.AngleOf(p.Grain.From, p.Grain.To), along, across)
	out := p
	out.Grain.From, out.Grain.To = m.Apply(p.Grain.From), m.Apply(p.Grain.To)
	out.Accuracy *= math.Max(along, across)
	out.Edges, out.Notches, out.Darts, out.Marks = nil, nil, nil, nil
	for _, edge := range p.Edges {
		edge.Path = mappedPath(m, edge.Path)
		edge.Allowance *= math.Max(along, across)
		edge.Included *= math.Max(along, across)
		out.Edges = append(out.Edges, edge)
	}
	for _, notch := range p.Notches {
		if edge, ok := p.Edge(notch.Edge); ok {
			notch.At = stretchedDistance(m, edge.Path, notch.At)
		}
		out.Notches = append(out.Notches, notch)
	}
	for _, dart := range p.Darts {
		dart.Start, dart.End = m.Apply(dart.Start), m.Apply(dart.End)
		dart.Apex, dart.OtherApex = m.Apply(dart.Apex), m.Apply(dart.OtherApex)
		out.Darts = append(out.Darts, dart)
	}
	for _, mark := range p.Marks {
		mark.At, mark.Path = m.Apply(mark.At), mappedPath(m, mark.Path)
		out.Marks = append(out.Marks, mark)
	}
	return out
}

// stretching is the affine map with the two factors along an angle and across
// it, about the origin.
func stretching(degrees, along, across float64) pieces.Motion {
	sin, cos := portable.SincosDegrees(motion.WholeTurn(degrees))
	return pieces.Motion{
		A: float64(along*cos*cos) + float64(across*sin*sin), B: (along - across) * sin * cos,
		C: (along - across) * sin * cos, D: float64(along*sin*sin) + float64(across*cos*cos),
	}
}

// mappedPath maps a path by an affine map. Lines and Bezier curves stay what
// they are; an arc, which does not, becomes Bezier curves of 30 degrees or
// less, which follow it to 1e-6 of its radius (Goldapp, CAGD 8, 1991).
func mappedPath(m pieces.Motion, path pieces.Path) pieces.Path {
	var out pieces.Path
	for _, curve := range path {
		switch c := curve.(type) {
		case pieces.Line:
			out = append(out, pieces.Line{From: m.Apply(c.From), To: m.Apply(c.To)})
		case pieces.Bezier:
			out = append(out, mappedBezier(m, c))
		case pieces.Arc:
			for _, b := range beziersOf(c) {
				out = append(out, mappedBezier(m, b))
			}
		}
	}
	return out
}

func mappedBezier(m pieces.Motion, b pieces.Bezier) pieces.Bezier {
	return pieces.Bezier{P0: m.Apply(b.P0), P1: m.Apply(b.P1), P2: m.Apply(b.P2),
		P3: m.Apply(b.P3)}
}

func beziersOf(a pieces.Arc) []pieces.Bezier {
	n := int(math.Ceil(math.Abs(a.Sweep) / (math.Pi / 6)))
	var out []pieces.Bezier
	for i := range n {
		from, to := float64(i)/float64(n), float64(i+1)/float64(n)
		reach := a.Radius * 4 / 3 * portable.Tan(math.Abs(a.Sweep)/float64(n)/4)
		p, q, u, v := a.At(from), a.At(to), a.Tangent(from), a.Tangent(to)
		out = append(out, pieces.Bezier{
			P0: p, P1: orb.Point{p[0] + float64(reach*u[0]), p[1] + float64(reach*u[1])},
			P2: orb.Point{q[0] - float64(reach*v[0]), q[1] - float64(reach*v[1])}, P3: q,
		})
	}
	return out
}

// stretchedDistance is where a place on a path lies after the map, as a
// distance from the start of the mapped path: summed over short chords, and
// scaled so that the whole comes out right.
func stretchedDistance(m pieces.Motion, path pieces.Path, at float64) float64 {
	const chords = 200 // [source.OwnChoice]
	whole := path.Length()
	sum := func(length float64) float64 {
		total, last := 0.0, m.Apply(path.At(0))
		for i := 1; i <= chords; i++ {
			next := m.Apply(path.At(length * float64(i) / chords))
			total += geometry.Distance(last, next)
			last = next
		}
		return total
	}
	if whole == 0 {
		return at
	}
	return math.Min(sum(at)/sum(whole), 1) * mappedPath(m, path).Length()
}
