package bodice

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// checkNeckGirth refuses a neck that does not go round the body's.
func (f figures) checkNeckGirth(front, back pieces.Piece) error {
	seam := 2 * (construct.SeamLength(front, seams.Neck) + construct.SeamLength(back, seams.Neck))
	if !f.proportional || f.NeckBase <= seam {
		return nil
	}
	return construct.About(subject.NeckBaseGirth, subject.BustGirth).Refuse(
		"bodice: the neck base girth of %s does not go into a neck of %s, which the "+
			"proportional draft has for a bust girth of %s; make the neck wider, or draft it to measurements",
		"Oberteil: der Halsansatzumfang von %s geht nicht in ein Halsloch von %s, das die "+
			"Konstruktion nach Proportionen für einen Brustumfang von %s hat; machen Sie es weiter, "+
			"oder zeichnen Sie nach Maßen",
		construct.Length(f.NeckBase), construct.Length(seam), construct.Length(f.Bust))
}

// armholeLevel is where the bust dart opens in the armhole: halfway from 8 cm
// below the back neck point to the bust line, and 5 mm lower.
func (f figures) armholeLevel(s *construct.Sheet, bust construct.Point) construct.Point {
	return s.Up(bust, (f.ScyeDepth-bladeLine)/2-5, "halfway from the bust line to 8 cm below the level of the back "+
		"neck point, less 5 mm")
}

// proportionalFront is the front above the waist. It is drawn with its bust
// dart open in the armhole.
func (f figures) proportionalFront(s *construct.Sheet) frontUpper {
	p := proportionsOf(f.Bust)
	u := frontUpper{dart: p.dart}
	u.waist = s.Start(0, 0, "the centre front at the waist")
	bust := s.Up(u.waist, f.bustLine, "the bust line: back neck point to waist, less a twelfth of the bust girth and "+
		"13.7 cm")
	u.bustPoint = s.Right(bust, f.bustPoint, "the bust point: half the across front and 7 mm")
	top := s.Up(bust, p.frontHeight, "the level of the neck point: a fifth of the bust girth and 8.3 cm")
	u.neck = s.Right(top, p.frontNeck, "the neck point: a twenty-fourth of the bust girth and 3.4 cm")
	u.centreNeck = s.Down(top, p.frontNeck+5, "the neck at the centre front: 5 mm more than it is wide")
	u.tip = s.Slope(u.neck, p.frontShoulder, frontSlope, "the shoulder tip, falling 3.2 in 8: to the across front "+
		"(an eighth of the bust girth and 6.2 cm) and 1.8 cm beyond")
	u.middle = s.Along(u.neck, u.tip, f.Shoulder/2, "the middle of the shoulder")
	level := f.armholeLevel(s, bust)
	u.openAcross = s.Right(level, p.acrossFront+p.beside, "the lower leg of the bust dart: the across front and a "+
		"thirty-second of the bust girth")
	u.across = s.Turn(u.openAcross, u.bustPoint, p.dart, "its upper leg: a degree for every 4 cm of the bust girth, "+
		"less 2.5 degrees")
	u.openMiddle = s.Turn(u.middle, u.bustPoint, -p.dart, "to move the dart to the shoulder: its middle")
	u.openTip = s.Turn(u.tip, u.bustPoint, -p.dart, "and with it the shoulder tip")
	u.level = s.Up(u.waist, f.underarm, "the height of the underarm")
	return u
}

// proportionalBack is the back above the waist.
func (f figures) proportionalBack(s *construct.Sheet, armhole float64) backUpper {
	p := proportionsOf(f.Bust)
	var b backUpper
	b.waist = s.Start(0, 0, "the centre back at the waist")
	b.nape = s.Up(b.waist, f.BackNeckPointToWaist, "back neck point to waist")
	bust := s.Down(b.nape, p.scyeDepth, "the bust line: a twelfth of the bust girth and 13.7 cm")
	top := s.Up(b.nape, p.backNeck/3, "a third of the width of the neck")
	b.neck = s.Right(top, p.backNeck, "the neck point: a twenty-fourth of the bust girth and 3.6 cm")
	b.tip = s.Slope(b.neck, p.frontShoulder+p.blade, backSlope, "the shoulder tip, falling 2.6 in 8: the front "+
		"shoulder and the dart, a thirty-second of the bust girth less 8 mm")
	b.across = s.Right(f.armholeLevel(s, bust), p.acrossBack, "the across back: an eighth of the bust girth and 7.4 cm")
	f.bladeDart(s, &b, p)
	level := s.Up(b.waist, f.underarm, "the height of the underarm")
	b.underarm = s.Right(level, f.acrossBack+armhole/2, "the underarm: the across back with half the width of the "+
		"armhole")
	return b
}

// bladeDart puts a dart into the back shoulder. Its point lies 8 cm below the
// back neck point, 1 cm beyond the middle of the across back; its first leg
// meets the shoulder 1.5 cm beyond the place straight above.
func (f figures) bladeDart(s *construct.Sheet, b *backUpper, p proportions) {
	blade := s.Down(b.nape, bladeLine, "the level of the shoulder blades")
	point := s.Right(blade, p.acrossBack/2+10, "the point of the shoulder dart: half the across back and 1 cm")
	above := float64((point.X() - b.neck.X()) * portable.Hypot(1, backSlope))
	inner := s.Along(b.neck, b.tip, above+15, "its leg by the neck: 1.5 cm beyond the place straight above its point")
	outer := s.Along(inner, b.tip, p.blade, "its other leg: a thirty-second of the bust girth less 8 mm")
	leg := trueLeg(b.neck.At, inner.At, point.At, outer.At, b.tip.At)
	first := s.Along(point, inner, leg, "the end of that leg: so long that the shoulder is straight when the dart is "+
		"closed")
	second := s.Along(point, outer, leg, "the end of the other leg")
	b.tip = s.Along(second, b.tip, p.frontShoulder-construct.Distance(b.neck.At, first.At),
		"the shoulder tip again: both shoulders are as long, the dart closed")
	s.Draw("draw the shoulder dart "+construct.Numbers(first, point, second)+" and the shoulder "+
		construct.Numbers(b.neck, first)+" and "+construct.Numbers(second, b.tip), "")
	b.beside = first
	mouth := construct.DartMouth(first.At, point.At, second.At, construct.Direction(first.At, b.neck.At)).Reverse()
	b.shoulder = []pieces.Edge{
		construct.Edge(seams.Shoulder.Stretch(1), construct.Line(b.tip.At, second.At)),
		construct.Edge(seams.Shoulder.Mouth(0), mouth),
		construct.Edge(seams.Shoulder.Stretch(2), construct.Line(first.At, b.neck.At)),
	}
	b.darts = []pieces.Dart{{Name: seams.Shoulder.Dart(0), Mouth: seams.Shoulder.Mouth(0), Start: second.At,
		Apex: point.At, End: first.At}}
}

// trueLeg is the length of a dart's legs at which the seam that they part, from
// one point to another, is straight when the dart is closed.
func trueLeg(from, first, apex, second, to orb.Point) float64 {
	// Longer legs raise the seam to a peak at the dart, shorter ones hollow it.
	turn := func(leg float64) float64 {
		a, b := construct.Toward(apex, first, leg), construct.Toward(apex, second, leg)
		return inner(construct.Direction(a, from), construct.Direction(a, apex)) +
			inner(construct.Direction(b, to), construct.Direction(b, apex))
	}
	low, high := float64(0.8*construct.Distance(apex, first)), float64(1.2*construct.Distance(apex, first))
	for range 60 {
		if middle := (low + high) / 2; turn(middle) > math.Pi {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}

// inner is the angle between two unit directions, in radians.
func inner(a, b orb.Point) float64 {
	return portable.Acos(max(-1, min(1, float64(a[0]*b[0])+float64(a[1]*b[1]))))
}
