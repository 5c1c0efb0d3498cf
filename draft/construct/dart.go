package construct

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// DartMouth is the seam line across the open end of a dart, from the end of
// its first leg to that of its second, shaped so that the folded dart is
// caught in the seam: it is what tracing the seam through the folded paper
// gives. The legs must be of equal length.
//
// The dart is pressed towards its first leg; seam is the direction in which
// the seam leaves that leg, away from the dart. For a dart pressed towards its
// second leg, reverse the result of the mirrored question.
//
// Folded along the first leg the cloth of the dart lies under the seam beside
// it, so the mouth runs from the leg as the mirror image of that seam, as far
// as the middle of the dart, and back the same way [source.CommonPractice].
func DartMouth(first, apex, second, seam orb.Point) pieces.Path {
	leg := Direction(apex, first)
	out := 2 * (float64(seam[0]*leg[0]) + float64(seam[1]*leg[1]))
	image := orb.Point{float64(out*leg[0]) - seam[0], float64(out*leg[1]) - seam[1]}
	middle := Between(first, second, 0.5)
	peak, ok := Meet(first, image, apex, Direction(apex, middle))
	if !ok {
		peak = middle
	}
	return pieces.Path{pieces.Line{From: first, To: peak}, pieces.Line{From: peak, To: second}}
}

// HalfAngle is the angle in degrees between a dart's leg and its middle line.
func HalfAngle(width, leg float64) float64 { return asin(width / 2 / leg) }
