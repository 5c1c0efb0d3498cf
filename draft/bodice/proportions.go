package bodice

import (
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
)

// The proportional bodice is drafted from three measurements: bust girth, waist
// girth and back neck point to waist. All widths and the armhole are
// proportions of the bust.
//
// Its formulas are those of the bodice block of a fashion college
// [source.Bunka], down to the bust line. Three things are Ellwand's own: the
// armhole is drawn square to its ends, the waist darts lie as in the other
// bodices, and there is none at the centre back.
const (
	proportionalBustEase  = 120.
	proportionalWaistEase = 60.
	frontSlope            = 3.2 / 8 // 22 degrees
	backSlope             = 2.6 / 8 // 18 degrees
	beyondAcross          = 18.     // of the front shoulder beyond the across front
	bladeLine             = 80.     // below the back neck point
)

// proportions of a bust girth.
type proportions struct {
	scyeDepth, acrossBack, acrossFront, frontNeck, backNeck float64
	frontHeight                                             float64 // of the front neck point above the bust line
	dart                                                    float64 // degrees
	beside                                                  float64 // from the across front to the dart in the armhole
	blade                                                   float64 // width of the back shoulder dart
	frontShoulder                                           float64
}

func proportionsOf(bust float64) proportions {
	p := proportions{
		scyeDepth: bust/12 + 137, acrossBack: bust/8 + 74, acrossFront: bust/8 + 62,
		frontNeck: bust/24 + 34, frontHeight: bust/5 + 83,
		dart: bust/40 - 2.5, beside: bust / 32, blade: bust/32 - 8,
	}
	p.backNeck = p.frontNeck + 2
	p.frontShoulder = float64((p.acrossFront-p.frontNeck)*portable.Hypot(1, frontSlope)) + beyondAcross
	return p
}

func (o Options) checkProportional() error {
	switch {
	case o.Method != Proportional:
		return nil
	case o.Fit != Close:
		return construct.About(subject.Fit).Refuse("bodice: the proportional draft has one fit, with %s of ease; "+
			"leave out the fit, or ask for another bust ease",
			"Oberteil: die Konstruktion nach Proportionen hat nur eine Passform, mit %s "+
				"Bequemlichkeit; lassen Sie die Passform weg, oder verlangen Sie eine andere "+
				"Bequemlichkeit an der Brust", construct.Length(proportionalBustEase))
	case o.Shaping == NoDart:
		return construct.About(subject.Dart).Refuse("bodice: the proportional draft shapes a bust; for one without a "+
			"dart draft it to measurements",
			"Oberteil: die Konstruktion nach Proportionen formt eine Brust; ohne Abnäher zeichnen Sie "+
				"nach Maßen")
	case o.Princess != NoPrincess || o.Yoke != 0:
		return construct.About(subject.Princess, subject.Yoke).Refuse(
			"bodice: the proportional draft has a dart in the back shoulder, and neither princess "+
				"seams nor a yoke; draft it to measurements",
			"Oberteil: die Konstruktion nach Proportionen hat einen Abnäher in der hinteren Schulter, "+
				"und weder Prinzessnähte noch eine Passe; zeichnen Sie nach Maßen")
	}
	return nil
}

// proportioned puts the proportions in place of what is measured.
func (f figures) proportioned(o Options) figures {
	p := proportionsOf(f.Bust)
	if o.BustEase == 0 {
		f.bustEase = proportionalBustEase
	}
	if o.WaistEase == 0 {
		f.waistEase = proportionalWaistEase
	}
	f.half, f.waist = (f.Bust+f.bustEase)/2, (f.Waist+f.waistEase)/2
	f.ScyeDepth, f.Shoulder = p.scyeDepth, p.frontShoulder
	f.AcrossBack, f.AcrossFront = 2*p.acrossBack, 2*p.acrossFront
	f.acrossBack, f.acrossFront = p.acrossBack, p.acrossFront
	f.bustLine = f.BackNeckPointToWaist - p.scyeDepth
	f.underarm = f.bustLine - o.ArmholeDrop
	f.bustPoint = p.acrossFront/2 + 7
	f.bustDart = 2 * portable.Hypot(p.frontHeight, f.bustPoint-p.frontNeck) * portable.Sin(p.dart*math.Pi/360)
	f.proportional = true
	return f
}
