package layout

import "math"

// Tolerance is how far a piece may reach into another, over an edge, or from
// its place on a lattice and still count as touching: a ten-millionth of the
// width of the strip (of the smallest height of the sheets), 0.15 micrometre
// on cloth of 1.5 m. No cutter and no plotter can tell it from contact, and
// the rounding of coordinates is a thousand times smaller.
//
// Depth alone would let a narrow piece lose a noticeable part of itself along
// a long contact, so no overlap and no overhang may exceed AreaTolerance of
// the smaller piece's area either.
const Tolerance = 1e-7

// AreaTolerance is the share of the smaller piece's area that an overlap may
// have: half of what an outside checker with a limit of a millionth accepts,
// so that neither its rounding nor ours decides. At a depth of a
// hundred-millionth of the width W it binds only bands narrower than W/50.
const AreaTolerance = 5e-7

// Height is the width of the strip or the least height of the sheets.
func (p Problem) Height() float64 {
	if len(p.Sheets) == 0 {
		return p.Width
	}
	least := math.Inf(1)
	for _, sheet := range p.Sheets {
		box := sheet.Bound()
		least = min(least, box.Max[1]-box.Min[1])
	}
	return least
}
