package found

import (
	"cmp"
	"slices"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// OffWarp is the refusal of a fold on a side that does not run along the warp.
type OffWarp struct{ Side Side }

// Error says so.
func (*OffWarp) Error() string { return "that side does not run along the grain" }

// Change changes what was said of a piece that is complete. The error is *NoFoldThere,
// *OffWarp, or what is wrong with the piece (see pieces.Piece.Check).
func Change(p pieces.Piece, s Said) (pieces.Piece, []Note, error) {
	c := completing{said: s, piece: p}
	c.piece.Edges = slices.Clone(p.Edges)
	c.piece.Name, c.piece.Size, c.piece.Cloth = cmp.Or(s.Name, p.Name), cmp.Or(s.Size, p.Size), cmp.Or(s.Cloth, p.Cloth)
	if s.Cut > 0 {
		c.piece.Cut = s.Cut
		c.piece.Pair = p.Pair && s.Cut%2 == 0
	}
	if s.KindSaid {
		c.piece.Kind = s.Kind
	}
	if err := c.refold(); err != nil {
		return c.piece, nil, err
	}
	if s.Pair != NotSaid {
		c.piece.Pair = s.Pair == Yes
	}
	if s.Allowance.How != AllowanceAsFound {
		allow(&c.piece, s.Allowance)
	}
	if s.Cut > 0 {
		c.pair()
	}
	return c.piece, c.notes, c.piece.Check()
}

// refold lays another side on the fold, or none, and the grain as it was said.
func (c *completing) refold() error {
	if c.said.Grain != GrainAsFound {
		c.from.Grain = &Straight{From: c.piece.Grain.From, To: c.piece.Grain.To}
		c.grain()
	}
	switch side := c.said.Fold; side {
	case FoldAsFound:
	case NoFold:
		c.offFold()
	default:
		at, ok := straightOn(c.piece, side)
		if !ok {
			return &NoFoldThere{side}
		}
		c.offFold()
		e := &c.piece.Edges[at]
		c.piece.Fold, c.piece.Pair = e.Name, false
		e.Allowance, e.Included, e.Unknown, e.Hem = 0, 0, false, false
	}
	if c.said.Grain == GrainAsFound && c.said.Fold <= NoFold {
		return nil
	}
	if c.lean() {
		return &OffWarp{c.said.Fold}
	}
	return nil
}

// offFold takes a piece off the fold: that edge has what the next one has of an allowance.
func (c *completing) offFold() {
	for i := range c.piece.Edges {
		if e := &c.piece.Edges[i]; isFold(&c.piece, e) {
			next := c.piece.Edges[(i+1)%len(c.piece.Edges)]
			e.Allowance, e.Included, e.Unknown = next.Allowance, next.Included, next.Unknown
		}
	}
	c.piece.Fold = seams.None
}

// straightOn is the longest straight edge on a side of a piece.
func straightOn(p pieces.Piece, side Side) (at int, ok bool) {
	box, best := p.Boundary(1).Bound(), 0.0
	for i, e := range p.Edges {
		line := pieces.Line{From: e.Path.Start(), To: e.Path.End()}
		isStraight := true
		for _, point := range e.Path.Flatten(Flattening) {
			isStraight = isStraight && geometry.SegmentDistance(point, line.From, line.To) <= onMirror
		}
		if isStraight && onSide(line, box, side) && line.Length() > best {
			at, ok, best = i, true, line.Length()
		}
	}
	return at, ok
}

// SidesAlongWarp are the sides of a piece that may lie on the fold as its grain lies.
func SidesAlongWarp(p pieces.Piece) []Side {
	var out []Side
	for _, side := range []Side{LeftSide, RightSide, TopSide, BottomSide} {
		if _, _, err := Change(p, Said{Fold: side, Pair: No}); err == nil {
			out = append(out, side)
		}
	}
	return out
}

// FoldedSide is the side of a piece that lies on the fold; NoFold where none does.
func FoldedSide(p pieces.Piece) Side {
	for _, side := range []Side{LeftSide, RightSide, TopSide, BottomSide} {
		if at, ok := straightOn(p, side); ok && isFold(&p, &p.Edges[at]) {
			return side
		}
	}
	return NoFold
}
