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
	without := long(found.Length - found.Added)
	switch found.Basis {
	case purchase.SameWidth:
		fmt.Fprintln(w, "The same width takes the same amount.")
	case purchase.ByChart:
		row := fmt.Sprintf("row %d", found.Row)
		if found.Between {
			row = fmt.Sprintf("between rows %d and %d", found.Row, found.Row+1)
		}
		fmt.Fprintf(w, "By the chart, %s: %s in %s is %s in %s.\n", row,
			long(request.Length), found.FromColumn, without, found.ToColumn)
	case purchase.ByArea:
		fmt.Fprintf(w, "By equal area and up to %.0f %% more where the chart does not cover, since %s: %s.\n",
			100*purchase.AreaMargin, found.Uncovered, without)
	}
	if found.Added > leastShown {
		fmt.Fprintf(w, "Its note adds %s for %s.\n", wide(found.Added), strings.Join(found.Why, " and "))
	}
	if found.FromChart() {
		fmt.Fprintf(w, "The chart is %s.\n", source.ConversionChart)
	}
	fmt.Fprintln(w, "A rule of thumb; ellwand estimate lays the pieces themselves.")
}

// leastShown, mm: less is not worth a line [source.OwnChoice].
const leastShown = 1
