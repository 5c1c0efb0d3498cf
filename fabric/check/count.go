package check

import (
	"errors"
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

var _ = register(rule{whole: checkCounts})

// checkCounts: the right number of each piece comes out of all plies, and of a pair as
// many right as left ones.
func checkCounts(p lay.Plan, opened []openedPiece, asked []pieces.Piece) error {
	counts := make([]tally, len(asked))
	for _, o := range opened {
		counts[o.source].add(o)
	}
	var faults []error
	for i, piece := range asked {
		faults = append(faults, counts[i].check(piece, p.Cloth.Alike))
	}
	return errors.Join(faults...)
}

// tally counts what the plies give of one piece.
type tally struct{ right, left, whole int }

func (t *tally) add(o openedPiece) {
	switch {
	case o.OnFold:
		t.whole++
	case o.faceDown:
		t.left++
	default:
		t.right++
	}
}

func (t tally) check(piece pieces.Piece, alike bool) error {
	if total := t.right + t.left + t.whole; total != piece.Cut {
		return fmt.Errorf("%s: %d come out of the lay and %d are wanted", piece.Name, total, piece.Cut)
	}
	if piece.Pair && piece.Fold == seams.None && t.right != t.left && !alike {
		return fmt.Errorf("%s: %d right and %d left come out of the lay", piece.Name, t.right, t.left)
	}
	return nil
}
