package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
)

// placesIn a plan are those of its match points on the open cloth. A layout that came in a
// file does not say them, and need not have those that a search would take.
func (t *Planner) placesIn(plan lay.Plan, b bed.Bed, templates []rules.Template) lay.Places {
	if t.Cloth.Repeat.IsPlain() || len(plan.Places[0])+len(plan.Places[1]) > 0 {
		return plan.Places
	}
	problem, err := rules.PlainProblem(t.Cloth, b, templates)
	if err != nil {
		return plan.Places
	}
	used, sources := make([]int, len(templates)), lay.SourcesIn(t.Asked)
	var laid layout.Layout
	for _, l := range plan.Pieces {
		l.X, l.Y = l.X-b.At[0], l.Y-b.At[1]
		at, ok := relaidPiece(l, sources.Of(l), templates, problem, used)
		if !ok {
			continue
		}
		used[at.Item]++
		laid.Placements = append(laid.Placements, at)
	}
	return rules.Match(t.Cloth, b, templates, t.joins(), lay.Places{}).Laid(problem, laid)
}
