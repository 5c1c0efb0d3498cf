// Package report makes the documents that the program prints as JSON for other
// programs. Field names end in their unit.
package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// Estimate is what estimate prints as JSON: one entry a cloth and width.
type Estimate struct {
	Job    string  `json:"job"`
	Cloths []Cloth `json:"cloths"`
}

// Cloth is what a job takes of one cloth in one width.
type Cloth struct {
	Name     string  `json:"name"`
	WidthMM  float64 `json:"width_mm"`
	UsableMM float64 `json:"usable_mm"`
	Nap      string  `json:"nap"`
	Lays     []Lay   `json:"lays"`
	Chosen   string  `json:"chosen"`
	Ended
	// FoundEarlier says that an earlier search, with another seed or effort, found it.
	FoundEarlier bool    `json:"found_earlier,omitempty"`
	LengthMM     float64 `json:"length_mm"`
	BuyMM        float64 `json:"buy_mm"`
	BuyM         float64 `json:"buy_m"`
	BuyYd        float64 `json:"buy_yd"`
	RestsOn      *Basis  `json:"rests_on"`
	// Parts of the length to buy, each with its reason and the key of the job that
	// changes it.
	Parts []Part `json:"parts"`
	Range Range  `json:"range"`
	// Matching is left out for plain cloth.
	Matching *Matching `json:"matching,omitempty"`
}

// Part of a length to buy. Key is empty where no key of the job changes it.
type Part struct {
	Part     string  `json:"part"`
	LengthMM float64 `json:"length_mm"`
	Why      string  `json:"why"`
	Key      string  `json:"key,omitempty"`
}

// Range is between which lengths to buy the amount may prove to lie.
type Range struct {
	LowMM  float64 `json:"low_mm"`
	HighMM float64 `json:"high_mm"`
	Doubts []Doubt `json:"doubts"`
}

// Doubt is by how many percent of the lay the length may be less or more for
// something that is not known.
type Doubt struct {
	Of   string  `json:"of"`
	Less float64 `json:"less"`
	More float64 `json:"more"`
}

func partsOf(work *job.Work, need app.Estimated) []Part {
	var out []Part
	for _, part := range words.Reckoning(work, need) {
		out = append(out, Part{part.Part.String(), tidy(part.Length), part.Why, part.Key})
	}
	return out
}

func rangeOf(r quote.Range) Range {
	out := Range{LowMM: tidy(r.Low), HighMM: tidy(r.High), Doubts: []Doubt{}}
	for _, d := range r.Doubts {
		out.Doubts = append(out.Doubts, Doubt{d.Of.String(), tidy(100 * d.Less), tidy(100 * d.More)})
	}
	return out
}

// Matching is what matching the repeat costs.
type Matching struct {
	PlainMM       float64 `json:"plain_mm"`
	ExtraMM       float64 `json:"extra_mm"`
	RuleOfThumbMM float64 `json:"rule_of_thumb_mm"`
}

// Lay is one lay that is possible. Its density is in percent, as that
// of bench.
type Lay struct {
	Lay      string  `json:"lay"`
	Plies    int     `json:"plies"`
	Cuts     int     `json:"cuts"`
	LengthMM float64 `json:"length_mm"`
	Density  float64 `json:"density"`
	BoundMM  float64 `json:"bound_mm"`
}

// EstimateOf a job.
func EstimateOf(work *job.Work, needs []app.Estimated) Estimate {
	out := Estimate{Job: work.Name, Cloths: []Cloth{}}
	for _, need := range needs {
		of := clothOf(need.Requirement)
		of.RestsOn, of.Parts, of.Range = basisOf(need.Amount), partsOf(work, need), rangeOf(need.Range)
		of.Ended, of.FoundEarlier = endedOf(need.Ended), need.Kept
		out.Cloths = append(out.Cloths, of)
	}
	return out
}

func clothOf(need plan.Requirement) Cloth {
	chosen := need.Lays[need.Chosen]
	metric, yards := quote.InBothSystems(need.Cloth, chosen.Need, chosen.Buy)
	out := Cloth{
		Name:     need.Cloth.Name,
		WidthMM:  tidy(need.Cloth.Width),
		UsableMM: tidy(bed.UsableWidth(lay.Open, need.Cloth)),
		Nap:      need.Cloth.Nap.String(),
		Lays:     []Lay{},
		Chosen:   chosen.Lay.String(),
		LengthMM: tidy(need.Length),
		BuyMM:    tidy(need.Buy),
		BuyM:     tidy(metric / 1000),
		BuyYd:    tidy(inYards(yards)),
	}
	if m := need.Matching; m != nil {
		out.Matching = &Matching{tidy(m.Plain), tidy(m.Extra()), tidy(m.RuleOfThumb)}
	}
	for _, p := range need.Lays {
		if !p.Possible() {
			continue
		}
		out.Lays = append(out.Lays, Lay{
			Lay: p.Lay.String(), Plies: p.Plies, Cuts: p.Cuts, LengthMM: tidy(p.Taken),
			Density: tidy(100 * p.Density), BoundMM: tidy(p.Least()),
		})
	}
	return out
}
