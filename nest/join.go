package nest

import (
	"math"
	"slices"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

// joinAccuracy is the last step by which parts are slid together, as a share of the
// width.
const joinAccuracy = 1e-6

// joined lays parts one behind the other, each slid into the one before as far as it
// goes.
func joined(m *model.Model, parts []laidPart) laidPart {
	whole := laidPart{part: part{slices.Clone(parts[0].pieces)}, length: parts[0].length}
	whole.spots = append(whole.spots, parts[0].spots...)
	tail := parts[0].spots
	for _, next := range parts[1:] {
		by := slid(m, tail, next, whole.length)
		tail = nil
		for k, spot := range next.spots {
			spot.X += by
			tail = append(tail, spot)
			whole.pieces = append(whole.pieces, next.pieces[k])
		}
		whole.spots = append(whole.spots, tail...)
		for _, spot := range tail {
			whole.length = math.Max(whole.length, spot.X+m.Shapes[spot.Shape].HalfX)
		}
	}
	return whole
}

// slid is by how much the next part is to be moved along to lie behind what ends at that
// length, of which tail is the last part.
func slid(m *model.Model, tail []search.Spot, next laidPart, end float64) float64 {
	by := end + m.Gap
	for step := next.length / 2; step > joinAccuracy*m.Width; {
		if to := by - step; to >= end-next.length && isFree(m, tail, next.spots, to, end) {
			by = to
			continue
		}
		step /= 2
	}
	return by
}

// isFree reports whether spots moved along overlap nothing of the tail, which ends there.
func isFree(m *model.Model, tail, next []search.Spot, by, end float64) bool {
	for _, b := range next {
		o := &m.Shapes[b.Shape]
		if b.X+by-o.HalfX >= end+m.Gap {
			continue
		}
		for _, a := range tail {
			s := &m.Shapes[a.Shape]
			dx, dy := b.X+by-a.X, b.Y-a.Y
			if math.Abs(dx) < s.HalfX+o.HalfX+m.Gap && math.Abs(dy) < s.HalfY+o.HalfY+m.Gap &&
				m.DirectOverlap(a.Shape, b.Shape, dx, dy) {
				return false
			}
		}
	}
	return true
}
