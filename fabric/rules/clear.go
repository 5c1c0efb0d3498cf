package rules

import (
	"cmp"
	"math"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
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
	for _, band := range b.Bands(c) {
		from, to := math.Max(band.Ply.Low, band.From), math.Min(band.Ply.High, band.To)
		if from < to {
			out = append(out, run{from, to})
		}
	}
	return out
}

// roomFor a turn is the widest run that a template in it may lie in: of one that
// is pinned to an edge, the run along that edge.
func roomFor(c cloth.Cloth, runs []run, b bed.Bed, pin layout.Pin) float64 {
	room, low, high := 0.0, 0.0, b.Width
	if pin == layout.PinNone {
		clearLow, clearHigh := b.FoldClear(c)
		low, high = clearLow, b.Width-clearHigh
	}
	for _, r := range runs {
		switch {
		case pin == layout.PinLow && r.from > 0, pin == layout.PinHigh && r.to < b.Width:
		default:
			room = math.Max(room, math.Min(r.to, high)-math.Max(r.from, low))
		}
	}
	return room
}
