package fabric_test

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// polygon makes a piece of straight edges without allowances, the points
// counter-clockwise, its edges named a, b, c, ...; the grainline runs up
// along y.
func polygon(name string, points ...orb.Point) pieces.Piece {
	piece := pieces.Piece{Name: name, Cut: 1}
	for i, p := range points {
		piece.Edges = append(piece.Edges, pieces.Edge{
			Name: string(rune('a' + i)),
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
	p := polygon("front", orb.Point{0, 0}, orb.Point{220, 0}, orb.Point{200, 240}, orb.Point{160, 400}, orb.Point{0, 330})
	p.Fold = "e"
	return p
}

// sidePanel has no symmetry at all.
func sidePanel() pieces.Piece {
	return polygon("side panel", orb.Point{0, 0}, orb.Point{180, 0}, orb.Point{120, 300}, orb.Point{30, 260})
}

func rectangle(name string, width, height float64, cut int) pieces.Piece {
	p := pieces.Rectangle(name, width, height)
	p.Cut = cut
	return p
}

func pair(p pieces.Piece) pieces.Piece {
	p.Pair = true
	p.Cut = 2
	return p
}

func onGrain(p pieces.Piece, lie pieces.GrainLie) pieces.Piece {
	p.Grain.Lie = lie
	return p
}

func inGarment(garment string, all ...pieces.Piece) []pieces.Piece {
	out := make([]pieces.Piece, len(all))
	for i, p := range all {
		p.Garment = garment
		out[i] = p
	}
	return out
}
