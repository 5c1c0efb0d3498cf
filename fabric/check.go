package fabric

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Check says whether a plan keeps the rules of the trade for the pieces that
// were asked. It is written apart from the code that makes plans, and starts
// again from the pieces:
//
//  1. the cutting line of each piece, moved as the plan says, is covered by
//     the outline that was laid, and that outline is hardly larger;
//  2. every outline lies on the usable cloth;
//  3. the right number of each piece comes out of all plies, and of a pair as
//     many right as left ones;
//  4. on a folded cloth the fold edge lies exactly on the fold, and what lies
//     off it is a pair or is its own mirror image;
//  5. the grainline lies as the piece asks;
//  6. the nap runs the same way over all pieces, or over all of a garment.
//
// That pieces do not overlap is checked by nest.Verify.
func (p LayPlan) Check(all []pieces.Piece) error {
	var faults []error
	counts := make([]tally, len(all))
	naps := map[string]int{}
	for _, l := range p.Pieces {
		source := sourceOf(l, all)
		if source < 0 {
			faults = append(faults, fmt.Errorf("%s was not asked for", l.Name))
			continue
		}
		counts[source].add(l, p.Plies)
		faults = append(faults, p.checkPlace(l), p.checkFold(l, all[source]), checkGrain(l), p.checkNap(l, naps))
	}
	for i, piece := range all {
		faults = append(faults, counts[i].check(piece))
	}
	return errors.Join(faults...)
}

// tally counts what the plies give of one piece.
type tally struct{ right, left, whole int }

func (t *tally) add(l Laid, plies int) {
	switch {
	case l.OnFold:
		t.whole++
	case plies == 2:
		t.right++
		t.left++
	case l.Mirrored:
		t.left++
	default:
		t.right++
	}
}

func (t tally) check(piece pieces.Piece) error {
	if total := t.right + t.left + t.whole; total != piece.Cut {
		return fmt.Errorf("%s: %d come out of the lay and %d are wanted", piece.Name, total, piece.Cut)
	}
	if piece.Pair && piece.Fold == "" && t.right != t.left {
		return fmt.Errorf("%s: %d right and %d left come out of the lay", piece.Name, t.right, t.left)
	}
	return nil
}

func sourceOf(l Laid, all []pieces.Piece) int {
	for i, piece := range all {
		if piece.Name == l.Name && piece.Garment == l.Garment && piece.Size == l.Size {
			return i
		}
	}
	return -1
}

// Tolerances of the check, mm.
const (
	coverTolerance = 0.03
	excessAllowed  = 0.15
	edgeTolerance  = 1e-3
)

func (l Laid) motion() pieces.Motion { return motionOf(l.Turn, l.Mirrored, l.X, l.Y) }

// checkPlace is rules 1 and 2.
func (p LayPlan) checkPlace(l Laid) error {
	cut, err := l.Piece.Map(l.motion()).CuttingOutline(fineTolerance)
	if err != nil {
		return err
	}
	var around float64
	for i, q := range cut {
		if !covers(l.Outline, q) && distance(q, nearest(l.Outline, q)) > coverTolerance {
			return fmt.Errorf("%s copy %d: its cutting line is not inside the outline laid", l.Name, l.Copy)
		}
		if i > 0 {
			around += distance(cut[i-1], q)
		}
	}
	if math.Abs(areaOf(l.Outline)) > math.Abs(areaOf(cut))+excessAllowed*around {
		return fmt.Errorf("%s copy %d: the outline laid is too large", l.Name, l.Copy)
	}
	box := l.Outline.Bound()
	if box.Min[0] < -edgeTolerance || box.Min[1] < -edgeTolerance ||
		box.Max[0] > p.Length+edgeTolerance || box.Max[1] > p.Width+edgeTolerance {
		return fmt.Errorf("%s copy %d hangs over the cloth", l.Name, l.Copy)
	}
	return nil
}

// covers reports whether a point lies inside a ring (even-odd rule).
func covers(ring orb.Ring, p orb.Point) bool {
	inside := false
	for i := 1; i < len(ring); i++ {
		a, b := ring[i-1], ring[i]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(p[1]-a[1])/(b[1]-a[1])*(b[0]-a[0]) {
			inside = !inside
		}
	}
	return inside
}

// checkFold is rule 4.
func (p LayPlan) checkFold(l Laid, asked pieces.Piece) error {
	if l.OnFold != (p.Lay == FoldedAlong && asked.Fold != "") {
		return fmt.Errorf("%s copy %d: it is wrongly laid to the fold", l.Name, l.Copy)
	}
	if l.OnFold {
		edge, _ := l.Piece.Map(l.motion()).Edge(asked.Fold)
		start, end := endsOf(edge)
		if math.Abs(start[1]) > edgeTolerance || math.Abs(end[1]) > edgeTolerance {
			return fmt.Errorf("%s copy %d: its fold edge is not on the fold", l.Name, l.Copy)
		}
		return nil
	}
	if asked.Fold != "" && math.Abs(areaOf(l.Seam)) < 1.99*math.Abs(areaOf(asked.SeamOutline(drawTolerance))) {
		return fmt.Errorf("%s copy %d: it is a half piece and lies away from a fold", l.Name, l.Copy)
	}
	if p.Plies == 2 && !asked.Pair && !turnsIntoItsImage(l, p.Cloth.Nap) {
		return fmt.Errorf("%s copy %d: the upper ply gives a mirror image, and the piece is no pair", l.Name, l.Copy)
	}
	return nil
}

// turnsIntoItsImage tries whether the image in the other ply (y becomes -y)
// is the same piece, turned by quarter turns to where its grain may lie; with
// a nap, only by a turn that keeps the nap.
func turnsIntoItsImage(l Laid, nap Nap) bool {
	centre := l.Outline.Bound().Center()
	step := 2
	if l.Piece.Grain.Lie == pieces.Bias {
		step = 1
	}
	for quarters := 0; quarters < 4; quarters += step {
		if nap != EitherWay && !keepsNap(l, quarters) {
			continue
		}
		same := true
		for _, p := range l.Outline {
			x, y := quarterTurned(p[0]-centre[0], centre[1]-p[1], quarters)
			q := orb.Point{centre[0] + x, centre[1] + y}
			same = same && distance(q, nearest(l.Outline, q)) < 2*alikeTolerance
		}
		if same {
			return true
		}
	}
	return false
}

// keepsNap reports whether the nap runs the same way over the piece and over
// its image, which is the piece turned back by the quarter turns.
func keepsNap(l Laid, quarters int) bool {
	x, y := l.Grain[1][0]-l.Grain[0][0], l.Grain[1][1]-l.Grain[0][1]
	turnedX, turnedY := quarterTurned(x, y, 4-quarters)
	if l.Piece.Grain.Lie == pieces.CrossGrain {
		return y*turnedY > 0
	}
	return x*turnedX > 0
}

func quarterTurned(x, y float64, quarters int) (float64, float64) {
	for range quarters {
		x, y = -y, x
	}
	return x, y
}

// checkGrain is rule 5: the warp is x.
func checkGrain(l Laid) error {
	grain := l.Piece.Map(l.motion()).Grain
	along, across := math.Abs(grain.To[0]-grain.From[0]), math.Abs(grain.To[1]-grain.From[1])
	off := 0.0
	switch grain.Lie {
	case pieces.StraightGrain:
		off = across
	case pieces.CrossGrain:
		off = along
	case pieces.Bias:
		off = math.Abs(along - across)
	}
	if off > 0.002*(along+across) {
		return fmt.Errorf("%s copy %d: its grainline lies wrongly on the cloth", l.Name, l.Copy)
	}
	return nil
}

// checkNap is rule 6; naps holds the way of each garment met so far.
func (p LayPlan) checkNap(l Laid, naps map[string]int) error {
	if p.Cloth.Nap == EitherWay {
		return nil
	}
	garment := ""
	if p.Cloth.Nap == OneWayPerGarment {
		garment = l.Garment
	}
	way := 1
	rise := l.Grain[1][0] - l.Grain[0][0]
	if l.Piece.Grain.Lie == pieces.CrossGrain {
		rise = l.Grain[1][1] - l.Grain[0][1]
		if l.Mirrored {
			rise = -rise
		}
	}
	if rise < 0 {
		way = -1
	}
	if naps[garment] == -way {
		return fmt.Errorf("%s copy %d: it lies against the nap", l.Name, l.Copy)
	}
	naps[garment] = way
	return nil
}
