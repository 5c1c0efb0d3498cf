package check

import (
	"errors"
	"fmt"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// rule is the proof of one rule. What it does not look at is nil. Each stands in a
// file of its own, which registers it and says what it asks.
type rule struct {
	// asked is a piece as the rule has it asked for.
	asked func(c cloth.Cloth, piece pieces.Piece) pieces.Piece
	// laid looks at one template where it lies.
	laid func(p lay.Plan, l lay.Laid, asked pieces.Piece, known *Lines) error
	// piece looks at one piece on the open cloth.
	piece func(p lay.Plan, o openedPiece, asked pieces.Piece) error
	// whole looks at all of the lay.
	whole func(p lay.Plan, opened []openedPiece, asked []pieces.Piece) error
}

// rules are all that a lay is proven by.
var rules []rule

func register(r rule) bool {
	rules = append(rules, r)
	return true
}

// onEach applies a look of every rule that has it.
func onEach(look func(r rule) error) error {
	var faults []error
	for _, r := range rules {
		faults = append(faults, look(r))
	}
	return errors.Join(faults...)
}

// ruledPieces are the pieces as the rules have them asked for.
func ruledPieces(c cloth.Cloth, all []pieces.Piece) []pieces.Piece {
	var out []pieces.Piece
	for _, piece := range all {
		for _, r := range rules {
			if r.asked != nil {
				piece = r.asked(c, piece)
			}
		}
		out = append(out, piece)
	}
	return out
}

// looked at one template and at the pieces that it gives.
func looked(p lay.Plan, l lay.Laid, opened []openedPiece, asked pieces.Piece, known *Lines) error {
	return onEach(func(r rule) error {
		var faults []error
		if r.laid != nil {
			faults = append(faults, r.laid(p, l, asked, known))
		}
		for _, o := range opened {
			if r.piece != nil {
				faults = append(faults, r.piece(p, o, asked))
			}
		}
		return errors.Join(faults...)
	})
}

// sourceOf a template among the pieces asked, and its part.
func sourceOf(p lay.Plan, l lay.Laid, sources lay.Sources) (int, error) {
	source := sources.Of(l)
	switch {
	case source < 0:
		return source, fmt.Errorf("%s was not asked for", l.Name)
	case l.Bed < 0 || l.Bed >= len(p.Beds):
		return source, fmt.Errorf("%s copy %d lies on no part of the lay", l.Name, l.Copy)
	}
	return source, nil
}
