package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// shaping is how the bodice comes from the bust line in to the waist seam.
type shaping struct {
	// taper is how far each side seam comes in from the bust line to the
	// waist; negative when it goes out.
	taper float64
	// front and back are what the darts of each piece take out, all together.
	front, back float64
}

// The most that each means may take [source.CommonPractice]: a side seam that
// slants more does not hang, a wider dart does not lie flat at its point.
const (
	mostTaper = 45.0
	mostDart  = 63.0
	mostFlare = 0.45 // for every mm of side seam
)

// How the difference between the bust line and the waist is shared out: so much
// to each side seam, of the rest so much to the front darts and what is left to
// the back. The front has more, since the bust stands out further than the
// shoulder blades [source.OwnChoice].
const (
	sideShare  = 0.2
	frontShare = 0.55
	// leastOver is the least difference, in mm, that needs darts.
	leastOver = 30
)

// shape shares out the difference between the bust line and the waist. A small
// one goes into the side seams alone, as does what the waist is larger.
func (f figures) shape(straight bool) (shaping, error) {
	over := f.half - f.waist
	if straight {
		over = min(0, over)
	}
	if over < leastOver {
		if -over/2 > mostFlare*f.underarm {
			return shaping{}, construct.About(subject.WaistGirth, subject.BustGirth, subject.WaistEase).Refuse(
				"bodice: the waist girth of %s with %s of ease is too large for the bust girth of "+
					"%s: the side seams would flare too far; measure both again, or give more bust ease",
				"Oberteil: der Taillenumfang von %s mit %s Bequemlichkeit ist zu groß für den "+
					"Brustumfang von %s: die Seitennähte liefen zu weit aus; messen Sie beide noch einmal, "+
					"oder geben Sie an der Brust mehr Bequemlichkeit",
				construct.Length(f.Waist), construct.Length(f.waistEase), construct.Length(f.Bust))
		}
		return shaping{taper: over / 2}, nil
	}
	s := shaping{taper: min(sideShare*over, mostTaper)}
	rest := over - 2*s.taper
	s.front, s.back = float64(frontShare*rest), float64((1-frontShare)*rest)
	if s.front*firstShare > mostDart {
		return shaping{}, construct.About(subject.WaistGirth, subject.BustGirth).Refuse(
			"bodice: the waist girth of %s is too small for the bust girth of %s: the darts "+
				"would be wider than %s; measure both again, or let the waist hang straight",
			"Oberteil: der Taillenumfang von %s ist zu klein für den Brustumfang von %s: die Abnäher "+
				"würden breiter als %s; messen Sie beide noch einmal, oder lassen Sie die Taille gerade "+
				"hängen", construct.Length(f.Waist),
			construct.Length(f.Bust), construct.Length(mostDart))
	}
	return s, nil
}

// side is the side seam from the waist up to the underarm, for a piece that is
// so wide on the bust line. It is the same on both pieces, so that they match.
func (f figures) side(width, taper float64) pieces.Path {
	top := orb.Point{width, f.underarm}
	if taper >= 0 {
		return construct.Line(orb.Point{width - taper, 0}, top)
	}
	// A flaring side seam leaves the underarm straight down, and ends as far
	// above the waist line as keeps the waist seam square to it.
	flare := portable.Atan(-taper / (0.75 * f.underarm))
	foot := orb.Point{width - taper, min(f.half/2*portable.Tan(flare/2), f.underarm/3)}
	above := orb.Point{width, top[1] - 0.25*(top[1]-foot[1])}
	return pieces.Path{pieces.Bezier{P0: foot, P1: construct.Between(foot, above, 0.5), P2: above, P3: top}}
}
