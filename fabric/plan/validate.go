package plan

import (
	"errors"
	"fmt"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/pieces"
)

// CheckJob refuses what cannot be laid at all, with every reason.
func CheckJob(c cloth.Cloth, all []pieces.Piece) error {
	faults := []error{c.Check()}
	if len(all) == 0 {
		faults = append(faults, fmt.Errorf("%s: there is nothing to cut from it; add a piece, or leave the cloth out", c))
	}
	faults = append(faults, checkNames(c, all), rules.Refusals(c, all))
	for i, piece := range all {
		faults = append(faults, piece.Check())
		if lay.SourceOf(lay.Laid{Name: piece.Name, Garment: piece.Garment, Size: piece.Size}, all) != i {
			faults = append(faults, fmt.Errorf("%s: two pieces have this name in the same garment and size; give one another name, or raise the cut count", piece.Name))
		}
	}
	return errors.Join(faults...)
}

// checkNames refuses names of pieces and match points that there are not.
func checkNames(c cloth.Cloth, all []pieces.Piece) error {
	var faults []error
	tasks := append([]rules.Task{{Pieces: c.OneWayPieces, For: "to go one way"}}, rules.Tasks(c)...)
	for _, list := range tasks {
		for _, name := range list.Pieces {
			if !slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == name }) {
				faults = append(faults, fmt.Errorf("%s: there is no piece %q %s; name a piece that is cut from it", c, name, list.For))
			}
		}
	}
	for _, name := range c.Repeat.Matches {
		has := func(p pieces.Piece) bool { _, ok := rules.PointNamed(p, name); return ok }
		if !slices.ContainsFunc(all, has) {
			faults = append(faults, fmt.Errorf("%s: no piece has a match point %q; give a notch that name, or leave it out", c, name))
		}
	}
	return errors.Join(faults...)
}
