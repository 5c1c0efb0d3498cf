package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// round is the upper part of a half of the head: from the end of its hollow, or
// from a notch, to the crown, where it is level.
type round struct {
	start, crown node
	// between are the places on it from the start to the crown.
	between []mark
	// bends are how much it bends there.
	bends []float64
}

// The parts of a round, as shares of its length: its bend grows along the rise to its
// shoulder, which lies just above the hollow, grows less along the fall, stays along
// the flank, and changes along the top to that of the crown. Turning at the shoulder
// and at the crown, with a straighter flank between them, it is as wide for its length
// as a head is that lies on the armhole under the arm [source.OwnChoice].
const (
	riseShare  = 0.12
	fallShare  = 0.18
	flankShare = 0.30
	topShare   = 0.40
)

// How much a round bends [source.OwnChoice].
const (
	// leastShoulder is the least that the shoulder bends, as a share of what the flank
	// does: with less it would look straight above the hollow and full above that.
	leastShoulder = 0.5
	// leastFlank and usualFlank are what the flank bends at least and usually, as a
	// share of the most that it can.
	leastFlank = 0.15
	usualFlank = 0.4
	// roundest and flattest are the radius of the crown, and roundestFlank that of
	// the flank, as shares of the length of the round.
	roundest      = 0.15
	flattest      = 8
	roundestFlank = 0.2
)

// upper is what a round is drawn for: from a node up, so long and to such a height.
type upper struct {
	start          node
	length, height float64
}

// round of a flank and a crown that bend so much.
func (u upper) round(flankBend, crownBend float64) round {
	l := u.length
	// The crown is level: that says how much the shoulder bends.
	turned := u.start.heading + l*(float64(riseShare*u.start.bend)+float64(fallShare*flankBend))/2 +
		float64(l*flankShare*flankBend) + l*topShare*(flankBend+crownBend)/2
	shoulder := u.start.after(riseShare*l, -2*turned/(l*(riseShare+fallShare)))
	begin := shoulder.after(fallShare*l, flankBend)
	end := begin.after(flankShare*l, flankBend)
	half := end.after(topShare/2*l, (flankBend+crownBend)/2)
	return round{
		start: u.start, crown: half.after(topShare/2*l, crownBend),
		between: []mark{
			{shoulder.at, "the shoulder of the round, where it turns away from the armhole"},
			{begin.at, "the lower end of the flank"},
			{end.at, "the upper end of the flank"},
			{half.at, "half of the way from there to the crown"},
		},
		bends: []float64{shoulder.bend, flankBend, crownBend},
	}
}

// most is the most that the flank bends beside a crown that bends so much.
func (u upper) most(crownBend float64) float64 {
	return root(-1/(roundestFlank*u.length), 0, 1e-9, func(flankBend float64) float64 {
		return u.round(flankBend, crownBend).bends[0] - leastShoulder*flankBend
	})
}

// crownBend is how much the crown bends of a round whose flank bends a share of the
// most, as near to its height as can be.
func (u upper) crownBend(share float64) float64 {
	return root(-1/(roundest*u.length), -1/(flattest*u.length), 1e-9, func(bend float64) float64 {
		return u.round(float64(share*u.most(bend)), bend).crown.at[1] - u.height
	})
}

// rounds draws both halves to one crown, as near to the usual flanks as can be. ok is
// false where no crown suits both.
func rounds(uppers [2]upper) (both [2]round, ok bool) {
	bend := (uppers[0].crownBend(usualFlank) + uppers[1].crownBend(usualFlank)) / 2
	// Each half has crowns that it can be drawn to: take the nearest that both have.
	for _, u := range uppers {
		bend = max(bend, u.crownBend(leastFlank))
	}
	for _, u := range uppers {
		bend = min(bend, u.crownBend(1))
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

// to is the round to a crown that bends so much: the more its flank bends, the higher
// is the crown. ok is false where no flank makes it as high without a hollow.
func (u upper) to(crownBend float64) (r round, ok bool) {
	most := u.most(crownBend)
	r = u.round(root(most, float64(leastFlank*most), 1e-10, func(flankBend float64) float64 {
		return u.round(flankBend, crownBend).crown.at[1] - u.height
	}), crownBend)
	return r, math.Abs(r.crown.at[1]-u.height) < heightExact && slices.Max(r.bends) <= 0
}

// places that the round goes through after its start, up to the crown.
func (r round) places() []orb.Point {
	var all []orb.Point
	for _, m := range r.between {
		all = append(all, m.at)
	}
	return append(all, r.crown.at)
}

// mark is a place on the head, and how it is found.
type mark struct {
	at   orb.Point
	rule string
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
		leaving := orb.Point{float64(speed * way[0]), float64(speed * way[1])}
		if path, ok = through(leaving, places, crownBend); !ok {
			return path, false
		}
		if math.Abs(startBend(path)-start.bend) < bendExact {
			return path, true
		}
		arriving := path[len(path)-1].(pieces.Bezier)
		reach := 3 * (arriving.P3[0] - arriving.P2[0]) / construct.Distance(arriving.P0, arriving.P3)
		speed, ok = settled(start.bend, func(speed float64) float64 {
			leaving := orb.Point{float64(speed * way[0]), float64(speed * way[1])}
			return startBend(construct.Through(leaving, places, orb.Point{reach, 0}))
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
