package construct

import (
	"cmp"
	"math"
	"slices"
	"strings"

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

// Complete returns the draft with a numbered point at every place that a piece
// needs and that the steps have not set: the ends of its edges, of the curves
// that they are made of, and of its darts. Each is set from the nearest point
// of the draft, so that roundings do not add up. The last step names the
// outline by its points.
func (s Sheet) Complete(piece pieces.Piece) Sheet {
	s.Points, s.Steps = slices.Clip(s.Points), slices.Clip(s.Steps)
	places := append(guidePlaces(s.Guides, piece), outlinePlaces(piece)...)
	if len(piece.Edges) == 0 {
		return s
	}
	if len(s.Points) == 0 {
		first := lowest(piece)
		s.Start(first.at[0], first.at[1], first.rule)
	}
	drafted := s.Points
	for _, place := range places {
		if _, set := s.PointAt(place.at); set {
			continue
		}
		if len(s.Points) == len(drafted) && len(drafted) > 1 {
			s.Draw("number the places that are left, for the outline; they come to lie so:", "")
		}
		s.Offset(nearest(drafted, place.at), place.at, place.rule)
		// It is no construction line: none is drawn there.
		s.Steps[len(s.Steps)-1].From = 0
	}
	s.Draw("go over the outline: "+s.outline(piece), "")
	return s
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
		out = append(out, place{d.Start, "a leg of " + name}, place{d.Apex, "the point of " + name}, place{d.End, "the other leg of " + name})
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

// lowest is the lowest corner on the left.
func lowest(piece pieces.Piece) place {
	var first place
	for i, edge := range piece.Edges {
		at := edge.Path.Start()
		if i == 0 || at[0]+at[1] < first.at[0]+first.at[1]-1e-6 {
			before := piece.Edges[(i+len(piece.Edges)-1)%len(piece.Edges)]
			first = place{at, cornerRule(piece, before, edge)}
		}
	}
	return first
}

func nearest(points []Point, at orb.Point) Point {
	away := func(p Point) float64 { return math.Round(1000 * Distance(p.At, at)) }
	return slices.MinFunc(points, func(a, b Point) int { return cmp.Compare(away(a), away(b)) })
}

// outline names the edges in their order by the points that they run through:
// "hem 1-4, side 4-7-9"; a dart by its legs and its point.
func (s Sheet) outline(piece pieces.Piece) string {
	words := make([]string, len(piece.Edges))
	for i, edge := range piece.Edges {
		name, through := edge.Name.Seam(), []orb.Point{edge.Path.Start()}
		for _, curve := range edge.Path {
			through = append(through, curve.End())
		}
		for _, d := range piece.Darts {
			if d.Mouth == edge.Name {
				name, through = d.Name.Unnumbered(), []orb.Point{d.Start, d.Apex, d.End}
			}
		}
		words[i] = name.String() + " " + Numbers(s.pointsAt(through)...)
	}
	return strings.Join(words, ", ")
}

// pointsAt are the numbered points among places.
func (s Sheet) pointsAt(places []orb.Point) []Point {
	var out []Point
	for _, at := range places {
		if p, set := s.PointAt(at); set {
			out = append(out, p)
		}
	}
	return out
}
