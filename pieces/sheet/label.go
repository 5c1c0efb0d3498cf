package sheet

import (
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

const (
	// mostText and leastText bound the height of the letters of a label, mm.
	mostText, leastText = 8.0, 1.5
	// readableText is the height below which a label may go over the allowance
	// or be shortened, clearText that below which it may go over what lies
	// beneath the piece.
	readableText, clearText = 3.0, 4.0
	// uprightText is the height below which a label is turned to stand along
	// the piece, if it can then be larger.
	uprightText = 4.5
	// lineHeight is the distance of the lines of a label in heights.
	lineHeight = 1.35
	// keyWidth of the sample of a line in the key of the sizes, in heights.
	keyWidth = 6.0
)

// label writes the lines, and under them the key of a nest, where they have
// most room inside the piece, lying or standing, clear of what is drawn. In a
// small piece it goes over the allowance too, in one line, without the key, or
// is the name alone.
func (f pieceDrawing) label(lines []string, key []keyLine, beneath [][2]orb.Point) {
	drawn := f.Lines()
	seam := f.piece.SeamOutline(1)
	joined := []string{strings.Join(lines, ", ")}
	best := block{}
	for _, try := range []struct {
		ring   orb.Ring
		lines  []string
		key    []keyLine
		off    [][2]orb.Point
		enough float64
	}{
		{seam, lines, key, append(beneath[:len(beneath):len(beneath)], drawn...), clearText},
		{seam, lines, key, drawn, readableText},
		{f.ring, lines, key, drawn, readableText},
		{seam, joined, nil, drawn, readableText},
		{f.ring, joined, nil, drawn, readableText},
		{f.ring, lines[:1], nil, drawn, leastText},
	} {
		if found := newBlock(f, try.lines, try.key).placed(try.ring, try.off); found.size > best.size {
			best = found
		}
		if best.size >= try.enough {
			break
		}
	}
	if best.size < leastText {
		best = newBlock(f, lines[:1], nil).placed(f.ring, nil)
		best.size = math.Max(best.size, leastText)
	}
	for i, line := range best.lines {
		best.line(i, line)
	}
	for i, k := range best.key {
		best.keyLine(len(best.lines)+i, k)
	}
}

// block is a label, and its place once it has one.
type block struct {
	pieceDrawing
	lines        []string
	key          []keyLine
	at           orb.Point
	angle        float64
	size         float64 // of the letters, mm
	widest, rows float64
}

func newBlock(f pieceDrawing, lines []string, key []keyLine) block {
	b := block{pieceDrawing: f, lines: lines, key: key, rows: float64(len(lines) + len(key))}
	for i, l := range lines {
		b.widest = math.Max(b.widest, drawing.Width(l, 1/drawing.Point, i == 0))
	}
	for _, k := range key {
		b.widest = math.Max(b.widest, keyWidth+1+drawing.Width(k.words, 1/drawing.Point, false))
	}
	return b
}

// placed is the block where it is largest within the ring.
func (b block) placed(ring orb.Ring, off [][2]orb.Point) block {
	// Half the size of the label at letters of 1 mm, with a little air.
	half := orb.Point{b.widest/2 + 0.5, b.rows*lineHeight/2 + 0.3}
	b.at, b.size = drawing.Room(ring, off, half, mostText)
	if b.size < uprightText {
		if stood, larger := drawing.Room(ring, off, orb.Point{half[1], half[0]}, mostText); larger > b.size {
			b.at, b.size, b.angle = stood, larger, 90
		}
	}
	return b
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

func (b block) keyLine(row int, k keyLine) {
	x, y := -b.widest/2, b.down(row)
	b.Line(k.pen, b.point(x, y-0.35), b.point(x+keyWidth, y-0.35))
	b.Write(drawing.Text{Words: k.words, At: b.point(x+keyWidth+1, y), Points: b.size / drawing.Point, Angle: b.angle})
}
