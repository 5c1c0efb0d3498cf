package layout

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// Placed returns the outline of the item as the placement lays it: a new,
// closed ring in the frame of the strip or sheet.
func (p Problem) Placed(at Placement) orb.Ring {
	item := p.Items[at.Item]
	turn := item.Turns[at.Turn]
	ring := Turned(item.Outline, turn.Degrees+at.Tilt, turn.Mirrored)
	for i := range ring {
		ring[i][0] += at.X
		ring[i][1] += at.Y
	}
	return ring
}

// Turned mirrors a ring in x, if asked, and turns it about the origin. The
// result is a new, closed ring. Quarter turns are exact.
func Turned(ring orb.Ring, degrees float64, mirrored bool) orb.Ring {
	sin, cos := portable.SincosDegrees(degrees)
	out := make(orb.Ring, 0, len(ring)+1)
	for _, q := range ring {
		x, y := q[0], q[1]
		if mirrored {
			x = -x
		}
		out = append(out, orb.Point{float64(cos*x) - float64(sin*y), float64(sin*x) + float64(cos*y)})
	}
	if len(out) > 0 && out[0] != out[len(out)-1] {
		out = append(out, out[0])
	}
	return out
}

// Reduced splits a turn, tilted by so many degrees, into a rotation by 0 to
// less than 180 degrees and mirror images in x and y after it (-1, or 1 for
// none). Turning by 180 degrees is both images; an image in x before a turn by
// d is a turn by -d before the image.
func (turn Turn) Reduced(tilt float64) (degrees, flipX, flipY float64) {
	degrees, flipX, flipY = turn.Degrees+tilt, 1, 1
	if turn.Mirrored {
		degrees, flipX = -degrees, -1
	}
	degrees = math.Mod(degrees, 360)
	if degrees < 0 {
		degrees += 360
	}
	if degrees >= 180 {
		return degrees - 180, -flipX, -flipY
	}
	return degrees, flipX, flipY
}
