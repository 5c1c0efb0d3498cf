package pieces

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// AtSeam is the piece drawn by its seam line: every cutting line whose allowance is
// known is moved in by that, which becomes the allowance of the edge. Edges of
// unknown allowance stay where they are. Edges that move become chains of lines
// within 0.02 mm of the true ones.
//
// The error is a Fault that says where an allowance leaves nothing of the piece.
func (p Piece) AtSeam() (Piece, error) {
	if !slices.ContainsFunc(p.Edges, func(e Edge) bool { return e.Included > 0 }) {
		return p, nil
	}
	out, err := p.Trimmed(func(e Edge) float64 { return e.Included })
	if err != nil {
		return p, err
	}
	for i := range out.Edges {
		e := &out.Edges[i]
		e.Allowance, e.Included = e.Allowance+p.Edges[i].Included, 0
	}
	return out, nil
}

// Seam is the piece drawn by its seam line as AtSeam has it, or as it stands where that
// is not known.
func (p Piece) Seam() Piece {
	if seam, err := p.AtSeam(); err == nil {
		return seam
	}
	return p
}

// trimTolerance, mm, of the chords along which curves are trimmed.
const trimTolerance = 0.01

// Trimmed is the piece with a strip cut off inside each edge, so wide as is said,
// mm: neighbours meet where their new lines do. What an edge includes is less by
// as much; its allowance stays. Notches move square to their edge, a dart's legs
// to the new ends of its mouth.
//
// The error is a Fault that says where nothing is left.
func (p Piece) Trimmed(by func(Edge) float64) (Piece, error) {
	chords := p.innerChords(by)
	for meetAll(chords); ; meetAll(chords) {
		left := forward(chords)
		if len(left) == len(chords) {
			break
		}
		if chords = left; len(chords) < 3 {
			return p, p.tooWide(p.Edges[0])
		}
	}
	out := p
	out.Edges = slices.Clone(p.Edges)
	for i, e := range p.Edges {
		path := pathOf(chords, i)
		if path.Length() <= joinTolerance {
			return p, p.tooWide(e)
		}
		out.Edges[i].Path, out.Edges[i].Included = path, math.Max(0, e.Included-by(e))
	}
	out.Notches, out.Darts = p.trimmedNotches(out, by), p.trimmedDarts(out)
	ring, names := out.labelled()
	if _, at, _, meets := selfIntersection(ring); meets || geometry.Area(ring) < 1 {
		e, _ := p.Edge(names[at])
		return p, p.tooWide(e)
	}
	return out, nil
}

func (p Piece) tooWide(e Edge) error {
	return p.fault(Fault{Of: NothingInside, Edge: e.Name})
}

// innerChord is one of an edge, moved in.
type innerChord struct {
	edge     int
	width    float64
	u        orb.Point // direction of travel
	a, b     orb.Point // its ends when moved square to itself
	from, to orb.Point // its ends where it meets its neighbours
}

func (p Piece) innerChords(by func(Edge) float64) []innerChord {
	var out []innerChord
	for i, e := range p.Edges {
		width := by(e)
		points := apart(e.Path.Flatten(trimTolerance))
		for k := 1; k < len(points); k++ {
			u := geometry.Unit(geometry.Sub(points[k], points[k-1]))
			in := geometry.Times(geometry.Left(u), width)
			out = append(out, innerChord{edge: i, width: width, u: u, a: geometry.Add(points[k-1], in),
				b: geometry.Add(points[k], in)})
		}
	}
	return out
}

// meetAll gives every chord its ends: where its line meets that of the next.
func meetAll(chords []innerChord) {
	for i := range chords {
		c, next := &chords[i], &chords[(i+1)%len(chords)]
		c.to, next.from = c.b, next.a
		turn := geometry.Cross(c.u, next.u)
		if math.Abs(turn) < 1e-9 {
			if c.width == next.width {
				c.to = geometry.Between(c.b, next.a, 0.5)
				next.from = c.to
			}
			continue
		}
		at := geometry.Add(c.b, geometry.Times(c.u, geometry.Cross(geometry.Sub(next.a, c.b), next.u)/turn))
		// Where two widths run on one way, a step joins them [source.OwnChoice].
		const farthest = 4
		if c.width == next.width || geometry.Distance(at, c.b) < farthest*math.Max(c.width, next.width) {
			c.to, next.from = at, at
		}
	}
}

// forward leaves out the chords that run back, as they do in a bend tighter than the
// width or at a corner that cuts them off: of neighbours those that run back the
// furthest first, since the others may run forward without them.
func forward(chords []innerChord) []innerChord {
	back := make([]float64, len(chords))
	for i, c := range chords {
		back[i] = geometry.Dot(geometry.Sub(c.from, c.to), c.u)
	}
	out := make([]innerChord, 0, len(chords))
	for i, c := range chords {
		before, after := back[(i+len(back)-1)%len(back)], back[(i+1)%len(back)]
		if back[i] > 1e-9 && back[i] >= before && (back[i] > after || i+1 == len(back)) {
			continue
		}
		out = append(out, c)
	}
	return out
}

// pathOf an edge are its chords, with the step to the first where there is one.
func pathOf(chords []innerChord, edge int) Path {
	var points []orb.Point
	for i, c := range chords {
		if c.edge != edge {
			continue
		}
		if before := chords[(i+len(chords)-1)%len(chords)]; before.to != c.from {
			points = append(points, before.to)
		}
		points = append(points, c.from, c.to)
	}
	points = apart(points)
	var out Path
	for i := 1; i < len(points); i++ {
		out = append(out, Line{points[i-1], points[i]})
	}
	return out
}

func (p Piece) trimmedNotches(to Piece, by func(Edge) float64) []Notch {
	var out []Notch
	for _, n := range p.Notches {
		if e, ok := p.Edge(n.Edge); ok {
			at := geometry.Add(e.Path.At(n.At), geometry.Times(geometry.Left(e.Path.Tangent(n.At)), by(e)))
			moved, _ := to.Edge(n.Edge)
			n.At = moved.Path.nearest(at)
		}
		out = append(out, n)
	}
	return out
}

// nearest is the distance along a chain of lines of its point nearest to another.
func (p Path) nearest(to orb.Point) float64 {
	best, least, before := 0.0, math.Inf(1), 0.0
	for _, c := range p {
		from, end, length := c.Start(), c.End(), c.Length()
		along := math.Min(length, math.Max(0,
			geometry.Dot(geometry.Sub(to, from), geometry.Unit(geometry.Sub(end, from)))))
		if d := geometry.Distance(to, geometry.Add(from,
			geometry.Times(geometry.Unit(geometry.Sub(end, from)), along))); d < least {
			best, least = before+along, d
		}
		before += length
	}
	return best
}

func (p Piece) trimmedDarts(to Piece) []Dart {
	var out []Dart
	for _, d := range p.Darts {
		if mouth, ok := to.Edge(d.Mouth); ok && d.Mouth != seams.None {
			d.Start, d.End = mouth.Path.Start(), mouth.Path.End()
		}
		out = append(out, d)
	}
	return out
}

// SeamOutline is the seam line as drawn (the half piece, when it is cut on the
// fold): closed, counter-clockwise, its chords within the tolerance (mm) of
// the curves; where that is not known the cutting line. A piece without edges
// gives an empty ring.
func (p Piece) SeamOutline(tolerance float64) orb.Ring {
	return p.Seam().Boundary(tolerance)
}
