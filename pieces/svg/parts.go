package svg

import (
	"encoding/xml"
	"fmt"
	"math"
	"strings"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"

	"ellwand/pieces"
)

// notchStroke is the length of a notch on an edge without allowance, and the
// distance between the strokes of a double one, mm.
const (
	notchStroke = 6
	notchGap    = 5
)

func (d *drawing) fold(piece pieces.Piece) {
	edge, found := piece.Edge(piece.Fold)
	if !found {
		return
	}
	d.path("fold", edge.Path.Flatten(tolerance))
	half := edge.Path.Length() / 2
	tangent := edge.Path.Tangent(half)
	middle := offset(edge.Path.At(half), left(tangent), 5)
	d.text(d.at(middle), 5, upright(tangent), "lay on the fold")
}

// grain draws the grainline with an arrow at the upper end.
func (d *drawing) grain(g pieces.Grain) {
	if g.From == g.To {
		return
	}
	along := unit(g.From, g.To)
	barb := func(side float64) orb.Point {
		return offset(offset(g.To, along, -8), left(along), 3*side)
	}
	d.path("grain", orb.LineString{g.From, g.To})
	d.path("grain", orb.LineString{barb(1), g.To, barb(-1)})
	words := map[pieces.GrainLie]string{
		pieces.StraightGrain: "grain, this end up",
		pieces.CrossGrain:    "lay across the grain, this end up",
		pieces.Bias:          "lay on the bias, this end up",
	}[g.Lie]
	length := planar.Distance(g.From, g.To)
	// Near the arrow, clear of the label in the middle of the piece.
	place := offset(offset(g.From, along, 0.75*length), left(along), 2)
	d.text(d.at(place), min(4, length/25), upright(along), words)
}

// notch draws its strokes from the seam line out to the cutting line.
func (d *drawing) notch(piece pieces.Piece, n pieces.Notch) {
	edge, found := piece.Edge(n.Edge)
	if !found {
		return
	}
	length := edge.Allowance
	if length == 0 {
		length = notchStroke
	}
	for i := range n.Count {
		at := n.At + notchGap*(float64(i)-float64(n.Count-1)/2)
		foot := edge.Path.At(at)
		d.path("notch", orb.LineString{foot, offset(foot, left(edge.Path.Tangent(at)), -length)})
	}
}

// dart draws the sewing lines; a dart inside the piece is closed.
func (d *drawing) dart(dart pieces.Dart) {
	line := orb.LineString{dart.Start, dart.Apex, dart.End}
	if dart.Mouth == "" {
		line = append(line, dart.OtherApex, dart.Start)
	}
	d.path("seam", line)
}

func (d *drawing) mark(m pieces.Mark) {
	if m.Path == nil {
		const arm = 2
		x, y := m.At[0], m.At[1]
		d.path("mark", orb.LineString{{x - arm, y}, {x + arm, y}})
		d.path("mark", orb.LineString{{x, y - arm}, {x, y + arm}})
		return
	}
	d.path("mark", m.Path.Flatten(tolerance))
	end := m.Path.At(m.Path.Length() * 0.25)
	d.text(offset(d.at(end), orb.Point{0, -1}, 1.5), 4, 0, m.Name)
}

// label says in the middle of the piece what it is and what to cut.
func (d *drawing) label(piece pieces.Piece, outline orb.Ring) {
	centre, _ := planar.CentroidArea(outline)
	at := d.at(centre)
	box := outline.Bound()
	size := min(8, (box.Max[0]-box.Min[0])/16, (box.Max[1]-box.Min[1])/6)
	lines := []string{piece.Name, strings.TrimSpace(piece.Garment + " " + piece.Size), cutText(piece)}
	for i, line := range lines {
		d.text(offset(at, orb.Point{0, 1}, 1.3*size*float64(i-1)), size, 0, line)
	}
}

// cutText says how many are cut and from what: "cut 2, a pair, from shell".
func cutText(piece pieces.Piece) string {
	words := fmt.Sprintf("cut %d", piece.Cut)
	if piece.Pair {
		words += ", a pair"
	}
	if piece.Fold != "" {
		words += ", on the fold"
	}
	if piece.Cloth != "" {
		words += ", from " + piece.Cloth
	}
	return words
}

func unit(from, to orb.Point) orb.Point {
	length := planar.Distance(from, to)
	return orb.Point{(to[0] - from[0]) / length, (to[1] - from[1]) / length}
}

// left is the direction a quarter turn counter-clockwise: into a piece, from
// its edges.
func left(p orb.Point) orb.Point { return orb.Point{-p[1], p[0]} }

func offset(p, along orb.Point, distance float64) orb.Point {
	return orb.Point{p[0] + along[0]*distance, p[1] + along[1]*distance}
}

// upright is the angle of a direction in degrees, turned so that words along
// it never stand on their head.
func upright(along orb.Point) float64 {
	degrees := math.Atan2(along[1], along[0]) * 180 / math.Pi
	switch {
	case degrees > 90:
		return degrees - 180
	case degrees <= -90:
		return degrees + 180
	}
	return degrees
}

// escaped makes a name safe inside the document.
func escaped(words string) string {
	var out strings.Builder
	// A strings.Builder does not fail.
	_ = xml.EscapeText(&out, []byte(words))
	return out.String()
}
