package search

import (
	"ellwand/nest/internal/nofit"
)

// neighbour is a body that a piece may overlap while it moves in a region.
type neighbour struct {
	x, y, hx, hy float64
	factor       float64 // weight of the pair x factor of the neighbour
	pair         *shapePair
	index        int32
}

// scratch is memory used again from move to move.
type scratch struct {
	near, moved []neighbour
	order       []int
	linear      []linear
	field       nofit.Field
	candidates  []candidate
}

// linear is one neighbour's overlap near a spot, as a plane: the depth there,
// negative where the two are apart, how it grows along x and y, and what a
// unit of it costs.
type linear struct{ depth, gx, gy, factor float64 }

// candidate is a spot with about what it costs.
type candidate struct {
	at   Spot
	cost float32
}
