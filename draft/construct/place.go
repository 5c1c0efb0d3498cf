package construct

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// near is how far, in mm, a place may lie from a numbered point and be called
// by its number: less than a pencil line [source.OwnChoice].
const near = 0.3

// PointAt is the last numbered point at a place, and whether there is one.
func (s Sheet) PointAt(at orb.Point) (Point, bool) {
	for _, p := range slices.Backward(s.Points) {
		if Distance(p.At, at) < near {
			return p, true
		}
	}
	return Point{}, false
}

// place is where a numbered point is needed, and what it is.
type place struct {
	at   orb.Point
	rule string
}

// guidePlaces are the ends of the curves that a later step moves or cuts away.
func guidePlaces(guides []Guide, piece pieces.Piece) []place {
	var out []place
	for _, g := range guides {
		rule := "on the " + g.Line()
		if g.Of == "" && slices.Contains(Seams(piece), g.Edge.Unnumbered()) {
			rule += " as first drawn"
		}
		out = append(out, place{g.Path.Start(), rule})
		for _, curve := range g.Path {
			out = append(out, place{curve.End(), rule})
		}
	}
	return out
}

// outlinePlaces are the corners of a piece, the joints of its curves, and the
// ends of its darts.
func outlinePlaces(piece pieces.Piece) []place {
	var out []place
	for i, edge := range piece.Edges {
		before := piece.Edges[(i+len(piece.Edges)-1)%len(piece.Edges)]
		out = append(out, place{edge.Path.Start(), cornerRule(piece, before, edge)})
		if edge.Name.IsMouth() {
			continue
		}
		for k, curve := range edge.Path[:len(edge.Path)-1] {
			if !runsOn(curve, edge.Path[k+1]) {
				out = append(out, place{curve.End(), "on the " + edge.Name.Seam().String()})
			}
		}
	}
	for _, d := range piece.Darts {
		name := dartNamed(d.Name)
		out = append(out, place{d.Start, "a leg of " + name}, place{d.Apex, "the point of " + name},
			place{d.End, "the other leg of " + name})
		if d.Mouth == seams.None {
			out = append(out, place{d.OtherApex, "the lower point of " + name})
		}
	}
	return out
}

// dartNamed is a dart among words: "the side dart", "waist dart 1".
func dartNamed(name seams.Name) string {
	if name.Order() > 0 {
		return name.String()
	}
	return "the " + name.String()
}

// runsOn says that two lines are one straight line.
func runsOn(a, b pieces.Curve) bool {
	_, straight := a.(pieces.Line)
	_, too := b.(pieces.Line)
	return straight && too && Distance(a.Tangent(1), b.Tangent(0)) < 1e-6
}

// cornerRule says what lies where two edges meet.
func cornerRule(piece pieces.Piece, before, after pieces.Edge) string {
	for _, d := range piece.Darts {
		if d.Mouth != seams.None && (d.Mouth == before.Name || d.Mouth == after.Name) {
			return "a leg of " + dartNamed(d.Name)
		}
	}
	if before.Name.Seam() == after.Name.Seam() {
		return "on the " + after.Name.Seam().String()
	}
	return "where " + before.Name.Seam().String() + " and " + after.Name.Seam().String() + " meet"
}
