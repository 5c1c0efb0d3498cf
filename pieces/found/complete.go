package found

import (
	"fmt"
	"slices"
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
		return whole(*p.Whole, s)
	}
	c := completing{from: p, said: s}
	c.piece = pieces.Piece{Name: or(s.Name, p.Name), Size: or(s.Size, p.Size), Cloth: or(s.Cloth, p.Material),
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

// whole piece of a file that says all, and what was said beside it.
func whole(p pieces.Piece, s Said) (pieces.Piece, []Note, error) {
	p.Edges = slices.Clone(p.Edges)
	p.Name, p.Size, p.Cloth = or(s.Name, p.Name), or(s.Size, p.Size), or(s.Cloth, p.Cloth)
	if s.Cut > 0 {
		p.Cut = s.Cut
	}
	if s.Pair != NotSaid {
		p.Pair = s.Pair == Yes
	}
	if s.KindSaid {
		p.Kind = s.Kind
	}
	if s.Allowance.How != AllowanceAsFound {
		allow(&p, s.Allowance)
	}
	c := completing{said: s, piece: p}
	if s.Cut > 0 {
		c.pair()
	}
	return c.piece, c.notes, c.piece.Check()
}

func or(a, b string) string {
	if a != "" {
		return a
	}
	return b
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
