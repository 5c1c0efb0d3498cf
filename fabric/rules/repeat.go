package rules

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// matchTolerance is how far two points that match may lie apart, mm
// [source.OwnChoice].
const matchTolerance = 1.0

// PointNamed finds the first notch of that match name, on the seam line.
func PointNamed(piece pieces.Piece, name marks.Name) (orb.Point, bool) {
	for _, notch := range piece.Notches {
		if edge, ok := piece.Edge(notch.Edge); ok && notch.Match == name {
			return edge.Path.At(notch.At), true
		}
	}
	return orb.Point{}, false
}

// MatchNames lists the match points to keep in the order of importance: those
// that the maker names, or all that two pieces share.
func MatchNames(repeat cloth.Repeat, all []Template) []marks.Name {
	if len(repeat.Matches) > 0 {
		return repeat.Matches
	}
	seen := map[marks.Name]int{}
	var order []marks.Name
	met := map[int]bool{}
	for _, t := range all {
		if met[t.Source] { // the left of a pair
			continue
		}
		met[t.Source] = true
		var mine []marks.Name
		for _, notch := range t.Asked.Notches {
			if notch.Match != marks.None && !slices.Contains(mine, notch.Match) {
				mine = append(mine, notch.Match)
			}
		}
		for _, name := range mine {
			if seen[name] == 0 {
				order = append(order, name)
			}
			seen[name]++
		}
	}
	return slices.DeleteFunc(order, func(name marks.Name) bool { return seen[name] < 2 })
}
