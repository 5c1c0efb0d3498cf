package words

import (
	"slices"
	"strings"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// joined says what a match joins, without the way: "front armhole of sleeve and front
// bodice".
func joined(m lay.Match, all []pieces.Piece) string {
	var names []string
	for _, source := range m.Pieces {
		if !slices.Contains(names, all[source].Name) {
			names = append(names, all[source].Name)
		}
	}
	list := strings.Join(names, " and ")
	switch m.Name {
	case marks.None:
		return "right and left of " + list
	case marks.SideBySide:
		return "lower edges of " + list + ", which hang side by side"
	case marks.Alike:
		return "copies of " + list + ", which lie alike"
	}
	return m.Name.String() + " of " + list
}

func wayOf(m lay.Match) string {
	if m.Across {
		return "across"
	}
	return "along the warp"
}

// Matches says what a lay matches, a line for each, with both ways in one: "side seam
// of front skirt and back skirt, along the warp and across".
func Matches(p lay.Plan, all []pieces.Piece) []string {
	var said []string
	ways := map[string][]string{}
	for _, m := range p.Matches {
		what, way := joined(m, all), wayOf(m)
		if len(ways[what]) == 0 {
			said = append(said, what)
		}
		if !slices.Contains(ways[what], way) { // garment after garment
			ways[what] = append(ways[what], way)
		}
	}
	for i, what := range said {
		said[i] = what + ", " + strings.Join(ways[what], " and ")
	}
	return said
}

// Unmatched are the names of the pieces that take part in no match of a lay.
func Unmatched(p lay.Plan, all []pieces.Piece) []string {
	var out []string
	for i, piece := range all {
		isMatched := slices.ContainsFunc(p.Matches, func(m lay.Match) bool { return slices.Contains(m.Pieces, i) })
		if !isMatched && !slices.Contains(out, piece.Name) {
			out = append(out, piece.Name)
		}
	}
	return out
}

// ApartAcross are pieces of several names that hang side by side on a print that repeats
// across the cloth as well: only the copies of each lie alike there. None where that is all.
func ApartAcross(p lay.Plan, all []pieces.Piece) []string {
	var out []string
	if p.Cloth.Repeat.Across == 0 {
		return nil
	}
	for _, m := range p.Matches {
		if m.Name != marks.SideBySide || m.Across {
			continue
		}
		for _, source := range m.Pieces {
			if !slices.Contains(out, all[source].Name) {
				out = append(out, all[source].Name)
			}
		}
	}
	if len(out) < 2 {
		return nil
	}
	return out
}
