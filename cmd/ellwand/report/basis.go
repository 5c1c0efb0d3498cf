package report

import (
	"math"

	"ellwand/fabric/quote"
)

// Basis is what an amount rests on.
type Basis struct {
	Lay          string  `json:"lay"`
	TakenMM      float64 `json:"taken_mm"`
	BoundMM      float64 `json:"bound_mm"`
	HandLayingMM float64 `json:"hand_laying_mm"`
	StraightenMM float64 `json:"straighten_mm"`
	ShrinkageMM  float64 `json:"shrinkage_mm"`
	SafetyMM     float64 `json:"safety_mm"`
	RoundingMM   float64 `json:"rounding_mm"`
	MinimumMM    float64 `json:"minimum_mm"`
	BuyMM        float64 `json:"buy_mm"`
	// FoundEarlier says that an earlier search, with another seed or effort, found it.
	FoundEarlier bool `json:"found_earlier,omitempty"`
}

func basisOf(a quote.Amount) *Basis {
	return &Basis{
		Lay: a.Lay, TakenMM: tidy(a.Taken), BoundMM: tidy(a.Bound), HandLayingMM: tidy(a.HandLaying),
		StraightenMM: tidy(a.Straighten), ShrinkageMM: tidy(a.Shrinkage),
		SafetyMM: tidy(a.Safety), RoundingMM: tidy(a.Rounding), MinimumMM: tidy(a.Minimum), BuyMM: tidy(a.Buy),
		FoundEarlier: a.Kept,
	}
}

// tidy rounds to four decimals: finer than any cloth, without the noise of
// the last digits.
func tidy(x float64) float64 { return math.Round(x*1e4) / 1e4 }

// inYards gives a length in yards, of 914.4 mm by the agreement of 1959.
func inYards(mm float64) float64 { return mm / 914.4 }
