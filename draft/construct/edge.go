package construct

import (
	"slices"
	"strings"

	"ellwand/pieces"
)

// Edge is an edge of a piece, as yet without allowance.
func Edge(name string, path pieces.Path) pieces.Edge { return pieces.Edge{Name: name, Path: path} }

// SeamOf is the seam that an edge belongs to: "waist" of the edges "waist 1",
// "waist mouth 1" and "waist 2", into which darts cut it.
func SeamOf(edge string) string {
	seam := strings.TrimRight(edge, " 0123456789")
	return strings.TrimSuffix(seam, " mouth")
}

// SeamLength is the length of a seam of a piece, its darts closed: all its
// edges but the mouths of darts.
func SeamLength(piece pieces.Piece, seam string) float64 {
	sum := 0.0
	for _, edge := range piece.Edges {
		if SeamOf(edge.Name) == seam && !strings.Contains(edge.Name, " mouth") {
			sum += edge.Path.Length()
		}
	}
	return sum
}

// Seams lists the seams of a piece, each once, in the order of its edges.
func Seams(piece pieces.Piece) []string {
	var out []string
	for _, edge := range piece.Edges {
		if name := SeamOf(edge.Name); !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}
