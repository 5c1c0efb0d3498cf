package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// leastShoulder is the least of the shoulder that a widened neck leaves, and
// leastBesideDart that between the neck and a shoulder dart, in mm
// [source.OwnChoice].
const (
	leastShoulder   = 30
	leastBesideDart = 15
)

// checkNeck refuses a neck that is wider or lower than the bodice.
func (f figures) checkNeck(o Options, front frontUpper, back backUpper) error {
	for _, l := range []struct {
		name  string
		value float64
	}{{"neck width", o.NeckWiden}, {"front neck drop", o.FrontNeckDrop}, {"back neck drop", o.BackNeckDrop}} {
		if l.value < 0 {
			return construct.Refuse("bodice: the %s is %s; it cannot be negative",
				"Oberteil: %s ist %s; das kann nicht negativ sein", l.name, construct.Length(l.value))
		}
	}
	most := f.Shoulder - leastShoulder
	if o.Shaping == ShoulderDart {
		most = f.Shoulder/2 - leastBesideDart
	}
	most = min(most, construct.Distance(back.neck.At, back.beside.At)-leastBesideDart)
	if o.NeckWiden > most {
		return construct.About(subject.NeckWider).Refuse("bodice: a neck wider by %s leaves too little of a shoulder "+
			"length of %s; ask for %s or less",
			"Oberteil: ein um %s weiteres Halsloch lässt zu wenig von einer Schulterlänge von %s; "+
				"verlangen Sie %s oder weniger", construct.Length(o.NeckWiden), construct.Length(f.Shoulder),
			construct.AtMost(most))
	}
	if most := front.centreNeck.Y() - f.bustLine; o.FrontNeckDrop > most {
		return construct.About(subject.FrontNeckLower).Refuse("bodice: a front neck lower by %s ends below the bust "+
			"line; ask for %s or less",
			"Oberteil: ein vorn um %s tieferes Halsloch endet unter der Brustlinie; verlangen Sie %s "+
				"oder weniger", construct.Length(o.FrontNeckDrop), construct.AtMost(most))
	}
	if most := back.nape.Y() - f.bustLine; o.BackNeckDrop > most {
		return construct.About(subject.BackNeckLower).Refuse("bodice: a back neck lower by %s ends below the bust "+
			"line; ask for %s or less",
			"Oberteil: ein hinten um %s tieferes Halsloch endet unter der Brustlinie; verlangen Sie %s "+
				"oder weniger", construct.Length(o.BackNeckDrop), construct.AtMost(most))
	}
	return nil
}

// openNeck moves the ends of a neck: along the shoulder and down the centre.
func openNeck(s *construct.Sheet, neck, tip, centre *construct.Point, widen, drop float64) {
	if widen > 0 {
		*neck = s.Along(*neck, *tip, widen, "the neck, widened")
	}
	if drop > 0 {
		*centre = s.Down(*centre, drop, "the neck at the centre, lowered")
	}
}

// neckCurve is the neck from the shoulder, square to it, to the centre line,
// square to that, for a neck of any width and depth.
func neckCurve(neck orb.Point, along, centre orb.Point) pieces.Path {
	down := construct.Back(construct.Square(along))
	width, depth := neck[0], neck[1]-centre[1]
	first := min(0.55*depth, 0.35*width/max(-down[0], 1e-9))
	return pieces.Path{pieces.Bezier{
		P0: neck, P1: construct.Go(neck, down, first),
		P2: orb.Point{centre[0] + float64(0.65*width), centre[1]}, P3: centre,
	}}
}

// altered says that the neck is not that of the block.
func (o Options) altered() bool { return o.NeckWiden > 0 || o.FrontNeckDrop > 0 || o.BackNeckDrop > 0 }
