package plotter

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric"
	"ellwand/fabric/marker"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

// headWidth is the room before the cut end for the title and the squares by
// which the print is measured, mm.
const headWidth = sheet.SquareRoom + 24

// Lines of the marker, widths in mm.
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
	plan      fabric.LayPlan
	options   Options
	low, high float64
}

// draw puts the whole lay on a plane: the warp to the right, the edge nearest
// to the cutter lowest.
func draw(plan fabric.LayPlan, options Options) sheet.Plane {
	m := fullSize{Picture: &drawing.Picture{}, plan: plan, options: options}
	m.low, m.high = marker.Edges(plan)
	plane := sheet.Plane{Title: Title(plan, options), Picture: m.Picture, Shapes: []orb.Ring{m.head()}}
	m.cloth()
	for i, l := range plan.Pieces {
		f := m.figure(i, l)
		f.Draw(m.Picture)
		plane.Shapes = append(plane.Shapes, f.Sizes[0].Cutting)
	}
	return plane
}

// at brings a point of the lay to the plane.
func (m fullSize) at(p orb.Point) orb.Point { return orb.Point{headWidth + p[0], m.high - p[1]} }

// motion does the same to a piece.
func (m fullSize) motion() pieces.Motion {
	return pieces.MirrorY().Then(pieces.Move(headWidth, m.high))
}

// figure is a piece in its place. Its cutting line is that of the plan, which
// was checked.
func (m fullSize) figure(i int, l fabric.Laid) sheet.Figure {
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
		piece.Fold = ""
	}
	return sheet.Figure{Sizes: []sheet.Drawn{{Piece: piece, Cutting: ring}}, Label: label(i, l)}
}

// label of a piece: its number in the laying table, what it is, and what is
// not plain in how it is cut.
func label(i int, l fabric.Laid) []string {
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
	}
	if l.Mirrored {
		out = append(out, "face down")
	}
	return out
}

// head writes the title and the squares before the cut end, and returns the
// room they take.
func (m fullSize) head() orb.Ring {
	sheet.Squares(m.Picture, orb.Point{0, 0})
	say := marker.Options{Inches: m.options.Inches}.Long
	words := Title(m.plan, m.options)
	facts := fmt.Sprintf("%s long, %s between the edges to be used, efficiency %.1f %%", say(m.plan.Length), say(m.plan.Width), 100*m.plan.Density)
	room := math.Max(120, m.high-m.low-4)
	for i, line := range []string{words, facts} {
		m.Write(drawing.Text{Words: drawing.Shortened(line, 16-4*float64(i), i == 0, room), At: orb.Point{sheet.SquareRoom + 7 + 6*float64(i), m.high - m.low - 2},
			Points: 16 - 4*float64(i), Bold: i == 0, Angle: 90})
	}
	return orb.Ring{{0, 0}, {sheet.SquareRoom, 0}, {sheet.SquareRoom, sheet.SquareRoom}, {0, sheet.SquareRoom}, {0, 0}}
}

// cloth draws the edges of the lay, the ends, what may not be used, and a
// ruler along the near edge.
func (m fullSize) cloth() {
	far := m.plan.Length
	m.edge(m.high, far, m.plan.Lay == fabric.BothSelvedgesIn)
	near := clothLine
	if m.plan.Lay == fabric.FoldedAlong || m.plan.Lay == fabric.SelvedgeIn || m.plan.Lay == fabric.BothSelvedgesIn {
		near = foldLine
	}
	m.Line(near, m.at(orb.Point{0, m.low}), m.at(orb.Point{far, m.low}))
	start := endLine
	if m.plan.Lay == fabric.FoldedAcross {
		start = foldLine
	}
	m.Line(start, m.at(orb.Point{0, m.low}), m.at(orb.Point{0, m.high}))
	m.Line(innerLine, m.at(orb.Point{far, m.low}), m.at(orb.Point{far, m.high}))
	m.inner(far)
	for _, zone := range m.plan.Zones {
		m.zone(zone, far)
	}
	for _, line := range marker.RepeatLines(m.plan, 0, far) {
		m.Line(repeatLine, m.at(line[0]), m.at(line[1]))
	}
	m.ruler(far)
}

func (m fullSize) edge(y, far float64, isFold bool) {
	pen := clothLine
	if isFold {
		pen = foldLine
	}
	m.Line(pen, m.at(orb.Point{0, y}), m.at(orb.Point{far, y}))
}

// inner draws the edge that is folded in, where selvedges meet, and where a
// stretch ends.
func (m fullSize) inner(far float64) {
	switch m.plan.Lay {
	case fabric.SelvedgeIn:
		m.Line(innerLine, m.at(orb.Point{0, m.plan.FoldedIn}), m.at(orb.Point{far, m.plan.FoldedIn}))
	case fabric.BothSelvedgesIn:
		m.Line(innerLine, m.at(orb.Point{0, m.plan.Width / 2}), m.at(orb.Point{far, m.plan.Width / 2}))
	case fabric.InStretches:
		if len(m.plan.Parts) > 1 {
			x := m.plan.Parts[1].X
			m.Line(endLine, m.at(orb.Point{x, m.low}), m.at(orb.Point{x, m.high}))
			m.Line(foldLine, m.at(orb.Point{0, 0}), m.at(orb.Point{x, 0}))
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

// ruler marks the near edge every centimetre or inch, with figures every ten
// centimetres or six inches.
func (m fullSize) ruler(far float64) {
	unit, each, name := 10.0, 10, "cm"
	if m.options.Inches {
		unit, each, name = 25.4, 6, "in"
	}
	for k := 0; float64(k)*unit <= far; k++ {
		foot := m.at(orb.Point{float64(k) * unit, m.low})
		tick := 2.0
		if k%each == 0 {
			tick = 4
			m.Write(drawing.Text{Words: fmt.Sprintf("%d %s", k, name), At: orb.Point{foot[0] + 1, foot[1] - 2.5}, Points: 7})
		}
		m.Line(fineLine, foot, orb.Point{foot[0], foot[1] - tick})
	}
}
