package purchase

import (
	"ellwand/fabric/lay"
)

// OnTable is the length of the cloth as it lies on the table, as bought, mm:
// half of it where it is folded or cut across.
func OnTable(p lay.Plan) float64 {
	if !p.Lay.IsAcross() {
		return laidLength(p)
	}
	return max(p.Length, laidLength(p)/2)
}

// laidLength is the length bought, as it is when it is laid.
func laidLength(p lay.Plan) float64 {
	if p.Cloth.Shrinkage.CutFirst {
		return p.Buy
	}
	return p.Buy * (1 - p.Cloth.Shrinkage.Warp)
}
