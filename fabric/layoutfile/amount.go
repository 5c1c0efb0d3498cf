package layoutfile

import (
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
)

// amountOf what is bought for a plan; nil of cloth that is there already.
func amountOf(plan lay.Plan) *Amount {
	if plan.There > 0 {
		return nil
	}
	c := plan.Cloth
	out := Amount{HandLaying: c.HandLaying.Of(plan.Taken), Straighten: c.Straighten, Buy: plan.Buy}
	dry := plan.Taken + out.HandLaying + out.Straighten
	wetted := purchase.BeforeWetting(c.Shrinkage, dry)
	out.Shrinkage, out.Safety, out.Rounding = wetted-dry, plan.Need-wetted, plan.Buy-plan.Need
	return &out
}
