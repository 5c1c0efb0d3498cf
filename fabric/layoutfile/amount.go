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
	parts := purchase.AdditionsTo(plan)
	return &Amount{HandLaying: parts.HandLaying, Straighten: parts.Straighten, Shrinkage: parts.Shrinkage,
		Safety: parts.Safety, Rounding: parts.Rounding, Buy: plan.Buy}
}
