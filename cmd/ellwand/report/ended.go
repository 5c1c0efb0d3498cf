package report

import (
	"math"

	"ellwand/fabric/plan"
)

// Ended says that the search was ended before its work was done. All is left out where
// it was not.
type Ended struct {
	EndedEarly bool `json:"ended_early,omitempty"`
	// SearchedS is how long was searched, EffortPercent how much of the effort that was.
	SearchedS     float64 `json:"searched_s,omitempty"`
	EffortPercent *int    `json:"effort_percent,omitempty"`
}

func endedOf(e plan.Ended) Ended {
	if !e.Early {
		return Ended{}
	}
	percent := e.Percent()
	return Ended{EndedEarly: true, SearchedS: math.Round(10*e.After.Seconds()) / 10, EffortPercent: &percent}
}
