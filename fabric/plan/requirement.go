package plan

import (
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/geometry"
)

// Requirement is how much of a cloth a set of pieces needs.
type Requirement struct {
	Cloth cloth.Cloth
	// Lays that were tried, in the order of the constants.
	Lays []lay.Plan
	// Chosen is an index into Lays: the lay with the least to buy; of equals
	// the one with the least to chalk.
	Chosen int
	// Length of cloth that the chosen lay takes, and Buy, mm.
	Length, Buy float64
	// Work that the searches did.
	Work Work
	// Found are the possible lays as they were found, before those of two parts that
	// gain nothing were given up.
	Found []lay.Plan
	// FoundPlain is the lay without the repeat, by which the cost of matching is
	// measured; none for plain cloth.
	FoundPlain []lay.Plan
	// Improved says that a kept plan was shorter than what the search found.
	Improved bool
	// Matching says what matching the repeat costs; nil for plain cloth.
	Matching *Matching
}

// SameLength, mm: shorter differences do not matter to anyone with scissors
// [source.OwnChoice].
const SameLength = 1.0

// choose picks the lay with the least to buy; of equals the one with the least to
// chalk.
func (r Requirement) choose() (Requirement, error) {
	least := math.Inf(1)
	for _, plan := range r.Lays {
		if plan.Possible() {
			least = min(least, plan.Buy)
		}
	}
	for i, plan := range r.Lays {
		if plan.Possible() && plan.Buy <= least+SameLength && (r.Chosen < 0 || isLessWorkThan(plan, r.Lays[r.Chosen])) {
			r.Chosen, r.Length, r.Buy = i, plan.Taken, plan.Buy
		}
	}
	if r.Chosen < 0 {
		return Requirement{}, lay.Refusal{Cloth: r.Cloth, Plans: r.Lays}
	}
	return r, nil
}

// isLessWorkThan another plan: less to chalk, or as much in fewer cuts.
func isLessWorkThan(p lay.Plan, other lay.Plan) bool {
	if less := chalkLine(other) - chalkLine(p); math.Abs(less) > SameLength {
		return less > 0
	}
	return p.Cuts < other.Cuts
}

// chalkLine is the length of all that is chalked, mm: the outlines, but for what lies on
// a fold, and the cuts across the cloth that the lay itself takes.
func chalkLine(p lay.Plan) float64 {
	sum := float64(float64(p.Cuts-len(p.Pieces)) * bed.UsableWidth(lay.Open, p.Cloth))
	for _, l := range p.Pieces {
		for i := 1; i < len(l.Outline); i++ {
			if a, b := l.Outline[i-1], l.Outline[i]; !l.OnFold || !isFold(p.BedOf(l), a[1]) || !isFold(p.BedOf(l), b[1]) {
				sum += geometry.Distance(a, b)
			}
		}
	}
	return sum
}

// isFold reports whether a place across is a fold of a part.
func isFold(part lay.Bed, y float64) bool {
	return part.FoldLow && math.Abs(y-part.Y) <= pinTolerance ||
		part.FoldHigh && math.Abs(y-part.Y-part.Width) <= pinTolerance
}

// compare gives up a lay of two parts that gains nothing against the cloth
// folded or open throughout, which are such a lay with one part empty: by what
// must be bought, and of equals by the work. So it never needs more than they.
func (r Requirement) compare() {
	for i, plan := range r.Lays {
		if plan.Lay != lay.SelvedgeIn && plan.Lay != lay.InStretches || !plan.Possible() {
			continue
		}
		better := -1
		for k, other := range r.Lays {
			isOne := other.Lay == lay.Open || other.Lay == lay.FoldedAlong
			if isOne && other.Possible() && isBetterThan(other, plan) && (better < 0 || isBetterThan(other, r.Lays[better])) {
				better = k
			}
		}
		if better < 0 {
			continue
		}
		one := r.Lays[better]
		r.Lays[i] = lay.Plan{
			Cloth: plan.Cloth, Lay: plan.Lay, Plies: plan.Plies, Width: plan.Width, Throughout: &one,
			Why: []lay.Reason{{Of: lay.NoGain, Throughout: one.Lay, Takes: gain(one, plan)}},
		}
	}
}

// isBetterThan another plan: less to buy, or as much with less work.
func isBetterThan(p lay.Plan, other lay.Plan) bool {
	if math.Abs(p.Buy-other.Buy) > SameLength {
		return p.Buy < other.Buy
	}
	return isLessWorkThan(p, other)
}

// gain is how much less one plan takes than another, mm; 0 when it is no more than they
// differ by without mattering.
func gain(one, other lay.Plan) float64 {
	if less := other.Taken - one.Taken; less > SameLength {
		return less
	}
	return 0
}

// Matching is what matching the repeat costs in cloth, mm.
type Matching struct {
	// Plain is the length that the same lay takes on plain cloth, Matched that
	// with every match kept.
	Plain, Matched float64
	// Repeats is the cost in repeats along the warp; 0 when there are none.
	Repeats float64
	// RuleOfThumb is the length by hand reckoning: the plain amount and one
	// whole repeat more [source.CommonPractice]; a repeat along the warp where there
	// is one, otherwise one across.
	RuleOfThumb float64
}

// Extra is how much more cloth the matched lay takes, mm.
func (m Matching) Extra() float64 { return m.Matched - m.Plain }
