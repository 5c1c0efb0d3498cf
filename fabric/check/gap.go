package check

import (
	"cmp"
	"fmt"
	"math"
	"slices"

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
	onParts, onCloth := make([][]outlined, len(p.Beds)), []outlined{}
	for i, l := range p.Pieces {
		if l.Bed < 0 || l.Bed >= len(p.Beds) {
			continue // which is refused before
		}
		onParts[l.Bed] = append(onParts[l.Bed], outlinedOf(i, 0, l.Outline))
		for ply, ring := range onItsPlies(p, l) {
			onCloth = append(onCloth, outlinedOf(i, ply, ring))
		}
	}
	for _, all := range append(onParts, onCloth) {
		if err := checkApart(p, all); err != nil {
			return err
		}
	}
	return nil
}

// outlined is what is cut of a template, on a part of the lay or in a ply.
type outlined struct {
	template, ply int
	ring          orb.Ring
	box           orb.Bound
}

func outlinedOf(template, ply int, ring orb.Ring) outlined {
	return outlined{template, ply, ring, ring.Bound()}
}

// checkApart compares each outline with those that begin along the cloth before it ends.
func checkApart(p lay.Plan, all []outlined) error {
	slices.SortStableFunc(all, func(a, b outlined) int { return cmp.Compare(a.box.Min[0], b.box.Min[0]) })
	for i, a := range all {
		for _, b := range all[i+1:] {
			if b.box.Min[0] > a.box.Max[0]+p.Cloth.Gap {
				break
			}
			one, other := p.Pieces[max(a.template, b.template)], p.Pieces[min(a.template, b.template)]
			if isCutAsOne(one, other) || between(a, b, p.Cloth.Gap) >= p.Cloth.Gap-gapTolerance {
				continue
			}
			return fmt.Errorf("%s copy %d lies nearer to %s copy %d than the gap", one.Name, one.Copy, other.Name, other.Copy)
		}
	}
	return nil
}

// isCutAsOne says of two outlines that they are of one template that is cut once: on the
// fold both halves are one, and what is cut from the lower ply has no second.
func isCutAsOne(one, other lay.Laid) bool {
	same := one.Name == other.Name && one.Garment == other.Garment && one.Size == other.Size && one.Copy == other.Copy
	return same && (one.OnFold || one.FromLower)
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
func between(a, b outlined, enough float64) float64 {
	if !a.box.Pad(enough).Intersects(b.box) {
		return enough
	}
	least := enough
	for _, pair := range [][2]outlined{{a, b}, {b, a}} {
		near := pair[1].box.Pad(enough)
		for _, corner := range pair[0].ring {
			if near.Contains(corner) {
				least = math.Min(least, off(pair[1].ring, corner))
			}
		}
	}
	return least
}
