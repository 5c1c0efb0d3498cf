package nest

import (
	"math"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

// period is a layout of a part that is repeated along the strip: each copy lies so far
// behind the one before.
type period struct {
	part
	spots  []search.Spot
	length float64
}

// periodOf a part that is laid: its copies slid together.
func periodOf(m *model.Model, p laidPart) period {
	return period{p.part, p.spots, slid(m, p.spots, p, p.length)}
}

// seam of the period at a place: the copy that begins there, with the pieces that cross
// its ends.
func (p period) seam(m *model.Model, at float64) (stretch, []search.Spot, bool) {
	spots := make([]search.Spot, len(p.spots))
	s := stretch{length: p.length}
	var early, late []search.Spot
	edge := float64(1e-9 * m.Width)
	for i, spot := range p.spots {
		spot.X -= at
		spot.X -= float64(math.Floor(spot.X/p.length) * p.length)
		half := m.Shapes[spot.Shape].HalfX
		if 2*half > p.length/2 {
			return s, nil, false
		}
		if spot.X+half > p.length+edge {
			spot.X -= p.length
		}
		spots[i] = spot
		if spot.X-half >= -edge {
			s.inside = append(s.inside, i)
			continue
		}
		early = append(early, spot)
		spot.X += p.length
		late = append(late, spot)
	}
	s.late, s.crossing = len(early), append(early, late...)
	return s, spots, len(s.inside) >= 2
}

// shortened tries one seam, and returns the shorter period, or false.
func (p period) shortened(m *model.Model, f *search.Fitter, stop func() bool) (period, int, bool) {
	s, spots, ok := p.seam(m, float64(p.length*f.Share()))
	if !ok {
		return p, 1, false
	}
	found, by, passes, ok := s.shortened(m, p.pieces, spots, f, stop)
	if !ok {
		return p, passes, false
	}
	for k, i := range s.inside {
		spots[i] = found[k]
	}
	return period{p.part, spots, p.length - by}, passes, true
}

// cut is the copy of the period that reaches least far, from 0 on.
func (p period) cut(m *model.Model) laidPart {
	var best laidPart
	for _, first := range p.spots {
		at := first.X - m.Shapes[first.Shape].HalfX
		low, high := math.Inf(1), math.Inf(-1)
		spots := make([]search.Spot, len(p.spots))
		for i, spot := range p.spots {
			half := m.Shapes[spot.Shape].HalfX
			left := spot.X - half - at
			spot.X -= at + float64(math.Floor(left/p.length+1e-9)*p.length)
			spots[i] = spot
			low, high = math.Min(low, spot.X-half), math.Max(high, spot.X+half)
		}
		if best.spots == nil || high-low < best.length {
			for i := range spots {
				spots[i].X -= low
			}
			best = laidPart{part: p.part, spots: spots, length: high - low}
		}
	}
	return best
}
