package trousers

import (
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// What the draft takes over from a handbook's tailored trousers, in mm
// [source.AldrichFromMemory].
const (
	forkShare  = 1. / 16 // the front fork, of the hip girth
	forkTimes  = 1.5     // the back fork is that many times the front's
	forkMore   = 5       // and that much longer
	legMore    = 10      // the back leg is wider on each side than the front leg
	usualSlant = 10      // the centre front comes in at the waist
	kneeRaise  = 50      // the knee lies above the middle of the inside leg
)

// The other amounts of the draft, in mm [source.OwnChoice].
const (
	usualWaistEase = 15     // 1 to 2 cm [source.CommonPractice]
	usualHipEase   = 60     // 4 cm close, 6 usual, 10 easy [source.CommonPractice]
	riseEase       = 5      // the crotch line lies below the body
	floorClear     = 20     // the hem lies above the floor
	backMore       = 20     // the back is wider on the hip line than the front
	usualSeat      = 1. / 8 // the centre back comes in for every mm up
	seatRaise      = 25     // the centre back rises above the waist, for sitting
	leastLeg       = 50     // the shortest inside leg
	pastFloor      = 150    // the longest leg is that much longer than the wearer's
	leastHem       = 240    // round a foot
	mostHem        = 1000
	hemBase        = 240 // a leg at the floor is that and a share of the hip round:
	hemShare       = 0.2 // 44 cm at hip 100 cm
)

// figures are the lengths that both pieces are drawn from.
type figures struct {
	Measures
	Options
	// frontSlant is how far the centre front comes in at the waist, seatSlant how
	// far the centre back does for every mm up.
	frontSlant, seatSlant float64
	// rise is the depth of the crotch line, knee that of the knee line.
	rise, knee float64
	// front and back are the widths on the hip line, fork and backFork how
	// far the crotch reaches beyond the centre line.
	front, back, fork, backFork float64
	// taper is how far each outside leg comes in above the hip.
	taper float64
	// frontDarts and backDarts are what the darts of each piece take in.
	frontDarts, backDarts float64
	// waist is the length of both waist seams, darts closed.
	waist float64
}

// half is the width of the front on the crotch line, halved by the crease.
func (f figures) half() float64 { return (f.front + f.fork) / 2 }

// centre is where the centre front line stands.
func (f figures) centre() float64 { return f.fork - f.half() }

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
	f.backFork = forkTimes*f.fork + forkMore
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
				"ask for a wider hem or a longer leg", construct.Length(f.legRound()), construct.Length(f.Hip), construct.Length(f.Length+f.Lowered))
	}
	return nil
}

// legRound is the width of a leg at the hem as drawn, all round.
func (f figures) legRound() float64 { return 4*f.hemHalf() + 2*legMore }

func (f figures) check() error {
	for _, l := range []struct {
		name  string
		value float64
	}{{"length", f.Length}, {"waist ease", f.WaistEase}, {"hip ease", f.HipEase}, {"hem width", f.HemWidth}} {
		if l.value < 0 {
			return construct.Refuse("trousers: the %s is %s; it cannot be negative", l.name, construct.Length(l.value))
		}
	}
	// The wearer measures from the natural waist.
	worn := func(length float64) construct.Length { return construct.Length(length + f.Lowered) }
	switch {
	case f.BodyRise < f.WaistToHip+30:
		return construct.About(subject.BodyRise, subject.WaistToHip).Refuse(
			"trousers: the body rise of %s does not reach far enough below the waist to hip "+
				"of %s: measure both again", worn(f.BodyRise), worn(f.WaistToHip))
	case f.OutsideLeg < min(1.6*f.BodyRise+400, 3*f.BodyRise):
		return construct.About(subject.BodyRise, subject.OutsideLegLength).Refuse(
			"trousers: the body rise of %s leaves too short a leg in an outside leg "+
				"length of %s: measure both again", worn(f.BodyRise), worn(f.OutsideLeg))
	case f.Length < f.rise+leastLeg:
		return construct.About(subject.Length).Refuse("trousers: a length of %s leaves no leg below a body rise of "+
			"%s; ask for %s or more", worn(f.Length), worn(f.BodyRise), construct.AtLeast(worn(f.rise+leastLeg)))
	case f.Length > f.OutsideLeg+pastFloor:
		return construct.About(subject.Length).Refuse("trousers: a length of %s reaches past the floor, at an outside "+
			"leg length of %s; ask for %s or less, or measure it again", worn(f.Length), worn(f.OutsideLeg), construct.AtMost(worn(f.OutsideLeg+pastFloor)))
	case f.HemWidth > 0 && f.HemWidth < leastHem:
		return construct.About(subject.HemWidth).Refuse("trousers: no foot goes through a hem width of %s; ask for %s "+
			"or more", construct.Length(f.HemWidth), construct.AtLeast(leastHem))
	case f.HemWidth > mostHem:
		return construct.About(subject.HemWidth).Refuse("trousers: a hem width of %s is more than a leg can flare to; "+
			"%s is the most", construct.Length(f.HemWidth), construct.AtMost(mostHem))
	}
	return nil
}

const (
	// dartShare of what half the trousers have to come in goes into the
	// darts, three fifths of it in the back [source.OwnChoice].
	dartShare, backShare = 0.5, 0.6
	// withoutDarts is what the outside legs alone take in, in mm
	// [source.OwnChoice].
	withoutDarts = 24
	// steepTaper and flatDart bound a seam's taper by the waist to hip and a
	// dart's width by its length, so that they lie flat [source.OwnChoice].
	steepTaper, flatDart = 0.27, 0.36
	// The lengths of the darts as shares of the waist to hip: 12 and 10 cm in
	// the back, 10 in the front [source.AldrichFromMemory].
	backDart, secondDart, frontDart = 0.6, 0.5, 0.48
	// A second front dart is a little shorter than the first, and the two lie
	// on the waist from a little before the crease on [source.OwnChoice].
	frontSecond, beforeCrease, frontApart = 0.95, 0.92, 0.34
	// The back darts lie at the thirds of the waist [source.AldrichFromMemory],
	// one alone in its middle [source.OwnChoice].
	backAlone, backInner, backOuter = 0.5, 1. / 3, 2. / 3
	// Wider darts, in mm, are sewn as two [source.OwnChoice].
	backWidest, frontWidest = 26, 28
	// The waist rises at the side by a share of what the outside leg comes in,
	// and by a most, as a skirt's does [source.OwnChoice].
	sideRaise, mostSideRaise = 0.35, 14
)

// shape shares out the difference between hip and waist among the slanting
// centre lines, the outside legs and the darts.
func (f *figures) shape() error {
	over := f.level() - f.waist
	if over <= withoutDarts || f.Opening == ElasticWaist {
		f.taper = over / 2
		return nil
	}
	total := max(dartShare*over, over-2*steepTaper*f.WaistToHip)
	f.backDarts = backShare * total
	f.frontDarts = total - f.backDarts
	mostBack, mostFront := 2*flatDart*secondDart*f.WaistToHip, 2*flatDart*frontDart*f.WaistToHip
	if f.backDarts > mostBack {
		f.backDarts, f.frontDarts = mostBack, total-mostBack
	}
	if f.frontDarts > mostFront {
		return construct.About(subject.WaistGirth, subject.HipGirth, subject.WaistToHip).Refuse(
			"trousers: the waist girth of %s is too small for the hip girth of %s within a "+
				"waist to hip of %s: the darts would be too wide to lie flat; measure all three again, or ask for less hip ease",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	f.taper = (over - total) / 2
	return nil
}

// seatIn is how far the seat line comes in from the hip line to the waist.
func (f figures) seatIn() float64 { return (f.WaistToHip + seatRaise) * f.seatSlant }

// level is the width of front and back at the waist where the outside legs run
// straight up from the hip.
func (f figures) level() float64 { return f.front + f.back - f.frontSlant - f.seatIn() }

// raise is how far the waist lies higher at the side.
func (f figures) raise() float64 { return min(sideRaise*max(f.taper, 0), mostSideRaise) }

// hemHalf is half the front leg's width at the hem.
func (f figures) hemHalf() float64 {
	if f.HemWidth > 0 {
		return f.HemWidth/4 - legMore/2
	}
	low := (hemBase+hemShare*f.Hip)/4 - legMore/2
	knee := kneeHalf(low, f.half())
	if f.Length >= f.knee {
		full := f.OutsideLeg - floorClear - f.knee
		return knee + (low-knee)*(f.Length-f.knee)/full
	}
	// Above the knee the leg narrows fast at first, as the inside leg does.
	left := f.shortness()
	return max(f.half()-(f.half()-knee)*(1-left*left), f.leastHalf())
}

// usualLegLean is how far the inside leg of shorts runs in from the fork for
// every mm down, at most, where no hem width is asked for [source.OwnChoice].
const usualLegLean = 0.35

// leastHalf is the half width at the hem that keeps the back inside leg of
// shorts from running in faster.
func (f figures) leastHalf() float64 {
	extra := f.backFork - f.fork
	return f.half() + extra - legMore - shortFurther*extra*f.shortness() - usualLegLean*(f.Length-f.rise)
}

// shortFurther is how much of what the back fork is longer the back hem of the
// shortest leg is wider on the inside [source.OwnChoice].
const shortFurther = 0.85

// kneeShare of the way from the hem to the width on the crotch line is done at
// the knee [source.OwnChoice].
const kneeShare = 0.2

// kneeHalf is half the front leg's width at the knee.
func kneeHalf(hem, crotch float64) float64 { return hem + kneeShare*(crotch-hem) }

// isShort says that the leg ends so near the knee that it has no knee line.
func (f figures) isShort() bool { return f.Length < f.knee+80 }

// shortness is 1 for the shortest leg, 0 for one that reaches the knee.
func (f figures) shortness() float64 {
	return math.Max(0, 1-(f.Length-f.rise)/(f.knee-f.rise))
}
