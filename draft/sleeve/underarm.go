package sleeve

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// wrist is the width of the lower edge of a sleeve that is not gathered at the
// head, for a bicep line and a head height: in by a quarter at the wrist (common
// practice), and in proportion on the way there; or as much as was asked for.
func (d drafting) wrist(bicep, height float64) float64 {
	if d.isUpright {
		return bicep
	}
	if d.WristWidth > 0 {
		return d.WristWidth - d.spread
	}
	length := d.lengthAt(height)
	full := max(d.ShoulderToWrist, length)
	width := bicep * (1 - 0.25*(length-height)/(full-height))
	return max(width, float64(d.HemFullness*width)-d.spread)
}

// slantest is the most by which an underarm seam leans where it meets the head,
// in radians: one that leans more is a curve below [source.OwnChoice].
const slantest = 8 * math.Pi / 180

// slant is by how much the underarm seams lean inward towards the lower edge,
// where they meet the head: both alike, so that they match.
func (d drafting) slant(bicep, height float64) float64 {
	fall := max(leastUnderarm, d.lengthAt(height)-height)
	lean := portable.Atan((bicep - d.wrist(bicep, height)) / 2 / fall)
	return max(-slantest, min(slantest, lean))
}

// underarm is the seam from the lower edge up to the head. lean is its direction
// there: a straight line, or a curve that arrives so.
func underarm(lower, end, lean orb.Point) pieces.Path {
	way := construct.Direction(lower, end)
	if construct.Distance(way, lean) < 1e-4 {
		return construct.Line(lower, end)
	}
	return construct.Curve(lower, way, 1./3, end, lean, 1./3)
}
