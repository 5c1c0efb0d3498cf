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
	faults = append(faults, checkNames(c, all), rules.CheckBorder(c, all), rules.CheckMotif(c, all))
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
	for _, list := range []struct {
		what  string
		names []string
	}{{"to go one way", c.OneWayPieces}, {"to be centred", c.Repeat.Centred}, {"to lie on the border", c.Border.Pieces}, {"to centre a motif on", c.Motif.Pieces}} {
		for _, name := range list.names {
			if !slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == name }) {
				faults = append(faults, fmt.Errorf("%s: there is no piece %q %s; name a piece that is cut from it", c, name, list.what))
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
