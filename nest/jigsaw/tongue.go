package jigsaw

import "github.com/paulmach/orb"

// Figures of a tongue, our own choice, as shares of the cut: where its sides begin and
// how far in its tip is narrower; and of the shortest piece beside the cut: how deep it
// reaches into one. All of a row reach the same way, so that none meet.
const (
	tongueFrom  = 0.35
	tongueTo    = 0.65
	tongueTaper = 0.05
	tongueDeep  = 0.4
)

// narrowest is the shortest distance between a line of corners across and those
// before and behind it.
func (c *cutter) narrowest(i int) float64 {
	least := c.length
	for _, k := range []int{i - 1, i} {
		for j := range c.corner[k] {
			least = min(least, c.corner[k+1][j][0]-c.corner[k][j][0])
		}
	}
	return least
}

// tongue is a cut from a to b of which the middle reaches deep into the piece on the
// left, or on the right, so that one piece has a tongue and the other a hollow.
func tongue(a, b orb.Point, length float64, isLeft bool) orb.LineString {
	deep := float64(tongueDeep * length)
	if isLeft {
		deep = -deep
	}
	at := func(t, off float64) orb.Point {
		return orb.Point{a[0] + float64(t*(b[0]-a[0])) + off, a[1] + float64(t*(b[1]-a[1]))}
	}
	return orb.LineString{
		a, at(tongueFrom, 0), at(tongueFrom+tongueTaper, deep), at(tongueTo-tongueTaper, deep), at(tongueTo, 0), b,
	}
}
