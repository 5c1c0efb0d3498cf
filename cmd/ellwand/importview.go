package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// viewOptions say which part of a drawing is the pattern.
type viewOptions struct {
	overview              string
	pages, lines, layers  []string
	rows, overlap, square string
	byGroup               bool
}

func (o *viewOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.StringVar(&o.overview, "overview", "",
		"the whole drawing, its sheets and kinds of lines: .pdf, .svg, .png; a photo, traced: .png")
	entries := func(into *[]string, name, what string) {
		flags.Var(limit.EntriesOf(into, limit.List), name, what)
	}
	entries(&o.pages, "pages", "pages of a PDF that count: 2-13")
	flags.StringVar(&o.rows, "rows", "", `how sheets lie beside each other, row by row, 0 for none: "1 2 3/4 5 0"`)
	flags.StringVar(&o.overlap, "overlap", "", "how far sheets lie over each other: 10mm")
	entries(&o.lines, "lines", "only these kinds of lines, by their numbers in the overview: 2,3")
	entries(&o.layers, "layer", "only the lines of these layers")
	flags.StringVar(&o.square, "square", "", "side of a test square in the drawing, which sets the scale: 10cm")
	flags.BoolVar(&o.byGroup, "by-group", false, "make a piece of each group of lines, in place of each outline")
}

// view that the options say.
func (o *viewOptions) view() (found.View, error) {
	v := found.View{Layers: o.layers, ByGroup: o.byGroup}
	var err error
	if v.Pages, err = ranges("--pages", o.pages); err != nil {
		return v, err
	}
	if v.Lines, err = ranges("--lines", o.lines); err != nil {
		return v, err
	}
	if v.Rows, err = rowsOf(o.rows); err != nil {
		return v, err
	}
	if o.overlap != "" {
		overlap, err := measure.Parse(o.overlap, measure.Millimetre)
		const most = 100 // mm [source.OwnChoice]
		if err != nil || overlap < 0 || overlap > most {
			return v, fmt.Errorf("--overlap %q: write a length of at most %d mm", o.overlap, most)
		}
		v.Overlap, v.OverlapSaid = float64(overlap), true
	}
	if o.square != "" {
		side, err := measure.Parse(o.square, measure.Centimetre)
		const most = 1000 // mm [source.OwnChoice]
		if err != nil || side < 1 || side > most {
			return v, fmt.Errorf("--square %q: write the side of the test square, such as 10cm", o.square)
		}
		v.Square = float64(side)
	}
	return v, nil
}

// ranges of numbers: 1, 3-5.
func ranges(option string, entries []string) ([]int, error) {
	var out []int
	for _, entry := range entries {
		first, last, isRange := strings.Cut(entry, "-")
		from, err := strconv.Atoi(strings.TrimSpace(first))
		to := from
		if err == nil && isRange {
			to, err = strconv.Atoi(strings.TrimSpace(last))
		}
		if err != nil || from < 1 || to < from || to > limit.List.Most() {
			return nil, fmt.Errorf("%s %q: write numbers from 1 on, such as 2 or 2-5", option, entry)
		}
		for n := from; n <= to; n++ {
			out = append(out, n)
		}
	}
	return out, limit.List.Check(language.Name("the list of "+option), len(out))
}

// rowsOf sheets: "1 2 3/4 5 6".
func rowsOf(text string) ([][]int, error) {
	if text == "" {
		return nil, nil
	}
	var out [][]int
	seen := map[int]bool{}
	for _, line := range strings.Split(text, "/") {
		var row []int
		for _, word := range strings.FieldsFunc(line, func(r rune) bool { return r == ' ' || r == ',' }) {
			n, err := strconv.Atoi(word)
			if err != nil || n < 0 || n > limit.List.Most() || n > 0 && seen[n] {
				return nil, fmt.Errorf("--rows %q: write the numbers of the sheets, each once, a row after the other with / "+
					"between them, such as \"1 2 3/4 5 6\"", text)
			}
			seen[n] = true
			row = append(row, n)
		}
		out = append(out, row)
	}
	return out, limit.List.Check(language.Name("the list of --rows"), len(seen))
}
