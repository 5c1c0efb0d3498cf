package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/quote"
)

// Comparison is what compare prints as JSON. Money is text, so that no
// reader makes a float of it.
type Comparison struct {
	Job      string            `json:"job"`
	Currency string            `json:"currency"`
	Cloths   []ClothComparison `json:"cloths"`
	Ended
}

// ClothComparison ranks the ways to buy one cloth.
type ClothComparison struct {
	Cloth   string   `json:"cloth"`
	Options []Option `json:"options"`
	Why     []string `json:"why"`
}

// Option is one way to buy a cloth.
type Option struct {
	Offer      string  `json:"offer"`
	Remnant    bool    `json:"remnant"`
	WidthMM    float64 `json:"width_mm"`
	Cost       string  `json:"cost,omitempty"`
	BuyMM      float64 `json:"buy_mm,omitempty"`
	LeftOverMM float64 `json:"left_over_mm"`
	Refused    string  `json:"refused,omitempty"`
	// Mark of the lay, by which its plan is known.
	Mark    string `json:"mark,omitempty"`
	RestsOn *Basis `json:"rests_on,omitempty"`
	// Range is between which lengths to buy the amount may prove to lie.
	Range *Range `json:"range,omitempty"`
}

// ComparisonOf the offers of a job.
func ComparisonOf(work *job.Work, ranked app.Compared) Comparison {
	out := Comparison{Job: work.Name, Currency: work.Currency.Code(), Ended: endedOf(ranked.Ended)}
	for _, cloth := range ranked.Cloths {
		report := ClothComparison{Cloth: cloth.Cloth, Why: append([]string{}, quote.Why(cloth.Options, work.Currency,
			app.Units(work))...)}
		for _, option := range cloth.Options {
			report.Options = append(report.Options, optionOf(work.Currency, option))
		}
		out.Cloths = append(out.Cloths, report)
	}
	return out
}

func optionOf(currency quote.Currency, option quote.Option) Option {
	out := Option{Offer: option.Offer.Name, Remnant: option.FromRemnant, WidthMM: tidy(option.Offer.Cloth.Width),
		Refused: option.Refused}
	if option.Refused == "" {
		out.Cost, out.BuyMM = currency.Plain(option.Cost), tidy(option.Bought)
		out.LeftOverMM, out.RestsOn = tidy(option.LeftOver), basisOf(option.Amount)
		if !option.FromRemnant {
			between := rangeOf(option.Range)
			out.Range = &between
		}
		out.Mark = option.Amount.Mark
	}
	return out
}
