package svg

import (
	"bytes"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

const (
	// mostText and leastText bound the height of the letters of a label, mm.
	mostText, leastText = 9.0, 1.5
	// uprightText is the height below which a label is turned to stand along
	// the piece, if it can then be larger.
	uprightText = 5.0
	// letterWidth is the width of a letter in heights, generously.
	letterWidth = 0.62
	// lineHeight is the distance of the lines of a label in heights.
	lineHeight = 1.35
)

// writeLabel writes the words where they have most room, lying or standing.
func (d drawn) writeLabel(out *bytes.Buffer) {
	lines := drawing.LabelLines(d.piece)
	widest := 0
	for _, l := range lines {
		widest = max(widest, len([]rune(l)))
	}
	// Half the size of the label at letters of 1 mm, with a little air.
	half := orb.Point{float64(widest)*letterWidth/2 + 0.5, float64(len(lines))*lineHeight/2 + 0.3}
	at, size := d.room(half)
	angle := 0.0
	if size < uprightText {
		if stood, larger := d.room(orb.Point{half[1], half[0]}); larger > size {
			at, size, angle = stood, larger, -90
		}
	}
	size = math.Max(size, leastText)
	for i, line := range lines {
		down := (float64(i)-float64(len(lines)-1)/2)*lineHeight + 0.35
		more := ""
		if i == 0 {
			more = ` font-weight="bold"`
		}
		words(out, line, lifted(at, angle, -down*size), size, angle, more)
	}
}

// pointRoom is the room that a marked point and its name take to each side, mm.
const pointRoom = 12.0

// room finds the place inside the piece where a box of that half size can be
// scaled up most before it touches a line, and that scale, at most mostText.
func (d drawn) room(half orb.Point) (orb.Point, float64) {
	return drawing.Room(d.piece.SeamOutline(1), d.obstacles(), half, mostText)
}

// obstacles are the lines that a label keeps off, beside the seam line.
func (d drawn) obstacles() [][2]orb.Point {
	var out [][2]orb.Point
	keepOff := func(points ...orb.Point) {
		for i := 0; i+1 < len(points); i++ {
			out = append(out, [2]orb.Point{points[i], points[i+1]})
		}
	}
	g := d.piece.Grain
	aside := times(left(unit(sub(g.To, g.From))), 3)
	keepOff(add(g.From, aside), add(g.To, aside))
	keepOff(sub(g.From, aside), sub(g.To, aside))
	for _, t := range d.piece.Darts {
		keepOff(t.Start, t.Apex, t.End)
		if t.Mouth == "" {
			keepOff(t.Start, t.OtherApex, t.End)
		}
	}
	for _, m := range d.piece.Marks {
		keepOff(m.Path.Flatten(1)...)
		if m.Path == nil {
			keepOff(add(m.At, orb.Point{-pointRoom, -5}), add(m.At, orb.Point{pointRoom, -5}), m.At)
		}
	}
	if fold, ok := d.piece.Edge(d.piece.Fold); ok {
		inward := times(left(fold.Path.Tangent(0)), 9)
		keepOff(add(fold.Path.Start(), inward), add(fold.Path.End(), inward))
	}
	return out
}
