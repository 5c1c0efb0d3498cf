package quote

import (
	"fmt"
	"math"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
)

// proven has an amount reckoned again, by code that shares nothing with what made it.
func (a Amount) proven(c cloth.Cloth) error {
	sum := a.Taken
	for _, part := range a.additions() {
		sum += part.length
	}
	err := check.Bought(c, a.Taken, a.Need(), a.Buy)
	switch {
	case err != nil:
	case math.Abs(sum-a.Buy) > 1e-3:
		err = fmt.Errorf("the parts of %.1f mm to buy come to %.1f mm", a.Buy, sum)
	case !(a.Bound >= 0 && a.Bound <= a.Taken+1e-3):
		err = fmt.Errorf("%.1f mm are taken, and the bound is %.1f mm", a.Taken, a.Bound)
	case !(a.Density >= 0 && a.Density <= 1+1e-9):
		err = fmt.Errorf("an efficiency of %.3f", a.Density)
	}
	if err != nil {
		return fmt.Errorf("%w: an amount of %s is wrong and is not shown: %w", plan.ErrInternal, c, err)
	}
	return nil
}
