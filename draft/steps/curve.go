package steps

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// straightEnough is how far a curve may lie off its straight line and be drawn
// with a ruler, in mm.
const straightEnough = 1.0

// curvesOf says of every curve of a piece how far it lies off the straight
// line between its ends; first of those that a later step moves, as they are
// first drawn.
func curvesOf(piece pieces.Piece, sheet construct.Sheet, unit measure.Unit) []string {
	var out []string
	add := func(line string, path pieces.Path) {
		for _, curve := range path {
			if text := curveText(line, curve, sheet, unit); text != "" && !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	for _, guide := range sheet.Guides {
		add(guide.Line(), guide.Path)
	}
	for _, edge := range piece.Edges {
		add(edge.Name.Seam().String(), edge.Path)
	}
	return out
}

// curveText says it of one curve of a line, which is named in words.
func curveText(line string, curve pieces.Curve, sheet construct.Sheet, unit measure.Unit) string {
	from, _ := sheet.PointAt(curve.Start())
	to, _ := sheet.PointAt(curve.End())
	chord := construct.Length(construct.Distance(curve.Start(), curve.End()))
	name := fmt.Sprintf("%s %s, %s straight", line, construct.Numbers(from, to), chord.In(unit))
	offs := offChord(curve)
	if arc, ok := curve.(pieces.Arc); ok {
		return fmt.Sprintf("%s: an arc of radius %s, in the middle %s", name, construct.Length(arc.Radius).In(unit),
			offText(offs[1], unit))
	}
	if max(math.Abs(offs[0]), math.Abs(offs[1]), math.Abs(offs[2])) < straightEnough {
		return ""
	}
	return name + ": " + offsText(offs, unit)
}

// offsText words the distances off the line, the side once where it is one:
// "1.2 cm, 2 cm, 1.5 cm inward".
func offsText(offs [3]float64, unit measure.Unit) string {
	words := make([]string, len(offs))
	all := [3]side{sideOf(offs[0], unit), sideOf(offs[1], unit), sideOf(offs[2], unit)}
	isOneSide := all[0] != onLine && all[0] == all[1] && all[1] == all[2]
	for i, off := range offs {
		if isOneSide && i < len(offs)-1 {
			words[i] = construct.Length(math.Abs(off)).In(unit)
			continue
		}
		words[i] = offText(off, unit)
	}
	return strings.Join(words, ", ")
}

// side of the straight line on which a curve lies.
type side int

const (
	onLine side = iota
	inward
	outward
)

// sideOf a distance off the line, which is on it where that is worded as nothing.
func sideOf(off float64, unit measure.Unit) side {
	switch {
	case construct.Length(math.Abs(off)).In(unit) == construct.Length(0).In(unit):
		return onLine
	case off > 0:
		return inward
	}
	return outward
}

// offText words a distance off the line: "1.2 cm inward".
func offText(off float64, unit measure.Unit) string {
	text := construct.Length(math.Abs(off)).In(unit)
	switch sideOf(off, unit) {
	case onLine:
		return "on the line"
	case inward:
		return text + " inward"
	}
	return text + " outward"
}

// offChord is how far a curve lies to the left of the straight line between
// its ends, at a quarter, half and three quarters of the way, in mm.
func offChord(curve pieces.Curve) [3]float64 {
	from, to := curve.Start(), curve.End()
	length := construct.Distance(from, to)
	if length < 1e-6 {
		return [3]float64{}
	}
	way := construct.Direction(from, to)
	line := curve.Flatten(0.02)
	var out [3]float64
	for i := range out {
		out[i] = offAt(line, from, way, length*float64(i+1)/4)
	}
	return out
}

// offAt is the distance to the left of the line, where the curve first passes
// so far along it.
func offAt(line orb.LineString, from, way orb.Point, at float64) float64 {
	place := func(p orb.Point) (along, left float64) {
		dx, dy := p[0]-from[0], p[1]-from[1]
		return dx*way[0] + dy*way[1], dy*way[0] - dx*way[1]
	}
	for i := 1; i < len(line); i++ {
		a, left := place(line[i-1])
		b, leftEnd := place(line[i])
		if a <= at && b > at {
			return left + (leftEnd-left)*(at-a)/(b-a)
		}
	}
	return 0
}
