package found

import (
	"cmp"
	"fmt"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Complete makes a piece of what was found, cleaned, and what was said of it. The
// error is *NoFoldThere, that of a question that is left, or what is wrong with the
// piece (see pieces.Piece.Check).
func Complete(p Piece, s Said, o Options) (pieces.Piece, []Note, error) {
	if left := p.Missing(s); len(left) > 0 {
		return pieces.Piece{}, nil, fmt.Errorf("the piece has %d questions left", len(left))
	}
	if p.Whole != nil {
		return Change(*p.Whole, s)
	}
	c := completing{from: p, said: s}
	c.piece = pieces.Piece{Name: cmp.Or(s.Name, p.Name), Size: cmp.Or(s.Size, p.Size), Cloth: cmp.Or(s.Cloth, p.Material),
		Accuracy: p.Accuracy, Kind: kindOf(p, s)}
	c.count()
	if err := c.edges(); err != nil {
		return c.piece, nil, err
	}
	c.grain()
	opened := c.lean()
	c.allowances()
	c.notches()
	c.inner()
	if opened || o.Open && c.piece.Fold != seams.None {
		c.piece = c.piece.Unfolded()
		c.notes = append(c.notes, Note{Kind: MirrorOpened, Count: 1})
	}
	if !p.SaysHands() {
		c.pair()
	}
	return c.piece, c.notes, c.piece.Check()
}

func kindOf(p Piece, s Said) pieces.Kind {
	if s.KindSaid {
		return s.Kind
	}
	for i, word := range pieces.Shell.Words() {
		if strings.EqualFold(word, p.Category) {
			return pieces.Kind(i)
		}
	}
	return pieces.Shell
}
