package app

import (
	"fmt"
	"strings"

	"ellwand/draft"
	"ellwand/pieces/measure"
)

// SizeTable is a table of sizes as people choose from it.
type SizeTable struct {
	Sizes []string
	// Girths of each size by their keys in a job, as numbers in the unit of the table.
	Girths map[string]map[string]string
	Unit   measure.Unit
}

// girthsShown of a size, by which people know it.
var girthsShown = []draft.Measurement{draft.BustGirth, draft.WaistGirth, draft.HipGirth, draft.Height}

// Table is the table of sizes of a name.
func Table(name string) (SizeTable, error) {
	out := SizeTable{Sizes: draft.Sizes(name), Girths: map[string]map[string]string{}, Unit: measure.Centimetre}
	if len(out.Sizes) == 0 {
		return out, fmt.Errorf("there is no table of sizes %q; use one of: %s", name, strings.Join(draft.Tables(), ", "))
	}
	if name == "misses" { // the only one that its standard gives in inches
		out.Unit = measure.Inch
	}
	for _, size := range out.Sizes {
		body, err := draft.Size(name, size)
		if err != nil {
			return out, err
		}
		girths := map[string]string{}
		for _, measurement := range girthsShown {
			if mm, known := body[measurement]; known {
				number, _, _ := strings.Cut(measure.Length(mm).Format(out.Unit), " "+out.Unit.String())
				girths[strings.ReplaceAll(string(measurement), " ", "_")] = number
			}
		}
		out.Girths[size] = girths
	}
	return out, nil
}
