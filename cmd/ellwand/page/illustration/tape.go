package illustration

import (
	"io"

	"github.com/paulmach/orb"
)

// tape is where the tape goes for a measurement.
type tape struct {
	back   bool
	line   []orb.Point // along which it lies
	hidden []orb.Point // where the body hides it
}

// round is a tape round the body or a limb, a little lower in front.
func round(centre orb.Point, across, deep float64) tape {
	return tape{line: oval(centre, across, deep, true), hidden: oval(centre, across, deep, false)}
}

// tapes by the measurement's name in the job file; how each is taken stands in
// job.Taking and follows [source.ISO8559].
var tapes = map[string]tape{
	"height":                   {line: []orb.Point{{33, -1.5}, {33, 169.6}}},
	"bust_girth":               round(orb.Point{0, 46.5}, 16.8, 1.8),
	"waist_girth":              round(orb.Point{0, 64}, 13, 1.5),
	"hip_girth":                round(orb.Point{0, 86}, 18.8, 2),
	"neck_base_girth":          round(orb.Point{0, 24.6}, 5.8, 2.6),
	"upper_arm_girth":          round(orb.Point{20, 44}, 3, 0.9),
	"wrist_girth":              round(wrist, 2, 0.7),
	"back_neck_point_to_waist": {back: true, line: []orb.Point{nape, {0.3, 45}, {0, 64}}},
	"scye_depth":               {back: true, line: []orb.Point{nape, {0.2, 34}, {0, 43}}},
	"across_back_width":        {back: true, line: []orb.Point{{-16.2, 37}, {0, 37.6}, {16.2, 37}}},
	"across_front_width":       {line: []orb.Point{{-15.4, 38}, {0, 38.6}, {15.4, 38}}},
	"shoulder_length":          {line: []orb.Point{shoulderNeck, {11, 26.6}, shoulderPoint}},
	"shoulder_to_wrist":        {line: []orb.Point{shoulderPoint, {20.4, 39}, {22.4, 58}, {25, 72}, wrist}},
	"waist_to_hip":             {line: []orb.Point{waistSide, {14.6, 72}, {17.8, 81}, hipSide}},
	"body_rise":                {line: []orb.Point{waistSide, {14.6, 72}, {18, 82}, {18.9, 91}}},
	"inside_leg_length":        {line: []orb.Point{{0, 90}, {1.6, 122}, {1.6, 169.6}}},
	"outside_leg_length":       {line: []orb.Point{waistSide, {18.6, 86}, {18.6, 100}, {18.6, 169.6}}},
}

// levels that a measurement is taken to, drawn as a fine line across.
var levels = map[string]float64{"scye_depth": 43, "back_neck_point_to_waist": 64, "body_rise": 91}

// Tape writes the picture of a body with the tape in place. The error is
// ErrUnknown for a measurement that has no picture, or that of w.
func Tape(w io.Writer, measure string) error {
	t, ok := tapes[measure]
	if !ok {
		return ErrUnknown
	}
	v := newView(whole, 150)
	v.body(t.back)
	if y, ok := levels[measure]; ok {
		v.straight(foldPen, orb.Point{-24, y}, orb.Point{24, y})
	}
	if t.hidden != nil {
		v.straight(hiddenIn, t.hidden...)
	}
	v.smooth(tapePen, t.line...)
	for _, end := range []orb.Point{t.line[0], t.line[len(t.line)-1]} {
		if t.hidden == nil {
			v.page.Disc(0, v.to(end), 1.5)
		}
	}
	return v.write(w, measure)
}
