package marker

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces/drawing"
	"ellwand/pieces/page"
)

// drawRest draws the page of the cloth that is left over: the lay with its
// pieces in grey, and the largest rectangles between them with their sizes.
func (s *sheets) drawRest() {
	size := centimetreCell
	if s.options.Inches {
		size = inchCell
	}
	rests := leftovers(s.plan, size)
	if len(rests) == 0 {
		return
	}
	s.addTextPage("What is left over")
	const listWidth, roomForEnd = 62.0, 4.0
	wide, tall := s.Inner()-listWidth-8-roomForEnd, s.Height-margin-s.Y-5
	for _, v := range restViews(s.plan, wide, tall) {
		v.left += margin + roomForEnd
		v.bottom += s.Y
		s.drawRestRow(v, rests)
	}
	s.listRest(s.Width-margin-listWidth, rests)
}

// restGap is the room between two rows, for the name of the near edge, mm.
const restGap = 9.0

// restViews break a lay into the rows in which it is shown largest, from the
// upper left of the room.
func restViews(plan lay.Plan, wide, tall float64) []view {
	low, high := Edges(plan)
	rows, scale := 1, 0.0
	for n := 1; n <= 6; n++ {
		if fits := math.Min(wide*float64(n)/purchase.OnTable(plan), (tall/float64(n)-restGap)/(high-low)); fits > scale*1.02 {
			rows, scale = n, fits
		}
	}
	var out []view
	each := math.Min(wide/scale, purchase.OnTable(plan))
	for i := range rows {
		v := view{scale: scale, low: low, high: high, page: i + 1, pages: rows}
		v.from, v.to = float64(i)*each, math.Min(float64(i+1)*each, purchase.OnTable(plan))
		v.bottom = 3 + (high-low)*scale + float64(i)*((high-low)*scale+restGap)
		out = append(out, v)
	}
	return out
}

// drawRestRow draws one row.
func (s *sheets) drawRestRow(v view, rests []leftover) {
	s.Within(v.box().Pad(0.5), func() {
		s.SetPen(0.15, 120)
		s.Fill(greyWaste)
		for _, l := range s.plan.Pieces {
			s.Polygon(v.line(l.Outline), page.Whole)
		}
		for _, zone := range s.plan.Zones {
			s.SetPen(0.15, 90)
			s.CrossHatch(v.line(zone), 1.2)
		}
		s.drawRestEdges(v)
		s.SetPen(0.5, 0)
		for _, r := range rests {
			s.Polygon(v.line(ringOf(r.box)), page.Rim)
		}
	})
	s.nameRests(v, rests)
	near := v.at(orb.Point{v.from, v.low})
	s.Bold(7)
	if v.first() {
		left := LeftEnd(s.plan)
		s.TextUp(near[0]-1.5, (v.at(left.From)[1]+v.at(left.To)[1])/2, left.Name)
		s.Text(near[0], near[1]+4, NearEdge(s.plan))
		return
	}
	s.Text(near[0], near[1]+4, "continued, from "+s.options.Long(v.from)+" on")
}

// drawRestEdges draws the edges of the cloth.
func (s *sheets) drawRestEdges(v view) {
	for _, stretch := range stretches(s.plan) {
		s.SetPen(0.35, 0)
		s.Polygon(v.line(ringOf(orb.Bound{Min: orb.Point{stretch.from, stretch.low},
			Max: orb.Point{stretch.to, stretch.high}})), page.Rim)
	}
	for _, edge := range EdgeLines(s.plan) {
		if edge.IsFold {
			s.edgeLine(v, edge.From[0], edge.To[0], edge.From[1], true)
		}
	}
}

// nameRests writes the letter of each rectangle into the part of it that this
// row shows, as large as it has room for.
func (s *sheets) nameRests(v view, rests []leftover) {
	for i, r := range rests {
		from, to := math.Max(r.box.Min[0], v.from), math.Min(r.box.Max[0], v.to)
		if from >= to {
			continue
		}
		a, b := v.at(orb.Point{from, r.box.Max[1]}), v.at(orb.Point{to, r.box.Min[1]})
		points := math.Min(9, 0.7*math.Min(b[0]-a[0], b[1]-a[1])/drawing.Point)
		s.Bold(math.Max(4.5, points))
		s.TextCentred((a[0]+b[0])/2, (a[1]+b[1])/2+0.36*s.Points*drawing.Point, letter(i))
	}
}

func letter(i int) string { return string(rune('A' + i)) }

// listRest lists the sizes, along the warp first.
func (s *sheets) listRest(x float64, rests []leftover) {
	y := s.Y + 6
	s.Bold(8.5)
	s.Text(x, y, "along the warp × across")
	for i, r := range rests {
		y += 5.5
		s.Bold(9)
		s.Text(x, y, letter(i))
		s.Plain(9)
		s.Text(x+6, y, fmt.Sprintf("%s × %s%s", s.options.Short(r.box.Max[0]-r.box.Min[0]),
			s.options.Short(r.box.Max[1]-r.box.Min[1]), layers(r.plies)))
	}
	y += 8
	s.Plain(8.5)
	for _, line := range s.Wrapped("White is left over: usable cloth from cut end to cut end, selvedges and flaws "+
		"apart. Keep what is large enough for a pocket, a facing or a bag, with its warp marked.", s.Width-margin-x) {
		s.Text(x, y, line)
		y += adviceStep
	}
}

func layers(plies int) string {
	if plies == 2 {
		return ", two layers"
	}
	return ""
}
