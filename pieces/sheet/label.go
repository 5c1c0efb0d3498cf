package sheet

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

const (
	// mostText and leastText bound the height of the letters of a label, mm.
	mostText, leastText = 8.0, 1.5
	// uprightText is the height below which a label is turned to stand along
	// the piece, if it can then be larger.
	uprightText = 4.5
	// lineHeight is the distance of the lines of a label in heights.
	lineHeight = 1.35
	// keyWidth of the sample of a line in the key of the sizes, in heights.
	keyWidth = 6.0
)

// label writes the lines, and under them the key of the sizes, where they
// have most room inside the piece, lying or standing.
func (f figure) label(lines, sizes []string) {
	widest := 0.0
	for _, l := range lines {
		widest = math.Max(widest, drawing.Width(l, 1/drawing.Point, true))
	}
	for _, size := range sizes {
		widest = math.Max(widest, keyWidth+1+drawing.Width(size, 1/drawing.Point, false))
	}
	rows := float64(len(lines) + len(sizes))
	// Half the size of the label at letters of 1 mm, with a little air.
	half := orb.Point{widest/2 + 0.5, rows*lineHeight/2 + 0.3}
	ring, obstacles := f.piece.SeamOutline(1), f.obstacles()
	at, size := drawing.Room(ring, obstacles, half, mostText)
	angle := 0.0
	if size < uprightText {
		if stood, larger := drawing.Room(ring, obstacles, orb.Point{half[1], half[0]}, mostText); larger > size {
			at, size, angle = stood, larger, 90
		}
	}
	size = math.Max(size, leastText)
	block := block{f, at, angle, size, widest, rows}
	for i, line := range lines {
		block.line(i, line)
	}
	for i, name := range sizes {
		block.key(i, len(lines)+i, name)
	}
}

// block is a label in its place.
type block struct {
	figure
	at           orb.Point
	angle        float64
	size         float64 // of the letters, mm
	widest, rows float64
}

// point is (x, y) of the block, in heights from its middle, on the plane.
func (b block) point(x, y float64) orb.Point {
	sin, cos := math.Sincos(b.angle * math.Pi / 180)
	return orb.Point{b.at[0] + b.size*(x*cos+y*sin), b.at[1] + b.size*(y*cos-x*sin)}
}

func (b block) down(row int) float64 { return (float64(row)-(b.rows-1)/2)*lineHeight + 0.35 }

func (b block) line(row int, words string) {
	b.Write(drawing.Text{Words: words, At: b.point(0, b.down(row)), Points: b.size / drawing.Point,
		Bold: row == 0, Align: drawing.Centre, Angle: b.angle})
}

func (b block) key(index, row int, name string) {
	x, y := -b.widest/2, b.down(row)
	b.Line(LineOf(index), b.point(x, y-0.35), b.point(x+keyWidth, y-0.35))
	b.Write(drawing.Text{Words: name, At: b.point(x+keyWidth+1, y), Points: b.size / drawing.Point, Angle: b.angle})
}

// pointRoom is the room that a marked point and its name take to each side, mm.
const pointRoom = 12.0

// obstacles are the lines that a label keeps off, beside the seam line.
func (f figure) obstacles() [][2]orb.Point {
	var out [][2]orb.Point
	keepOff := func(points ...orb.Point) {
		for i := 0; i+1 < len(points); i++ {
			out = append(out, [2]orb.Point{points[i], points[i+1]})
		}
	}
	g := f.piece.Grain
	keepOff(g.From, g.To)
	if f.grainLetters() > 0 {
		for _, away := range []float64{2.5, 5} { // nothing fits between the two
			aside := times(left(minus(g.To, g.From)), away/distance(g.From, g.To))
			keepOff(plus(g.From, aside), plus(g.To, aside), minus(g.To, aside), minus(g.From, aside), plus(g.From, aside))
		}
	}
	for _, t := range f.piece.Darts {
		keepOff(t.Start, t.Apex, t.End)
		if t.Mouth == "" {
			keepOff(t.Start, t.OtherApex, t.End)
		}
	}
	for _, m := range f.piece.Marks {
		keepOff(m.Path.Flatten(1)...)
		if m.Path == nil {
			keepOff(plus(m.At, orb.Point{-pointRoom, -5}), plus(m.At, orb.Point{pointRoom, -5}), m.At)
			continue
		}
		at, u, size := f.nameOf(m)
		half := times(u, size*drawing.Width(m.Name, 1/drawing.Point, false)/2)
		for _, raise := range []float64{-1.5 * size, 1.5 * size} { // on whichever side it reads
			aside := times(left(u), raise)
			keepOff(plus(minus(at, half), aside), plus(plus(at, half), aside))
		}
	}
	if fold, ok := f.piece.Edge(f.piece.Fold); ok && f.piece.Fold != "" {
		inward := times(left(fold.Path.Tangent(0)), 10)
		keepOff(plus(fold.Path.Start(), inward), plus(fold.Path.End(), inward))
	}
	return out
}

func plus(a, b orb.Point) orb.Point { return orb.Point{a[0] + b[0], a[1] + b[1]} }

func minus(a, b orb.Point) orb.Point { return orb.Point{a[0] - b[0], a[1] - b[1]} }

func times(a orb.Point, k float64) orb.Point { return orb.Point{a[0] * k, a[1] * k} }

func dot(a, b orb.Point) float64 { return a[0]*b[0] + a[1]*b[1] }

func distance(a, b orb.Point) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

// left of the direction of travel, in the numbers, lies the inside.
func left(u orb.Point) orb.Point { return orb.Point{-u[1], u[0]} }
