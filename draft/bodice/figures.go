package bodice

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// What is added to the measurements, in mm or as a share [source.CommonPractice].
const (
	// scyeMore is how far the bust line lies below the scye depth, so that the
	// armhole does not cut.
	scyeMore = 5
	// backAcross and frontAcross of the bust ease go across each half of the
	// back and of the front: arms reach forward.
	backAcross, frontAcross = 1. / 20, 1. / 30
	// pointShare of the bust girth and pointMore are half the distance of the
	// bust points.
	pointShare, pointMore = 1. / 10, 3
)

// The bust dart of the women's table, in mm: at a bust girth, and so much more or
// less for each mm of bust girth up to another, and from there on
// [source.Aldrich].
const (
	dartWidth, dartBust, dartStep  = 76, 920, 0.15
	dartFullBust, dartFullBustStep = 1040, 0.1
)

// reckon works out the figures. The error names the measurement that cannot
// be.
func reckon(m Measures, o Options) (figures, error) {
	f := figures{Measures: m, bustEase: o.BustEase, waistEase: o.WaistEase, princess: o.Princess != NoPrincess}
	if f.bustEase == 0 {
		f.bustEase = usualBustEase(o.Fit)
	}
	if f.waistEase == 0 {
		f.waistEase = usualWaistEase(o.Fit)
	}
	f.half = m.Bust/2 + f.bustEase/2
	f.waist = m.Waist/2 + f.waistEase/2

	// The underarm lies lower as the fit is looser.
	f.bustLine = m.BackNeckPointToWaist - m.ScyeDepth - scyeMore
	f.underarm = f.bustLine - usualArmholeDrop(o.Fit) - o.ArmholeDrop

	f.acrossBack = m.AcrossBack/2 + float64(backAcross*f.bustEase)
	f.acrossFront = m.AcrossFront/2 + float64(frontAcross*f.bustEase)
	f.bustPoint = float64(pointShare*m.Bust) + pointMore
	if o.Shaping != NoDart {
		f.bustDart = dartWidth + float64(dartStep*(min(m.Bust, dartFullBust)-dartBust)) +
			float64(dartFullBustStep*max(0, m.Bust-dartFullBust))
	}
	if o.Method == Proportional {
		f = f.proportioned(o)
	}
	return f, f.check()
}

// usualBustEase of a fit, in mm [source.CommonPractice].
func usualBustEase(fit Fit) float64 {
	switch fit {
	case Easy:
		return 140
	case Shirt:
		return 180
	}
	return 100
}

// usualWaistEase of a fit, in mm: 2 to 4 cm in a fitted bodice
// [source.CommonPractice].
func usualWaistEase(fit Fit) float64 {
	if fit == Close {
		return 30
	}
	return 40
}

// usualArmholeDrop lowers the underarm of a looser bodice [source.CommonPractice].
func usualArmholeDrop(fit Fit) float64 {
	switch fit {
	case Easy:
		return 12
	case Shirt:
		return 25
	}
	return 0
}

// leastSide is the shortest side seam that can still be shaped, in mm
// [source.OwnChoice].
const leastSide = 50

func (f figures) check() error {
	switch {
	case f.bustEase < 0:
		return construct.About(subject.BustEase).Refuse("bodice: the bust ease is %s; it cannot be negative",
			"Oberteil: die Bequemlichkeit an der Brust ist %s; sie kann nicht negativ sein",
			construct.Length(f.bustEase))
	case f.waistEase < 0:
		return construct.About(subject.WaistEase).Refuse("bodice: the waist ease is %s; it cannot be negative",
			"Oberteil: die Bequemlichkeit an der Taille ist %s; sie kann nicht negativ sein",
			construct.Length(f.waistEase))
	case f.bustLine < leastSide:
		return construct.About(subject.ScyeDepth, subject.BackNeckPointToWaist).Refuse(
			"bodice: the scye depth of %s is too much for a back neck point to "+
				"waist of %s: measure both again",
			"Oberteil: die Armlochtiefe von %s ist zu viel für eine Rückenlänge von %s: messen Sie "+
				"beide noch einmal", construct.Length(f.ScyeDepth),
			construct.Length(f.BackNeckPointToWaist))
	case f.underarm < leastSide:
		return construct.About(subject.ScyeDepth, subject.BackNeckPointToWaist).Refuse(
			"bodice: the armhole comes down to %s above the waist; there must be %s "+
				"of side seam left: check the scye depth and the back neck point to waist",
			"Oberteil: das Armloch reicht bis %s über die Taille; %s Seitennaht müssen bleiben: "+
				"prüfen Sie Armlochtiefe und Rückenlänge",
			construct.Length(f.underarm), construct.Length(leastSide))
	}
	return nil
}

// armholeWidth is what the bust line leaves for the arm between the across
// back and the across front. It must be a third of the whole armhole or so;
// a narrower one than an eighth of the bust less 3 cm has no room for an arm.
func (f figures) armholeWidth(acrossFront float64) (float64, error) {
	width := f.half - f.acrossBack - acrossFront
	if least := f.Bust/8 - 45; width < least {
		return 0, construct.About(subject.AcrossBackWidth, subject.AcrossFrontWidth, subject.BustGirth).Refuse(
			"bodice: across back width %s and across front width %s leave only %s for the "+
				"armhole on a bust girth of %s: measure all three again",
			"Oberteil: Rückenbreite %s und Brustbreite %s lassen nur %s für das Armloch, bei einem "+
				"Brustumfang von %s: messen Sie alle drei noch einmal",
			construct.Length(f.AcrossBack), construct.Length(f.AcrossFront), construct.Length(max(0, width)),
			construct.Length(f.Bust))
	}
	return width, nil
}

// checkAcross compares the place of the armhole's narrowest point with that of
// the shoulder tip, both from the centre line.
func checkAcross(name string, which subject.Subject, across, tip, given, shoulder float64) error {
	if across > tip+12 {
		return construct.About(which, subject.ShoulderLength).Refuse(
			"bodice: the %s of %s reaches past the end of a shoulder length of %s: "+
				"measure both again",
			"Oberteil: %s von %s reicht über das Ende einer Schulterlänge von %s: messen Sie beide "+
				"noch einmal", name, construct.Length(given), construct.Length(shoulder))
	}
	if across < tip-75 {
		return construct.About(subject.ShoulderLength, which).Refuse(
			"bodice: the shoulder length of %s reaches far past an %s of %s: measure both again",
			"Oberteil: die Schulterlänge von %s reicht weit über %s von %s: messen Sie beide noch "+
				"einmal",
			construct.Length(shoulder), name, construct.Length(given))
	}
	return nil
}
