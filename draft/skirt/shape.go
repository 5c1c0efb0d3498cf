package skirt

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// shaping is how a darted skirt comes in from the hip line to the waist.
type shaping struct {
	// half is the width of front and back together on the hip line.
	half float64
	// taper is how far each side seam comes in.
	taper float64
	// front and back are the darts of each piece, from the centre line.
	front, back []dart
}

// dart of the waist: its middle at a share of the waist line from the centre.
type dart struct{ share, width, length float64 }

const (
	// dartShare of what a half skirt has to come in goes into its darts, the
	// rest into the two side seams: at hip 100 and waist 76 cm 6 cm of 13
	// [source.AldrichFromMemory].
	dartShare = 6. / 13
	// backShare of what the darts take is that of the back: at the same size
	// two darts of 2 cm beside one [source.AldrichFromMemory].
	backShare = 2. / 3
	// withoutDarts is what the side seams alone take in, in mm
	// [source.OwnChoice].
	withoutDarts = 30
	// leastDart is the narrowest dart worth sewing, in mm [source.OwnChoice].
	leastDart = 8
	// steepTaper and flatDart bound a side seam's taper by the waist to hip
	// and a dart's width by its length, so that they lie flat
	// [source.OwnChoice].
	steepTaper, flatDart = 0.28, 0.36
)

// The darts: their lengths as shares of the waist to hip, 14 and 12.5 cm in the
// back, 10 cm in the front at a waist to hip of 20.6 cm
// [source.AldrichFromMemory].
const (
	backFirst, backSecond, frontLength = 0.68, 0.61, 0.485
	// frontSecond is the length of a second front dart, as a share of the first
	// [source.OwnChoice].
	frontSecond = 0.95
)

// Where the darts lie, as shares of the waist line from the centre: two in the
// back at its thirds [source.AldrichFromMemory], the others where they point at
// what is fullest [source.OwnChoice].
const (
	backAlone, backInner, backOuter    = 0.5, 1. / 3, 2. / 3
	frontAlone, frontInner, frontOuter = 0.6, 0.42, 0.74
	// Wider ones, in mm, are sewn as two [source.OwnChoice].
	backWidest, frontWidest = 25, 28
)

// shape shares out the difference between hip and waist.
func (f figures) shape() (shaping, error) {
	s := shaping{half: max(f.hip, f.waist) / 2}
	over := s.half - f.waist/2
	if over <= withoutDarts {
		s.taper = over / 2
		return s, nil
	}
	total := max(dartShare*over, over-float64(2*steepTaper*f.WaistToHip))
	s.taper = (over - total) / 2
	if f.DartsIntoHem {
		var err error
		s.front, s.back, err = f.hemDarts(total)
		return s, err
	}
	front, back := total*(1-backShare), total*backShare
	mostBack, mostFront := float64(2*flatDart*backSecond*f.WaistToHip), 2*flatDart*frontLength*f.WaistToHip
	switch {
	case front < leastDart:
		front, back = 0, total
	case back > mostBack:
		front, back = total-mostBack, mostBack
	}
	if front > mostFront {
		return shaping{}, construct.About(subject.WaistGirth, subject.HipGirth, subject.WaistToHip).Refuse(
			"skirt: the waist girth of %s is too small for the hip girth of %s within a waist "+
				"to hip of %s: the darts would be too wide to lie flat; measure all three again, or ask for a "+
				"gathered, "+
				"pleated or circle skirt",
			"Rock: der Taillenumfang von %s ist zu klein für den Hüftumfang von %s bei einer "+
				"Hüfttiefe von %s: die Abnäher würden zu breit, um flach zu liegen; messen Sie alle "+
				"drei noch einmal, oder verlangen Sie einen gereihten, einen Falten- oder Tellerrock",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	s.front, s.back = f.frontDarts(front), f.backDarts(back)
	return s, nil
}

func (f figures) backDarts(total float64) []dart {
	if total <= backWidest {
		return []dart{{backAlone, total, float64(backFirst * f.WaistToHip)}}
	}
	return []dart{{backInner, total / 2, float64(backFirst * f.WaistToHip)},
		{backOuter, total / 2, float64(backSecond * f.WaistToHip)}}
}

func (f figures) frontDarts(total float64) []dart {
	length := frontLength * f.WaistToHip
	switch {
	case total == 0:
		return nil
	case total <= min(frontWidest, flatDart*length):
		return []dart{{frontAlone, total, length}}
	}
	return []dart{{frontInner, total / 2, length}, {frontOuter, total / 2, float64(frontSecond * length)}}
}

// The waist lies higher at the side than at the centre, since the side seam runs
// over the hip bone: 12.5 mm where it comes in by 35 [source.AldrichFromMemory],
// more as it comes in more, up to a most, in mm [source.OwnChoice].
const (
	sideRaise     = 0.35
	mostSideRaise = 14
)

// raise is how far the waist lies higher at the side than at the centre.
func raise(taper float64) float64 { return min(sideRaise*max(taper, 0), mostSideRaise) }

// belowHip gives the straight lower part of a side seam, for a width on the hip
// line: its foot, its upper end, and the way up. It is as long as the centre line
// there, so that the hem is level.
func (f figures) belowHip(width float64) (foot, hip, up orb.Point) {
	up = construct.Heading(90 + portable.Atan(f.slant())*180/math.Pi)
	hip = orb.Point{width, -f.WaistToHip}
	return construct.Go(hip, up, f.WaistToHip-f.Length), hip, up
}

// sideSeam is the upper side seam from a point on the hip line, which it
// reaches in a direction, to the waist.
func sideSeam(hip, way orb.Point, taper, rise float64) pieces.Path {
	waist := orb.Point{hip[0] - taper, hip[1] + rise}
	lean := 1.5 * portable.Atan(taper/rise) * 180 / math.Pi
	// A seam that leans less than it does below the hip runs on straight.
	flare := portable.Atan(-way[0]/way[1]) * 180 / math.Pi
	return construct.Curve(hip, way, 0.42, waist, construct.Heading(90+max(lean, flare)), 0.36)
}

// mostTurn is the furthest that closing a dart may turn the side of a piece, in
// radians: about 40 degrees, more than a quarter of a circle all round
// [source.OwnChoice].
const mostTurn = 0.7

// hemDarts are one dart a piece, to be closed into the hem. What is to be taken
// in is shared so that both close by the same angle: front and back then flare
// alike, and the side seam hangs straight [source.CommonPractice].
func (f figures) hemDarts(total float64) (front, back []dart, err error) {
	frontLong, backLong := float64(frontLength*f.WaistToHip), float64(backFirst*f.WaistToHip)
	turn := total / (frontLong + backLong)
	if turn > mostTurn {
		return nil, nil, construct.About(subject.WaistGirth, subject.HipGirth, subject.WaistToHip).Refuse(
			"skirt: the waist girth of %s is too small for the hip girth of %s within a waist "+
				"to hip of %s to close the darts into the hem; measure all three again, or ask for a gored or a "+
				"circle skirt",
			"Rock: der Taillenumfang von %s ist zu klein für den Hüftumfang von %s bei einer "+
				"Hüfttiefe von %s, um die Abnäher in den Saum zu legen; messen Sie alle drei noch "+
				"einmal, oder verlangen Sie einen Bahnen- oder Tellerrock",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	return []dart{{0.6, float64(turn * frontLong), frontLong}}, []dart{{0.5, float64(turn * backLong), backLong}}, nil
}
