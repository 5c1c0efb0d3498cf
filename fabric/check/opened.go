package check

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
)

// openedPiece is one piece as it comes out of one ply, on the open cloth: u
// along the warp from the cut end, v across from the outer edge of the
// selvedge nearest to the cutter.
type openedPiece struct {
	lay.Laid
	source   int  // of the pieces asked
	faceDown bool // the right side of the cloth is the wrong side of the piece
	grain    [2]orb.Point
	outline  orb.Ring
	over     overlay
}

// overlay says where a ply has the places of the lay.
type overlay struct {
	place   func(orb.Point) orb.Point
	mirrors bool
}

// foldedOver gives the plies that a piece is cut from, by the way the cloth is
// folded. It is written from the meaning of each lay, on the whole width of
// the cloth, apart from the code that plans.
func foldedOver(p lay.Plan, l lay.Laid) []overlay {
	width := widthLaid(p.Cloth)
	selvedge, part := p.Cloth.Selvedge, p.Beds[l.Bed]
	// about gives two plies with a fold along the warp at v = fold, from
	// which the cutter measures up or, at a far fold, down.
	about := func(fold, y0, sign float64) []overlay {
		return []overlay{
			{func(q orb.Point) orb.Point { return orb.Point{q[0], fold + sign*(q[1]-y0)} }, false},
			{func(q orb.Point) orb.Point { return orb.Point{q[0], fold - sign*(q[1]-y0)} }, true},
		}
	}
	flat := func(v float64) overlay {
		return overlay{func(q orb.Point) orb.Point { return orb.Point{q[0], q[1] + v} }, false}
	}
	switch {
	case p.Lay == lay.FoldedAlong, p.Lay == lay.InStretches && part.Plies == 2:
		return about(width/2, 0, 1)
	case p.Lay == lay.FoldedAcross:
		return []overlay{
			{func(q orb.Point) orb.Point { return orb.Point{p.Length + q[0], q[1] + selvedge} }, false},
			{func(q orb.Point) orb.Point { return orb.Point{p.Length - q[0], q[1] + selvedge} }, true},
		}
	case p.Lay == lay.CutAcross:
		second := p.Taken - p.Length
		return []overlay{flat(selvedge),
			{func(q orb.Point) orb.Point { return orb.Point{second + q[0], width - selvedge - q[1]} }, true}}
	case p.Lay == lay.SelvedgeIn && part.Plies == 2:
		return about(p.FoldedIn, 0, 1)
	case p.Lay == lay.SelvedgeIn:
		return []overlay{flat(p.FoldedIn)}
	case p.Lay == lay.BothSelvedgesIn:
		if l.Outline.Bound().Center()[1] < width/4 {
			return about(width/4, 0, 1)
		}
		return about(width*3/4, width/2, 1)
	}
	return []overlay{flat(selvedge)}
}

// openedOut gives each piece that a template yields; a half on the fold, which
// opens into one whole piece, is given once, and so is what is cut from the lower ply
// alone.
func openedOut(p lay.Plan, l lay.Laid, source int) []openedPiece {
	var out []openedPiece
	m := motion(l)
	for i, over := range foldedOver(p, l) {
		if i > 0 && (l.OnFold || l.FromLower) {
			continue
		}
		o := openedPiece{Laid: l, source: source, over: over, faceDown: l.Mirrored != over.mirrors}
		o.grain = [2]orb.Point{over.place(m.Apply(l.Piece.Grain.From)), over.place(m.Apply(l.Piece.Grain.To))}
		for _, q := range l.Outline {
			o.outline = append(o.outline, over.place(q))
		}
		out = append(out, o)
	}
	return out
}
