package plotter

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/safety"
	"ellwand/pieces/seams"
	"ellwand/pieces/sheet"
)

// headWidth is the room before the cut end for the title and the squares by
// which the print is measured, mm [source.OwnChoice].
const headWidth = sheet.SquareRoom + 24

// Lines of the marker, widths in mm [source.OwnChoice].
var (
	clothLine = drawing.Pen{Width: 0.3}
	foldLine  = drawing.Pen{Width: 0.9, Dashes: []float64{20, 4, 2, 4}}
	innerLine = drawing.Pen{Width: 0.4, Dashes: []float64{10, 5}}
	endLine   = drawing.Pen{Width: 0.9}
	fineLine  = drawing.Pen{Width: 0.2}
	// Lines of the repeat are dotted, so that no one cuts along them.
	repeatLine = drawing.Pen{Width: 0.2, Dashes: []float64{1, 7}}
)

// fullSize is a lay being drawn on the plane.
type fullSize struct {
	*drawing.Picture
	plan      lay.Plan
	options   Options
	low, high float64
	repeat    [][2]orb.Point // lines of the repeat, on the plane
}

// draw puts the whole lay on a plane: the warp to the right, the edge nearest
// to the cutter lowest.
func draw(plan lay.Plan, options Options) sheet.Plane {
	m := fullSize{Picture: &drawing.Picture{}, plan: plan, options: options}
	m.low, m.high = marker.Edges(plan)
	for _, line := range marker.RepeatLines(plan, 0, plan.Length) {
		m.repeat = append(m.repeat, [2]orb.Point{m.at(line[0]), m.at(line[1])})
	}
	plane := sheet.Plane{Title: Title(plan, options), Picture: m.Picture, Shapes: m.head(),
		Reach: m.at(orb.Point{plan.Length, m.low})}
	m.cloth()
	for i, l := range plan.Pieces {
		f := m.drawnPiece(i, l)
		f.Draw(m.Picture)
		plane.Shapes = append(plane.Shapes, f.Sizes[0].Cutting)
	}
	m.ruler()
	m.nameLines()
	return plane
}

// at brings a point of the lay to the plane.
func (m fullSize) at(p orb.Point) orb.Point { return orb.Point{headWidth + p[0], m.high - p[1]} }

// motion does the same to a piece.
func (m fullSize) motion() pieces.Motion {
	return pieces.MirrorY().Then(pieces.Move(headWidth, m.high))
}

// drawnPiece is a piece in its place. Its cutting line is that of the plan, which
// was checked.
func (m fullSize) drawnPiece(i int, l lay.Laid) sheet.DrawnPiece {
	move := pieces.Identity()
	if l.Mirrored {
		move = pieces.MirrorX()
	}
	move = move.Then(pieces.Turn(l.Turn)).Then(pieces.Move(l.X, l.Y)).Then(m.motion())
	ring := make(orb.Ring, len(l.Outline))
	for k, p := range l.Outline {
		ring[k] = m.at(p)
	}
	piece := l.Piece.Map(move)
	if !l.OnFold {
		piece.Fold = seams.None
	}
	return sheet.DrawnPiece{Sizes: []sheet.Drawn{{Piece: piece, Cutting: ring}}, Label: label(i, l),
		Beneath: within(m.repeat, ring.Bound())}
}

// within are the lines that reach into a box.
func within(lines [][2]orb.Point, box orb.Bound) [][2]orb.Point {
	var out [][2]orb.Point
	for _, line := range lines {
		if geometry.Crosses(line[:], box) {
			out = append(out, line)
		}
	}
	return out
}

// label of a piece: its number in the laying table, what it is, and what is
// not plain in how it is cut.
func label(i int, l lay.Laid) []string {
	out := []string{fmt.Sprintf("%d  %s", i+1, l.Name)}
	of := l.Garment
	if l.Size != "" {
		of += ", size " + l.Size
	}
	if of != "" {
		out = append(out, of)
	}
	switch {
	case l.OnFold:
		out = append(out, "on the fold")
	case l.Yields == 2:
		out = append(out, "gives two")
	case l.FromLower:
		out = append(out, "one, from the lower layer")
	}
	if l.Mirrored {
		out = append(out, "face down")
	}
	return out
}

// head writes the title, the names of the edges and the squares before the cut
// end, and returns the room that the title and the squares take.
func (m fullSize) head() []orb.Ring {
	sheet.Squares(m.Picture, orb.Point{0, 0})
	say := marker.Options{Inches: m.options.Inches}.Long
	facts := fmt.Sprintf("%s long, %s between the edges to be used, efficiency %.1f %%", say(m.plan.Length),
		say(m.plan.Width), 100*m.plan.Density)
	foot := m.high - m.low - 8
	rings := []orb.Ring{{{0, 0}, {sheet.SquareRoom, 0}, {sheet.SquareRoom, sheet.SquareRoom}, {0, sheet.SquareRoom},
		{0, 0}}}
	for i, line := range []string{Title(m.plan, m.options), facts} {
		text := drawing.Text{At: orb.Point{sheet.SquareRoom + 7 + 6*float64(i), foot}, Points: 16 - 4*float64(i),
			Bold: i == 0, Angle: 90}
		text.Words = drawing.Shortened(line, text.Points, text.Bold, math.Max(120, foot-8))
		m.Write(text)
		rings = append(rings, text.Outline())
	}
	rings = append(rings, m.cautions(foot)...)
	start := marker.LeftEnd(m.plan)
	middle := m.at(orb.Point{0, (start.From[1] + start.To[1]) / 2})
	far := marker.EdgeLines(m.plan)[0]
	for _, text := range []drawing.Text{
		{Words: far.Name, At: orb.Point{headWidth - 2, m.at(far.From)[1] + 4}, Align: drawing.Right},
		{Words: marker.NearEdge(m.plan), At: orb.Point{headWidth - 2, m.high - m.low - 2}, Align: drawing.Right},
		{Words: start.Name, At: orb.Point{headWidth - 2, middle[1]}, Align: drawing.Centre, Angle: 90},
	} {
		text.Points, text.Bold = edgePoints, true
		m.Write(text)
	}
	return rings
}

// cautions stand below the squares, as many lines as the lay is wide for.
func (m fullSize) cautions(foot float64) []orb.Ring {
	const points, step, width = 10.0, 5.0, sheet.SquareRoom // points; mm [source.OwnChoice]
	var rings []orb.Ring
	y := sheet.SquareRoom + 10.0
	for _, sentence := range safety.Cutting(m.options.Youngest) {
		for _, line := range drawing.Wrapped(sentence, points, false, width) {
			if y > foot {
				return rings
			}
			text := drawing.Text{Words: line, At: orb.Point{0, y}, Points: points}
			m.Write(text)
			rings = append(rings, text.Outline())
			y += step
		}
		y += step / 2
	}
	return rings
}

// edgePoints is the size of the names of edges [source.OwnChoice].
const edgePoints = 9.0

// cloth draws the edges of the lay, the ends, what may not be used, and the
// lines of the repeat.
func (m fullSize) cloth() {
	far := m.plan.Length
	for _, edge := range marker.EdgeLines(m.plan) {
		pen := clothLine
		if edge.IsFold {
			pen = foldLine
		}
		if edge.From[0] < far {
			m.Line(pen, m.at(edge.From), m.at(orb.Point{math.Min(edge.To[0], far), edge.To[1]}))
		}
	}
	start, pen := marker.LeftEnd(m.plan), endLine
	if start.IsFold {
		pen = foldLine
	}
	m.Line(pen, m.at(start.From), m.at(start.To))
	for _, inner := range m.inner() {
		m.Line(inner.pen, inner.from, inner.to)
	}
	for _, zone := range m.plan.Zones {
		m.zone(zone, far)
	}
	for _, line := range m.repeat {
		m.Line(repeatLine, line[0], line[1])
	}
}

// namedLine is a line within the lay that is no edge of a piece, on the plane.
type namedLine struct {
	pen      drawing.Pen
	from, to orb.Point
	name     string
}

// inner are the end of the pieces, the edge that is folded in, where selvedges
// meet, and where the cloth is cut between two lengths.
func (m fullSize) inner() []namedLine {
	far := m.plan.Length
	line := func(pen drawing.Pen, name string, from, to orb.Point) namedLine {
		return namedLine{pen, m.at(from), m.at(to), name}
	}
	say := marker.Options{Inches: m.options.Inches}
	out := []namedLine{line(innerLine, "the pieces end here, "+say.Long(far), orb.Point{far, m.low},
		orb.Point{far, m.high})}
	switch m.plan.Lay {
	case lay.SelvedgeIn:
		out = append(out, line(innerLine, "edge folded in", orb.Point{0, m.plan.FoldedIn}, orb.Point{far, m.plan.FoldedIn}))
	case lay.BothSelvedgesIn:
		out = append(out, line(innerLine, "selvedges meet", orb.Point{0, m.plan.Width / 2}, orb.Point{far, m.plan.Width / 2}))
	case lay.InStretches:
		if len(m.plan.Beds) > 1 {
			x := m.plan.Beds[1].X
			out = append(out, line(endLine, "cut across here, "+say.Short(x), orb.Point{x, m.low}, orb.Point{x, m.high}))
		}
	}
	return out
}

// nameLines writes the names of the inner lines where there is room beside
// them, before the line or over it first.
func (m fullSize) nameLines() {
	for _, line := range m.inner() {
		angle := 0.0
		if line.from[0] == line.to[0] {
			angle = 90
		}
		for _, share := range []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.9, 0.1, 0.95, 0.05} {
			text := drawing.Text{Words: line.name, Points: edgePoints, Bold: true, Align: drawing.Centre, Angle: angle}
			text.At = orb.Point{line.from[0] + share*(line.to[0]-line.from[0]), line.from[1] + share*(line.to[1]-line.from[1])}
			if angle == 0 {
				text.At[1] -= 2
			} else {
				text.At[0] -= 2
			}
			if m.HasRoomFor(text, 0.5) {
				m.Write(text)
				break
			}
		}
	}
}

// zone hatches a place that may not be used.
func (m fullSize) zone(zone orb.Ring, far float64) {
	picture := &drawing.Picture{}
	ring := make([]orb.Point, 0, len(zone))
	for _, p := range zone {
		ring = append(ring, m.at(orb.Point{math.Max(-1, math.Min(p[0], far+1)), p[1]}))
	}
	picture.CrossHatch(fineLine, ring, 8)
	picture.Line(clothLine, ring...)
	a, b := m.at(orb.Point{0, m.high}), m.at(orb.Point{far, m.low})
	m.Window(orb.Bound{Min: a, Max: b}, picture, orb.Point{})
}

// ruler marks the far edge, where no piece lies over the selvedge, every
// centimetre or inch, with figures every ten centimetres or six inches.
func (m fullSize) ruler() {
	unit, each, name := 10.0, 10, "cm"
	if m.options.Inches {
		unit, each, name = 25.4, 6, "in"
	}
	for k := 0; float64(k)*unit <= m.plan.Length; k++ {
		foot := m.at(orb.Point{float64(k) * unit, m.high})
		tick := 2.0
		if k%each == 0 {
			tick = 4
		}
		m.Line(fineLine, foot, orb.Point{foot[0], foot[1] + tick})
		text := drawing.Text{Words: fmt.Sprintf("%d %s", k, name), At: orb.Point{foot[0] + 1, foot[1] + 5.5}, Points: 7}
		if k%each == 0 && m.HasRoomFor(text, 0.1) {
			m.Write(text)
		}
	}
}
