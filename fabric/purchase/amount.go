// Package purchase reckons how much cloth to buy: for a lay of a length, and for
// a length known to be enough in another width.
//
// Lengths are millimetres.
package purchase

import (
	"math"

	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// Need is the length of cloth for a lay that takes so much: with hand laying,
// straightening, shrinkage and safety.
func Need(c cloth.Cloth, taken float64) float64 {
	need := BeforeWetting(c.Shrinkage, taken+c.HandLaying.Of(taken)+c.Straighten)
	return need + c.Safety.Of(need)
}

// RoundUp rounds a length up to the step of the shop, and to the least that it
// cuts.
func RoundUp(c cloth.Cloth, need float64) float64 {
	need = math.Max(need, c.Minimum)
	if c.PurchaseStep == 0 {
		return need
	}
	return float64(measure.RoundUp(measure.Length(need), measure.Length(c.PurchaseStep)))
}

// BeforeWetting is a length of the cloth as it is bought, mm.
func BeforeWetting(s cloth.Shrinkage, length float64) float64 {
	if s.CutFirst {
		return length
	}
	return length / (1 - s.Warp)
}
