package pieces

import (
	"slices"

	"ellwand/pieces/seams"
)

// PerLine remembers what is derived from the line, the fold and the grainline of a
// piece, so that pieces that are alike in them have it derived once: of 50 blouses
// those that are equal. The zero value knows nothing; it is not for several goroutines
// at once. What it gives is shared and must not be changed.
type PerLine[T any] struct {
	known map[lineKey][]perLine[T]
}

type perLine[T any] struct {
	piece Piece
	value T
}

// Of gives what was derived of a piece alike, or derives it. What fails is not
// remembered, since its message names the piece.
func (l *PerLine[T]) Of(p Piece, derive func(Piece) (T, error)) (T, error) {
	key := lineKeyOf(p)
	for _, k := range l.known[key] {
		if p.isAlike(k.piece) {
			return k.value, nil
		}
	}
	value, err := derive(p)
	if err != nil {
		return value, err
	}
	if l.known == nil {
		l.known = map[lineKey][]perLine[T]{}
	}
	l.known[key] = append(l.known[key], perLine[T]{p, value})
	return value, nil
}

// lineKey parts pieces that are not alike, nearly always.
type lineKey struct {
	edges            int
	fold             seams.Name
	grain            Grain
	x, y, allowances float64
}

func lineKeyOf(p Piece) lineKey {
	key := lineKey{edges: len(p.Edges), fold: p.Fold, grain: p.Grain}
	for i, e := range p.Edges {
		start := e.Path.Start()
		// Weighed by their place, so that points that only change places differ.
		key.x, key.y = key.x+float64(float64(i+1)*start[0]), key.y+float64(float64(i+1)*start[1])
		key.allowances += e.Allowance
	}
	return key
}

// isAlike reports whether the lines, the folds and the grainlines of two pieces are the
// same to the last bit.
func (p Piece) isAlike(o Piece) bool {
	return p.Fold == o.Fold && p.Grain == o.Grain && slices.EqualFunc(p.Edges, o.Edges, func(a, b Edge) bool {
		return a.Name == b.Name && a.Allowance == b.Allowance && a.Included == b.Included && a.Unknown == b.Unknown &&
			a.Hem == b.Hem && slices.Equal(a.Path, b.Path)
	})
}
