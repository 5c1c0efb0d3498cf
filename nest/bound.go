package nest

import (
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/bounds"
)

// Bound returns a length that no layout of the problem on its strip can beat,
// within Tolerance: the best of the area, the longest piece, the pieces that
// cannot lie side by side, the pieces that are pinned to an edge, and the
// lengths on which the pieces, laid across, would need more than the width.
// See the package bounds for the proofs. It is 0 for sheets, and for a problem
// that Check refuses.
func Bound(p Problem) float64 {
	if len(p.Sheets) > 0 || p.Check() != nil {
		return 0
	}
	pieces := p.boundPieces()
	return p.tooShort(bounds.Length(p.strip(), pieces), pieces)
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
func (p Problem) tooShort(known float64, pieces []bounds.Piece) float64 {
	proven := func(length float64) bool {
		on := p
		on.Length = length * (1 + 2*Tolerance)
		return bounds.Length(on.crossed(), crossedPieces(pieces, on.Length)) > p.Width*(1+2*Tolerance)
	}
	if len(p.Items) > mostAcross {
		return known
	}
	low, high := known, 0.0
	for i := range mostProbes {
		length := known * (1 + float64(i+1)/mostProbes)
		if proven(length) {
			low, high = length, known*(1+float64(i+2)/mostProbes)
		}
	}
	for range mostHalvings {
		if high == 0 {
			break
		}
		if middle := (low + high) / 2; proven(middle) {
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
func Misfit(p Problem) string {
	if p.Check() != nil || p.Length == 0 && len(p.Sheets) == 0 {
		return ""
	}
	room := p.room()
	if proof := p.oversize(room); proof != "" {
		return proof
	}
	if proof := p.tooMuch(); proof != "" {
		return proof
	}
	if len(room) > 1 {
		return ""
	}
	// A strip as wide, and one as wide as the sheet is long, laid across.
	on := p
	on.Sheets, on.Width, on.Length = nil, room[0][1], room[0][0]
	if len(p.Sheets) > 0 {
		on.Zones = nil
	}
	if long := bounds.Length(on.strip(), on.boundPieces()); long > on.Length*(1+2*Tolerance) {
		return fmt.Sprintf("the pieces cannot be laid shorter than %.6g on this width, and the sheet is %.6g long", long, on.Length)
	}
	if wide := bounds.Length(on.crossed(), crossedPieces(on.boundPieces(), on.Length)); wide > on.Width*(1+2*Tolerance) {
		return fmt.Sprintf("the pieces cannot be laid narrower than %.6g on this length, and the sheet is %.6g wide", wide, on.Width)
	}
	return ""
}

// room is the length and width of the rectangle, or of the bounding box of
// each sheet.
func (p Problem) room() [][2]float64 {
	if len(p.Sheets) == 0 {
		return [][2]float64{{p.Length, p.Width}}
	}
	var room [][2]float64
	for _, sheet := range p.Sheets {
		box := sheet.Bound()
		room = append(room, [2]float64{box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]})
	}
	return room
}

// oversize proves that one item is too large for every sheet.
func (p Problem) oversize(room [][2]float64) string {
	for i, item := range p.Items {
		fits := false
		for _, turn := range item.Turns {
			x, y := item.turnExtent(turn, 0), item.turnExtent(turn, 1)
			for _, r := range room {
				fits = fits || x <= r[0]*(1+Tolerance) && y <= r[1]*(1+Tolerance)
			}
		}
		if !fits {
			return fmt.Sprintf("%s is too large in every turn that is allowed: at least %.6g along and %.6g across",
				p.itemName(i), item.leastExtent(0), item.leastExtent(1))
		}
	}
	return ""
}

// tooMuch proves that the pieces have more area than the sheets. (On the
// rectangle, the bound by area takes care of the zones as well.)
func (p Problem) tooMuch() string {
	have := p.Width * p.Length
	if len(p.Sheets) > 0 {
		have = 0
		for _, sheet := range p.Sheets {
			have += newShape(sheet...).area
		}
	}
	need := 0.0
	for _, item := range p.Items {
		need += float64(item.Copies) * ringArea(distinct(item.Outline))
	}
	if need <= have*(1+AreaTolerance) {
		return ""
	}
	return fmt.Sprintf("the pieces have %.2f %% more area than there is to lay them on", 100*(need/have-1))
}

func (p Problem) strip() bounds.Strip {
	return bounds.Strip{Width: p.Width, Gap: p.Gap, Reach: Tolerance * p.height(), Zones: p.Zones}
}

// boundPieces turns every item in the ways that the width allows.
func (p Problem) boundPieces() []bounds.Piece {
	isOnLattice := slices.ContainsFunc(p.Items, func(i Item) bool { return i.PeriodX > 0 || i.PeriodY > 0 })
	pieces := make([]bounds.Piece, len(p.Items))
	for i, item := range p.Items {
		piece := bounds.Piece{
			Copies: item.Copies, Tilts: item.Tilt > 0,
			Area: ringArea(distinct(item.Outline)), Least: math.Inf(1),
		}
		seen := map[float64]bool{}
		for _, turn := range item.Turns {
			if item.turnExtent(turn, 1) > p.Width*(1+Tolerance) {
				continue
			}
			piece.Least = min(piece.Least, item.leastEnd(turn))
			outline := distinct(turned(item.Outline, turn.Degrees, turn.Mirrored))
			if isOnLattice {
				piece.Turns = append(piece.Turns, bounds.Turned{Outline: outline, Pin: pinEdge[turn.Pin],
					Period: [2]float64{item.PeriodX, item.PeriodY}, Offset: [2]float64{turn.OffsetX, turn.OffsetY}})
			}
			// Mirror images in x or y have the same sections; only where they are
			// pinned to an edge does it matter which.
			angle, _, _ := baseTurn(turn.Degrees, turn.Mirrored)
			if turn.Pin == PinNone && seen[angle] {
				continue
			}
			seen[angle] = seen[angle] || turn.Pin == PinNone
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
func (item Item) leastEnd(turn Turn) float64 {
	extent := item.turnExtent(turn, 0)
	if item.PeriodX == 0 || item.Tilt > 0 {
		return extent
	}
	low := math.Inf(1)
	for _, q := range turned(item.Outline, turn.Degrees, turn.Mirrored) {
		low = min(low, q[0])
	}
	const rounding = 1e-6 // of a period
	first := turn.OffsetX + item.PeriodX*math.Ceil((-low-turn.OffsetX)/item.PeriodX-rounding)
	return max(extent, first+low+extent)
}

var pinEdge = map[Pin]bounds.Pin{PinNone: bounds.Free, PinLow: bounds.Low, PinHigh: bounds.High}

// crossed is the sheet with x and y exchanged.
func (p Problem) crossed() bounds.Strip {
	strip := bounds.Strip{Width: p.Length, Gap: p.Gap, Reach: Tolerance * p.height()}
	for _, zone := range p.Zones {
		strip.Zones = append(strip.Zones, exchanged(zone))
	}
	return strip
}

// crossedPieces exchanges x and y of every outline that is no longer than the
// sheet. Their pins say nothing then, and the least extents have been looked
// at.
func crossedPieces(pieces []bounds.Piece, length float64) []bounds.Piece {
	isTooLong := func(outline orb.Ring) bool {
		box := outline.Bound()
		return box.Max[0]-box.Min[0] > length*(1+Tolerance)
	}
	out := make([]bounds.Piece, len(pieces))
	for i, piece := range pieces {
		out[i] = bounds.Piece{Copies: piece.Copies, Tilts: piece.Tilts, Area: piece.Area}
		for _, outline := range piece.Outlines {
			if !isTooLong(outline) {
				out[i].Outlines = append(out[i].Outlines, exchanged(outline))
			}
		}
		for _, t := range piece.Turns {
			if !isTooLong(t.Outline) {
				out[i].Turns = append(out[i].Turns, bounds.Turned{Outline: exchanged(t.Outline),
					Period: [2]float64{t.Period[1], t.Period[0]}, Offset: [2]float64{t.Offset[1], t.Offset[0]}})
			}
		}
	}
	return out
}

func exchanged(ring orb.Ring) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, q := range ring {
		out[i] = orb.Point{q[1], q[0]}
	}
	return out
}
