package construct

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// DartAt is a dart to be set into a seam.
type DartAt struct {
	// Share is where its middle lies on the straight line between the ends of
	// the seam: 0 at the beginning, 1 at the end.
	Share float64
	// Width between its legs, measured on that line; Length from the line to
	// its point, square to it.
	Width, Length float64
}

// DartedSeam draws a seam from one point to another, in the direction of the
// outline (the piece on its left), with darts between, in their order. It
// leaves and arrives in the directions given and meets both legs of every dart
// squarely, so that it runs on smoothly when they are closed. The darts are
// pressed towards the end of the seam.
//
// The edges are called after the seam: "waist", or with darts "waist 1",
// "waist mouth 1", "waist 2" and so on.
func DartedSeam(of seams.Name, from, leaving, to, arriving orb.Point, darts []DartAt) ([]pieces.Edge, []pieces.Dart) {
	if len(darts) == 0 {
		return []pieces.Edge{Edge(of, Curve(from, leaving, gentle, to, arriving, gentle))}, nil
	}
	start, way := from, Direction(from, to)
	var edges []pieces.Edge
	var made []pieces.Dart
	for i, d := range darts {
		middle := Between(start, to, d.Share)
		apex := Go(middle, Square(way), d.Length)
		first, second := Go(middle, way, -d.Width/2), Go(middle, way, d.Width/2)
		edges = append(edges, Edge(of.Stretch(i+1),
			Curve(from, leaving, gentle, first, Square(Direction(apex, first)), gentle)))
		from, leaving = second, Square(Direction(apex, second))
		mouth := DartMouth(second, apex, first, leaving).Reverse()
		dart := pieces.Dart{
			Name: of.Dart(i + 1), Mouth: of.Mouth(i + 1),
			Start: first, Apex: apex, End: second,
		}
		edges = append(edges, Edge(dart.Mouth, mouth))
		made = append(made, dart)
	}
	last := of.Stretch(len(darts) + 1)
	return append(edges, Edge(last, Curve(from, leaving, gentle, to, arriving, gentle))), made
}

// gentle is the pull of a gentle curve [source.OwnChoice].
const gentle = 1. / 3

// EdgesLength is the length of a seam among edges, its darts closed.
func EdgesLength(edges []pieces.Edge, of seams.Name) float64 {
	return SeamLength(pieces.Piece{Edges: edges}, of)
}
