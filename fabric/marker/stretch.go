package marker

import (
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
)

// stretch is a length of cloth with its outer edges across.
type stretch struct{ from, to, low, high float64 }

// stretches of the lay: one, unless the first length is folded and the next
// open.
func stretches(plan lay.Plan) []stretch {
	low, high := Edges(plan)
	if plan.Lay != lay.InStretches || len(plan.Beds) < 2 {
		return []stretch{{0, purchase.OnTable(plan), low, high}}
	}
	middle := plan.Beds[1].X
	return []stretch{{0, middle, 0, (high - low) / 2}, {middle, purchase.OnTable(plan), low, high}}
}
