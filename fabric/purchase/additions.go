package purchase

import "ellwand/fabric/lay"

// Additions are what is added to the length that a lay takes, up to the length to buy, mm.
type Additions struct {
	HandLaying, Straighten, Shrinkage, Safety float64
	// Rounding is up to the step of the shop, and to the least that it cuts.
	Rounding float64
}

// AdditionsTo the length that is bought for a plan.
func AdditionsTo(plan lay.Plan) Additions {
	c := plan.Cloth
	out := Additions{HandLaying: c.HandLaying.Of(plan.Taken), Straighten: c.Straighten}
	dry := plan.Taken + out.HandLaying + out.Straighten
	wetted := BeforeWetting(c.Shrinkage, dry)
	out.Shrinkage, out.Safety, out.Rounding = wetted-dry, plan.Need-wetted, plan.Buy-plan.Need
	return out
}
