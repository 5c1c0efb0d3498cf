package trousers

import "math"

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

// legRound is the width of a leg at the hem as drawn, all round.
func (f figures) legRound() float64 { return 4*f.hemHalf() + 2*legMore }

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

// seatIn is how far the seat line comes in from the hip line to the waist.
func (f figures) seatIn() float64 { return float64((f.WaistToHip + seatRaise) * f.seatSlant) }

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
	low := (hemBase+float64(hemShare*f.Hip))/4 - legMore/2
	knee := kneeHalf(low, f.half())
	if f.Length >= f.knee {
		full := f.OutsideLeg - floorClear - f.knee
		return knee + (low-knee)*(f.Length-f.knee)/full
	}
	// Above the knee the leg narrows fast at first, as the inside leg does.
	left := f.shortness()
	return max(f.half()-float64((f.half()-knee)*(1-float64(left*left))), f.leastHalf())
}

// usualLegLean is how far the inside leg of shorts runs in from the fork for
// every mm down, at most, where no hem width is asked for [source.OwnChoice].
const usualLegLean = 0.35

// leastHalf is the half width at the hem that keeps the back inside leg of
// shorts from running in faster.
func (f figures) leastHalf() float64 {
	extra := f.backFork - f.fork
	return f.half() + extra - legMore - float64(shortFurther*extra*f.shortness()) - float64(usualLegLean*(f.Length-f.rise))
}

// shortFurther is how much of what the back fork is longer the back hem of the
// shortest leg is wider on the inside [source.OwnChoice].
const shortFurther = 0.85

// kneeShare of the way from the hem to the width on the crotch line is done at
// the knee [source.OwnChoice].
const kneeShare = 0.2

// kneeHalf is half the front leg's width at the knee.
func kneeHalf(hem, crotch float64) float64 { return hem + float64(kneeShare*(crotch-hem)) }

// isShort says that the leg ends so near the knee that it has no knee line.
func (f figures) isShort() bool { return f.Length < f.knee+80 }

// shortness is 1 for the shortest leg, 0 for one that reaches the knee.
func (f figures) shortness() float64 {
	return math.Max(0, 1-(f.Length-f.rise)/(f.knee-f.rise))
}
