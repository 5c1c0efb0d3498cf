package main

import (
	"math"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
)

// estimateReport is what estimate prints as JSON: one entry a cloth and width.
type estimateReport struct {
	Job    string        `json:"job"`
	Cloths []clothReport `json:"cloths"`
}

type clothReport struct {
	Name     string       `json:"name"`
	WidthMM  float64      `json:"width_mm"`
	UsableMM float64      `json:"usable_mm"`
	Nap      string       `json:"nap"`
	Lays     []layReport  `json:"lays"`
	Chosen   string       `json:"chosen"`
	LengthMM float64      `json:"length_mm"`
	BuyMM    float64      `json:"buy_mm"`
	BuyM     float64      `json:"buy_m"`
	BuyYd    float64      `json:"buy_yd"`
	RestsOn  *basisReport `json:"rests_on"`
	// Matching is left out for plain cloth.
	Matching *matchingReport `json:"matching,omitempty"`
}

// matchingReport is what matching the repeat costs.
type matchingReport struct {
	PlainMM       float64 `json:"plain_mm"`
	ExtraMM       float64 `json:"extra_mm"`
	RuleOfThumbMM float64 `json:"rule_of_thumb_mm"`
}

// layReport is one lay that is possible. Its density is in percent, as that
// of bench.
type layReport struct {
	Lay      string  `json:"lay"`
	Plies    int     `json:"plies"`
	Cuts     int     `json:"cuts"`
	LengthMM float64 `json:"length_mm"`
	Density  float64 `json:"density"`
	BoundMM  float64 `json:"bound_mm"`
}

func estimateOf(work *job.Work, needs []fabric.Requirement) estimateReport {
	out := estimateReport{Job: work.Name, Cloths: []clothReport{}}
	for _, need := range needs {
		out.Cloths = append(out.Cloths, clothReportOf(need))
	}
	return out
}

func clothReportOf(need fabric.Requirement) clothReport {
	chosen := need.Lays[need.Chosen]
	metric, yards := purchase(need.Cloth, chosen)
	out := clothReport{
		Name:     need.Cloth.Name,
		WidthMM:  tidy(need.Cloth.Width),
		UsableMM: tidy(fabric.Open.UsableWidth(need.Cloth)),
		Nap:      need.Cloth.Nap.String(),
		Lays:     []layReport{},
		Chosen:   chosen.Lay.String(),
		LengthMM: tidy(need.Length),
		BuyMM:    tidy(need.Buy),
		BuyM:     tidy(metric / 1000),
		BuyYd:    tidy(yards / yard),
		RestsOn:  basisOf(amountOf(need)),
	}
	if m := need.Matching; m != nil {
		out.Matching = &matchingReport{tidy(m.Plain), tidy(m.Extra()), tidy(m.RuleOfThumb)}
	}
	for _, plan := range need.Lays {
		if !plan.Possible() {
			continue
		}
		out.Lays = append(out.Lays, layReport{
			Lay: plan.Lay.String(), Plies: plan.Plies, Cuts: plan.Cuts, LengthMM: tidy(plan.Taken),
			Density: tidy(100 * plan.Density), BoundMM: tidy(plan.Least()),
		})
	}
	return out
}

// tidy rounds to four decimals: finer than any cloth, without the noise of
// the last digits.
func tidy(x float64) float64 { return math.Round(x*1e4) / 1e4 }
