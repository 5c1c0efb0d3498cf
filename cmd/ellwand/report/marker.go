package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
)

// Plans is what marker prints as JSON.
type Plans struct {
	Job   string `json:"job"`
	Plans []Plan `json:"plans"`
}

// Plan is the plan of one cloth.
type Plan struct {
	Cloth string `json:"cloth"`
	Lay   string `json:"lay"`
	// InsteadOf is the lay that was asked for, where this one takes its place.
	InsteadOf string  `json:"instead_of,omitempty"`
	LengthMM  float64 `json:"length_mm"`
	BuyMM     float64 `json:"buy_mm"`
	Pieces    int     `json:"pieces"`
	File      string  `json:"file"`
	Ended
	// FoundEarlier says that an earlier search, with another seed or effort, found it.
	FoundEarlier bool `json:"found_earlier,omitempty"`
}

// PlansOf a job: of each cloth its plan, with the file that it goes to.
func PlansOf(work *job.Work, plans []app.Planned, files []string) Plans {
	out := Plans{Job: work.Name}
	for i, plan := range plans {
		one := Plan{
			Cloth: plan.Cloth.Name, Lay: plan.Lay.String(), LengthMM: tidy(plan.Taken),
			BuyMM: tidy(plan.Buy), Pieces: len(plan.Pieces), File: files[i], Ended: endedOf(plan.Ended),
			FoundEarlier: plan.Kept,
		}
		if plan.InsteadOf != nil {
			one.InsteadOf = plan.InsteadOf.String()
		}
		out.Plans = append(out.Plans, one)
	}
	return out
}
