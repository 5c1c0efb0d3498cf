package fabrictest

import "ellwand/pieces"

// PlainBlouse is one of rectangles: a pair of fronts, so many backs, a pair of sleeves.
func PlainBlouse(backs int) []pieces.Piece {
	return InGarment("blouse", Pair(Rectangle("front", 330, 500, 2)), Rectangle("back", 480, 560, backs),
		Pair(Rectangle("sleeve", 350, 450, 2)))
}
