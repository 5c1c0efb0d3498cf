package purchase

import "ellwand/fabric/lay"

// Parts are what is added to the length that a lay takes, up to the length to buy, mm.
type Parts struct {
	HandLaying, Straighten, Shrinkage, Safety float64
	// Rounding is up to the step of the shop, and to the least that it cuts.
	Rounding float64
}

// PartsOf the length that is bought for a plan.
func PartsOf(plan lay.Plan) Parts {
	c := plan.Cloth
	out := Parts{HandLaying: c.HandLaying.Of(plan.Taken), Straighten: c.Straighten}
	dry := plan.Taken + out.HandLaying + out.Straighten
	wetted := BeforeWetting(c.Shrinkage, dry)
	out.Shrinkage, out.Safety, out.Rounding = wetted-dry, plan.Need-wetted, plan.Buy-plan.Need
	return out
}
