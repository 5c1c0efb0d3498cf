package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// round is the upper part of a half of the head: from the end of its hollow, or
// from a notch, over its fullest place to the crown, where it is level. Its bend
// changes evenly up to the fullest place and from there to the crown.
type round struct {
	start node
	// turn is where the head stops being hollow, fullest where its bend stops
	// growing, half where half of the way from there is done, crown where it is
	// highest.
	turn, fullest, half, crown node
}

// Where the round may be fullest, as a share of its length, and how flat the crown
// may be [source.OwnChoice].
const (
	soonest = 0.05
	latest  = 0.9
	// flattest is the most that the radius of the crown is of the length of a
	// round: a flatter one would soon hollow out.
	flattest = 8
)

// upper is what a round is drawn for: from a node up, so long and to such a height.
type upper struct {
	start          node
	length, height float64
}

// round of a crown that bends so much, fullest after a share of its length.
func (u upper) round(rising, crownBend float64) round {
	up, over := rising*u.length, (1-rising)*u.length
	// The crown is level: that says how much the fullest place bends.
	bend := -(2*u.start.heading + up*u.start.bend + over*crownBend) / u.length
	r := round{start: u.start, fullest: u.start.after(up, bend)}
	r.half = r.fullest.after(over/2, (bend+crownBend)/2)
	r.crown = r.half.after(over/2, crownBend)
	return r
}

// crownBend is how much the crown bends of a round that is fullest after a share
// of its length, as near to its height as can be.
func (u upper) crownBend(rising float64) float64 {
	above := func(bend float64) float64 { return u.round(rising, bend).crown.at[1] - u.height }
	flat := -1 / (flattest * u.length)
	// Rounder, the fullest place would not bend at all.
	roundest := -(2*u.start.heading + rising*u.length*u.start.bend) / ((1 - rising) * u.length)
	switch {
	case roundest > flat || above(flat) > 0:
		return flat
	case above(roundest) < 0:
		return roundest
	}
	return root(roundest, flat, 1e-9, above)
}

// rounds draws both halves to one crown; rising is the share of their length after
// which they are fullest, as near as can be. ok is false where no crown suits both.
func rounds(uppers [2]upper, rising float64) (both [2]round, ok bool) {
	bend := (uppers[0].crownBend(rising) + uppers[1].crownBend(rising)) / 2
	// Each half has crowns that it can be drawn to: take the nearest that both have.
	for _, u := range uppers {
		bend = min(bend, u.crownBend(latest))
	}
	for _, u := range uppers {
		bend = max(bend, u.crownBend(soonest))
	}
	for i, u := range uppers {
		if both[i], ok = u.to(bend); !ok {
			return both, false
		}
	}
	return both, true
}

// heightExact is how exactly the height of the crown is met, in mm
// [source.OwnChoice].
const heightExact = 1e-6

// to is the round to a crown that bends so much: the later it is fullest, the
// higher is the crown. ok is false where no place makes it as high.
func (u upper) to(crownBend float64) (r round, ok bool) {
	above := func(rising float64) float64 { return u.round(rising, crownBend).crown.at[1] - u.height }
	return u.sound(root(soonest, latest, 1e-9, above), crownBend)
}

// after is the round that is fullest after a share of its length, whatever its
// crown bends.
func (u upper) after(rising float64) (r round, ok bool) {
	return u.sound(rising, u.crownBend(rising))
}

// sound is a round that reaches its height, and is no hollow above its turn; ok is
// false for another.
func (u upper) sound(rising, crownBend float64) (r round, ok bool) {
	r = u.round(rising, crownBend)
	r.turn = u.start
	if u.start.bend > 0 {
		share := u.start.bend / (u.start.bend - r.fullest.bend)
		r.turn = u.start.after(share*rising*u.length, 0)
	}
	return r, math.Abs(r.crown.at[1]-u.height) < heightExact && r.fullest.bend < 0 && r.crown.bend < 0
}

// places that the round goes through after its start, up to the crown.
func (r round) places() []orb.Point {
	all := []orb.Point{r.fullest.at, r.half.at, r.crown.at}
	if r.start.bend > 0 {
		all = slices.Insert(all, 0, r.turn.at)
	}
	return all
}

// bendExact is how exactly the bend at an end of a curve is met, for each mm
// [source.OwnChoice].
const bendExact = 1e-7

// through is the smooth curve through places up to the crown, which is level
// there and has a bend, so that both halves of the head have the same; ok is
// false where it cannot.
func through(leaving orb.Point, places []orb.Point, crownBend float64) (path pieces.Path, ok bool) {
	speed, ok := settled(crownBend, func(speed float64) float64 {
		return endOf(construct.Through(leaving, places, orb.Point{speed, 0})).bend
	})
	return construct.Through(leaving, places, orb.Point{speed, 0}), ok
}

// throughFrom is the like from a node, whose bend it takes up.
func throughFrom(start node, places []orb.Point, crownBend float64) (path pieces.Path, ok bool) {
	speed := 1.0
	for range 12 {
		way := start.way()
		leaving := orb.Point{speed * way[0], speed * way[1]}
		if path, ok = through(leaving, places, crownBend); !ok {
			return path, false
		}
		if math.Abs(startBend(path)-start.bend) < bendExact {
			return path, true
		}
		arriving := path[len(path)-1].(pieces.Bezier)
		reach := 3 * (arriving.P3[0] - arriving.P2[0]) / construct.Distance(arriving.P0, arriving.P3)
		speed, ok = settled(start.bend, func(speed float64) float64 {
			return startBend(construct.Through(orb.Point{speed * way[0], speed * way[1]}, places, orb.Point{reach, 0}))
		})
		if !ok {
			// A bend of next to nothing: the eye does not see what is left.
			speed = 1
		}
	}
	return path, math.Abs(startBend(path)-start.bend) < 1e-3
}

// startBend is the bend at the start of a path.
func startBend(path pieces.Path) float64 { return -endOf(pieces.Path{path[0].Reverse()}).bend }

// settled finds the speed at the end of a curve at which its bend there is as
// wanted: the faster, the less it bends.
func settled(wanted float64, bend func(speed float64) float64) (speed float64, ok bool) {
	// Speeds between which a curve goes on smoothly [source.OwnChoice].
	const slow, fast = 0.3, 3.0
	over := func(speed float64) float64 { return math.Abs(bend(speed)) - math.Abs(wanted) }
	if over(slow) < 0 || over(fast) > 0 {
		return 1, false
	}
	speed = root(slow, fast, 1e-10, over)
	return speed, math.Abs(bend(speed)-wanted) < bendExact
}
