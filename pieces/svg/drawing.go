package svg

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// drawn is a piece in the frame of the document: y runs down.
type drawn struct {
	piece         pieces.Piece // turned over, as y runs down; edges reversed
	ring          orb.Ring     // the cutting line
	width, height float64
}

func newDrawing(p pieces.Piece) (drawn, error) {
	if err := p.Check(); err != nil {
		return drawn{}, err
	}
	ring, err := p.CuttingOutline(tolerance)
	if err != nil {
		return drawn{}, err
	}
	d := drawn{piece: p, ring: ring}
	d.move(pieces.MirrorY())
	bound := d.ring.Bound()
	d.width, d.height = bound.Max[0]-bound.Min[0], bound.Max[1]-bound.Min[1]
	return d, nil
}

// place moves the drawing so that its top left corner is at (x, y).
func (d *drawn) place(x, y float64) {
	corner := d.ring.Bound().Min
	d.move(pieces.Move(x-corner[0], y-corner[1]))
}

func (d *drawn) move(m pieces.Motion) {
	d.piece = d.piece.Map(m)
	ring := make(orb.Ring, len(d.ring))
	for i, p := range d.ring {
		ring[i] = m.Apply(p)
	}
	d.ring = ring
}

// write draws, from the outside in: cutting line, seam line, fold, notches,
// darts, marks, grainline, words.
func (d drawn) write(out *bytes.Buffer) {
	fmt.Fprintf(out, "<g>\n<title>%s</title>\n", escape(d.piece.Name))
	d.writeCutting(out)
	d.writeSeam(out)
	d.writeNotches(out)
	d.writeDarts(out)
	d.writeMarks(out)
	d.writeGrain(out)
	d.writeLabel(out)
	out.WriteString("</g>\n")
}

// stroke draws a black line of that kind and width in mm.
func stroke(out *bytes.Buffer, class, path, width, dashes string) {
	fmt.Fprintf(out, `<path class="%s" d="%s" fill="none" stroke="black" stroke-width="%s" stroke-linejoin="round"`, class, path, width)
	if dashes != "" {
		fmt.Fprintf(out, ` stroke-dasharray="%s"`, dashes)
	}
	out.WriteString("/>\n")
}

// words draws text centred on a point, turned so many degrees.
func words(out *bytes.Buffer, text string, at orb.Point, size, degrees float64, more string) {
	fmt.Fprintf(out, `<text x="%s" y="%s" font-size="%s" text-anchor="middle"%s`, number(at[0]), number(at[1]), number(size), more)
	if degrees != 0 {
		fmt.Fprintf(out, ` transform="rotate(%s %s)"`, number(degrees), pair(at))
	}
	fmt.Fprintf(out, ">%s</text>\n", escape(text))
}

// escape makes text safe for XML; what XML cannot hold is left out.
func escape(text string) string {
	text = strings.Map(func(r rune) rune {
		if r < 0x20 || r == 0xFFFE || r == 0xFFFF || r == '\uFFFD' {
			return -1
		}
		return r
	}, text)
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;").Replace(text)
}

// writeCutting draws the cutting line solid, open along the fold, which is
// not cut: there, long dashes and dots, with its name.
func (d drawn) writeCutting(out *bytes.Buffer) {
	fold, ok := d.piece.Edge(d.piece.Fold)
	if !ok {
		stroke(out, "cutting", chain(d.ring[:len(d.ring)-1])+"Z", "0.6", "")
		return
	}
	points := openedAt(d.ring, fold.Path)
	start, end := points[len(points)-1], points[0]
	stroke(out, "cutting", chain(points), "0.6", "")
	stroke(out, "fold", segments(start, end), "0.9", "12 2.5 1.5 2.5")
	u, length := fold.Path.Tangent(0), fold.Path.Length()
	angle, size := upright(u), math.Min(5, length/8)
	at := add(fold.Path.At(length/2), times(left(u), 5))
	words(out, "on fold", centred(at, angle, size), size, angle, "")
}

// openedAt returns the points of a ring from one end of the stretch that lies
// along the fold round to the other.
func openedAt(ring orb.Ring, fold pieces.Path) []orb.Point {
	points := ring[:len(ring)-1]
	from, u := fold.Start(), fold.Tangent(0)
	off := func(p orb.Point) float64 { return math.Abs(dot(sub(p, from), left(u))) }
	best, least := 0, math.Inf(1)
	for i, p := range points {
		if far := math.Max(off(p), off(points[(i+1)%len(points)])); far < least {
			best, least = i, far
		}
	}
	return append(slices.Clone(points[best+1:]), points[:best+1]...)
}

// writeSeam draws the seam line dashed.
func (d drawn) writeSeam(out *bytes.Buffer) {
	for _, e := range d.piece.Edges {
		if e.Name != d.piece.Fold {
			stroke(out, "seam", curves(e.Path), "0.3", "4 2")
		}
	}
}

// writeNotches draws each stroke across the allowance, or 5 mm inward where
// there is none, square to the seam line; several strokes are 6 mm apart.
func (d drawn) writeNotches(out *bytes.Buffer) {
	for _, n := range d.piece.Notches {
		e, _ := d.piece.Edge(n.Edge)
		var ends []orb.Point
		for k := range n.Count {
			at := n.At + 6*(float64(k)-float64(n.Count-1)/2)
			from, u := e.Path.At(at), e.Path.Tangent(at)
			reach := e.Allowance
			if reach < 2 {
				reach = -5
			}
			ends = append(ends, from, add(from, times(left(u), -reach)))
		}
		stroke(out, "notch", segments(ends...), "0.5", "")
	}
}

func (d drawn) writeDarts(out *bytes.Buffer) {
	for _, t := range d.piece.Darts {
		path := segments(t.Start, t.Apex, t.Apex, t.End)
		if t.Mouth == "" {
			path += segments(t.Start, t.OtherApex, t.OtherApex, t.End)
			drill(out, t.OtherApex)
		}
		stroke(out, "dart", path, "0.35", "2.5 1.5")
		drill(out, t.Apex)
	}
}

// drill draws a drill hole: a small circle with a point in it.
func drill(out *bytes.Buffer, at orb.Point) {
	fmt.Fprintf(out, `<circle cx="%[1]s" cy="%[2]s" r="1.5" fill="white" stroke="black" stroke-width="0.3"/><circle cx="%[1]s" cy="%[2]s" r="0.4"/>`+"\n",
		number(at[0]), number(at[1]))
}

func (d drawn) writeMarks(out *bytes.Buffer) {
	for _, m := range d.piece.Marks {
		if m.Path == nil {
			drill(out, m.At)
			words(out, m.Name, add(m.At, orb.Point{0, -3}), 3.5, 0, "")
			continue
		}
		stroke(out, "mark", curves(m.Path), "0.25", "0.8 1.6")
		at, length := m.Path.Length()*0.25, m.Path.Length()
		angle := upright(m.Path.Tangent(at))
		size := math.Min(3.5, length/math.Max(1, 1.2*float64(len([]rune(m.Name)))))
		words(out, m.Name, lifted(m.Path.At(at), angle, 1.2), size, angle, "")
	}
}

// writeGrain draws the grainline with its head at the end that points up.
func (d drawn) writeGrain(out *bytes.Buffer) {
	g := d.piece.Grain
	u := unit(sub(g.To, g.From))
	side := left(u)
	size := math.Min(9, distance(g.From, g.To)/4)
	neck := add(g.To, times(u, -size))
	stroke(out, "grain", segments(g.From, neck, add(g.From, times(side, size/3)), add(g.From, times(side, -size/3))), "0.45", "")
	fmt.Fprintf(out, `<path d="M%sL%sL%sZ"/>`+"\n", pair(g.To), pair(add(neck, times(side, size/3))), pair(add(neck, times(side, -size/3))))
	angle, shaft := upright(u), distance(g.From, neck)
	text := drawing.GrainText(d.piece)
	letters := math.Min(4, shaft/(letterWidth*float64(len(text))))
	words(out, text, lifted(add(g.From, times(u, shaft/2)), angle, 1.2), letters, angle, "")
}
