package main

import (
	"fmt"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
	"ellwand/fabric/quote"
	"ellwand/pieces/measure"
)

// Shops that count in yards cut by the eighth, shops that count in metres by
// 10 cm (common practice).
const (
	yard       = 914.4
	yardStep   = yard / 8
	metricStep = 100
)

// purchase gives a length to buy in both systems, mm: in that of the shop's
// step it is the plan's own; in the other it is rounded up to that one's step.
func purchase(cloth fabric.Cloth, plan fabric.LayPlan) (metric, yards float64) {
	return quote.InBothSystems(cloth, plan.Need, plan.Buy)
}

// buyText gives the length to buy, the shop's way first: "1.9 m (2 1/8 yd)".
func buyText(work *job.Work, cloth fabric.Cloth, plan fabric.LayPlan) string {
	metric, yards := purchase(cloth, plan)
	metres, inYd := measure.Length(metric).Format(measure.Metre), measure.Length(yards).Format(measure.Yard)
	if quote.SoldInYards(cloth) {
		return fmt.Sprintf("%s (%s)", inYd, metres)
	}
	return fmt.Sprintf("%s (%s)", metres, inYd)
}

// amountOf says what the length to buy of a requirement rests on.
func amountOf(need fabric.Requirement) quote.Amount {
	return quote.AmountOf(quote.Offer{Cloth: need.Cloth}, quote.FoundIn(need))
}
