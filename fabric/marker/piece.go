package marker

import (
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/clip"

	"ellwand/fabric/lay"
	"ellwand/pieces/geometry"
	"ellwand/pieces/page"
)

// drawPieces draws every piece that reaches onto this page, then all labels,
// so that no piece covers a label. It returns both.
func (s *sheets) drawPieces(v view) ([]shownPiece, []label) {
	box := v.box()
	var shown []shownPiece
	s.Within(box, func() {
		for i, l := range s.plan.Pieces {
			bound := l.Outline.Bound()
			if bound.Max[0] <= v.from || bound.Min[0] >= v.to {
				continue
			}
			s.drawPiece(v, l)
			shown = append(shown, s.shown(v, i, l))
		}
		if hasRepeat(s.plan) {
			s.drawRepeat(v)
		}
	})
	labels := s.labels(v, shown)
	for _, l := range labels {
		s.drawLabel(l)
	}
	return shown, labels
}

// shown gathers what the labels need to know of a piece, on paper.
func (s *sheets) shown(v view, i int, l lay.Laid) shownPiece {
	outline := v.line(l.Outline)
	visible := clip.Ring(v.box(), append(orb.Ring(nil), outline...))
	arrow := v.line(l.Grain[:])
	var fine [][]orb.Point
	if !isSmall(outline) {
		fine = append(fine, v.line(l.Seam))
	}
	for _, mark := range l.Marks {
		fine = append(fine, v.line(mark.Line))
	}
	return shownPiece{number: i + 1, laid: l, outline: outline, visible: visible,
		arrow: [2]orb.Point{arrow[0], arrow[1]}, darts: dartsOf(v, l), fine: fine}
}

// isSmall reports whether an outline on paper is so small that a seam line in
// it would only hide its number and its arrow.
func isSmall(outline []orb.Point) bool {
	const least = 7.0
	box := orb.Ring(outline).Bound()
	return min(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1]) < least
}

func dartsOf(v view, l lay.Laid) [][]orb.Point {
	var out [][]orb.Point
	for _, dart := range l.Darts {
		out = append(out, v.line(dart.Line))
	}
	return out
}

func (s *sheets) drawPiece(v view, l lay.Laid) {
	outline := v.line(l.Outline)
	if l.Mirrored {
		s.drawHatched(outline)
	} else {
		s.Fill(255)
		s.SetPen(0.35, 0)
		s.Polygon(outline, page.Whole)
	}
	if !isSmall(outline) {
		s.SetPen(0.15, 60, 1, 0.7)
		s.Polygon(v.line(l.Seam), page.Rim)
	}
	s.SetPen(0.15, 60)
	for _, dart := range l.Darts {
		s.Polygon(v.line(dart.Line), page.Rim)
	}
	for _, mark := range l.Marks {
		s.drawMark(v.line(mark.Line))
	}
	for _, notch := range l.Notches {
		s.drawNotch(v, notch)
	}
	if l.OnFold {
		s.drawFoldMark(v, l)
	}
	s.drawArrow(v.at(l.Grain[0]), v.at(l.Grain[1]))
}

// drawHatched fills with slanting strokes: the template lies face down.
func (s *sheets) drawHatched(outline []orb.Point) {
	s.Fill(255)
	s.SetPen(0.35, 0)
	s.Polygon(outline, page.Inside)
	s.SetPen(0.12, greyDown)
	s.Hatch(outline, 1.6)
	s.SetPen(0.35, 0)
	s.Polygon(outline, page.Rim)
}

func (s *sheets) drawMark(line []orb.Point) {
	if len(line) > 1 {
		s.SetPen(0.12, 90, 0.4, 0.8)
		s.Polygon(line, page.Rim)
		return
	}
	s.SetPen(0.15, 60)
	p := line[0]
	s.Line(p[0]-0.7, p[1], p[0]+0.7, p[1])
	s.Line(p[0], p[1]-0.7, p[0], p[1]+0.7)
}

// drawNotch draws one stroke a count across the seam allowance; where there
// is none, a stroke into the piece.
func (s *sheets) drawNotch(v view, notch lay.Notch) {
	at, out := v.at(notch.At), v.at(notch.Out)
	along := orb.Point{notch.Along[0], -notch.Along[1]}
	inward := orb.Point{along[1], -along[0]}
	if geometry.Distance(at, out) > 0.2 {
		length := geometry.Distance(at, out)
		inward = orb.Point{(at[0] - out[0]) / length, (at[1] - out[1]) / length}
	}
	length := math.Max(1.4, geometry.Distance(at, out))
	s.SetPen(0.3, 0)
	for k := range notch.Count {
		shift := (float64(k) - float64(notch.Count-1)/2) * 0.9
		x, y := out[0]+along[0]*shift, out[1]+along[1]*shift
		s.Line(x, y, x+inward[0]*length, y+inward[1]*length)
	}
}

// drawArrow draws a grainline with its head at "this end up".
func (s *sheets) drawArrow(from, to orb.Point) {
	length := geometry.Distance(from, to)
	if length < 0.5 {
		return
	}
	s.SetPen(0.25, 0)
	s.Line(from[0], from[1], to[0], to[1])
	head := math.Min(2.6, length/2)
	ux, uy := (to[0]-from[0])/length, (to[1]-from[1])/length
	s.Fill(0)
	s.Polygon([]orb.Point{to,
		{to[0] - head*ux - head*0.32*uy, to[1] - head*uy + head*0.32*ux},
		{to[0] - head*ux + head*0.32*uy, to[1] - head*uy - head*0.32*ux}}, page.Inside)
	s.Line(from[0]-uy, from[1]+ux, from[0]+uy, from[1]-ux)
}

// drawFoldMark draws the usual bracket whose arrows point at the fold.
func (s *sheets) drawFoldMark(v view, l lay.Laid) {
	fold, up := s.foldOf(l)
	from, to, ok := foldSpan(l, fold)
	if !ok {
		return
	}
	a, b := v.at(orb.Point{from, fold}), v.at(orb.Point{to, fold})
	inset := (b[0] - a[0]) * 0.12
	rise := up * math.Min(3, (b[0]-a[0])*0.2)
	x1, x2, y := a[0]+inset, b[0]-inset, a[1]
	s.SetPen(0.25, 0)
	s.Line(x1, y-rise, x2, y-rise)
	for _, x := range []float64{x1, x2} {
		s.Line(x, y-rise, x, y-up*0.6)
		s.Fill(0)
		s.Polygon([]orb.Point{{x, y - up*0.3}, {x - 0.6, y - up*1.7}, {x + 0.6, y - up*1.7}}, page.Inside)
	}
}

// foldOf is the fold that a piece lies on, and 1 when the piece lies above it,
// -1 when below.
func (s *sheets) foldOf(l lay.Laid) (y, up float64) {
	part := s.plan.BedOf(l)
	if part.FoldHigh && l.Outline.Bound().Center()[1] > part.Y+part.Width/2 {
		return part.Y + part.Width, -1
	}
	return part.Y, 1
}

// foldSpan is where along the warp the piece lies on the fold.
func foldSpan(l lay.Laid, fold float64) (from, to float64, ok bool) {
	from, to = math.Inf(1), math.Inf(-1)
	for _, p := range l.Seam {
		if math.Abs(p[1]-fold) < 1e-3 {
			from, to = math.Min(from, p[0]), math.Max(to, p[0])
		}
	}
	return from, to, to-from > 1
}
