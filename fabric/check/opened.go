package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// openedPiece is one piece as it comes out of one ply, on the open cloth: u
// along the warp from the cut end, v across from the outer edge of the
// selvedge nearest to the cutter.
type openedPiece struct {
	lay.Laid
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
	width := p.Cloth.Width
	if !p.Cloth.Shrinkage.CutFirst {
		width -= width * p.Cloth.Shrinkage.Weft
	}
	selvedge, part := p.Cloth.Selvedge, p.Parts[l.Part]
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
// opens into one whole piece, is given once.
func openedOut(p lay.Plan, l lay.Laid) []openedPiece {
	var out []openedPiece
	m := motion(l)
	for i, over := range foldedOver(p, l) {
		if i > 0 && l.OnFold {
			continue
		}
		o := openedPiece{Laid: l, over: over, faceDown: l.Mirrored != over.mirrors}
		o.grain = [2]orb.Point{over.place(m.Apply(l.Piece.Grain.From)), over.place(m.Apply(l.Piece.Grain.To))}
		for _, q := range l.Outline {
			o.outline = append(o.outline, over.place(q))
		}
		out = append(out, o)
	}
	return out
}

// checkOnCloth is the second half of rule 2: the piece, opened out, lies
// between the selvedges and the cut ends and off every flaw.
func checkOnCloth(p lay.Plan, o openedPiece) error {
	width := p.Cloth.Width
	if !p.Cloth.Shrinkage.CutFirst {
		width *= 1 - p.Cloth.Shrinkage.Weft
	}
	outlines := []orb.Ring{o.outline}
	if o.OnFold {
		var other orb.Ring
		for _, q := range o.Outline {
			other = append(other, foldedOver(p, o.Laid)[1].place(q))
		}
		outlines = append(outlines, other)
	}
	for _, outline := range outlines {
		box := outline.Bound()
		if box.Min[0] < -edgeTolerance || box.Max[0] > p.Taken+edgeTolerance ||
			box.Min[1] < p.Cloth.Selvedge-edgeTolerance || box.Max[1] > width-p.Cloth.Selvedge+edgeTolerance {
			return fmt.Errorf("%s copy %d lies over the selvedge or the end of the cloth", o.Name, o.Copy)
		}
		for _, flaw := range p.Cloth.Flaws {
			if touches(outline, flaw.Outline) {
				return fmt.Errorf("%s copy %d lies on %s", o.Name, o.Copy, flaw)
			}
		}
	}
	return nil
}

// touches reports whether a piece reaches into a flaw: a corner of either
// inside the other, or two edges that cross, by more than the tolerance.
func touches(piece, flaw orb.Ring) bool {
	box, other := piece.Bound(), flaw.Bound()
	if box.Max[0] <= other.Min[0]+edgeTolerance || box.Min[0] >= other.Max[0]-edgeTolerance ||
		box.Max[1] <= other.Min[1]+edgeTolerance || box.Min[1] >= other.Max[1]-edgeTolerance {
		return false
	}
	ring := closed(flaw)
	return reachesInto(piece, ring) || reachesInto(ring, piece)
}

// reachesInto tries the corners of a ring, and points along its edges.
func reachesInto(ring, other orb.Ring) bool {
	for i := 1; i < len(ring); i++ {
		a, b := clampedTo(ring[i-1], other), clampedTo(ring[i], other)
		steps := int(math.Ceil(distance(a, b)/2)) + 1
		for k := range steps {
			t := float64(k) / float64(steps)
			q := orb.Point{a[0] + t*(b[0]-a[0]), a[1] + t*(b[1]-a[1])}
			if covers(other, q) && off(other, q) > 10*edgeTolerance {
				return true
			}
		}
	}
	return false
}

// clampedTo brings the far corners of an endless band near to the ring: bands
// have sides parallel to the axes, so that this moves them along themselves.
func clampedTo(p orb.Point, ring orb.Ring) orb.Point {
	box := ring.Bound()
	for axis := range 2 {
		if math.Abs(p[axis]) >= cloth.Endless/2 {
			p[axis] = math.Max(box.Min[axis]-1, math.Min(p[axis], box.Max[axis]+1))
		}
	}
	return p
}
