package trousers

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

func reckon(m Measures, o Options) (figures, error) {
	f := figures{Measures: m, Options: o}
	f.settleEase()
	if f.Length == 0 {
		f.Length = m.OutsideLeg - floorClear
	}
	f.rise = m.BodyRise + riseEase
	inside := m.OutsideLeg - m.BodyRise
	f.knee = f.rise + inside/2 - kneeRaise
	if err := f.check(); err != nil {
		return figures{}, err
	}

	f.fork = forkShare * m.Hip
	f.backFork = float64(forkTimes*f.fork) + forkMore
	round := max(m.Hip+f.HipEase, m.Waist+f.WaistEase)
	f.front, f.back = (round/2-backMore)/2, (round/2+backMore)/2
	f.waist = (m.Waist + f.WaistEase) / 2
	if f.Opening == ElasticWaist {
		if err := f.widenWaist(o.WaistEase > 0); err != nil {
			return figures{}, err
		}
	}
	if err := f.checkLeg(); err != nil {
		return figures{}, err
	}
	return f, f.shape()
}

// mostLegLean is how far the inside leg may run in from the fork for every mm
// down, so that the crotch seam still curves into it [source.OwnChoice].
const mostLegLean = 0.45

// checkLeg refuses a hem that is too narrow so close to the fork.
func (f figures) checkLeg() error {
	l := f.leg(legMore, shortFurther*(f.backFork-f.fork))
	foot, fall := l.inside, f.Length-f.rise
	if !l.short {
		foot, fall = l.insideKnee, f.knee-f.rise
	}
	if in := f.half() + f.backFork - f.fork + foot[0]; in > mostLegLean*fall {
		return construct.About(subject.HemWidth, subject.Length).Refuse(
			"trousers: a hem width of %s is too narrow for a hip girth of %s, %s below the waist; "+
				"ask for a wider hem or a longer leg",
			"Hose: eine Saumweite von %s ist zu eng für einen Hüftumfang von %s, %s unter der "+
				"Taille; verlangen Sie einen weiteren Saum oder ein längeres Bein",
			construct.Length(f.legRound()), construct.Length(f.Hip),
			construct.Length(f.Length+f.Lowered))
	}
	return nil
}

func (f figures) check() error {
	for _, l := range []struct {
		name  string
		value float64
	}{{"length", f.Length}, {"waist ease", f.WaistEase}, {"hip ease", f.HipEase}, {"hem width", f.HemWidth}} {
		if l.value < 0 {
			return construct.Refuse("trousers: the %s is %s; it cannot be negative",
				"Hose: %s ist %s; das kann nicht negativ sein", l.name, construct.Length(l.value))
		}
	}
	// The wearer measures from the natural waist.
	worn := func(length float64) construct.Length { return construct.Length(length + f.Lowered) }
	switch {
	case f.BodyRise < f.WaistToHip+30:
		return construct.About(subject.BodyRise, subject.WaistToHip).Refuse(
			"trousers: the body rise of %s does not reach far enough below the waist to hip "+
				"of %s: measure both again",
			"Hose: die Sitzhöhe von %s reicht nicht weit genug unter die Hüfttiefe von %s: messen "+
				"Sie beide noch einmal", worn(f.BodyRise), worn(f.WaistToHip))
	case f.OutsideLeg < min(float64(1.6*f.BodyRise)+400, 3*f.BodyRise):
		return construct.About(subject.BodyRise, subject.OutsideLegLength).Refuse(
			"trousers: the body rise of %s leaves too short a leg in an outside leg "+
				"length of %s: measure both again",
			"Hose: die Sitzhöhe von %s lässt ein zu kurzes Bein bei einer äußeren Beinlänge von "+
				"%s: messen Sie beide noch einmal", worn(f.BodyRise), worn(f.OutsideLeg))
	case f.Length < f.rise+leastLeg:
		return construct.About(subject.Length).Refuse("trousers: a length of %s leaves no leg below a body rise of "+
			"%s; ask for %s or more",
			"Hose: eine Länge von %s lässt kein Bein unter einer Sitzhöhe von %s; verlangen Sie %s "+
				"oder mehr", worn(f.Length), worn(f.BodyRise), construct.AtLeast(worn(f.rise+leastLeg)))
	case f.Length > f.OutsideLeg+pastFloor:
		return construct.About(subject.Length).Refuse("trousers: a length of %s reaches past the floor, at an outside "+
			"leg length of %s; ask for %s or less, or measure it again",
			"Hose: eine Länge von %s reicht unter den Boden, bei einer äußeren Beinlänge von %s; "+
				"verlangen Sie %s oder weniger, oder messen Sie noch einmal",
			worn(f.Length), worn(f.OutsideLeg),
			construct.AtMost(worn(f.OutsideLeg+pastFloor)))
	case f.HemWidth > 0 && f.HemWidth < leastHem:
		return construct.About(subject.HemWidth).Refuse("trousers: no foot goes through a hem width of %s; ask for %s "+
			"or more", "Hose: durch eine Saumweite von %s geht kein Fuß; verlangen Sie %s oder mehr",
			construct.Length(f.HemWidth), construct.AtLeast(leastHem))
	case f.HemWidth > mostHem:
		return construct.About(subject.HemWidth).Refuse("trousers: a hem width of %s is more than a leg can flare to; "+
			"%s is the most", "Hose: so weit wie %s kann ein Bein nicht ausgestellt sein; höchstens %s gehen",
			construct.Length(f.HemWidth), construct.AtMost(mostHem))
	}
	return nil
}

// shape shares out the difference between hip and waist among the slanting
// centre lines, the outside legs and the darts.
func (f *figures) shape() error {
	over := f.level() - f.waist
	if over <= withoutDarts || f.Opening == ElasticWaist {
		f.taper = over / 2
		return nil
	}
	total := max(dartShare*over, over-float64(2*steepTaper*f.WaistToHip))
	f.backDarts = float64(backShare * total)
	f.frontDarts = total - f.backDarts
	mostBack, mostFront := float64(2*flatDart*secondDart*f.WaistToHip), 2*flatDart*frontDart*f.WaistToHip
	if f.backDarts > mostBack {
		f.backDarts, f.frontDarts = mostBack, total-mostBack
	}
	if f.frontDarts > mostFront {
		return construct.About(subject.WaistGirth, subject.HipGirth, subject.WaistToHip).Refuse(
			"trousers: the waist girth of %s is too small for the hip girth of %s within a "+
				"waist to hip of %s: the darts would be too wide to lie flat; measure all three again, or ask for "+
				"less hip ease",
			"Hose: der Taillenumfang von %s ist zu klein für den Hüftumfang von %s bei einer "+
				"Hüfttiefe von %s: die Abnäher würden zu breit, um flach zu liegen; messen Sie alle "+
				"drei noch einmal, oder verlangen Sie weniger Bequemlichkeit an der Hüfte",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	f.taper = (over - total) / 2
	return nil
}
