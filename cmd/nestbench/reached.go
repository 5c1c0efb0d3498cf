package main

import (
	"encoding/json"
	"fmt"
	"io"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/screen"
)

// reached is what was reached in one run. Lengths are in the unit of the
// instance, density in percent.
type reached struct {
	Name     string  `json:"name"`
	Items    int     `json:"items"`
	Pieces   int     `json:"pieces"`
	Width    float64 `json:"width"`
	Length   float64 `json:"length"`
	Density  float64 `json:"density"`
	Bound    float64 `json:"bound"`
	Seconds  float64 `json:"seconds"`
	Passes   int     `json:"passes"`
	Workers  int     `json:"workers"`
	Seed     uint64  `json:"seed"`
	Verified bool    `json:"verified"`
}

func (r reached) print(w io.Writer, asJSON bool) error {
	if asJSON {
		encoder := json.NewEncoder(w)
		encoder.SetIndent("", "  ")
		return failure.Of(encoder.Encode(r))
	}
	t := screen.Table("instance", "pieces", "width", "length", "density", "never below", "seconds")
	t.AppendRow(screen.Row(r.Name, r.Pieces, fmt.Sprintf("%.6g", r.Width), fmt.Sprintf("%.6g", r.Length),
		fmt.Sprintf("%.2f %%", r.Density), fmt.Sprintf("%.6g", r.Bound), fmt.Sprintf("%.1f", r.Seconds)))
	fmt.Fprintln(w, t.Render())
	return nil
}
