package plan

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// CheckJob refuses what cannot be laid at all, with every reason.
func CheckJob(c cloth.Cloth, all []pieces.Piece) error {
	faults := []error{c.Check()}
	if len(all) == 0 {
		faults = append(faults, fmt.Errorf("%s: there is nothing to cut from it; add a piece, or leave the cloth out", c))
	}
	faults = append(faults, checkNames(c, all), rules.Refusals(c, all))
	sources := lay.SourcesIn(all)
	for i, piece := range all {
		faults = append(faults, piece.Check())
		if sources.Of(lay.Laid{Name: piece.Name, Garment: piece.Garment, Size: piece.Size}) != i {
			faults = append(faults, fmt.Errorf("%s: two pieces have this name in the same garment and size; give one "+
				"another name, or raise the cut count", piece.Name))
		}
	}
	return errors.Join(faults...)
}

// Matchable are the names of all that can be matched on the pieces, the most important
// first.
func Matchable(repeat cloth.Repeat, all []pieces.Piece) []marks.Name {
	return rules.Matchable(repeat, all)
}

// NoMatch says that nothing is matched by some words, and what can be.
func NoMatch(asked string, known []marks.Name) string {
	if len(known) == 0 {
		return fmt.Sprintf("nothing joins these pieces by %q, nor by anything else; leave match out, or name the pieces "+
			"that "+
			"hang side by side", asked)
	}
	words := make([]string, len(known))
	for i, name := range known {
		words[i] = name.String()
	}
	return fmt.Sprintf("no pieces are joined by %q; name one of: %s", asked, strings.Join(words, ", "))
}

// checkNames refuses names of pieces and match points that there are not.
func checkNames(c cloth.Cloth, all []pieces.Piece) error {
	var faults []error
	tasks := append([]rules.Task{{Pieces: c.OneWayPieces, For: "to go one way"}}, rules.Tasks(c)...)
	for _, list := range tasks {
		for _, name := range list.Pieces {
			if !slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == name }) {
				faults = append(faults,
					fmt.Errorf("%s: there is no piece %q %s; name a piece that is cut from it", c, name, list.For))
			}
		}
	}
	if len(c.Repeat.Matches) == 0 {
		return errors.Join(faults...)
	}
	known := rules.Matchable(c.Repeat, all)
	for _, name := range c.Repeat.Matches {
		if !slices.Contains(known, name) {
			faults = append(faults, fmt.Errorf("%s: %s", c, NoMatch(name.String(), known)))
		}
	}
	return errors.Join(faults...)
}
