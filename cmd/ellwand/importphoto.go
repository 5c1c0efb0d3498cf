package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/pieces/found"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// photoOptions say what is known in a photo.
type photoOptions struct {
	ground, sheets string
	distances      []string
}

func (o *photoOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.StringVar(&o.ground, "ground", "", "of a photo: the side of the squares on its ground: 1cm")
	flags.StringVar(&o.sheets, "sheets", "", "of a photo: the paper of the sheets beside the pieces: a4, letter")
	flags.StringArrayVar(&o.distances, "distance", nil,
		`of a scan, twice: two pixels and how far apart: "9,8 400,8 = 60cm"`)
}

// reference that the options say.
func (o *photoOptions) reference() (found.Reference, error) {
	var out found.Reference
	given := 0
	for _, is := range [3]bool{o.ground != "", o.sheets != "", len(o.distances) > 0} {
		if is {
			given++
		}
	}
	if given > 1 {
		return out, fmt.Errorf("--ground, --sheets and --distance exclude each other; give the one that the photo shows " +
			"best: squares before sheets, sheets before distances")
	}
	if o.ground != "" {
		side, err := measure.Parse(o.ground, measure.Centimetre)
		const least, most = 2, 500 // mm [source.OwnChoice]
		if err != nil || side < least || side > most {
			return out, fmt.Errorf("--ground %q: write the side of a square of the ground, from %d mm to %d mm, such as 1cm "+
				"or 1in",
				o.ground, least, most)
		}
		out.Square = float64(side)
	}
	if o.sheets != "" {
		sheet, err := paper.Parse(o.sheets, measure.Millimetre)
		if err != nil {
			return out, fmt.Errorf("--sheets: %w", err)
		}
		out.Sheet = [2]float64{sheet.Width, sheet.Height}
	}
	if n := len(o.distances); n > 0 && n != 2 {
		return out, fmt.Errorf("--distance is given twice, for two distances that lie across each other, but here %d times",
			n)
	}
	for _, text := range o.distances {
		d, ok := app.ParseDistance(text)
		if !ok {
			return out, fmt.Errorf("--distance %q: write two places in pixels from the upper left corner, across and down, and "+
				"how far apart they are, such as \"120,80 1500,90 = 60cm\"", text)
		}
		out.Distances = append(out.Distances, d)
	}
	return out, nil
}
