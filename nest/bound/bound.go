package bound

import (
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/bound/internal/proof"
	"ellwand/nest/layout"
)

// Length returns a length that no layout of the problem on its strip can beat,
// within Tolerance: the best of the area, the longest piece, the pieces that
// cannot lie side by side, the pieces that are pinned to an edge, and the
// lengths on which the pieces, laid across, would need more than the width.
// See the package proof. It is 0 for sheets, and for a problem
// that Check refuses.
func Length(p layout.Problem) float64 {
	if len(p.Sheets) > 0 || p.Check() != nil {
		return 0
	}
	return lengths.of(p, length)
}

// lengths that were found.
var lengths memo

func length(p layout.Problem) float64 {
	p = surely(p)
	pieces := boundPieces(p)
	return tooShort(p, proof.Length(stripOf(p), pieces), pieces)
}

// Brief is Length but for what is proven by laying the pieces across, which takes most
// of the work: for layouts of which many are tried and few are shown.
func Brief(p layout.Problem) float64 {
	if len(p.Sheets) > 0 || p.Check() != nil {
		return 0
	}
	p = surely(p)
	return proof.Length(stripOf(p), boundPieces(p))
}

// surely is the problem with what each item surely covers.
func surely(p layout.Problem) layout.Problem {
	out := p
	out.Items = slices.Clone(p.Items)
	for i, item := range p.Items {
		if len(item.Core) > 0 {
			out.Items[i].Outline = item.Core
		}
	}
	return out
}

// Lengths above a bound on which pieces are tried across: so many, evenly up to
// twice the bound, where two of the longest pieces lie end to end; and so many
// halvings above the last that is proven too short.
const (
	mostProbes   = 8
	mostHalvings = 4
	// mostAcross items are tried: more seldom gain by it, and take long.
	mostAcross = 60
)

// tooShort returns the greatest length found on which the pieces are proven
// not to fit because, with x and y exchanged, they need more than the width;
// or the bound that is known. What does not fit on a length fits on no shorter
// one, so that every proof counts by itself.
func tooShort(p layout.Problem, bound float64, pieces []proof.Piece) float64 {
	if len(p.Items) > mostAcross {
		return bound
	}
	across, known := transposedPieces(pieces), proof.NewSections(p.Gap)
	isTooShort := func(length float64) bool {
		on := p
		on.Length = length * (1 + 2*layout.Tolerance)
		strip := transposedStrip(on)
		strip.Known = known
		return proof.Exceeds(strip, noHigher(across, on.Length), p.Width*(1+2*layout.Tolerance))
	}
	low, high := bound, 0.0
	for i := range mostProbes {
		length := bound * (1 + float64(i+1)/mostProbes)
		if isTooShort(length) {
			low, high = length, float64(bound*(1+float64(i+2)/mostProbes))
		}
	}
	for range mostHalvings {
		if high == 0 {
			break
		}
		if middle := (low + high) / 2; isTooShort(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// Misfit returns a sentence that proves that not everything fits on the
// sheets, or "" when it finds no proof (which does not mean that it fits).
// On a strip of open length everything fits.
func Misfit(p layout.Problem) string {
	if p.Check() != nil || p.Length == 0 && len(p.Sheets) == 0 {
		return ""
	}
	p = surely(p)
	sheets := room(p)
	if proof := oversize(p, sheets); proof != "" {
		return proof
	}
	if proof := tooMuch(p); proof != "" {
		return proof
	}
	if len(sheets) > 1 {
		return ""
	}
	// A strip as wide, and one as wide as the sheet is long, laid across.
	on := p
	on.Sheets, on.Width, on.Length = nil, sheets[0][1], sheets[0][0]
	if len(p.Sheets) > 0 {
		on.Zones = nil
	}
	if long := proof.Length(stripOf(on), boundPieces(on)); long > on.Length*(1+2*layout.Tolerance) {
		return fmt.Sprintf(
			"the pieces cannot be laid shorter than %.6g on this width, and the sheet is %.6g long",
			long,
			on.Length,
		)
	}
	wide := proof.Length(transposedStrip(on), noHigher(transposedPieces(boundPieces(on)), on.Length))
	if wide > on.Width*(1+2*layout.Tolerance) {
		return fmt.Sprintf(
			"the pieces cannot be laid narrower than %.6g on this length, and the sheet is %.6g wide",
			wide,
			on.Width,
		)
	}
	return ""
}

// room is the length and width of the rectangle, or of the bounding box of
// each sheet.
func room(p layout.Problem) [][2]float64 {
	if len(p.Sheets) == 0 {
		return [][2]float64{{p.Length, p.Width}}
	}
	var sizes [][2]float64
	for _, sheet := range p.Sheets {
		box := sheet.Bound()
		sizes = append(sizes, [2]float64{box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]})
	}
	return sizes
}

// oversize proves that one item is too large for every sheet.
func oversize(p layout.Problem, room [][2]float64) string {
	for i, item := range p.Items {
		fits := false
		for _, turn := range item.Turns {
			x, y := item.TurnExtent(turn, 0), item.TurnExtent(turn, 1)
			for _, r := range room {
				fits = fits || x <= r[0]*(1+layout.Tolerance) && y <= r[1]*(1+layout.Tolerance)
			}
		}
		if !fits {
			return fmt.Sprintf("%s is too large in every turn that is allowed: at least %.6g along and %.6g across",
				p.ItemName(i), item.LeastExtent(0), item.LeastExtent(1))
		}
	}
	return ""
}

// tooMuch proves that the pieces have more area than the sheets. (On the
// rectangle, the bound by area takes care of the zones as well.)
func tooMuch(p layout.Problem) string {
	have := float64(p.Width * p.Length)
	if len(p.Sheets) > 0 {
		have = 0
		for _, sheet := range p.Sheets {
			have += layout.NewRegion(sheet...).Area()
		}
	}
	need := 0.0
	for _, item := range p.Items {
		need += float64(float64(item.Copies) * layout.Area(layout.Corners(item.Outline)))
	}
	if need <= have*(1+layout.AreaTolerance) {
		return ""
	}
	return fmt.Sprintf("the pieces have %.2f %% more area than there is to lay them on", 100*(need/have-1))
}

func stripOf(p layout.Problem) proof.Strip {
	return proof.Strip{Width: p.Width, Gap: p.Gap, Reach: layout.Tolerance * p.Height(), Zones: p.Zones,
		Known: proof.NewSections(p.Gap)}
}

// boundPieces turns every item in the ways that the width allows.
func boundPieces(p layout.Problem) []proof.Piece {
	isOnLattice := slices.ContainsFunc(p.Items, func(i layout.Item) bool { return i.PeriodX > 0 || i.PeriodY > 0 })
	pieces := make([]proof.Piece, len(p.Items))
	for i, item := range p.Items {
		piece := proof.Piece{
			Copies: item.Copies, Tilts: item.Tilt > 0,
			Area: layout.Area(layout.Corners(item.Outline)), Least: math.Inf(1),
		}
		seen := map[float64]bool{}
		for _, turn := range item.Turns {
			if item.TurnExtent(turn, 1) > p.Width*(1+layout.Tolerance) {
				continue
			}
			piece.Least = min(piece.Least, leastEnd(item, turn))
			outline := layout.Corners(layout.Turned(item.Outline, turn.Degrees, turn.Mirrored))
			piece.Ways = append(piece.Ways, outline)
			if isOnLattice {
				piece.Turns = append(piece.Turns, proof.Turned{Outline: outline, Pin: pinEdge[turn.Pin],
					Period: [2]float64{item.PeriodX, item.PeriodY}, Offset: [2]float64{turn.OffsetX, turn.OffsetY}})
			}
			// Mirror images in x or y have the same sections; only where they are
			// pinned to an edge does it matter which.
			angle, _, _ := turn.Reduced(0)
			if turn.Pin == layout.PinNone && seen[angle] {
				continue
			}
			seen[angle] = seen[angle] || turn.Pin == layout.PinNone
			piece.Outlines = append(piece.Outlines, outline)
			piece.Pins = append(piece.Pins, pinEdge[turn.Pin])
		}
		pieces[i] = piece
	}
	return pieces
}

// leastEnd is how far along the strip a copy reaches at least: its extent, or,
// bound to a lattice along the strip, its end at the first place of the lattice
// where it does not hang over the beginning.
func leastEnd(item layout.Item, turn layout.Turn) float64 {
	extent := item.TurnExtent(turn, 0)
	if item.PeriodX == 0 || item.Tilt > 0 {
		return extent
	}
	low := math.Inf(1)
	for _, q := range layout.Turned(item.Outline, turn.Degrees, turn.Mirrored) {
		low = min(low, q[0])
	}
	const rounding = 1e-6 // of a period
	first := turn.OffsetX + float64(item.PeriodX*math.Ceil((-low-turn.OffsetX)/item.PeriodX-rounding))
	return max(extent, first+low+extent)
}

var pinEdge = map[layout.Pin]proof.Pin{
	layout.PinNone: proof.Free,
	layout.PinLow:  proof.Low,
	layout.PinHigh: proof.High,
}

// noHigher leaves out the outlines of pieces that are higher than that.
func noHigher(pieces []proof.Piece, most float64) []proof.Piece {
	isTooHigh := func(outline orb.Ring) bool {
		box := outline.Bound()
		return box.Max[1]-box.Min[1] > most*(1+layout.Tolerance)
	}
	out := slices.Clone(pieces)
	for i, piece := range out {
		out[i].Outlines = slices.DeleteFunc(slices.Clone(piece.Outlines), isTooHigh)
		out[i].Ways = slices.DeleteFunc(slices.Clone(piece.Ways), isTooHigh)
		out[i].Turns = slices.DeleteFunc(slices.Clone(piece.Turns),
			func(t proof.Turned) bool { return isTooHigh(t.Outline) })
	}
	return out
}
