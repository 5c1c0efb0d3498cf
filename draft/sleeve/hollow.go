package sleeve

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// How the head leaves the armhole's own curve [source.OwnChoice].
const (
	// hollowShare is how high the head is the armhole's own curve, as a share of
	// the armhole's depth. From there it leaves it, by less than 3 mm as high as a
	// third of the depth in every size of every table.
	hollowShare = 0.21
	// risingShare is how much further along the head it is roundest, as a share of
	// the depth: the longer it is, the more evenly the head bends.
	risingShare = 0.24
	// steepest is how steeply, in degrees, the armhole may rise where the head
	// leaves it: steeper, no smooth head follows.
	steepest = 74
)

// armhole is a half of an armhole, laid out from the underarm at the origin, the
// centre of the body to the right, the side seam straight down.
type armhole struct {
	path                 pieces.Path
	length, depth, notch float64
}

// layOut lays out a half of an armhole, which runs from the underarm to the
// shoulder of a piece drawn with its centre line on the left.
func layOut(path pieces.Path, notch float64) armhole {
	at, way := path.Start(), path.Tangent(0)
	level := pieces.Turn(-math.Atan2(way[1], -way[0]) * 180 / math.Pi)
	level = pieces.Move(-at[0], -at[1]).Then(pieces.MirrorX()).Then(level)
	laid := path.Map(level)
	return armhole{laid, laid.Length(), laid.End()[1], notch}
}

// hollow is the part of an armhole that the head follows: its length, the places a
// third and two thirds of the way along it, and its end.
type hollow struct {
	length float64
	places [2]orb.Point
	end    node
}

// hollow of the armhole, for a depth of both halves together.
func (a armhole) hollow(depth float64) hollow {
	path := a.followed(depth)
	length := path.Length()
	return hollow{length, [2]orb.Point{path.At(length / 3), path.At(length * 2 / 3)}, endOf(path)}
}

// turned is the hollow turned about the underarm, by radians.
func (h hollow) turned(by float64) hollow {
	turn := pieces.Turn(by * 180 / math.Pi)
	h.places[0], h.places[1], h.end.at = turn.Apply(h.places[0]), turn.Apply(h.places[1]), turn.Apply(h.end.at)
	h.end.heading += by
	return h
}

// followed is that part as a path.
func (a armhole) followed(depth float64) pieces.Path {
	long := construct.Reach(a.path, 1, hollowShare*depth)
	steep := func(at float64) bool {
		way := a.path.Tangent(at)
		return math.Atan2(way[1], way[0]) > steepest*math.Pi/180
	}
	if steep(long) {
		low := 0.0
		for range 40 {
			if middle := (low + long) / 2; steep(middle) {
				long = middle
			} else {
				low = middle
			}
		}
	}
	return construct.Stretch(a.path, 0, long)
}
