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
	// Mark is that of the quote which the plan was made for.
	Mark string `json:"mark"`
	// SinceQuote is "job changed" or "laid otherwise" where the plan is not the one that
	// the job was last quoted on.
	SinceQuote string `json:"since_quote,omitempty"`
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

// changes since the quote, by their kind.
var changes = map[app.Change]string{app.JobChanged: "job changed", app.LayChanged: "laid otherwise"}

// PlansOf a job: of each cloth its plan, with the file that it goes to.
func PlansOf(work *job.Work, plans []app.Planned, files []string) Plans {
	out := Plans{Job: work.Name}
	for i, plan := range plans {
		one := Plan{
			Cloth: plan.Cloth.Name, Lay: plan.Lay.String(), Mark: plan.Mark, SinceQuote: changes[plan.SinceQuote],
			LengthMM: tidy(plan.Taken),
			BuyMM:    tidy(plan.Buy), Pieces: len(plan.Pieces), File: files[i], Ended: endedOf(plan.Ended),
			FoundEarlier: plan.Kept,
		}
		if plan.InsteadOf != nil {
			one.InsteadOf = plan.InsteadOf.String()
		}
		out.Plans = append(out.Plans, one)
	}
	return out
}
