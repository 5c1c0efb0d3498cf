package quote

import (
	"fmt"
	"math"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
)

// Proven has the range of an amount of a cloth reckoned again from its doubts, by code
// that shares nothing with what made it. The error is of plan.ErrInternal.
func (r Range) Proven(c cloth.Cloth, a Amount) error {
	if !(r.Low >= 0 && r.Low <= a.Buy && a.Buy <= r.High) {
		return wrong(c, fmt.Errorf("%.1f mm to buy do not lie between %.1f mm and %.1f mm", a.Buy, r.Low, r.High))
	}
	var less, more float64 // squares
	for _, d := range r.Doubts {
		if !(d.Less >= 0 && d.More >= 0) {
			return wrong(c, fmt.Errorf("a doubt of %s of %.3f and %.3f", d.Of, d.Less, d.More))
		}
		if d.Of == Searching && a.Taken*(1-d.Less) < a.Bound-figureTolerance {
			return wrong(c, fmt.Errorf("a search that finds less than the bound of %.1f mm", a.Bound))
		}
		less, more = less+d.Less*d.Less, more+d.More*d.More
	}
	c.Safety = cloth.Addition{}
	low, high := a.Taken*(1-math.Min(1, math.Sqrt(less))), a.Taken*(1+math.Sqrt(more))
	needLow, needHigh := neededAgain(c, low), neededAgain(c, high)
	// The amount itself is an end that would lie on the other side of it.
	if r.Low != a.Buy || math.Max(needLow, c.Minimum) < a.Buy-c.PurchaseStep-figureTolerance {
		if err := check.Bought(c, low, needLow, r.Low); err != nil {
			return wrong(c, fmt.Errorf("the lower end of its range: %w", err))
		}
	}
	if r.High != a.Buy || needHigh > a.Buy+figureTolerance {
		if err := check.Bought(c, high, needHigh, r.High); err != nil {
			return wrong(c, fmt.Errorf("the upper end of its range: %w", err))
		}
	}
	return nil
}

// neededAgain is the length of a cloth that a lay needs which takes so much, mm, without
// the maker's safety.
func neededAgain(c cloth.Cloth, taken float64) float64 {
	keeps := 1.0
	if !c.Shrinkage.CutFirst {
		keeps -= c.Shrinkage.Warp
	}
	return (taken + taken*c.HandLaying.Share + c.HandLaying.Length + c.Straighten) / keeps
}
