package steps

import (
	"fmt"
	"math"
	"strconv"
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
// line between its ends. Of a curve that a later step moves it is the curve as
// first drawn.
func curvesOf(piece pieces.Piece, sheet construct.Sheet, unit measure.Unit) []string {
	guided := map[string]bool{}
	for _, guide := range sheet.Guides {
		guided[construct.SeamOf(guide.Name)] = true
	}
	edges := append([]pieces.Edge{}, sheet.Guides...)
	for _, edge := range piece.Edges {
		if !guided[construct.SeamOf(edge.Name)] {
			edges = append(edges, edge)
		}
	}
	var out []string
	for _, edge := range edges {
		for _, curve := range edge.Path {
			if text := curveText(edge.Name, curve, endNamer{piece, sheet}, unit); text != "" {
				out = append(out, text)
			}
		}
	}
	return out
}

func curveText(edge string, curve pieces.Curve, ends endNamer, unit measure.Unit) string {
	name := construct.SeamOf(edge) + ends.text(curve)
	chord := construct.Length(construct.Distance(curve.Start(), curve.End()))
	if arc, ok := curve.(pieces.Arc); ok {
		return fmt.Sprintf("%s: an arc of radius %s; %s straight", name, construct.Length(arc.Radius).In(unit), chord.In(unit))
	}
	offs := offChord(curve)
	if max(math.Abs(offs[0]), math.Abs(offs[1]), math.Abs(offs[2])) < straightEnough {
		return ""
	}
	return fmt.Sprintf("%s, %s straight: %s", name, chord.In(unit), offsText(offs, unit))
}

// offsText words the distances off the line, the side once where it is one:
// "1.2 cm, 2 cm, 1.5 cm inward".
func offsText(offs [3]float64, unit measure.Unit) string {
	words := make([]string, len(offs))
	for i, off := range offs {
		words[i] = offText(off, unit)
	}
	for _, side := range []string{" inward", " outward"} {
		if strings.HasSuffix(words[0], side) && strings.HasSuffix(words[1], side) && strings.HasSuffix(words[2], side) {
			words[0], words[1] = strings.TrimSuffix(words[0], side), strings.TrimSuffix(words[1], side)
		}
	}
	return strings.Join(words, ", ")
}

// offText words a distance off the line: "1.2 cm in".
func offText(off float64, unit measure.Unit) string {
	text := construct.Length(math.Abs(off)).In(unit)
	switch {
	case strings.HasPrefix(text, "0 "):
		return "on the line"
	case off > 0:
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

// endNamer names the ends of a curve by the points of the draft.
type endNamer struct {
	piece pieces.Piece
	sheet construct.Sheet
}

func (n endNamer) text(curve pieces.Curve) string {
	from, to := n.name(curve.Start()), n.name(curve.End())
	switch {
	case from == "" && to == "":
		return ""
	case from == "":
		return ", ending at " + to
	case to == "":
		return ", beginning at " + from
	}
	return " from " + from + " to " + to
}

// name of a point: its number, or the dart that ends there.
func (n endNamer) name(at orb.Point) string {
	for _, p := range n.sheet.Points {
		if construct.Distance(p.At, at) < 0.3 {
			return strconv.Itoa(p.Number)
		}
	}
	for _, d := range n.piece.Darts {
		if construct.Distance(d.Start, at) < 0.3 || construct.Distance(d.End, at) < 0.3 {
			return "the " + d.Name
		}
	}
	return ""
}
