package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// princessNotch is how far above and below the bust point the notches of a
// princess seam lie; between them the side panel is eased over the bust, or
// the seam is sewn edge to edge ([source.CommonPractice]: 4 to 6 cm).
const princessNotch = 50

// mostBustEase is the most that a side front panel is eased in over the bust,
// in mm ([source.CommonPractice]: 0 to 8).
const mostBustEase = 7

// gentle is the pull of a gentle curve [source.OwnChoice].
const gentle = 1. / 3

// settled makes the options agree: a princess seam has its bust dart where it
// begins.
func (o Options) settled() Options {
	switch o.Princess {
	case FromShoulder:
		o.Shaping = ShoulderDart
	case FromArmhole:
		o.Shaping = ArmholeDart
	}
	return o
}

// seamLine is a princess seam on one panel, from its upper end down: to the
// fullest place, from there to the waist, and what lies below the waist.
type seamLine struct{ upper, lower, below pieces.Path }

func (l seamLine) path() pieces.Path { return construct.Join(l.upper, l.lower, l.below) }

// princess is one princess seam: on the middle panel and on the side panel.
type princess struct{ middle, side seamLine }

// seamFoot is where a princess seam crosses the waist and how it goes on below.
type seamFoot struct {
	waist orb.Point
	below *below
	x     float64 // of the seam's upright course
}

// feet of the seam on both panels: the ends of the waist dart, or one point
// where there is none.
func (f figures) feet(w waistSeam, x float64) (middle, side seamFoot) {
	if w.below != nil {
		half := 0.0
		if len(w.below.darts) > 0 {
			half, x = w.below.darts[0].width/2, w.below.darts[0].middle
		}
		return seamFoot{orb.Point{x - half, 0}, w.below, x}, seamFoot{orb.Point{x + half, 0}, w.below, x}
	}
	if len(w.darts) > 0 {
		return seamFoot{waist: w.darts[0].Start}, seamFoot{waist: w.darts[0].End}
	}
	path := w.stretches[0]
	at := stretchTo(path, x).End()
	return seamFoot{waist: at}, seamFoot{waist: at}
}

// lineTo draws the seam from its top over the fullest place down. leaving is
// its direction at the top, over that at the fullest place; pull says how full
// the curves to and from that place are.
func (foot seamFoot) lineTo(top, leaving, full, over orb.Point, pull float64) seamLine {
	down := orb.Point{0, -1}
	arriving := construct.Direction(full, foot.waist)
	if foot.below != nil {
		arriving = down
	}
	line := seamLine{
		upper: construct.Curve(top, leaving, pull, full, over, pull),
		lower: construct.Curve(full, over, pull, foot.waist, arriving, pull),
	}
	if foot.below != nil {
		low, hem := orb.Point{foot.x, -foot.below.low}, orb.Point{foot.x, -foot.below.length}
		line.below = construct.Join(construct.Curve(foot.waist, down, 1./3, low, down, 1./3), construct.Line(low, hem))
	}
	return line
}

// over is the direction halfway between those before and after a point.
func over(before, after orb.Point) orb.Point {
	return construct.Direction(orb.Point{}, orb.Point{before[0] + after[0], before[1] + after[1]})
}

// bending is how far a direction is turned from another, in degrees
// counter-clockwise.
func bending(from, to orb.Point) float64 { return construct.Angle(to) - construct.Angle(from) }

func turned(way orb.Point, degrees float64) orb.Point {
	return construct.Heading(construct.Angle(way) + degrees)
}

// frontPrincess draws the seam on both front panels. Both leave the upper end
// at the same angle to their dart leg, so that shoulder or armhole runs on
// across the seam.
func (f figures) frontPrincess(o Options, u frontUpper, w waistSeam) princess {
	middle, side := f.feet(w, f.bustPoint)
	bust, top, openTop := u.bustPoint.At, u.middle.At, u.openMiddle.At
	if o.Princess == FromArmhole {
		top, openTop = u.across.At, u.openAcross.At
	}
	way, openWay := construct.Direction(top, bust), construct.Direction(openTop, bust)
	overMiddle := over(way, construct.Direction(bust, middle.waist))
	overSide := over(openWay, construct.Direction(bust, side.waist))
	bend := (bending(way, overMiddle) + bending(openWay, overSide)) / 2
	seam := princess{middle: middle.lineTo(top, turned(way, -bend), bust, overMiddle, gentle)}
	// A flatter curve over a very full bust leaves less to ease in.
	for pull := gentle; pull > gentle/4; pull -= gentle / 20 {
		seam.side = side.lineTo(openTop, turned(openWay, -bend), bust, overSide, pull)
		if seam.side.path().Length()-seam.middle.path().Length() <= mostBustEase {
			break
		}
	}
	return seam
}

// backPrincess draws the seam on both back panels, which is one line down to
// the point of the waist dart.
func (f figures) backPrincess(o Options, b backUpper, w waistSeam) princess {
	middle, side := f.feet(w, f.acrossBack/2)
	x := middle.x
	if w.below == nil {
		x = (middle.waist[0] + side.waist[0]) / 2
	}
	full, down := orb.Point{x, f.backApex(0)}, orb.Point{0, -1}
	top := construct.Toward(b.neck.At, b.tip.At, f.backShoulderTop(o))
	if o.Princess == FromArmhole {
		top = b.across.At
	}
	way := construct.Direction(top, full)
	leaving := turned(way, -bending(way, down))
	return princess{
		middle: middle.lineTo(top, leaving, full, down, gentle),
		side:   side.lineTo(top, leaving, full, down, gentle),
	}
}

// backShoulderTop is where the seam begins on the back shoulder, from the
// neck: in the middle, so that it meets the front's, half of the shoulder's
// ease on each side.
func (f figures) backShoulderTop(o Options) float64 {
	return (f.Shoulder+backShoulderEase)/2 - o.NeckWiden
}
