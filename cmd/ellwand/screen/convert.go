package screen

import (
	"fmt"
	"io"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/fabric/purchase"
	"ellwand/pieces/measure"
	"ellwand/pieces/source"
)

// Conversion prints a known amount of cloth in another width, to those who
// count in a unit.
func Conversion(w io.Writer, found app.Converted, unit measure.Unit) {
	request, narrow := found.Request, measure.Centimetre
	if unit == measure.Yard {
		narrow = measure.Inch
	}
	long := func(mm float64) string { return measure.Length(mm).Format(unit) }
	wide := func(mm float64) string { return measure.Length(mm).Format(narrow) }
	fmt.Fprintf(w, "%s of cloth %s wide: buy %s of cloth %s wide.\n",
		long(request.Length), wide(request.From), long(found.Buy), wide(request.To))
	if found.ByChart {
		fmt.Fprintf(w, "By the chart, row %d: %s in %s is %s in %s", found.Row,
			yards(found.Tabled), found.FromColumn, yards(found.Length-found.Added), found.ToColumn)
	} else {
		fmt.Fprintf(w, "By equal area")
		if request.From != request.To {
			fmt.Fprintf(w, " and %.0f %% more", 100*purchase.AreaMargin)
		}
		fmt.Fprintf(w, ", since %s: %s", found.Uncovered, long(found.Length-found.Added))
	}
	fmt.Fprintln(w, ".")
	if found.Added > 0 {
		fmt.Fprintf(w, "Its note adds %s for %s.\n", yards(found.Added), strings.Join(found.Why, " and "))
	}
	if found.FromChart() {
		fmt.Fprintf(w, "The chart is %s.\n", source.ConversionChart)
	}
	fmt.Fprintln(w, "A rule of thumb; ellwand estimate lays the pieces themselves.")
}

func yards(mm float64) string { return measure.Length(mm).Format(measure.Yard) }
