package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// Where the lower ends of waist darts lie, as shares of the waist to hip: the
// seat is lower than the belly [source.CommonPractice].
const (
	frontDartLow = 0.45
	backDartLow  = 0.65
)

// mostBelow is the furthest that a bodice goes on below the waist, in mm
// [source.OwnChoice].
const mostBelow = 900

func (o Options) hipEase(bustEase float64) float64 {
	if o.HipEase > 0 {
		return o.HipEase
	}
	return bustEase / 2
}

func (f figures) checkBelow(o Options) error {
	switch {
	case o.BelowWaist < 0 || o.HipEase < 0:
		return construct.About(subject.BelowWaist, subject.HipEase).Refuse(
			"bodice: neither the length below the waist nor the hip ease can be negative",
			"Oberteil: die Länge unter der Taille und die Bequemlichkeit an der Hüfte können nicht "+
				"negativ sein")
	case o.BelowWaist < f.WaistToHip:
		return construct.About(subject.BelowWaist).Refuse("bodice: a length of %s below the waist ends above the hip "+
			"(waist to hip %s); ask for %s or more, or leave it out to end at the waist",
			"Oberteil: eine Länge von %s unter der Taille endet über der Hüfte (Hüfttiefe %s); "+
				"verlangen Sie %s oder mehr, oder lassen Sie sie weg, um an der Taille zu enden",
			construct.Length(o.BelowWaist), construct.Length(f.WaistToHip), construct.AtLeast(f.WaistToHip))
	case o.BelowWaist > mostBelow:
		return construct.About(subject.BelowWaist).Refuse("bodice: a length of %s below the waist is too much; ask "+
			"for %s or less",
			"Oberteil: eine Länge von %s unter der Taille ist zu viel; verlangen Sie %s oder weniger",
			construct.Length(o.BelowWaist), construct.AtMost(mostBelow))
	}
	return nil
}

// belowWaists draws side seams and darts of a bodice that goes on below the
// waist. Its side seams lie in by the taper at the waist and out to the hip,
// alike on both pieces, so that they match. front and back are the widths on
// the bust line.
func (f figures) belowWaists(o Options, straight bool, front, back float64) (waists, error) {
	if err := f.checkBelow(o); err != nil {
		return waists{}, err
	}
	s, err := f.shape(straight)
	if err != nil {
		return waists{}, err
	}
	out := max((f.Hip+o.hipEase(f.bustEase))/4-f.half/2, -s.taper, 0)
	if most := mostFlare * (f.underarm + f.WaistToHip); out > most {
		return waists{}, construct.About(subject.HipGirth, subject.BustGirth).Refuse(
			"bodice: the hip girth of %s is too large for the bust girth of %s: the side seams "+
				"would flare too far; measure both again, or end the bodice at the waist",
			"Oberteil: der Hüftumfang von %s ist zu groß für den Brustumfang von %s: die "+
				"Seitennähte liefen zu weit aus; messen Sie beide noch einmal, oder lassen Sie das "+
				"Oberteil an der Taille enden", construct.Length(f.Hip),
			construct.Length(f.Bust))
	}
	frontDarts, okFront := placeDarts(f.dartWidths(s.front), f.bustPoint, front-s.taper,
		func(i int, middle float64) float64 {
			return f.frontApex(i, middle, front)
		})
	backDarts, okBack := placeDarts(f.dartWidths(s.back), f.acrossBack/2, back-s.taper,
		func(i int, _ float64) float64 { return f.backApex(i) })
	if !okFront || !okBack {
		return waists{}, f.noRoomForDarts()
	}
	w := waists{frontSide: f.longSide(front, s.taper, out, o.BelowWaist),
		backSide: f.longSide(back, s.taper, out, o.BelowWaist)}
	w.front.below = &below{o.BelowWaist, front + out, frontDarts, float64(frontDartLow * f.WaistToHip)}
	w.back.below = &below{o.BelowWaist, back + out, backDarts, float64(backDartLow * f.WaistToHip)}
	w.waist = 2 * (front + back - 2*s.taper - s.front - s.back)
	w.hip = 2 * (front + back + 2*out)
	return w, nil
}

// longSide is the side seam from the hem up to the underarm: upright to the
// hip, in to the waist, and upright there.
func (f figures) longSide(width, taper, out, length float64) pieces.Path {
	up := orb.Point{0, 1}
	foot, hip := orb.Point{width + out, -length}, orb.Point{width + out, -f.WaistToHip}
	waist, top := orb.Point{width - taper, 0}, orb.Point{width, f.underarm}
	path := construct.Join(
		construct.Curve(hip, up, 1./3, waist, up, 1./3),
		construct.Curve(waist, up, 1./3, top, construct.Direction(waist, top), 1./3))
	if length-f.WaistToHip > 1 {
		path = construct.Join(construct.Line(foot, hip), path)
	} else {
		path[0] = construct.Curve(foot, up, 1./3, waist, up, 1./3)[0]
	}
	return path
}
