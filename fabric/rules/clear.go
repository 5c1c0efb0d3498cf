package rules

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// run is a stretch across a bed, mm.
type run struct{ from, to float64 }

// clearRuns are the stretches across a bed that no flaw takes for its whole
// length, such as a crease down the middle: each piece lies within one. Where two
// selvedges meet ends a run too.
func clearRuns(c cloth.Cloth, b bed.Bed) []run {
	taken := bands(c, b)
	if b.Kind == lay.BothSelvedgesIn {
		taken = append(taken, run{b.Width/2 - bed.MiddleStrip(c), b.Width/2 + bed.MiddleStrip(c)})
	}
	slices.SortFunc(taken, func(a, b run) int { return cmp.Compare(a.from, b.from) })
	var out []run
	from := 0.0
	for _, band := range append(taken, run{b.Width, b.Width}) {
		if band.from > from {
			out = append(out, run{from, band.from})
		}
		from = math.Max(from, band.to)
	}
	return out
}

// bands are what flaws take of a bed for its whole length, in all its plies.
func bands(c cloth.Cloth, b bed.Bed) []run {
	var out []run
	for _, p := range b.PliesOn(c, 0) {
		back := geometry.Inverse(p.Motion)
		for _, flaw := range c.Flaws {
			box := flaw.Outline.Bound()
			if box.Min[0] > -cloth.Endless || box.Max[0] < cloth.Endless {
				continue
			}
			y0 := geometry.Apply(back, orb.Point{0, box.Min[1] - c.Selvedge})[1]
			y1 := geometry.Apply(back, orb.Point{0, box.Max[1] - c.Selvedge})[1]
			from, to := math.Max(p.Low, math.Min(y0, y1)), math.Min(p.High, math.Max(y0, y1))
			if from < to {
				out = append(out, run{from, to})
			}
		}
	}
	return out
}

// roomFor a turn is the widest run that a template in it may lie in: of one that
// is pinned to an edge, the run along that edge.
func roomFor(runs []run, b bed.Bed, pin layout.Pin) float64 {
	room := 0.0
	for _, r := range runs {
		switch {
		case pin == layout.PinLow && r.from > 0, pin == layout.PinHigh && r.to < b.Width:
		default:
			room = math.Max(room, r.to-r.from)
		}
	}
	return room
}
