package sleeve

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// elbowBelow is how far the elbow lies below half the arm [source.CommonPractice].
const elbowBelow = 50

// The most that can be sewn at all [source.CommonPractice]; what suits a style is
// in its Norm.
const (
	// leastFullness is the least that is gathered and mostFullness the most.
	leastFullness = 1.1
	mostFullness  = 3
	// leastEase and mostEase are what a head can be eased by, in mm.
	leastEase = -20
	mostEase  = 80
	// mostBicepEase is the most by which a bicep line is asked to be longer than
	// the arm, in mm [source.OwnChoice].
	mostBicepEase = 300
)

// check refuses options that contradict each other or cannot be sewn.
func (o Options) check() error {
	for _, f := range []struct {
		name         string
		about        subject.Subject
		times, least float64
	}{{"head", subject.HeadFullness, o.HeadFullness, leastFullness}, {"hem", subject.HemFullness, o.HemFullness, 1}} {
		if f.times != 0 && (f.times < f.least || f.times > mostFullness) {
			return construct.About(f.about).Refuse("sleeve: a %s fullness of %.4g cannot be gathered; 1.2 to 2 is usual, "+
				"3 the most",
				"Ärmel: %s vom %.4g-Fachen lässt sich nicht einreihen; üblich ist das 1,2- bis 2-Fache, "+
					"höchstens das 3-Fache", f.name, f.times)
		}
	}
	switch {
	case o.HeadFullness > 0 && o.Ease != nil:
		return construct.About(subject.Ease, subject.HeadFullness).Refuse(
			"sleeve: a gathered head has no ease; leave out one of the ease and the head fullness",
			"Ärmel: eine gereihte Armkugel hat keine Einhalteweite; lassen Sie eines von beidem weg")
	case o.HeadHeight > 0 && o.BicepEase > 0:
		return construct.About(subject.BicepEase, subject.HeadHeight).Refuse(
			"sleeve: the bicep line follows from the head height; leave out one of the head "+
				"height and the bicep ease",
			"Ärmel: die Oberarmlinie folgt aus der Höhe der Armkugel; lassen Sie diese weg, oder die "+
				"Bequemlichkeit am Oberarm")
	case o.HemFullness > 0 && o.WristWidth > 0:
		return construct.About(subject.HemFullness, subject.WristWidth).Refuse(
			"sleeve: the hem has a width or a fullness; leave out one of them",
			"Ärmel: der Saum hat eine Breite oder eine Mehrweite; lassen Sie eines davon weg")
	case o.WristWidth < 0:
		return construct.About(subject.WristWidth).Refuse("sleeve: the wrist width is %s; it cannot be negative",
			"Ärmel: die Weite am Handgelenk ist %s; sie kann nicht negativ sein",
			construct.Length(o.WristWidth))
	case o.BicepEase != 0 && (o.BicepEase < BicepEase || o.BicepEase > mostBicepEase):
		return construct.About(subject.BicepEase).Refuse("sleeve: a bicep ease of %s cannot be; ask for %s to %s",
			"Ärmel: eine Bequemlichkeit von %s am Oberarm geht nicht; verlangen Sie %s bis %s",
			construct.Length(o.BicepEase), construct.AtLeast(BicepEase), construct.AtMost(mostBicepEase))
	case o.Ease != nil && (*o.Ease < leastEase || *o.Ease > mostEase):
		return construct.About(subject.Ease).Refuse("sleeve: an ease of %s cannot be sewn in; 0 to 1.5 cm suits a "+
			"shirt, 2 to 4.5 cm a set-in sleeve",
			"Ärmel: %s lassen sich nicht einhalten; zum Hemd passen 0 bis 1,5 cm, zum eingesetzten "+
				"Ärmel 2 bis 4,5 cm", construct.Length(*o.Ease))
	}
	return nil
}

// lengthAt is the length from the crown of a head of a height: that asked for,
// or that of the reach.
func (d drafting) lengthAt(height float64) float64 {
	elbow := d.ShoulderToWrist/2 + elbowBelow
	switch {
	case d.isCap:
		// Its head is that of a whole sleeve, however short it is.
		return d.ShoulderToWrist
	case d.Length > 0:
		return d.Length
	case d.Reach == Elbow:
		return elbow
	case d.Reach == Short:
		return (height + elbow) / 2
	}
	return d.ShoulderToWrist
}
