// Package verify proves or refuses a layout: it judges the true outlines with
// distances between edges and with areas, and imports nothing of ours but the
// data that it judges, so that it shares no code with the search.
package verify

import (
	"errors"
	"math"
	"slices"
	"strings"

	"ellwand/nest/layout"
)

// Layout reports every fault of a layout, or nil when each of these holds:
//
//  1. The problem itself passes Check.
//  2. Every copy of every item is placed exactly once.
//  3. Its turn is allowed and its tilt within the item's.
//  4. Pinned pieces lie on their edge. (On a sheet, the low edge is y = 0 and
//     the high edge the sheet's largest y.)
//  5. Positions lie on the lattice of the item.
//  6. The copies of a group share one direction.
//  7. Every piece lies within the strip or its sheet, clear of holes and
//     zones.
//  8. No two pieces overlap, or are nearer to each other than the gap.
//  9. Length is the largest x of any piece (0 on sheets).
//
// Contact is allowed, within layout.Tolerance and layout.AreaTolerance. The
// faults are sorted and joined; each names its pieces.
func Layout(p layout.Problem, l layout.Layout) error {
	if err := p.Check(); err != nil {
		return err
	}
	v := verifier{problem: p, reach: float64(layout.Tolerance * p.Height())}
	v.pieces = v.place(l.Placements)
	v.count(l.Placements)
	v.groups()
	v.within(l)
	v.apart()
	slices.Sort(v.faults)
	if len(v.faults) == 0 {
		return nil
	}
	return errors.New(strings.Join(slices.Compact(v.faults), "\n"))
}

// place makes the shapes of all placements that make sense, applying rules
// 3 to 5 on the way.
func (v *verifier) place(placements []layout.Placement) []laid {
	var pieces []laid
	for i, at := range placements {
		if at.Item < 0 || at.Item >= len(v.problem.Items) {
			v.fault("placement %d is of item %d, which is not asked for", i+1, at.Item+1)
			continue
		}
		item := v.problem.Items[at.Item]
		if at.Turn < 0 || at.Turn >= len(item.Turns) {
			v.fault("%s lies in turn %d; it has %d", v.name(at), at.Turn+1, len(item.Turns))
			continue
		}
		if at.Sheet < 0 || at.Sheet >= max(1, len(v.problem.Sheets)) {
			v.fault("%s lies on sheet %d; there are %d", v.name(at), at.Sheet+1, max(1, len(v.problem.Sheets)))
			continue
		}
		if !finite(at.X) || !finite(at.Y) || !finite(at.Tilt) {
			v.fault("%s has no place: its position is not a number", v.name(at))
			continue
		}
		if math.Abs(at.Tilt) > item.Tilt*(1+1e-9) {
			v.fault("%s is tilted by %.4g degrees; %.4g are allowed", v.name(at), math.Abs(at.Tilt), item.Tilt)
		}
		piece := laid{at, layout.NewRegion(placed(item, at))}
		v.pinned(piece, item.Turns[at.Turn].Pin)
		v.onLattice(piece, item)
		pieces = append(pieces, piece)
	}
	return pieces
}

// pinned tests what must lie on an edge, and what must keep clear of it.
func (v *verifier) pinned(piece laid, pin layout.Pin) {
	high := v.problem.Width
	if len(v.problem.Sheets) > 0 {
		high = v.problem.Sheets[piece.Sheet].Bound().Max[1]
	}
	aboveLow, belowHigh := piece.Bound().Min[1], high-piece.Bound().Max[1]
	switch {
	case pin == layout.PinLow && math.Abs(aboveLow) > v.reach:
		v.fault("%s must lie on its edge and is %.4g away from it", v.name(piece.Placement), math.Abs(aboveLow))
	case pin == layout.PinHigh && math.Abs(belowHigh) > v.reach:
		v.fault("%s must lie on its edge and is %.4g away from it", v.name(piece.Placement), math.Abs(belowHigh))
	case pin == layout.PinNone && (v.near(aboveLow, v.problem.ClearLow) || v.near(belowHigh, v.problem.ClearHigh)):
		v.fault("%s lies nearer to an edge than it must keep clear of it", v.name(piece.Placement))
	}
}

func (v *verifier) near(off, clear float64) bool { return clear > 0 && off < clear-v.reach }

func (v *verifier) onLattice(piece laid, item layout.Item) {
	turn := item.Turns[piece.Turn]
	for _, line := range []struct {
		axis               string
		at, offset, period float64
	}{{"along", piece.X, turn.OffsetX, item.PeriodX}, {"across", piece.Y, turn.OffsetY, item.PeriodY}} {
		if line.period == 0 {
			continue
		}
		if off := math.Abs(math.Remainder(line.at-line.offset, line.period)); off > v.reach {
			v.fault("%s is %.4g off the repeat %s the cloth", v.name(piece.Placement), off, line.axis)
		}
	}
}

// count applies rule 2.
func (v *verifier) count(placements []layout.Placement) {
	type copyOf struct{ item, copy int }
	seen := map[copyOf]int{}
	for _, at := range placements {
		seen[copyOf{at.Item, at.Copy}]++
	}
	for i, item := range v.problem.Items {
		for c := range item.Copies {
			times := seen[copyOf{i, c}]
			delete(seen, copyOf{i, c})
			switch {
			case times == 0:
				v.fault("%s is not placed", v.name(layout.Placement{Item: i, Copy: c}))
			case times > 1:
				v.fault("%s is placed %d times", v.name(layout.Placement{Item: i, Copy: c}), times)
			}
		}
	}
	for extra := range seen {
		if extra.item < 0 || extra.item >= len(v.problem.Items) {
			continue // place has said so
		}
		v.fault("%s is placed, but only %d copies are asked for",
			v.name(layout.Placement{Item: extra.item, Copy: extra.copy}), v.problem.Items[extra.item].Copies)
	}
}

// groups applies rule 6.
func (v *verifier) groups() {
	first := map[int]laid{}
	for _, piece := range v.pieces {
		group := v.problem.Items[piece.Item].Group
		if group == 0 {
			continue
		}
		leader, ok := first[group]
		if !ok {
			first[group] = piece
			continue
		}
		if v.direction(piece) != v.direction(leader) {
			v.fault("%s points the other way than %s, and they must point the same way",
				v.name(piece.Placement), v.name(leader.Placement))
		}
	}
}

func (v *verifier) direction(piece laid) int {
	return v.problem.Items[piece.Item].Turns[piece.Turn].Direction
}
