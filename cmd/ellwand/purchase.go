package main

import (
	"fmt"
	"math"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
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
	need := measure.Length(plan.Need)
	if inYards(cloth) {
		return float64(measure.RoundUp(need, metricStep)), plan.Buy
	}
	return plan.Buy, float64(measure.RoundUp(need, yardStep))
}

// inYards reports whether the shop's step is a number of eighths of a yard.
func inYards(cloth fabric.Cloth) bool {
	steps := cloth.Step / yardStep
	return cloth.Step > 0 && math.Abs(steps-math.Round(steps)) < 1e-6
}

// buyText gives the length to buy, the shop's way first: "1.9 m (2 1/8 yd)".
func buyText(work *job.Work, cloth fabric.Cloth, plan fabric.LayPlan) string {
	metric, yards := purchase(cloth, plan)
	metres, inYd := measure.Length(metric).Format(measure.Metre), measure.Length(yards).Format(measure.Yard)
	if inYards(cloth) {
		return fmt.Sprintf("%s (%s)", inYd, metres)
	}
	return fmt.Sprintf("%s (%s)", metres, inYd)
}
