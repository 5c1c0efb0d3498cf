package app

import (
	"cmp"
	"context"
	"slices"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// This file lets one answer begin where another lies: what is laid on the narrower cloth,
// with the nap, in the larger size or garment by garment is nearly always a layout of the
// easier question too. The order is that of the questions, so that answers depend on them
// alone.

// isEasier reports whether a layout on one cloth is one on another, which differs from it
// in nothing but a greater width and a freer nap. A repeat lies otherwise to the fold of
// another width, and a flaw otherwise on another bolt.
func isEasier(than, c cloth.Cloth) bool {
	if len(c.InItsWidth().ByHand)+len(than.InItsWidth().ByHand) > 0 {
		return false
	}
	if c.Width < than.Width || c.Nap != than.Nap && c.Nap != cloth.EitherWay || !c.Repeat.IsPlain() || len(c.Flaws) > 0 {
		return false
	}
	same, than := c.Untouched(), than.Untouched()
	same.Name, same.Width, same.Nap = than.Name, than.Width, than.Nap
	same.PurchaseStep, same.Minimum, same.Safety, same.Straighten = than.PurchaseStep, than.Minimum, than.Safety,
		than.Straighten
	return store.Key(same, nil) == store.Key(than, nil)
}

// pair is an easier question and a harder one, by their places in a list.
type pair struct{ easier, harder int }

// widthsInPairs pairs each cloth with the next narrower one that is like it.
func widthsInPairs(cloths []cloth.Cloth) []pair {
	order := make([]int, len(cloths))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(cloths[a].Width, cloths[b].Width) })
	var out []pair
	for k, i := range order {
		for n := k - 1; n >= 0; n-- {
			if narrower := order[n]; cloths[narrower].Name == cloths[i].Name && isEasier(cloths[narrower], cloths[i]) {
				out = append(out, pair{easier: i, harder: narrower})
				break
			}
		}
	}
	return out
}

// settle searches once more where an easier question came out longer than a harder one,
// from the layouts of that.
func (s *solver) settle(ctx context.Context, problems []problem, answers []answer, pairs []pair) error {
	for _, p := range pairs {
		easier, harder := answers[p.easier], answers[p.harder]
		if harder.impossible != nil || easier.impossible == nil && least(easier.need) <= least(harder.need)+plan.SameLength {
			continue
		}
		if easier.isLeftOut() || s.leavesOut(ctx, problems[p.easier]) {
			continue
		}
		again := problems[p.easier]
		again.known = asPiecesOf(harder.need.Found, again.all)
		found, err := s.solve(ctx, again, s.search.Workers)
		if err != nil {
			return err
		}
		if found.impossible == nil && (easier.impossible != nil || least(found.need) < least(easier.need)) {
			found.ended = easier.ended.And(found.ended)
			answers[p.easier] = found
		}
	}
	return nil
}

// asPiecesOf gives the pieces of plans the sizes of others that have their names.
func asPiecesOf(plans []lay.Plan, all []pieces.Piece) []lay.Plan {
	var out []lay.Plan
	for _, p := range plans {
		p.Pieces = slices.Clone(p.Pieces)
		for i, l := range p.Pieces {
			for _, piece := range all {
				if piece.Name == l.Name && piece.Garment == l.Garment {
					p.Pieces[i].Size = piece.Size
				}
			}
		}
		out = append(out, p)
	}
	return out
}
