package plan

import (
	"errors"
	"slices"

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
		faults = append(faults, lay.Reason{Of: lay.NothingToCut})
	}
	faults = append(faults, checkNames(c, all), rules.Refusals(c, all))
	sources := lay.SourcesIn(all)
	for i, piece := range all {
		faults = append(faults, piece.Check())
		if sources.Of(lay.Laid{Name: piece.Name, Garment: piece.Garment, Size: piece.Size}) != i {
			faults = append(faults, lay.Reason{Of: lay.NamedTwice, Piece: piece.Name})
		}
	}
	return errors.Join(faults...)
}

// Matchable are the names of all that can be matched on the pieces, the most important
// first.
func Matchable(repeat cloth.Repeat, all []pieces.Piece) []marks.Name {
	return rules.Matchable(repeat, all)
}

// checkNames refuses names of pieces and match points that there are not.
func checkNames(c cloth.Cloth, all []pieces.Piece) error {
	var faults []error
	tasks := append([]rules.Task{{Pieces: c.OneWayPieces, For: lay.ToGoOneWay}}, rules.Tasks(c)...)
	for _, list := range tasks {
		for _, name := range list.Pieces {
			if !slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == name }) {
				faults = append(faults, lay.Reason{Of: lay.NoSuchPiece, Pieces: []string{name}, Task: list.For})
			}
		}
	}
	if len(c.Repeat.Matches) == 0 {
		return errors.Join(faults...)
	}
	known := rules.Matchable(c.Repeat, all)
	for _, name := range c.Repeat.Matches {
		if !slices.Contains(known, name) {
			faults = append(faults, lay.Reason{Of: lay.NotJoined, Point: name, Points: known})
		}
	}
	return errors.Join(faults...)
}
