package fabrictest

import (
	"math/rand/v2"
)

// Tile is a rectangle of a jigsaw: along the warp and across.
type Tile struct{ X, Y, Along, Across float64 }

// Guillotine cuts a rectangle from edge to edge, and the parts again. All cuts
// are at whole multiples of the units.
func Guillotine(r *rand.Rand, whole Tile, unitX, unitY float64, cuts int) []Tile {
	tiles := []Tile{whole}
	for range cuts {
		k := r.IntN(len(tiles))
		t := tiles[k]
		if r.IntN(2) == 0 {
			if n := int(t.Along/unitX + 0.5); n > 1 {
				at := unitX * float64(1+r.IntN(n-1))
				tiles[k].Along = at
				tiles = append(tiles, Tile{t.X + at, t.Y, t.Along - at, t.Across})
			}
			continue
		}
		if n := int(t.Across/unitY + 0.5); n > 1 {
			at := unitY * float64(1+r.IntN(n-1))
			tiles[k].Across = at
			tiles = append(tiles, Tile{t.X, t.Y + at, t.Along, t.Across - at})
		}
	}
	return tiles
}
