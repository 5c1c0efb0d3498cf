package remnant

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// usualJoin is the allowance of a new seam where the piece has no other, mm
// [source.CommonPractice].
const usualJoin = 10.0

// seamInsteadOfFold cuts a half piece twice, a right and a left.
func seamInsteadOfFold(p pieces.Piece) (pieces.Piece, bool) {
	if p.Fold == seams.None {
		return p, false
	}
	out := withEdges(p)
	for i, e := range out.Edges {
		if e.Name == p.Fold {
			out.Edges[i].Allowance = seamOf(p)
		}
	}
	out.Fold, out.Cut, out.Pair = seams.None, 2*p.Cut, true
	return out, true
}

// seamOf is the allowance that most of the seams of a piece have.
func seamOf(p pieces.Piece) float64 {
	lengths, best := map[float64]float64{}, usualJoin
	for _, e := range p.Edges {
		if width := e.Allowance + e.Included; !e.Hem && e.Name != p.Fold && width > 0 {
			lengths[width] += e.Path.Length()
			if lengths[width] > lengths[best] {
				best = width
			}
		}
	}
	return best
}

// A piece is worth a seam across when it is a band: this long, mm, and so many
// times as long as it is wide [source.OwnChoice].
const (
	leastBand      = 300.0
	leastBandRatio = 2.5
)

// halved cuts a rectangular band in two, with a seam across its middle: a
// right and a left half, each with the allowance of the new seam.
func halved(p pieces.Piece) (pieces.Piece, bool) {
	if len(p.Edges) != 4 || p.Fold != seams.None || len(p.Darts) > 0 {
		return p, false
	}
	var corners []orb.Point
	for _, e := range p.Edges {
		line, straight := e.Path[0].(pieces.Line)
		if len(e.Path) != 1 || !straight {
			return p, false
		}
		corners = append(corners, line.From)
	}
	for i := range corners { // square at every corner
		a, b, c := corners[i], corners[(i+1)%4], corners[(i+2)%4]
		if math.Abs(float64((b[0]-a[0])*(c[0]-b[0]))+float64((b[1]-a[1])*(c[1]-b[1]))) > 1 {
			return p, false
		}
	}
	first := 0
	if p.Edges[1].Path.Length() > p.Edges[0].Path.Length() {
		first = 1
	}
	long, short := p.Edges[first].Path.Length(), p.Edges[1-first].Path.Length()
	if long < leastBand || long < leastBandRatio*short {
		return p, false
	}
	return halfBand(p, corners, first), true
}

// halfBand keeps the half at the start of the long edge first.
func halfBand(p pieces.Piece, corners []orb.Point, first int) pieces.Piece {
	at := func(i int) orb.Point { return corners[(first+i)%4] }
	edge := func(i int) pieces.Edge { return p.Edges[(first+i)%4] }
	near, far := between(at(0), at(1)), between(at(2), at(3))
	line := func(e pieces.Edge, a, b orb.Point) pieces.Edge {
		e.Path = pieces.Path{pieces.Line{From: a, To: b}}
		return e
	}
	out := p
	out.Cut, out.Pair, out.Notches, out.Marks = 2*p.Cut, true, nil, nil
	out.Edges = []pieces.Edge{
		line(edge(0), at(0), near),
		line(pieces.Edge{Name: joinName(p), Allowance: seamOf(p)}, near, far),
		line(edge(2), far, at(3)),
		edge(3),
	}
	middle := between(between(at(0), near), between(far, at(3)))
	dx, dy := p.Grain.To[0]-p.Grain.From[0], p.Grain.To[1]-p.Grain.From[1]
	reach := 0.35 * math.Min(geometry.Distance(at(0), near), geometry.Distance(at(0), at(3))) / portable.Hypot(dx, dy)
	out.Grain.From = orb.Point{middle[0] - float64(reach*dx), middle[1] - float64(reach*dy)}
	out.Grain.To = orb.Point{middle[0] + float64(reach*dx), middle[1] + float64(reach*dy)}
	return out
}

func joinName(p pieces.Piece) seams.Name {
	name := seams.Join
	for slices.ContainsFunc(p.Edges, func(e pieces.Edge) bool { return e.Name == name }) {
		name = seams.Called(name.String() + " again")
	}
	return name
}

func between(a, b orb.Point) orb.Point { return orb.Point{(a[0] + b[0]) / 2, (a[1] + b[1]) / 2} }
