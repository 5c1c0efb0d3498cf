package purchase

import (
	"fmt"
	"math"
)

// proofTolerance, mm, of a converted length that is looked up again [source.OwnChoice].
const proofTolerance = 1e-3

// Proven holds a conversion, and what is bought of it in steps of a shop, against the
// chart itself and against what is true of every conversion. It uses nothing of what
// found them but the figures of the chart.
func (c Conversion) Proven(r ConversionRequest, buy, step float64) error {
	plain := c.Length - c.Added
	isKnown := r.To >= r.From && !r.OneWay // what is enough in a narrower cloth is enough
	switch {
	case !(plain > 0) || math.IsInf(c.Length, 0):
		return fmt.Errorf("%.1f mm come to %.1f mm", r.Length, c.Length)
	case !(c.Added >= 0 && c.Added <= chartNote+proofTolerance):
		return fmt.Errorf("the note adds %.1f mm", c.Added)
	case r.OneWay && c.Added < chartNote-proofTolerance && r.To <= r.From:
		return fmt.Errorf("of one-way cloth the note adds %.1f mm", c.Added)
	case c.Added > noise != (len(c.Why) > 0):
		return fmt.Errorf("%.1f mm are added for %d reasons", c.Added, len(c.Why))
	case isKnown && c.Length > r.Length+proofTolerance:
		return fmt.Errorf("%.1f mm are enough, and in a wider cloth it says %.1f mm", r.Length, c.Length)
	case r.To < r.From && c.Length < r.Length-proofTolerance:
		return fmt.Errorf("of a wider cloth %.1f mm are enough, and it says %.1f mm", r.Length, c.Length)
	}
	if low, high, ok := lookedUp(r); ok && c.Added <= noise && !(plain >= low-proofTolerance &&
		plain <= high+proofTolerance) {
		return fmt.Errorf("the chart has %.1f to %.1f mm, and it says %.1f mm", low, high, plain)
	}
	return provenPurchase(r, c.Length, buy, step, isKnown)
}

// provenPurchase holds what is bought against the length that is needed.
func provenPurchase(r ConversionRequest, length, buy, step float64, isKnown bool) error {
	switch {
	case isKnown && buy == r.Length:
		return nil
	case buy < length-proofTolerance || buy >= length+step-noise/2:
		return fmt.Errorf("of %.1f mm it buys %.1f mm, in steps of %.1f mm", length, buy, step)
	case math.Abs(math.Remainder(buy, step)) > proofTolerance:
		return fmt.Errorf("%.1f mm to buy are no whole number of steps of %.1f mm", buy, step)
	}
	return nil
}

// lookedUp are the lengths of the chart, mm, between which a known amount lies in the
// width to buy, where both widths stand at the head of a column and the amount within it.
func lookedUp(r ConversionRequest) (low, high float64, ok bool) {
	from, to := -1, -1
	for i, head := range chartColumns {
		if head.low <= r.From && r.From <= head.high {
			from = i
		}
		if head.low <= r.To && r.To <= head.high {
			to = i
		}
	}
	if from < 0 || to < 0 || from == to {
		return 0, 0, false
	}
	low, high = math.Inf(-1), math.Inf(1)
	for _, row := range chartEighths {
		known, other := float64(row[from])*eighth, float64(row[to])*eighth
		if known <= r.Length+proofTolerance {
			low = math.Max(low, other)
		}
		if known >= r.Length-proofTolerance {
			high = math.Min(high, other)
		}
	}
	return low, high, !math.IsInf(low, 0) && !math.IsInf(high, 0)
}
