package dxf

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// sameSpot, mm, is how near a turn or a curve point lies to its point of the boundary
// [source.OwnChoice].
const sameSpot = 0.02

// spots are numbered points that are looked for by their place.
type spots map[[2]int64]spot

type spot struct {
	at     orb.Point
	number int
}

func square(p orb.Point) [2]int64 {
	return [2]int64{int64(math.Floor(p[0] / sameSpot)), int64(math.Floor(p[1] / sameSpot))}
}

// add a point; of several in one place the first stays.
func (s spots) add(p orb.Point, number int) {
	if _, taken := s[square(p)]; !taken {
		s[square(p)] = spot{p, number}
	}
}

// near is the number of a point at a place; -1 for none.
func (s spots) near(p orb.Point) int {
	at := square(p)
	for dx := int64(-1); dx <= 1; dx++ {
		for dy := int64(-1); dy <= 1; dy++ {
			if one, ok := s[[2]int64{at[0] + dx, at[1] + dy}]; ok && geometry.Distance(one.at, p) <= sameSpot {
				return one.number
			}
		}
	}
	return -1
}
