package skirt

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// outline is what a half is drawn from.
type outline struct {
	side  pieces.Path
	waist []pieces.Edge
	darts []pieces.Dart
	// cut is the dart that was closed into the hem, if one was.
	cut *pieces.Dart
}

// draw draws side and waist of a half, its dart closed into the hem if that is
// asked for.
func (f figures) draw(h half, taper float64) outline {
	o := outline{side: f.side(h.width, taper)}
	o.waist, o.darts = f.waistSeam(h, o.side)
	if !f.DartsIntoHem || len(o.darts) == 0 {
		return o
	}
	cut := o.darts[0]
	o.cut = &cut
	o.side = o.side.Map(construct.Turning(cut.Apex, o.turn()))
	h.darts = nil
	o.waist, o.darts = f.waistSeam(h, o.side)
	return o
}

// turn is the angle by which the dart is closed, in degrees.
func (o outline) turn() float64 {
	side, centre := construct.Direction(o.cut.Apex, o.cut.Start), construct.Direction(o.cut.Apex, o.cut.End)
	return (portable.Atan2(centre[1], centre[0]) - portable.Atan2(side[1], side[0])) * 180 / math.Pi
}

// opens is how far the cut opens so deep below the waist.
func (o outline) opens(depth float64) float64 {
	return 2 * (depth + o.cut.Apex[1]) * portable.Sin(o.turn()*math.Pi/360)
}

// level is the line that lies so deep below the waist everywhere, from the
// centre to a point of the side, and square to both: through the middles of the
// parts beside the cut, and of the cut itself.
func (o outline) level(depth float64, to, sideUp orb.Point) pieces.Path {
	centre := orb.Point{0, -depth}
	arriving := construct.Back(construct.Square(sideUp))
	if o.cut == nil {
		return construct.Curve(centre, orb.Point{1, 0}, 0.4, to, arriving, 0.3)
	}
	low := orb.Point{o.cut.Apex[0], -depth}
	beyond := construct.Turning(o.cut.Apex, o.turn()).Apply(low)
	across := construct.Turning(o.cut.Apex, o.turn()/2).Apply(low)
	marks := []orb.Point{centre, construct.Between(centre, low, 0.5), across, construct.Between(beyond, to, 0.5), to}
	return construct.Through(orb.Point{1, 0}, marks, arriving)
}

// acrossCut is a line that lay level, so deep below the waist, after the cut has
// opened.
func (o outline) acrossCut(depth float64, to orb.Point) pieces.Path {
	low := orb.Point{o.cut.Apex[0], -depth}
	beyond := construct.Turning(o.cut.Apex, o.turn()).Apply(low)
	return construct.Join(construct.Line(orb.Point{0, -depth}, low), construct.Line(low, beyond),
		construct.Line(beyond, to))
}
