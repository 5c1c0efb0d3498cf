package check

import (
	"fmt"
	"math"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// figureTolerance, mm, of a length that is reckoned twice, and as a share of any other
// figure [source.OwnChoice].
const figureTolerance = 1e-5

var _ = register(rule{whole: checkAmounts})

// checkAmounts: what is needed and what is bought follow from the length taken and the
// cloth; of cloth that is there already, all of it is there and none is bought.
func checkAmounts(p lay.Plan, _ []openedPiece, _ []pieces.Piece) error {
	if p.There == 0 {
		return Bought(p.Cloth, p.Taken, p.Need, p.Buy)
	}
	need := math.Min(needed(p.Cloth, p.Taken), p.There)
	dry := p.Taken
	if !p.Cloth.Shrinkage.CutFirst {
		dry /= 1 - p.Cloth.Shrinkage.Warp
	}
	if !same(p.Buy, p.There) || !same(p.Need, need) || dry > p.There+matchTolerance {
		return fmt.Errorf("of %.1f mm of cloth that is there the lay takes %.1f mm, and says %.1f of %.1f", p.There, dry,
			p.Need, p.Buy)
	}
	return nil
}

// Bought proves what is needed and what is bought of a cloth for a lay that takes so
// much of it, mm: a hand lays less closely, the ends are straightened, what is wetted first is longer before,
// the maker's safety comes on top, and the shop cuts whole steps, and no less than its
// minimum.
func Bought(c cloth.Cloth, taken, need, buy float64) error {
	want := needed(c, taken)
	if !same(need, want) {
		return fmt.Errorf("the lay takes %.1f mm and needs %.1f mm, and it says %.1f mm", taken, want, need)
	}
	least := math.Max(want, c.Minimum)
	switch {
	case !(buy >= least-figureTolerance):
		return fmt.Errorf("%.1f mm to buy are less than the %.1f mm needed", buy, least)
	case c.PurchaseStep == 0 && !same(buy, least):
		return fmt.Errorf("%.1f mm to buy are more than the %.1f mm needed", buy, least)
	case c.PurchaseStep > 0 && buy-c.PurchaseStep >= least:
		return fmt.Errorf("%.1f mm to buy are more than a step above the %.1f mm needed", buy, least)
	case c.PurchaseStep > 0 && math.Abs(math.Remainder(buy, c.PurchaseStep)) > figureTolerance:
		return fmt.Errorf("%.1f mm to buy are no whole number of steps of %.1f mm", buy, c.PurchaseStep)
	}
	return nil
}

func needed(c cloth.Cloth, taken float64) float64 {
	need := taken*(1+c.HandLaying.Share) + c.HandLaying.Length + c.Straighten
	if !c.Shrinkage.CutFirst {
		need /= 1 - c.Shrinkage.Warp
	}
	return need*(1+c.Safety.Share) + c.Safety.Length
}

// same figure, to what arithmetic loses.
func same(a, b float64) bool {
	return math.Abs(a-b) <= figureTolerance*math.Max(1, 1e-6*math.Abs(b))
}
