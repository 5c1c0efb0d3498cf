package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
)

// drawRepeat draws the lines of the repeat on this page.
func (s *sheets) drawRepeat(v view) {
	s.SetPen(0.12, 60, 0.3, 1.1)
	for _, line := range RepeatLines(s.plan, v.from, v.to) {
		a, b := v.at(line[0]), v.at(line[1])
		s.Line(a[0], a[1], b[0], b[1])
	}
}

// RepeatLines are lines on the same place of the repeat between two places
// along the warp, in the frame of the lay: along the warp from the left end,
// across those of the ply that is seen from above, from the centre line of the
// cloth.
func RepeatLines(plan lay.Plan, from, to float64) [][2]orb.Point {
	var out [][2]orb.Point
	for _, stretch := range stretches(plan) {
		low, high := max(stretch.from, from), min(stretch.to, to)
		if along := plan.Cloth.Repeat.Along; along > 0 {
			for x := math.Ceil(low/along) * along; x <= high; x += along {
				out = append(out, [2]orb.Point{{x, stretch.low}, {x, stretch.high}})
			}
		}
	}
	for _, b := range bands(plan) {
		low, high := max(b.from, from), min(b.to, to)
		if low >= high {
			continue
		}
		for _, y := range b.linesAcross(plan) {
			out = append(out, [2]orb.Point{{low, y}, {high, y}})
		}
	}
	return out
}

// band is a rectangle of the lay in which one ply is seen from above.
type band struct {
	stretch
	part int
}

// bands of the lay: one a stretch, or two beside each other where a selvedge
// is folded in.
func bands(plan lay.Plan) []band {
	var out []band
	for i, s := range stretches(plan) {
		out = append(out, band{s, i})
	}
	first, edge := out[0], 0.0
	switch plan.Lay {
	case lay.SelvedgeIn:
		edge = plan.FoldedIn
	case lay.BothSelvedgesIn:
		edge = plan.Width / 2
	default:
		return out
	}
	second := first
	first.high, second.low, second.part = edge, edge, len(plan.Beds)-1
	return []band{first, second}
}

// linesAcross are the places of the lines of the repeat across.
func (b band) linesAcross(plan lay.Plan) []float64 {
	repeat := plan.Cloth.Repeat
	if repeat.Across <= 0 {
		return nil
	}
	middle := (b.low + b.high) / 2
	there := bed.SeenAcross(plan, b.part, middle)
	at := middle + (repeat.CentreLine-there)*(bed.SeenAcross(plan, b.part, middle+1)-there)
	var out []float64
	for y := at + math.Ceil((b.low-at)/repeat.Across)*repeat.Across; y <= b.high; y += repeat.Across {
		out = append(out, y)
	}
	return out
}

// hasRepeat reports whether lines of a repeat are drawn.
func hasRepeat(plan lay.Plan) bool { return !plan.Cloth.Repeat.IsPlain() }
