package dxf

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

const (
	// sameSpot, mm, is how near a turn or a curve point lies to its point of the
	// boundary; of several that near the nearest is meant [source.OwnChoice].
	sameSpot = 0.05
	// crowd is how many points in one spot are told apart [source.OwnChoice].
	crowd = 20
)

// spots are numbered points that are looked for by their place.
type spots map[[2]int64][]spot

type spot struct {
	at     orb.Point
	number int
}

func square(p orb.Point) [2]int64 {
	return [2]int64{int64(math.Floor(p[0] / sameSpot)), int64(math.Floor(p[1] / sameSpot))}
}

func (s spots) add(p orb.Point, number int) {
	if at := square(p); len(s[at]) < crowd {
		s[at] = append(s[at], spot{p, number})
	}
}

// nearest is the number of the point nearest to a place; -1 for none in its spot.
func (s spots) nearest(p orb.Point) int {
	at := square(p)
	best, out := sameSpot, -1
	for dx := int64(-1); dx <= 1; dx++ {
		for dy := int64(-1); dy <= 1; dy++ {
			for _, one := range s[[2]int64{at[0] + dx, at[1] + dy}] {
				if d := geometry.Distance(one.at, p); d < best {
					best, out = d, one.number
				}
			}
		}
	}
	return out
}
