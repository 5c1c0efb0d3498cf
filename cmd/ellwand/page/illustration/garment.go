package illustration

import (
	"io"
	"slices"

	"github.com/paulmach/orb"
)

// Garments are the garments of the gallery, by name, in its order.
func Garments() []string {
	names := make([]string, len(sketches))
	for i, s := range sketches {
		names[i] = s.name
	}
	return names
}

// Garment writes the picture of a garment. The error is ErrUnknown for a name that
// Garments does not have, or that of w.
func Garment(w io.Writer, name string) error {
	i := slices.IndexFunc(sketches, func(s sketch) bool { return s.name == name })
	if i < 0 {
		return ErrUnknown
	}
	s := sketches[i]
	v := newView(s.frame(), garmentHigh)
	if !s.bare {
		v.stand()
	}
	s.draw(v)
	return v.write(w, name)
}

// garmentHigh is the height of a picture of the gallery, and garmentWide its
// width, mm [source.OwnChoice].
const garmentHigh, garmentWide = 90.0, 72.0

// frame is the box that all of the garment is seen in, of one shape for all.
func (s sketch) frame() orb.Bound {
	high := max(s.low-s.top, s.wide*2*garmentHigh/garmentWide)
	middle := (s.top + s.low) / 2
	half := high * garmentWide / garmentHigh / 2
	return orb.Bound{Min: orb.Point{-half, middle - high/2}, Max: orb.Point{half, middle + high/2}}
}

func (s sketch) draw(v *view) {
	if s.sleeve != nil {
		both(func(side func(...orb.Point) []orb.Point) {
			v.shape(shadeGrey, linePen, sides(side, s.sleeve)...)
		})
	}
	for _, rim := range s.rims {
		v.shape(clothGrey, linePen, symmetrical(rim...)...)
	}
	both(func(side func(...orb.Point) []orb.Point) {
		for _, l := range s.seams {
			v.smooth(seamPen, side(l...)...)
		}
		for _, l := range s.folds {
			v.smooth(foldPen, side(l...)...)
		}
	})
	for _, l := range s.once {
		v.smooth(seamPen, l...)
	}
}

func sides(side func(...orb.Point) []orb.Point, lines []line) []line {
	out := make([]line, len(lines))
	for i, l := range lines {
		out[i] = side(l...)
	}
	return out
}

// stand is a dress stand: the body without limbs, on a pole.
func (v *view) stand() {
	v.straight(bodyPen, orb.Point{0, 98}, orb.Point{0, 168})
	v.straight(bodyPen, orb.Point{-15, 169}, orb.Point{0, 165}, orb.Point{15, 169})
	v.shape(bodyGrey, bodyPen, symmetrical(
		line{{0, 17.5}, {4.2, 17.8}},
		line{{4.2, 17.8}, {4.8, 23.5}, {8, 26}, {15, 28.2}, {17.4, 31}},
		line{{17.4, 31}, {16, 35}, {16, 39}},
		line{{16, 39}, {16.6, 47}, {14.6, 56}, {12.8, 64}, {14.4, 72}, {17.6, 81}, {18.6, 88}, {18, 98}},
		line{{18, 98}, {9, 99}, {0, 99.3}},
	)...)
}
