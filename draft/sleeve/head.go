package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// inch in mm: the draft's fixed amounts are fractions of an inch.
const inch = 25.4

// The fixed amounts of the draft (common practice, a practitioner's own
// one-piece sleeve).
const (
	headLess    = inch / 2     // a third of the armhole less this is the head height
	breakShift  = inch / 2     // the break, moved from the middle of the slanted line
	crownFlat   = inch * 3 / 8 // flat each side of the crown
	frontBulge  = inch * 5 / 8
	frontHollow = inch * 3 / 8
	backBulge   = inch * 3 / 8
	backHollow  = inch * 2 / 8
)

// HeadHeight is the height of the sleeve head from the crown down to the bicep
// line: a third of the whole armhole less half an inch (common practice).
func HeadHeight(frontArmhole, backArmhole float64) float64 {
	return (frontArmhole+backArmhole)/3 - headLess
}

// BicepLine is the length of the bicep line: from the crown a line as long as
// the armhole reaches it on each side (common practice). The armhole lengths
// must be more than the head height.
func BicepLine(frontArmhole, backArmhole, headHeight float64) float64 {
	return halfBicep(frontArmhole, headHeight) + halfBicep(backArmhole, headHeight)
}

func halfBicep(armhole, height float64) float64 {
	return math.Sqrt(max(0, armhole*armhole-height*height))
}

// head is the sleeve head: its points, and its seam from the front end of the
// bicep line over the crown to the back end.
type head struct {
	crown, level, front, back construct.Point
	seam                      pieces.Path
	// toCrown is the length of the seam's front half.
	toCrown float64
}

// side is what differs between the front and the back of the head.
type side struct {
	name          string
	line          float64 // the slanted line
	shift         float64 // of the break from the middle, away from the crown
	bulge, hollow float64
	sign          float64 // 1 on the right (front), -1 on the left (back)
}

// drawHead draws the head with slanted lines of the given lengths. foot is
// where each underarm seam ends, from the middle: its direction makes the
// head square to the seam, so that it runs on smoothly under the arm.
func drawHead(s *construct.Sheet, height, frontLine, backLine float64, wrist func(half float64) orb.Point) head {
	var h head
	h.crown = s.Start(0, height, "the crown")
	h.level = s.Down(h.crown, height, "the bicep line, at the head height")
	front := side{"front", frontLine, breakShift, frontBulge, frontHollow, 1}
	back := side{"back", backLine, -breakShift, backBulge, backHollow, -1}
	h.front = s.ReachRight(h.crown, h.level, frontLine, "the front of the bicep line: the front armhole")
	h.back = s.ReachLeft(h.crown, h.level, backLine, "the back of the bicep line: the back armhole")

	up, through := drawSide(s, h.crown, h.front, front, wrist(h.front.X()))
	down, from := drawSide(s, h.crown, h.back, back, wrist(h.back.X()))
	h.seam, h.toCrown = construct.Join(up, down.Reverse()), up.Length()
	slices.Reverse(from)
	through = append(append(through, h.crown), from...)
	s.Draw("draw the sleeve head "+construct.Numbers(through...), "square to the underarm seams, flat at the crown")
	return h
}

// drawSide draws one half of the head, from the end of the bicep line to the
// crown, and gives the points that it runs through, without the crown.
func drawSide(s *construct.Sheet, crown, end construct.Point, d side, wrist orb.Point) (pieces.Path, []construct.Point) {
	turn := s.Along(crown, end, d.line/2+d.shift, "the break: the middle of the "+d.name+" line, moved by half an inch")
	bulge := s.SquareOut(crown, turn, d.sign*d.bulge, "bulge of the upper half, outward")
	hollow := s.SquareOut(turn, end, -d.sign*d.hollow, "hollow of the lower half, inward")
	flat := beside(s, crown, d)

	// A sleeve's underarm seams are sewn together: a head square to both runs
	// on without a peak or a hollow.
	underarm := construct.Direction(wrist, end.At)
	inward := orb.Point{-d.sign * underarm[1], d.sign * underarm[0]}
	through := []construct.Point{end, hollow, turn, bulge, flat}
	points := make([]orb.Point, len(through))
	for i, p := range through {
		points[i] = p.At
	}
	curve := construct.Through(inward, points, orb.Point{-d.sign, 0})
	return construct.Join(curve, construct.Line(flat.At, crown.At)), through
}

// beside is where the flat of the crown ends.
func beside(s *construct.Sheet, crown construct.Point, d side) construct.Point {
	rule := "flat beside the crown, on the " + d.name
	if d.sign < 0 {
		return s.Left(crown, crownFlat, rule)
	}
	return s.Right(crown, crownFlat, rule)
}
