package trousers

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// leg holds the ends of a leg of one piece: its hem, and the knee if it
// reaches below it.
type leg struct {
	inside, outside         orb.Point // at the hem
	insideKnee, outsideKnee orb.Point
	short                   bool
}

// leg of a piece that is wider than the front on each side by more, and on
// the inside of a short leg by further.
func (f figures) leg(more, further float64) leg {
	half := f.hemHalf()
	knee := kneeHalf(half, f.half()) + more
	return leg{
		inside:     orb.Point{-half - more - float64(further*f.shortness()), -f.Length},
		outside:    orb.Point{half + more, -f.Length},
		insideKnee: orb.Point{-knee, -f.knee}, outsideKnee: orb.Point{knee, -f.knee},
		short: f.isShort(),
	}
}

// lean is the angle from the upright of the way from one point up to another,
// in degrees, to the left positive.
func lean(from, to orb.Point) float64 {
	return portable.Atan2(from[0]-to[0], to[1]-from[1]) * 180 / math.Pi
}

// insideLeg runs from the hem up to the fork, which it reaches hollowed.
func (l leg) insideLeg(fork orb.Point) pieces.Path {
	if l.short {
		way := lean(l.inside, fork)
		return construct.Curve(l.inside, construct.Heading(90+float64(0.3*way)), 0.35,
			fork, construct.Heading(90+hollow(way)), 0.3)
	}
	below := construct.Direction(l.inside, l.insideKnee)
	way := lean(l.insideKnee, fork)
	upper := construct.Curve(l.insideKnee, below, 0.4, fork, construct.Heading(90+hollow(way)), 0.3)
	return construct.Join(construct.Line(l.inside, l.insideKnee), upper)
}

// hollow is the lean of the inside leg at the fork, for that of the straight
// line there: more by six tenths, and by 7 degrees at most.
func hollow(way float64) float64 { return way + min(0.6*math.Abs(way), 7) }

// outsideLeg runs from the hem up over the hip to the waist.
func (l leg) outsideLeg(hip orb.Point, taper, rise float64) pieces.Path {
	upper := hipToWaist(hip, taper, rise)
	up := orb.Point{0, 1}
	if l.short {
		way := lean(l.outside, hip)
		return construct.Join(construct.Curve(l.outside, construct.Heading(90+float64(0.8*way)), 0.35, hip, up, 0.35), upper)
	}
	below := construct.Direction(l.outside, l.outsideKnee)
	thigh := construct.Curve(l.outsideKnee, below, 0.35, hip, up, 0.35)
	return construct.Join(construct.Line(l.outside, l.outsideKnee), thigh, upper)
}

// hipToWaist curves in from the hip to the waist.
func hipToWaist(hip orb.Point, taper, rise float64) pieces.Path {
	waist := orb.Point{hip[0] - taper, hip[1] + rise}
	return construct.Curve(hip, orb.Point{0, 1}, 0.42, waist, construct.Heading(90+float64(1.5*lean(hip, waist))), 0.36)
}

// hem runs from the inside leg to the outside leg, square to both.
func hem(inside, outside pieces.Path) pieces.Path {
	leaving := construct.Back(construct.Square(inside[0].Tangent(0)))
	arriving := construct.Back(construct.Square(outside[0].Tangent(0)))
	return construct.Curve(inside.Start(), leaving, 1./3, outside.Start(), arriving, 1./3)
}

// easyBend is how much of the centre line the crotch curve takes up, at least,
// for each mm that the fork lies from the corner of the two
// [source.OwnChoice].
const easyBend = 0.5

// crotch is the crotch seam: the straight centre line from the waist down to a
// height, and from there a curve into the fork, square to the inside leg. Where
// the fork falls so steeply that the curve would be a corner, it begins higher.
func crotch(top, down orb.Point, height float64, fork orb.Point, insideLeg pieces.Path) (centre, curve pieces.Path) {
	arriving := construct.Square(insideLeg[len(insideLeg)-1].Tangent(1))
	bend := along(top, down, height)
	if corner, ok := construct.Meet(top, down, fork, arriving); ok {
		higher := construct.Go(corner, down, -easyBend*construct.Distance(corner, fork))
		if higher[1] > bend[1] {
			bend = higher
		}
	}
	return construct.Line(top, bend), construct.Bend(bend, down, 0.8, fork, arriving, 0.6)
}
