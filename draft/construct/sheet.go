// Package construct is the drafting table on which blocks are drawn: numbered
// points set one from another, curves between them, darts, and the finished
// piece. It records each step in a dressmaker's words, so that the draft can
// be repeated by hand.
//
// Lengths are millimetres, x runs to the right and y up.
package construct

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// Sheet is a draft in the making: its steps so far.
type Sheet struct {
	Piece string // "back bodice"
	Steps []Step
	// Points that the steps set, in the order of their numbers.
	Points []Point
	// Guides are curves that the steps draw and that later ones move or cut away.
	Guides []Guide
}

// Guide is a curve that a step draws and a later one moves or cuts away: the
// armhole, before a dart is closed across it.
type Guide struct {
	// Edge is what it would become.
	Edge seams.Name
	// Of is the piece that it comes to, in words, where that is not the piece of
	// the sheet: "side front".
	Of   string
	Path pieces.Path
}

// Step is one instruction of a draft.
type Step struct {
	// Do says what to do, with {} for each length.
	Do      string
	Lengths []float64
	// Rule says where the lengths come from: "scye depth and 5 mm".
	Rule string
	// To is the number of the point that the step sets, and From that of the
	// one from which it draws a line there; 0 when it sets or draws none.
	From, To int
}

// Text is the step as a sentence, its lengths worded in a unit.
func (s Step) Text(unit measure.Unit) string {
	text := s.Do
	for _, l := range s.Lengths {
		text = strings.Replace(text, "{}", Length(l).In(unit), 1)
	}
	if s.Rule == "" {
		return text
	}
	return text + ": " + s.RuleText(unit)
}

// RuleText is the rule alone, its fixed lengths worded in a unit.
func (s Step) RuleText(unit measure.Unit) string { return reworded(s.Rule, unit) }

// Point is a numbered point of a draft.
type Point struct {
	Number int
	At     orb.Point
}

// X is the distance to the right of the sheet's origin.
func (p Point) X() float64 { return p.At[0] }

// Y is the height above the sheet's origin.
func (p Point) Y() float64 { return p.At[1] }

// Start sets the point that a draft begins with.
func (s *Sheet) Start(x, y float64, rule string) Point {
	return s.point(Point{}, orb.Point{x, y}, "mark %[1]d", rule)
}

// Up sets a point straight above another.
func (s *Sheet) Up(from Point, by float64, rule string) Point {
	return s.point(from, orb.Point{from.X(), from.Y() + by}, from.text("square up from %d by {} to")+" %[1]d", rule, by)
}

// Raised is Up, unless it is by nothing to speak of: then it is the point
// itself.
func (s *Sheet) Raised(from Point, by float64, rule string) Point {
	const nothing = 0.05 // [source.OwnChoice]
	if by < nothing {
		return from
	}
	return s.Up(from, by, rule)
}

// Down sets a point straight below another.
func (s *Sheet) Down(from Point, by float64, rule string) Point {
	return s.point(from, orb.Point{from.X(), from.Y() - by}, from.text("square down from %d by {} to")+" %[1]d", rule,
		by)
}

// Right sets a point level with another, to its right.
func (s *Sheet) Right(from Point, by float64, rule string) Point {
	return s.point(from, orb.Point{from.X() + by, from.Y()},
		from.text("square across from %d to the right by {} to")+" %[1]d", rule, by)
}

// Left sets a point level with another, to its left.
func (s *Sheet) Left(from Point, by float64, rule string) Point {
	return s.point(from, orb.Point{from.X() - by, from.Y()},
		from.text("square across from %d to the left by {} to")+" %[1]d", rule, by)
}

// Slope sets a point on a line from another that falls to the right by so
// much for every 1 across.
func (s *Sheet) Slope(from Point, length, fall float64, rule string) Point {
	run := portable.Hypot(1, fall)
	at := orb.Point{from.X() + length/run, from.Y() - length*fall/run}
	return s.point(from, at, from.text("from %d draw a line of {} to")+" %[1]d", rule, length)
}

// Along sets a point on the line from one point towards another.
func (s *Sheet) Along(from, to Point, by float64, rule string) Point {
	return s.point(from, Toward(from.At, to.At, by),
		fmt.Sprintf("on the line %d-%d, {} from %d, mark", from.Number, to.Number, from.Number)+" %[1]d", rule, by)
}

// SquareOut sets a point off the middle of the line from one point to
// another, square to it: to the left of the way there when out is positive,
// to the right when it is negative.
func (s *Sheet) SquareOut(from, to Point, out float64, rule string) Point {
	middle := Between(from.At, to.At, 0.5)
	way := Direction(from.At, to.At)
	at := orb.Point{middle[0] - float64(way[1]*out), middle[1] + float64(way[0]*out)}
	return s.point(from, at, fmt.Sprintf("at the middle of %d-%d square out by {} to", from.Number, to.Number)+" %[1]d",
		rule, math.Abs(out))
}

// ReachRight sets the point to the right where a line of a length from one
// point meets the level of another. The length must be more than the fall.
func (s *Sheet) ReachRight(from, level Point, length float64, rule string) Point {
	return s.reach(from, level, length, 1, rule)
}

// ReachLeft is ReachRight to the left.
func (s *Sheet) ReachLeft(from, level Point, length float64, rule string) Point {
	return s.reach(from, level, length, -1, rule)
}

func (s *Sheet) reach(from, level Point, length, side float64, rule string) Point {
	fall := from.Y() - level.Y()
	at := orb.Point{from.X() + float64(side*math.Sqrt(max(0, float64(length*length)-float64(fall*fall)))), level.Y()}
	return s.point(from, at, from.text("from %d draw a line of {} that is level with")+level.text(" %d at its end,")+
		" %[1]d", rule, length)
}

// Turn sets the point that another comes to when the paper is turned about a
// centre (degrees, counter-clockwise). The step gives the straight distance
// between the two, which is what a ruler and compasses need.
func (s *Sheet) Turn(p, centre Point, degrees float64, rule string) Point {
	at := Turning(centre.At, degrees).Apply(p.At)
	swing := Distance(p.At, at)
	way := "counter-clockwise"
	if degrees < 0 {
		way = "clockwise"
	}
	return s.point(p, at, p.text("swing %d about")+centre.text(" %d "+way+" by {} to")+" %[1]d", rule, swing)
}

// Draw records a line, a curve or a dart that sets no point; do has {} for
// each length.
func (s *Sheet) Draw(do, rule string, lengths ...float64) {
	s.Steps = append(s.Steps, Step{Do: do, Lengths: lengths, Rule: rule})
}

// Numbers names points in the order of a line that is drawn through them:
// "3-1-4".
func Numbers(points ...Point) string {
	words := make([]string, len(points))
	for i, p := range points {
		words[i] = strconv.Itoa(p.Number)
	}
	return strings.Join(words, "-")
}

// Line names the guide in words: "side", or "side of the side front".
func (g Guide) Line() string {
	if g.Of == "" {
		return g.Edge.Unnumbered().String()
	}
	return g.Edge.String() + " of the " + g.Of
}

// Guide records a curve that a later step moves, under the name of its edge.
func (s *Sheet) Guide(edge seams.Name, path pieces.Path) { s.GuideOf("", edge, path) }

// GuideOf notes one of another piece, named in words.
func (s *Sheet) GuideOf(piece string, edge seams.Name, path pieces.Path) {
	s.Guides = append(s.Guides, Guide{edge, piece, path})
}

func (s *Sheet) point(from Point, at orb.Point, do, rule string, lengths ...float64) Point {
	set := Point{len(s.Points) + 1, at}
	s.Points = append(s.Points, set)
	step := Step{Do: fmt.Sprintf(do, set.Number), Lengths: lengths, Rule: rule, From: from.Number, To: set.Number}
	s.Steps = append(s.Steps, step)
	return set
}

func (p Point) text(format string) string { return fmt.Sprintf(format, p.Number) }
