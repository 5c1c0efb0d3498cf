package report

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/fabric/purchase"
	"ellwand/pieces/source"
)

// Conversion is what convert prints as JSON. Row counts from 1 in the
// chart: the last that the known amount has reached; by area there is none.
type Conversion struct {
	KnownMM      float64  `json:"known_mm"`
	FromMM       float64  `json:"from_width_mm"`
	ToMM         float64  `json:"to_width_mm"`
	Basis        string   `json:"basis"`
	FromColumn   string   `json:"from_column,omitempty"`
	ToColumn     string   `json:"to_column,omitempty"`
	Row          int      `json:"row,omitempty"`
	Source       string   `json:"source,omitempty"` // of the chart, where it was read
	Uncovered    string   `json:"uncovered,omitempty"`
	AddedMM      float64  `json:"added_mm"`
	AddedBecause []string `json:"added_because"`
	LengthMM     float64  `json:"length_mm"`
	BuyMM        float64  `json:"buy_mm"`
}

var bases = map[purchase.ConversionBasis]string{
	purchase.SameWidth: "same width", purchase.ByChart: "chart", purchase.ByArea: "area",
}

// ConversionOf a known amount of cloth.
func ConversionOf(found app.Converted) Conversion {
	request := found.Request
	out := Conversion{
		KnownMM: tidy(request.Length), FromMM: tidy(request.From), ToMM: tidy(request.To), Basis: bases[found.Basis],
		FromColumn: found.FromColumn, ToColumn: found.ToColumn, Row: found.Row, Uncovered: found.Uncovered,
		AddedMM: tidy(found.Added), AddedBecause: append([]string{}, found.Why...), LengthMM: tidy(found.Length),
		BuyMM: tidy(found.Buy),
	}
	if found.FromChart() {
		out.Source = source.ConversionChart.String()
	}
	return out
}
