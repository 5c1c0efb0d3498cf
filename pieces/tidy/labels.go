package tidy

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"ellwand/pieces/linework"
)

// spot is the row and the column of a sheet, each from 0.
type spot struct{ row, column int }

// labels are how sheets say where they lie: B3, 2-3, row 2 column 3.
var (
	letterFirst = regexp.MustCompile(`^([A-Z])[ -]?([1-9][0-9]?)$`)
	numberFirst = regexp.MustCompile(`^([1-9][0-9]?)[ -]?([A-Z])$`)
	twoNumbers  = regexp.MustCompile(`^([1-9][0-9]?) ?[-.x:,] ?([1-9][0-9]?)$`)
	spelt       = regexp.MustCompile(`(?i)^row ([1-9][0-9]?)[ ,;/-]+col(?:umn|\.)? ([1-9][0-9]?)$`)
)

// labelled are the spots of sheets by what is written largest on them, where every one
// has a spot of its own; nil where not. They may have to be turned, rows for columns.
func labelled(words []linework.Words, pages []int) map[int]spot {
	size := map[int]float64{}
	out := map[int]spot{}
	for _, w := range words {
		s, ok := spotOf(strings.TrimSpace(w.Text))
		if ok && slices.Contains(pages, w.Page) && w.Size > size[w.Page] {
			size[w.Page], out[w.Page] = w.Size, s
		}
	}
	taken := map[spot]bool{}
	for _, p := range pages {
		s, ok := out[p]
		if !ok || taken[s] {
			return nil
		}
		taken[s] = true
	}
	return out
}

func spotOf(text string) (spot, bool) {
	if m := letterFirst.FindStringSubmatch(text); m != nil {
		return spot{int(m[1][0] - 'A'), number(m[2]) - 1}, true
	}
	if m := numberFirst.FindStringSubmatch(text); m != nil {
		return spot{number(m[1]) - 1, int(m[2][0] - 'A')}, true
	}
	for _, form := range []*regexp.Regexp{twoNumbers, spelt} {
		if m := form.FindStringSubmatch(text); m != nil {
			return spot{number(m[1]) - 1, number(m[2]) - 1}, true
		}
	}
	return spot{}, false
}

// number of a text of a digit or two.
func number(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil { // the expressions let nothing else through
		return 0
	}
	return n
}
