package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// gapTolerance, mm, absorbs the rounding of turned outlines [source.OwnChoice].
const gapTolerance = 1e-2

var _ = register(rule{whole: checkGaps})

// checkGaps: two pieces keep the gap of the cloth where they lie on one part of the lay,
// and so do any two that are cut from the open cloth, in whichever plies, also the two
// of one template beside the fold. The outlines do not meet (verify.Layout sees to
// that), so that the corner of one is the point nearest to the other.
func checkGaps(p lay.Plan, _ []openedPiece, _ []pieces.Piece) error {
	gap := p.Cloth.Gap
	if gap == 0 {
		return nil
	}
	for i, one := range p.Pieces {
		for _, other := range p.Pieces[:i+1] {
			if apartBy(p, one, other, gap) < gap-gapTolerance {
				return fmt.Errorf("%s copy %d lies nearer to %s copy %d than the gap", one.Name, one.Copy, other.Name, other.Copy)
			}
		}
	}
	return nil
}

// apartBy is how far two templates lie apart, mm, where the cut for one may reach the
// other; see between. A half on the fold and its other half are one.
func apartBy(p lay.Plan, one, other lay.Laid, enough float64) float64 {
	same := one.Name == other.Name && one.Garment == other.Garment && one.Size == other.Size && one.Copy == other.Copy
	least := enough
	if one.Part == other.Part && !same {
		least = between(one.Outline, other.Outline, enough)
	}
	for i, a := range onItsPlies(p, one) {
		for k, b := range onItsPlies(p, other) {
			if same && (i >= k || one.OnFold || one.FromLower) {
				continue
			}
			least = math.Min(least, between(a, b, enough))
		}
	}
	return least
}

// onItsPlies is the outline of a template on the open cloth, in each ply.
func onItsPlies(p lay.Plan, l lay.Laid) []orb.Ring {
	var out []orb.Ring
	for _, over := range foldedOver(p, l) {
		var ring orb.Ring
		for _, q := range l.Outline {
			ring = append(ring, over.place(q))
		}
		out = append(out, ring)
	}
	return out
}

// between two outlines, mm; those that are surely no nearer than enough count as
// that far.
func between(a, b orb.Ring, enough float64) float64 {
	if !a.Bound().Pad(enough).Intersects(b.Bound()) {
		return enough
	}
	least := math.Inf(1)
	for _, p := range a {
		least = math.Min(least, off(b, p))
	}
	for _, p := range b {
		least = math.Min(least, off(a, p))
	}
	return least
}
