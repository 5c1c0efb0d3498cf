// Package check proves a lay by the rules of the trade, from the pieces that were
// asked and the cloth alone. It imports nothing that makes plans, and has its own
// geometry.
package check

import (
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

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
	if piece.Pair && piece.Fold == "" && t.right != t.left && !alike {
		return fmt.Errorf("%s: %d right and %d left come out of the lay", piece.Name, t.right, t.left)
	}
	return nil
}

// checkPlace is rules 1 and 2.
func checkPlace(p lay.Plan, l lay.Laid) error {
	cut, err := l.Piece.Map(motion(l)).CuttingOutline(fineTolerance)
	if err != nil {
		return err
	}
	var around float64
	for i, q := range cut {
		if !covers(l.Outline, q) && off(l.Outline, q) > coverTolerance {
			return fmt.Errorf("%s copy %d: its cutting line is not inside the outline laid", l.Name, l.Copy)
		}
		if i > 0 {
			around += distance(cut[i-1], q)
		}
	}
	if math.Abs(area(l.Outline)) > math.Abs(area(cut))+excessAllowed*around {
		return fmt.Errorf("%s copy %d: the outline laid is too large", l.Name, l.Copy)
	}
	box, part := l.Outline.Bound(), p.Parts[l.Part]
	if box.Min[0] < part.X-edgeTolerance || box.Min[1] < part.Y-edgeTolerance ||
		box.Max[0] > part.X+part.Length+edgeTolerance || box.Max[1] > part.Y+part.Width+edgeTolerance ||
		box.Max[0] > p.Length+edgeTolerance || box.Max[1] > p.Width+edgeTolerance {
		return fmt.Errorf("%s copy %d hangs over the cloth", l.Name, l.Copy)
	}
	return nil
}

// checkFold is the first half of rule 4: the two plies give the two halves of
// a whole piece when both bring the fold edge to the same place.
func checkFold(p lay.Plan, l lay.Laid, asked pieces.Piece) error {
	plies := foldedOver(p, l)
	if l.OnFold != (asked.Fold != "" && len(plies) == 2 && !p.Lay.IsAcross()) {
		return fmt.Errorf("%s copy %d: it is wrongly laid to the fold", l.Name, l.Copy)
	}
	if !l.OnFold {
		if asked.Fold != "" && math.Abs(area(l.Seam)) < 1.99*math.Abs(area(asked.SeamOutline(seamTolerance))) {
			return fmt.Errorf("%s copy %d: it is a half piece and lies away from a fold", l.Name, l.Copy)
		}
		return nil
	}
	edge, _ := l.Piece.Map(motion(l)).Edge(asked.Fold)
	start, end := edge.Path.Start(), edge.Path.End()
	for _, q := range []orb.Point{start, end} {
		if distance(plies[0].place(q), plies[1].place(q)) > 2*edgeTolerance {
			return fmt.Errorf("%s copy %d: its fold edge is not on the fold", l.Name, l.Copy)
		}
	}
	return nil
}

// checkFace is the second half of rule 4.
func checkFace(p lay.Plan, o openedPiece, asked pieces.Piece) error {
	if !o.faceDown || o.OnFold || asked.Pair || p.Cloth.Alike {
		return nil
	}
	nap := p.Cloth.Nap
	if slices.Contains(p.Cloth.OneWayPieces, o.Name) {
		nap = cloth.OneWay
	}
	if !turnsIntoItsImage(o.Laid, nap) {
		return fmt.Errorf("%s copy %d: the upper ply gives a mirror image, and the piece is no pair", o.Name, o.Copy)
	}
	return nil
}

// checkSize is rule 7, by the size of the seam line along and across the
// grain.
func checkSize(p lay.Plan, l lay.Laid, asked pieces.Piece) error {
	if asked.Fold != "" && !l.OnFold {
		asked = asked.Unfolded()
	}
	along, across := growth(p.Cloth, asked.Grain.Lie)
	wantAlong, wantAcross := grainExtent(asked)
	gotAlong, gotAcross := grainExtent(l.Piece)
	if math.Abs(gotAlong-along*wantAlong) > excessAllowed || math.Abs(gotAcross-across*wantAcross) > excessAllowed {
		return fmt.Errorf("%s copy %d: it is not cut in the size that the shrinkage asks", l.Name, l.Copy)
	}
	return nil
}

// grainExtent is the size of the seam line along and across the grainline.
func grainExtent(p pieces.Piece) (along, across float64) {
	ux, uy := p.Grain.To[0]-p.Grain.From[0], p.Grain.To[1]-p.Grain.From[1]
	length := math.Hypot(ux, uy)
	ux, uy = ux/length, uy/length
	low, high := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, q := range p.SeamOutline(seamTolerance / 10) {
		for i, v := range []float64{ux*q[0] + uy*q[1], -uy*q[0] + ux*q[1]} {
			low[i], high[i] = math.Min(low[i], v), math.Max(high[i], v)
		}
	}
	return high[0] - low[0], high[1] - low[1]
}

// checkGrain is rule 5: the warp is x.
func checkGrain(p lay.Plan, o openedPiece) error {
	along, across := math.Abs(o.grain[1][0]-o.grain[0][0]), math.Abs(o.grain[1][1]-o.grain[0][1])
	off := 0.0
	switch o.Piece.Grain.Lie {
	case pieces.StraightGrain:
		off = across
	case pieces.CrossGrain:
		off = along
	case pieces.Bias:
		off = math.Abs(along - across)
	}
	allowed := p.Cloth.Tilt
	if o.Piece.Grain.Lie == pieces.Bias {
		allowed *= 2 // both the run and the rise change
	}
	if off > (allowed+0.002)*(along+across) {
		return fmt.Errorf("%s copy %d: its grainline lies wrongly on the cloth", o.Name, o.Copy)
	}
	return nil
}

// checkNap is rule 6; naps holds the way of each garment met so far.
func checkNap(p lay.Plan, o openedPiece, naps map[string]int) error {
	group := ""
	switch {
	case p.Cloth.Nap == cloth.OneWay:
	case slices.Contains(p.Cloth.OneWayPieces, o.Name):
		group = "pieces that go one way"
	case p.Cloth.Nap == cloth.OneWayPerGarment:
		group = "garment " + o.Garment
	default:
		return nil
	}
	rise := o.grain[1][0] - o.grain[0][0]
	if o.Piece.Grain.Lie == pieces.CrossGrain {
		rise = o.grain[1][1] - o.grain[0][1]
		if o.faceDown {
			rise = -rise
		}
	}
	way := 1
	if rise < 0 {
		way = -1
	}
	if naps[group] == -way {
		return fmt.Errorf("%s copy %d: it lies against the nap", o.Name, o.Copy)
	}
	naps[group] = way
	return nil
}
