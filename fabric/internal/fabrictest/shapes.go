// Package fabrictest has the pieces and questions that the tests of several rooms
// of fabric share.
package fabrictest

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Half is a rectangle on the fold, given by its half.
func Half(name string, width, height float64, cut int) pieces.Piece {
	p := Polygon(name, orb.Point{0, 0}, orb.Point{width, 0}, orb.Point{width, height}, orb.Point{0, height})
	p.Fold, p.Cut = seams.Called("d"), cut
	return p
}

// Wedges are two right-angled triangles that make a rectangle, each a pair.
func Wedges(name string, width, height float64, cut int) []pieces.Piece {
	lower := Polygon(name+" lower", orb.Point{0, 0}, orb.Point{width, 0}, orb.Point{width, height})
	upper := Polygon(name+" upper", orb.Point{0, 0}, orb.Point{width, height}, orb.Point{0, height})
	lower.Pair, lower.Cut, upper.Pair, upper.Cut = true, cut, true, cut
	return []pieces.Piece{lower, upper}
}

// Notched puts a match point on an edge of a piece.
func Notched(p pieces.Piece, edge seams.Name, at float64, match string) pieces.Piece {
	p.Notches = append(append([]pieces.Notch(nil), p.Notches...),
		pieces.Notch{Edge: edge, At: at, Count: 1, Match: marks.Called(match)})
	return p
}

// Skirt has a front on the fold and a pair of backs that meet at the side, 120
// mm and 90 mm up from their lower edges.
func Skirt() []pieces.Piece {
	front := Notched(Half("front", 200, 500, 1), seams.Called("b"), 120, "side")
	back := Notched(Pair(Polygon("back", orb.Point{0, 0}, orb.Point{190, 0}, orb.Point{170, 470}, orb.Point{0, 450})),
		seams.Called("b"), 90, "side")
	return []pieces.Piece{front, back, Rectangle("band", 60, 400, 2)}
}

// Blouse is the pieces of a plain one, with straight edges.
func Blouse() []pieces.Piece {
	return InGarment("blouse", halfFront(), Pair(SidePanel()), Rectangle("cuff", 90, 240, 2),
		Rectangle("collar", 80, 300, 2))
}

// Polygon makes a piece of straight edges without allowances, the points
// counter-clockwise, its edges named a, b, c, ...; the grainline runs up
// along y.
func Polygon(name string, points ...orb.Point) pieces.Piece {
	piece := pieces.Piece{Name: name, Cut: 1}
	for i, p := range points {
		piece.Edges = append(piece.Edges, pieces.Edge{
			Name: seams.Called(string(rune('a' + i))),
			Path: pieces.Path{pieces.Line{From: p, To: points[(i+1)%len(points)]}},
		})
	}
	centre := orb.Ring(points).Bound().Center()
	piece.Grain = pieces.Grain{From: orb.Point{centre[0], centre[1] - 5}, To: orb.Point{centre[0], centre[1] + 5}}
	return piece
}

// halfFront is a half bodice of straight lines, 220 x 400 mm, its centre
// front (edge "e") on the fold at x = 0.
func halfFront() pieces.Piece {
	p := Polygon("front", orb.Point{0, 0}, orb.Point{220, 0}, orb.Point{200, 240}, orb.Point{160, 400}, orb.Point{0, 330})
	p.Fold = seams.Called("e")
	return p
}

// SidePanel has no symmetry at all.
// SidePanel is a slanted quadrilateral, unlike its mirror image.
func SidePanel() pieces.Piece {
	return Polygon("side panel", orb.Point{0, 0}, orb.Point{180, 0}, orb.Point{120, 300}, orb.Point{30, 260})
}

// Rectangle with a number of copies, mm.
func Rectangle(name string, width, height float64, cut int) pieces.Piece {
	p := pieces.Rectangle(name, width, height)
	p.Cut = cut
	return p
}

// Pair makes a right and a left one of a piece.
func Pair(p pieces.Piece) pieces.Piece {
	p.Pair = true
	p.Cut = 2
	return p
}

// OnGrain lays a piece on a grain.
func OnGrain(p pieces.Piece, lie pieces.GrainLie) pieces.Piece {
	p.Grain.Lie = lie
	return p
}

// InGarment says which garment the pieces are of.
func InGarment(garment string, all ...pieces.Piece) []pieces.Piece {
	out := make([]pieces.Piece, len(all))
	for i, p := range all {
		p.Garment = garment
		out[i] = p
	}
	return out
}
