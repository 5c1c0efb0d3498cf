package construct

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

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
