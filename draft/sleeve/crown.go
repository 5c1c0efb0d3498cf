package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// round is the upper part of a half of the head: from a node in the hollow, or
// just above it, over its fullest place to the crown, where it is level. Its
// bend changes evenly up to the fullest place and from there to the crown.
type round struct {
	start node
	// turn is where the hollow ends, fullest where the head is roundest, half where
	// half of the way from there is done, crown where it is highest.
	turn, fullest, half, crown node
}

// flattest is the most that the radius of the crown is of the length of a round
// [source.OwnChoice]: a flatter one would soon hollow out.
const flattest = 5

// roundTo finds the round that is so long, to a crown at a height; rising is
// how far along it the fullest place lies. ok is false where it would hollow
// out again before the crown.
func roundTo(start node, rising, length, height float64) (r round, ok bool) {
	over := func(bend float64) (round, float64) {
		// The crown is level: that leaves one bend to choose.
		last := -2*(start.heading+rising*(start.bend+bend)/2)/(length-rising) - bend
		r := round{start: start, fullest: start.after(rising, bend)}
		r.half = r.fullest.after((length-rising)/2, (bend+last)/2)
		r.crown = r.half.after((length-rising)/2, last)
		return r, r.crown.at[1] - height
	}
	// The sooner it bends, the lower is its crown.
	low, high := -20/length, 0.0
	if _, above := over(high); above < 0 {
		return r, false
	}
	if _, above := over(low); above > 0 {
		return r, false
	}
	for range 50 {
		middle := (low + high) / 2
		if _, above := over(middle); above > 0 {
			high = middle
		} else {
			low = middle
		}
	}
	r, _ = over(low)
	if start.bend > 0 {
		share := start.bend / (start.bend - low)
		r.turn = start.after(share*rising, 0)
	}
	return r, r.crown.bend < -1/(flattest*length)
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
		path = construct.Through(leaving, places, orb.Point{speed, 0})
		return endOf(path).bend
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
	slow, fast := 0.3, 3.0
	for range 60 {
		speed = (slow + fast) / 2
		is := bend(speed)
		switch {
		case math.Abs(is-wanted) < bendExact/10:
			return speed, true
		case math.Abs(is) > math.Abs(wanted):
			slow = speed
		default:
			fast = speed
		}
	}
	return speed, math.Abs(bend(speed)-wanted) < bendExact
}
