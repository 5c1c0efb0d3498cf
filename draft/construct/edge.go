package construct

import (
	"slices"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Edge is an edge of a piece, as yet without allowance.
func Edge(name seams.Name, path pieces.Path) pieces.Edge { return pieces.Edge{Name: name, Path: path} }

// SeamLength is the length of a seam of a piece, its darts closed: all its
// edges but the mouths of darts.
func SeamLength(piece pieces.Piece, of seams.Name) float64 {
	sum := 0.0
	for _, edge := range piece.Edges {
		if edge.Name.Seam() == of && !edge.Name.IsMouth() {
			sum += edge.Path.Length()
		}
	}
	return sum
}

// Seams lists the seams of a piece, each once, in the order of its edges.
func Seams(piece pieces.Piece) []seams.Name {
	var out []seams.Name
	for _, edge := range piece.Edges {
		if name := edge.Name.Seam(); !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}
