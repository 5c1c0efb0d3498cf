package plan

import (
	"fmt"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/fabric/rules"
	"ellwand/nest/verify"
)

// When a step less is looked for [source.OwnChoice].
const (
	// nearIncrement is how little, mm of lay, may lie between a layout and a whole
	// step less to buy, so that it is worth looking for that bit.
	nearIncrement = 0.5
	// incrementShare of the budget is for looking.
	incrementShare = 0.25
)

// aboveIncrement gives the length that a bed of that length would have to come down
// to for one step less to be bought. It reports false when that is not near.
func aboveIncrement(c cloth.Cloth, b bed.Bed, length float64) (target float64, near bool) {
	if c.PurchaseStep == 0 || b.Kind == lay.CutAcross && c.Repeat.Along > 0 {
		return 0, false
	}
	lower := purchase.RoundUp(c, purchase.Need(c, b.Taken(c, length))) - c.PurchaseStep
	taken := c.Safety.Within(lower)
	taken = c.HandLaying.Within(taken/purchase.BeforeWetting(c.Shrinkage, 1) - c.Straighten)
	target = bed.LengthWithin(c, b.Kind, taken)
	return target, lower >= c.Minimum && target > 0 && target < length && length-target <= nearIncrement
}

// belowIncrement looks a little longer, for a layout of just the length that lets
// one step less be bought, where a hair more was found.
func (t *Planner) belowIncrement(found *SolvedBed, share float64) error {
	target, near := aboveIncrement(t.Cloth, found.Bed, found.Layout.Length)
	if !near || target < found.Bound*(1-ProofMargin) || t.Ctx.Err() != nil {
		return nil
	}
	zones, err := rules.Zones(found.Bed, t.Cloth, target)
	if err != nil {
		return err
	}
	sheet := found.Problem
	sheet.Length, sheet.Zones = target, zones
	search := scaled(t.Budget(share), incrementShare)
	search.Start = &found.Layout
	result, err := t.Run(sheet, search)
	if err != nil {
		return fmt.Errorf("%w: %w", ErrInternal, err)
	}
	laid := result.Layout
	laid.Length = LengthOf(found.Problem, laid)
	if result.Fits && laid.Length < found.Layout.Length && verify.Layout(found.Problem, laid) == nil {
		found.Layout = laid
	}
	return nil
}
