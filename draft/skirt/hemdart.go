package skirt

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// mostTurn is the furthest that closing a dart may turn the side of a piece, in
// radians: about 40 degrees, more than a quarter of a circle all round
// [source.OwnChoice].
const mostTurn = 0.7

// hemDarts are one dart a piece, to be closed into the hem. What is to be taken
// in is shared so that both close by the same angle: front and back then flare
// alike, and the side seam hangs straight [source.CommonPractice].
func (f figures) hemDarts(total float64) (front, back []dart, err error) {
	frontLong, backLong := frontLength*f.WaistToHip, backFirst*f.WaistToHip
	turn := total / (frontLong + backLong)
	if turn > mostTurn {
		return nil, nil, construct.About(subject.WaistGirth, subject.HipGirth, subject.WaistToHip).Refuse(
			"skirt: the waist girth of %s is too small for the hip girth of %s within a waist "+
				"to hip of %s to close the darts into the hem; measure all three again, or ask for a gored or a circle skirt",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	return []dart{{0.6, turn * frontLong, frontLong}}, []dart{{0.5, turn * backLong, backLong}}, nil
}

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
	return (math.Atan2(centre[1], centre[0]) - math.Atan2(side[1], side[0])) * 180 / math.Pi
}

// opens is how far the cut opens so deep below the waist.
func (o outline) opens(depth float64) float64 {
	return 2 * (depth + o.cut.Apex[1]) * math.Sin(o.turn()*math.Pi/360)
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
	return construct.Join(construct.Line(orb.Point{0, -depth}, low), construct.Line(low, beyond), construct.Line(beyond, to))
}

// recordHemDart notes how the dart is closed into the hem.
func (f figures) recordHemDart(s *construct.Sheet, o outline, hem pieces.Path) {
	if o.cut == nil {
		return
	}
	apex := o.cut.Apex
	middle := construct.Between(o.cut.Start, o.cut.End, 0.5)
	s.Draw("mark a dart {} wide, its middle {} from the centre along the waist, {} long; cut from the hem straight up to its point, {} from the centre line, and close the dart", "the hem opens and flares; front and back are turned alike, so that the side hangs straight",
		construct.Distance(o.cut.Start, o.cut.End), construct.Distance(orb.Point{}, middle), construct.Distance(middle, apex), apex[0])
	s.Draw("at the hem the cut is {} open; draw waist and hem anew in even curves, the hem {} long, through the middle of the gap, {} below the point of the dart", "square to the centre and to the side seam", o.opens(f.Length), hem.Length(), f.Length+apex[1])
}
