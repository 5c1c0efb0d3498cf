package jigsaw

import (
	"math/rand/v2"

	"github.com/paulmach/orb"
)

// Cut is the shape of the cuts.
type Cut int

const (
	// Straight cuts run along the strip and across it.
	Straight Cut = iota
	// Slanted cuts are straight and meet at corners that are moved.
	Slanted
	// Curved cuts wave between such corners.
	Curved
	// Tongued cuts reach deep into the piece beside, which has a hollow there.
	Tongued
	// Chopped pieces are cut in two one after the other, so that cuts end in the
	// middle of others.
	Chopped
)

// Cuts are all the shapes of cuts.
func Cuts() []Cut { return []Cut{Straight, Slanted, Curved, Tongued, Chopped} }

// String gives the cut as one word, in small letters.
func (c Cut) String() string {
	return [...]string{"straight", "slanted", "curved", "tongued", "chopped"}[c]
}

// cutter cuts one rectangle.
type cutter struct {
	cut           Cut
	columns, rows int
	length, width float64
	random        *rand.Rand
	corner        [][]orb.Point
	// along[j][i] runs from corner (i, j) to (i+1, j), across[i][j] from (i, j)
	// to (i, j+1); both pieces beside a cut have its points.
	along, across [][]orb.LineString
}
