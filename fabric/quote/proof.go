package quote

import (
	"errors"
	"fmt"
	"math"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
)

// figureTolerance, mm, of a length that is reckoned twice [source.OwnChoice].
const figureTolerance = 1e-3

// Proven has an amount of a cloth reckoned again, by code that shares nothing with
// what made it, and has what is said of it read again. The error is of
// plan.ErrInternal: an amount that is wrong is not shown.
func (a Amount) Proven(c cloth.Cloth, units Units) error {
	err := errors.Join(a.reckonedAgain(c), a.componentsReckonedAgain(c))
	if err == nil {
		err = restsOnReadAgain(a.RestsOn(units), a, units)
	}
	return wrong(c, err)
}

// wrong names the cloth of a figure that is wrong; nil where none is.
func wrong(c cloth.Cloth, err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("%w: an amount of %s is wrong and is not shown: %w", plan.ErrInternal, c, err)
}

// reckonedAgain proves what is bought, that its parts come to it, and what it rests on.
func (a Amount) reckonedAgain(c cloth.Cloth) error {
	sum := 0.0
	for _, part := range a.Components() {
		sum += part.Length
	}
	err := check.Bought(c, a.Taken, a.Need(), a.Buy)
	switch {
	case err != nil:
		return err
	case math.Abs(sum-a.Buy) > figureTolerance:
		return fmt.Errorf("the parts of %.1f mm to buy come to %.1f mm", a.Buy, sum)
	case !(a.Bound >= 0 && a.Bound <= a.Taken+figureTolerance):
		return fmt.Errorf("%.1f mm are taken, and the bound is %.1f mm", a.Taken, a.Bound)
	case !(a.Density >= 0 && a.Density <= 1+1e-9):
		return fmt.Errorf("an efficiency of %.3f", a.Density)
	}
	return nil
}

// partsReckonedAgain proves each part by itself: together they could be right where
// one stands for another.
func (a Amount) componentsReckonedAgain(c cloth.Cloth) error {
	keeps := 1.0 // of a length that is wetted
	if !c.Shrinkage.CutFirst {
		keeps -= c.Shrinkage.Warp
	}
	byHand := float64(a.Taken*c.HandLaying.Share) + c.HandLaying.Length
	ends := a.Taken + byHand + c.Straighten
	wetted := ends / keeps
	need := wetted + float64(wetted*c.Safety.Share) + c.Safety.Length
	for _, part := range []struct {
		name       string
		says, want float64
	}{
		{"hand laying", a.HandLaying, byHand}, {"straightening", a.Straighten, c.Straighten}, {"shrinkage", a.Shrinkage,
			wetted - ends}, {"safety", a.Safety, need - wetted},
		{"what it never goes below", a.Never, (a.Bound + c.Straighten) / keeps},
	} {
		if math.Abs(part.says-part.want) > figureTolerance {
			return fmt.Errorf("%s is %.1f mm, and it says %.1f mm", part.name, part.want, part.says)
		}
	}
	if !(a.Rounding > -figureTolerance && a.Rounding < c.PurchaseStep+figureTolerance) {
		return fmt.Errorf("%.1f mm of rounding, in steps of %.1f mm", a.Rounding, c.PurchaseStep)
	}
	if !(a.Minimum > -figureTolerance) || a.Minimum > figureTolerance && c.Minimum <= need {
		return fmt.Errorf("%.1f mm up to the shop's minimum of %.1f mm", a.Minimum, c.Minimum)
	}
	return nil
}

// Proven has the amounts and the cost of all options reckoned again.
func Proven(options []Option, units Units) error {
	var faults []error
	for _, o := range options {
		if o.Refused == "" {
			c := o.Offer.Cloth
			faults = append(faults, o.Amount.Proven(c, units), wrong(c, o.costReckonedAgain()))
		}
	}
	return errors.Join(faults...)
}

// costReckonedAgain proves what is bought, paid and left over.
func (o Option) costReckonedAgain() error {
	bought, cost, left := o.Amount.Buy, Money(0), o.Amount.Buy-o.Amount.Need()
	switch {
	case o.FromRemnant && o.Offer.Remnant == nil || !o.FromRemnant && o.Offer.Price == nil:
		return errors.New("it has no price")
	case o.FromRemnant:
		bought, cost = o.Offer.Remnant.Length, o.Offer.Remnant.Price
		left = bought - o.Amount.Need() + o.Amount.Safety - math.Max(0, o.Offer.Remnant.Straighten-o.Offer.Cloth.Straighten)
	default:
		if cost = o.Cost; !isNearest(cost, o.Offer.Price.Money, bought, float64(o.Offer.Price.micrometres())/1000) {
			return fmt.Errorf("%.1f mm at %d cost %d, it says", bought, o.Offer.Price.Money, o.Cost)
		}
	}
	if o.Cost != cost || math.Abs(o.Bought-bought) > figureTolerance || math.Abs(o.LeftOver-left) > figureTolerance {
		return fmt.Errorf("%.1f mm are bought for %d and %.1f mm left over; it says %.1f mm, %d and %.1f mm",
			bought, cost, left, o.Bought, o.Cost, o.LeftOver)
	}
	return nil
}

// isNearest reports whether a sum is the price of so much, each costing that, rounded
// to the minor unit. Lengths of mm are counted in thousandths.
func isNearest(sum, each Money, much, per float64) bool {
	exact, thousandth := float64(each)*much/per, float64(each)*1e-3/per
	return math.Abs(float64(sum)-exact) <= 0.5+1e-3+0.5*thousandth+1e-12*math.Abs(exact)
}
