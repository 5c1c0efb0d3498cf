package svg

import (
	"bytes"
	"fmt"
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
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

// labelLines are what is written on a piece: its name, its garment and size,
// and what to cut from which cloth.
func labelLines(p pieces.Piece) []string {
	lines := []string{p.Name}
	of := p.Garment
	if p.Size != "" {
		of = strings.TrimPrefix(of+", size "+p.Size, ", ")
	}
	if of != "" {
		lines = append(lines, of)
	}
	return append(lines, cutText(p))
}

// cutText says how many are cut, and from what: "cut 2, a pair, from shell".
func cutText(p pieces.Piece) string {
	text := fmt.Sprintf("cut %d", p.Cut)
	switch {
	case p.Fold != "":
		text += " on fold"
	case p.Pair && p.Cut == 2:
		text += ", a pair"
	case p.Pair:
		text += fmt.Sprintf(", %d pairs", p.Cut/2)
	}
	if p.Cloth != "" {
		text += ", from " + p.Cloth
	}
	return text
}

// writeLabel writes the words where they have most room, lying or standing.
func (d drawing) writeLabel(out *bytes.Buffer) {
	lines := labelLines(d.piece)
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

// gridSteps is how many places for the label are tried each way.
const gridSteps = 40

// room finds the place inside the piece where a box of that half size can be
// scaled up most before it touches a line, and that scale, at most mostText.
// Of equally good places it takes the most central.
func (d drawing) room(half orb.Point) (orb.Point, float64) {
	ring := d.piece.SeamOutline(1)
	lines := d.obstacles(ring)
	bound := ring.Bound()
	size, centre := sub(bound.Max, bound.Min), bound.Center()
	best, most, nearest := centre, 0.0, math.Inf(1)
	for i := 1; i < gridSteps; i++ {
		for j := 1; j < gridSteps; j++ {
			p := add(bound.Min, orb.Point{size[0] * float64(i) / gridSteps, size[1] * float64(j) / gridSteps})
			if !inside(ring, p) {
				continue
			}
			scale, away := mostText, distance(p, centre)
			for _, l := range lines {
				scale = math.Min(scale, boxScale(sub(l[0], p), sub(l[1], p), half))
			}
			if scale > most+1e-9 || scale > most-1e-9 && away < nearest-1e-9 {
				best, most, nearest = p, scale, away
			}
		}
	}
	return best, most
}

// obstacles are the lines that a label keeps off.
func (d drawing) obstacles(ring orb.Ring) [][2]orb.Point {
	var out [][2]orb.Point
	keepOff := func(points ...orb.Point) {
		for i := 0; i+1 < len(points); i++ {
			out = append(out, [2]orb.Point{points[i], points[i+1]})
		}
	}
	keepOff(ring...)
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

// boxScale is the factor by which a box of that half size about the origin
// can grow until it touches the segment from a to b: the least of
// max(|x| / half x, |y| / half y) along the segment. That is least at an end
// or where one of the lines x = 0, y = 0, |x| / half x = |y| / half y crosses.
func boxScale(a, b, half orb.Point) float64 {
	a, b = orb.Point{a[0] / half[0], a[1] / half[1]}, orb.Point{b[0] / half[0], b[1] / half[1]}
	reach := func(p orb.Point) float64 { return math.Max(math.Abs(p[0]), math.Abs(p[1])) }
	least := math.Min(reach(a), reach(b))
	for _, line := range [4]orb.Point{{1, 0}, {0, 1}, {1, 1}, {1, -1}} {
		from, to := line[0]*a[0]+line[1]*a[1], line[0]*b[0]+line[1]*b[1]
		if from*to < 0 {
			least = math.Min(least, reach(add(a, times(sub(b, a), from/(from-to)))))
		}
	}
	return least
}

// inside reports whether a point lies in a ring.
func inside(ring orb.Ring, p orb.Point) bool {
	in := false
	for i := 0; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(b[0]-a[0])*(p[1]-a[1])/(b[1]-a[1]) {
			in = !in
		}
	}
	return in
}
