package illustration

import "github.com/paulmach/orb"

// The right half of the body, in the order in which its rim runs.
var (
	neckAndShoulder = []orb.Point{{4.6, 19}, {5, 23.5}, {8, 26}, {15, 28.2}, {18.6, 31}}
	armOutside      = []orb.Point{{18.6, 31}, {21, 37}, {22.6, 47}, {24.4, 59}, {27, 72}, {28.6, 81}}
	hand            = []orb.Point{{28.6, 81}, {30.6, 87}, {30.4, 94}, {28.6, 96}, {27.2, 92}, {25.6, 82}}
	armInside       = []orb.Point{{25.6, 82}, {23, 72}, {20.2, 60}, {18, 50}, {16.4, 41}}
	torso           = []orb.Point{{16.4, 41}, {16.6, 47}, {14.6, 56}, {12.8, 64}, {14.4, 72}, {17.6, 81}, {18.6, 87}}
	legOutside      = []orb.Point{
		{18.6, 87}, {18.2, 97}, {15.6, 111}, {13.2, 122}, {13.4, 132}, {11.4, 146}, {9.4, 159},
	}
	foot      = []orb.Point{{9.4, 159}, {10.4, 165}, {11.4, 169.4}, {5.2, 169.6}, {4.8, 164}, {5.2, 159}}
	legInside = []orb.Point{{5.2, 159}, {4.8, 146}, {3.4, 132}, {4, 122}, {2.4, 110}, {0.8, 98}, {0, 90}}
)

// whole is the body from head to foot.
var whole = orb.Bound{Min: orb.Point{-36, -3}, Max: orb.Point{36, 173}}

// body draws a standing body, from the front or the back.
func (v *view) body(back bool) {
	v.shape(bodyGrey, bodyPen, symmetrical(neckAndShoulder, armOutside, hand, armInside, torso,
		legOutside, foot, legInside)...)
	v.head(back)
	if back {
		v.smooth(bodyPen, orb.Point{0, 27}, orb.Point{0.3, 45}, orb.Point{0, 64}, orb.Point{0, 80})
		v.page.Disc(90, v.to(nape), 0.8)
		return
	}
	both(func(side func(...orb.Point) []orb.Point) {
		v.smooth(bodyPen, side(orb.Point{2.2, 46}, orb.Point{6, 49.4}, orb.Point{11, 49.6}, orb.Point{14, 46})...)
	})
}

func (v *view) head(back bool) {
	var ring []orb.Point
	ring = append(ring, oval(orb.Point{0, 10}, 7, 11.5, false)...)
	lower := oval(orb.Point{0, 10}, 7, 12, true)
	for i := len(lower) - 1; i >= 0; i-- {
		ring = append(ring, lower[i])
	}
	grey := bodyGrey
	if back {
		grey = shadeGrey
	}
	v.page.Area(grey, v.all(ring)...)
	v.straight(bodyPen, ring...)
	if back {
		v.page.Disc(shadeGrey, v.to(orb.Point{0, 6}), 3.4*v.mm)
		v.page.Circle(bodyPen, v.to(orb.Point{0, 6}), 3.4*v.mm)
	}
}

// Points of the body that measurements begin or end at.
var (
	nape          = orb.Point{0, 25}
	shoulderNeck  = orb.Point{5.6, 24.8}
	shoulderPoint = orb.Point{17.4, 29.6}
	wrist         = orb.Point{27, 81.5}
	waistSide     = orb.Point{12.8, 64}
	hipSide       = orb.Point{18.6, 86}
)
