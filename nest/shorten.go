package nest

import (
	"math"

	"ellwand/nest/internal/search"
)

// shorten makes stretches of the whole shorter until the budget is spent, as many side
// by side as there are lanes; each success draws what lies behind it nearer.
func (l *large) shorten(whole laidPart) {
	lanes := len(l.fitters)
	for improved := l.passes; l.goesOn(1) && !l.isSpent(improved) && whole.length > l.run.floor*(1+touchShare); {
		made := make([]made, lanes)
		l.run.sideBySide(lanes, func(k int) {
			from, to := l.line(whole, k)
			s, ok := stretchOf(l.m, whole.spots, from, to)
			if !ok {
				made[k].passes = 1
				return
			}
			m := &made[k]
			m.stretch = s
			m.found, m.by, m.passes, m.ok = s.shortened(l.m, whole.pieces, whole.spots, l.fitters[k],
				func() bool { return !l.goesOn(1) })
		})
		gained := false
		for k := lanes - 1; k >= 0; k-- { // from the right, so that lines keep their places
			l.count(made[k].passes, max(1, len(made[k].inside)))
			if made[k].ok {
				whole = made[k].apply(l, whole)
				gained = true
			}
		}
		if gained {
			improved = l.passes
			l.offer(whole)
		}
	}
}

// isSpent reports that shortening has stopped paying, as Options.Patience says.
func (l *large) isSpent(improved int) bool {
	patience := l.run.o.Patience
	return patience > 0 && l.passes-improved > max(spentLeast, int(patience*float64(improved)))
}

// spentLeast passes over the whole without gain are made at least.
const spentLeast = 100

// made is what a lane has made of a stretch.
type made struct {
	stretch
	found  []search.Spot
	by     float64
	passes int
	ok     bool
}

// line draws the lines of a stretch in lane k of the strip; the lanes keep apart.
func (l *large) line(whole laidPart, k int) (from, to float64) {
	lanes := float64(len(l.fitters))
	long := float64(whole.length * math.Min(1/lanes, stretchPieces/float64(len(whole.pieces))))
	lane := whole.length / lanes
	start := float64(float64(k) * lane)
	from = start + float64(l.fitters[k].Share()*(lane+long)) - long
	from = math.Max(start, math.Min(from, start+lane-long))
	return from, math.Min(whole.length, from+long)
}

// apply moves the pieces of the stretch, and what lies behind it nearer.
func (m made) apply(l *large, whole laidPart) laidPart {
	spots := append([]search.Spot(nil), whole.spots...)
	inside := map[int]bool{}
	for k, i := range m.inside {
		spots[i] = m.found[k]
		spots[i].X += m.from
		inside[i] = true
	}
	end := m.from + m.length
	edge := float64(1e-9 * l.m.Width)
	whole.length = 0
	for i, at := range spots {
		half := l.m.Shapes[at.Shape].HalfX
		if !inside[i] && at.X+half > end+edge {
			spots[i].X -= m.by
		}
		whole.length = math.Max(whole.length, spots[i].X+half)
	}
	whole.spots = spots
	return whole
}
