package layout

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"
)

// Check reports everything that is wrong with the problem, or nil:
//
//  1. Width is positive and Length is not negative (without sheets).
//  2. Gap, ClearLow and ClearHigh are not negative.
//  3. Every sheet has a simple outline of positive area, and so has every
//     hole in it; the holes lie within the outline.
//  4. Every zone is a simple ring of positive area.
//  5. There is at least one item.
//  6. Every outline has three corners or more and encloses an area.
//  7. Every outline is simple: it neither crosses nor touches itself, and no
//     edge runs back along the one before it.
//  8. Copies is 1 or more.
//  9. There is at least one turn, and every pin is a known one.
//  10. Tilt, PeriodX and PeriodY are not negative.
//  11. Without sheets, every item has a turn in which it is no wider than the
//     strip.
//  12. Every number is finite.
//  13. A core is a ring as an outline is.
//
// The faults are joined in the order of the items; each names its item.
func (p Problem) Check() error {
	faults := p.checkPlace()
	if len(p.Items) == 0 {
		faults = append(faults, errors.New("there is nothing to lay: give at least one item"))
	}
	for i, item := range p.Items {
		for _, fault := range p.checkItem(item) {
			faults = append(faults, fmt.Errorf("%s: %w", p.ItemName(i), fault))
		}
	}
	return errors.Join(faults...)
}

// ItemName is the name of an item in messages.
func (p Problem) ItemName(i int) string {
	if p.Items[i].Name == "" {
		return fmt.Sprintf("item %d", i+1)
	}
	return p.Items[i].Name
}

// checkPlace applies rules 1 to 4.
func (p Problem) checkPlace() []error {
	var faults []error
	fault := func(format string, values ...any) { faults = append(faults, fmt.Errorf(format, values...)) }
	if len(p.Sheets) == 0 {
		if !(p.Width > 0) || math.IsInf(p.Width, 0) {
			fault("the width of the strip is %g; it must be positive", p.Width)
		}
		if !notNegative(p.Length) {
			fault("the length of the sheet is %g; it cannot be negative (0 leaves it open)", p.Length)
		}
	}
	if !notNegative(p.Gap) {
		fault("the gap between pieces is %g; it cannot be negative", p.Gap)
	}
	if !notNegative(p.ClearLow) || !notNegative(p.ClearHigh) {
		fault("what is kept clear of the edges is %g and %g; it cannot be negative", p.ClearLow, p.ClearHigh)
	}
	for i, sheet := range p.Sheets {
		if err := checkSheet(sheet); err != nil {
			fault("sheet %d: %w", i+1, err)
		}
	}
	for i, zone := range p.Zones {
		if err := checkRing(zone); err != nil {
			fault("zone %d that may not be used: %w", i+1, err)
		}
	}
	return faults
}

func checkSheet(sheet orb.Polygon) error {
	if len(sheet) == 0 {
		return errors.New("it has no outline")
	}
	if err := checkRing(sheet[0]); err != nil {
		return err
	}
	outer := NewRegion(sheet[0])
	for i, hole := range sheet[1:] {
		if err := checkRing(hole); err != nil {
			return fmt.Errorf("hole %d: %w", i+1, err)
		}
		reach := spread(outer.box) * Tolerance
		if _, _, out := NewRegion(hole).Strays(outer, reach, false); out {
			return fmt.Errorf("hole %d reaches beyond the outline of the sheet", i+1)
		}
	}
	return nil
}

// checkRing applies rules 6, 7 and 12 to one ring.
func checkRing(ring orb.Ring) error {
	for i, q := range ring {
		if !finite(q[0]) || !finite(q[1]) {
			return fmt.Errorf("corner %d of its outline is not a number", i+1)
		}
	}
	corners := Corners(ring)
	if len(corners) < 3 {
		return fmt.Errorf("its outline has %d different corners; it needs 3 or more", len(corners))
	}
	if at, bad := selfContact(corners); bad {
		return fmt.Errorf(
			"its outline crosses or touches itself near (%.4g, %.4g); draw it as one simple loop",
			at[0],
			at[1],
		)
	}
	if Area(corners) == 0 {
		return errors.New("its outline encloses no area")
	}
	return nil
}

// checkItem applies rules 6 to 12.
func (p Problem) checkItem(item Item) []error {
	var faults []error
	fault := func(format string, values ...any) { faults = append(faults, fmt.Errorf(format, values...)) }
	ringFault := checkRing(item.Outline)
	if ringFault != nil {
		faults = append(faults, ringFault)
	}
	if len(item.Core) > 0 {
		if err := checkRing(item.Core); err != nil {
			fault("its core: %w", err)
		}
	}
	if item.Copies < 1 {
		fault("%d copies are asked; lay 1 or more, or leave the item out", item.Copies)
	}
	if len(item.Turns) == 0 {
		fault("no turn is allowed; allow at least one")
	}
	for i, turn := range item.Turns {
		if !finite(turn.Degrees) || !finite(turn.OffsetX) || !finite(turn.OffsetY) {
			fault("turn %d holds something that is not a number", i+1)
		}
		if turn.Pin < PinNone || turn.Pin > PinHigh {
			fault("turn %d is pinned to an unknown edge (%d)", i+1, turn.Pin)
		}
	}
	if !notNegative(item.Tilt) {
		fault("the tilt is %g degrees; it cannot be negative", item.Tilt)
	}
	if !notNegative(item.PeriodX) || !notNegative(item.PeriodY) {
		fault("the repeat is %g by %g; it cannot be negative (0 leaves it free)", item.PeriodX, item.PeriodY)
	}
	if len(faults) == 0 && len(p.Sheets) == 0 && p.Width > 0 {
		if over := item.LeastExtent(1) - p.Width; over > Tolerance*p.Width {
			fault(
				"it is %.4g too wide for the strip in every turn that is allowed: at least %.6g across, and the strip has %.6g",
				over,
				p.Width+over,
				p.Width,
			)
		}
	}
	return faults
}

func finite(v float64) bool      { return !math.IsNaN(v) && !math.IsInf(v, 0) }
func notNegative(v float64) bool { return v >= 0 && finite(v) }
