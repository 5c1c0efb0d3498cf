package fabric

import (
	"fmt"

	"ellwand/fabric/cloth"
	"ellwand/fabric/purchase"
	"ellwand/nest"
	"ellwand/nest/verify"
)

// When a step less is looked for [source.OwnChoice].
const (
	// nearStep is how little, mm of lay, may lie between a layout and a whole
	// step less to buy, so that it is worth looking for that bit.
	nearStep = 0.5
	// stepShare of the budget is for looking.
	stepShare = 0.25
)

// aboveStep gives the length that a bed of that length would have to come down
// to for one step less to be bought. It reports false when that is not near.
func aboveStep(c cloth.Cloth, b bed, length float64) (target float64, near bool) {
	if c.Step == 0 || b.lay == CutAcross && c.Repeat.Along > 0 {
		return 0, false
	}
	lower := purchase.RoundUp(c, purchase.Need(c, b.taken(c, length))) - c.Step
	taken := (lower - c.Safety.Length) / (1 + c.Safety.Share)
	taken = taken/purchase.BeforeWetting(c.Shrinkage, 1) - c.Straighten
	target = taken / acrossPlies(b.lay)
	return target, lower >= c.Minimum && target > 0 && target < length && length-target <= nearStep
}

// belowStep looks a little longer, for a layout of just the length that lets
// one step less be bought, where a hair more was found.
func (t *table) belowStep(found *lain, share float64) error {
	target, near := aboveStep(t.cloth, found.bed, found.layout.Length)
	if !near || target < found.bound*(1-proofMargin) || t.ctx.Err() != nil {
		return nil
	}
	zones, err := found.bed.zones(t.cloth, target)
	if err != nil {
		return err
	}
	sheet := found.problem
	sheet.Length, sheet.Zones = target, zones
	search := scaled(t.budget(share), stepShare)
	search.Start = &found.layout
	result, err := nest.Solve(t.ctx, sheet, search)
	if err != nil {
		return fmt.Errorf("%w: %w", ErrInternal, err)
	}
	laid := result.Layout
	laid.Length = lengthOf(found.problem, laid)
	if result.Fits && laid.Length < found.layout.Length && verify.Layout(found.problem, laid) == nil {
		found.layout = laid
	}
	return nil
}
