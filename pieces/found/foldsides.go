package found

import (
	"cmp"
	"slices"

	"ellwand/pieces"
)

// FoldSides are the sides of a piece, as it is drawn, on which a straight edge lies that may
// lie on the fold; the one with the longest edge first.
func (p Piece) FoldSides() []Side {
	var out []Side
	length := map[Side]float64{}
	for _, side := range []Side{LeftSide, RightSide, TopSide, BottomSide} {
		if at, ok := foldOnSide(p.Outline, side); ok {
			out = append(out, side)
			length[side] = p.Outline[at].Length()
		}
	}
	slices.SortStableFunc(out, func(a, b Side) int { return cmp.Compare(length[b], length[a]) })
	return out
}

// FoldLine is what lies on the fold by the file and by the side that was said; none where
// nothing does.
func (p Piece) FoldLine(side Side) pieces.Path {
	switch side {
	case NoFold:
		return nil
	case FoldAsFound:
		if p.Mirror == nil {
			return nil
		}
		return pieces.Path{pieces.Line{From: p.Mirror.From, To: p.Mirror.To}}
	}
	at, ok := foldOnSide(p.Outline, side)
	if !ok {
		return nil
	}
	return pieces.Path{p.Outline[at].Curve}
}
