package skirt

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
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
	// rest into the two side seams: 6 parts of 13 (common practice).
	dartShare = 6. / 13
	// withoutDarts is what the side seams alone take in, in mm.
	withoutDarts = 30
	// leastDart is the narrowest dart worth sewing, in mm.
	leastDart = 8
	// steepTaper and flatDart bound a side seam's taper by the waist to hip
	// and a dart's width by its length, so that they lie flat.
	steepTaper = 0.28
	flatDart   = 0.36
)

// The lengths of the darts as shares of the waist to hip: 14 and 12.5 cm in
// the back, 10 cm in the front, at a waist to hip of 20.6 cm (common practice).
const (
	backFirst, backSecond, frontLength = 0.68, 0.61, 0.485
)

// shape shares out the difference between hip and waist. Of what the darts
// take, the back has two thirds (common practice).
func (f figures) shape() (shaping, error) {
	s := shaping{half: max(f.hip, f.waist) / 2}
	over := s.half - f.waist/2
	if over <= withoutDarts {
		s.taper = over / 2
		return s, nil
	}
	total := max(dartShare*over, over-2*steepTaper*f.WaistToHip)
	s.taper = (over - total) / 2
	if f.DartsIntoHem {
		var err error
		s.front, s.back, err = f.hemDarts(total)
		return s, err
	}
	front, back := total/3, total*2/3
	mostBack, mostFront := 2*flatDart*backSecond*f.WaistToHip, 2*flatDart*frontLength*f.WaistToHip
	switch {
	case front < leastDart:
		front, back = 0, total
	case back > mostBack:
		front, back = total-mostBack, mostBack
	}
	if front > mostFront {
		return shaping{}, construct.Refuse("skirt: the waist girth of %s is too small for the hip girth of %s within a waist to hip of %s: the darts would be too wide to lie flat; measure all three again, or ask for a gathered, pleated or circle skirt",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(f.WaistToHip))
	}
	s.front, s.back = f.frontDarts(front), f.backDarts(back)
	return s, nil
}

func (f figures) backDarts(total float64) []dart {
	if total <= 25 {
		return []dart{{0.5, total, backFirst * f.WaistToHip}}
	}
	return []dart{{1. / 3, total / 2, backFirst * f.WaistToHip}, {2. / 3, total / 2, backSecond * f.WaistToHip}}
}

func (f figures) frontDarts(total float64) []dart {
	length := frontLength * f.WaistToHip
	switch {
	case total == 0:
		return nil
	case total <= min(28, flatDart*length):
		return []dart{{0.6, total, length}}
	}
	return []dart{{0.42, total / 2, length}, {0.74, total / 2, 0.95 * length}}
}

// raise is how far the waist lies higher at the side than at the centre: the
// side seam runs over the hip bone (common practice: 12 mm or so).
func raise(taper float64) float64 { return min(0.35*max(taper, 0), 14) }

// belowHip gives the straight lower part of a side seam, for a width on the hip
// line: its foot, its upper end, and the way up. It is as long as the centre line
// there, so that the hem is level.
func (f figures) belowHip(width float64) (foot, hip, up orb.Point) {
	up = construct.Heading(90 + math.Atan(f.slant())*180/math.Pi)
	hip = orb.Point{width, -f.WaistToHip}
	return construct.Go(hip, up, f.WaistToHip-f.Length), hip, up
}

// sideSeam is the upper side seam from a point on the hip line, which it
// reaches in a direction, to the waist.
func sideSeam(hip, way orb.Point, taper, rise float64) pieces.Path {
	waist := orb.Point{hip[0] - taper, hip[1] + rise}
	lean := 1.5 * math.Atan(taper/rise) * 180 / math.Pi
	// A seam that leans less than it does below the hip runs on straight.
	flare := math.Atan(-way[0]/way[1]) * 180 / math.Pi
	return construct.Curve(hip, way, 0.42, waist, construct.Heading(90+max(lean, flare)), 0.36)
}
