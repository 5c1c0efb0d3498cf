package plan

import (
	"cmp"
	"math"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
)

// arrangement is one way to share the pieces out between two beds.
type arrangement struct {
	lay            lay.Kind // SelvedgeIn or InStretches
	double, single bed.Bed
	depth          float64 // by which the selvedge is folded in
	split          split
	guess          float64
}

// inStretches folds one length of the cloth along the warp and lays the next
// open.
func (t *Planner) inStretches() (found *SolvedLay, why, err error) {
	double, single := bed.FoldedBefore(t.Cloth), bed.OpenAfter(t.Cloth, 0)
	return t.inTwoBeds(t.shared(lay.InStretches, double, single, 0), lay.Reason{Of: lay.AllOrNothing})
}

// selvedgeIn folds one selvedge in as far as the pieces make best.
func (t *Planner) selvedgeIn() (found *SolvedLay, why, err error) {
	depths := t.depths()
	if len(depths) == 0 {
		return nil, lay.Reason{Of: lay.NothingDouble}, nil
	}
	var all []arrangement
	for _, depth := range depths {
		double, single := bed.FoldedIn(t.Cloth, depth)
		all = append(all, t.shared(lay.SelvedgeIn, double, single, depth)...)
	}
	return t.inTwoBeds(all, lay.Reason{Of: lay.NotShared})
}

// shared lists the ways to share the pieces between two beds.
func (t *Planner) shared(kind lay.Kind, double, single bed.Bed, depth float64) []arrangement {
	if double.Width <= 0 || single.Width <= 0 {
		return nil
	}
	choices, ok := choicesFor(t.strict(), double, single, t.Wanted)
	if !ok {
		return nil
	}
	return t.arrangements(kind, double, single, depth, choices)
}

// arrangements of the pieces that such choices leave.
func (t *Planner) arrangements(kind lay.Kind, double, single bed.Bed, depth float64, choices []choice) []arrangement {
	guess := func(s sharing) (float64, bool) {
		first, second, ok := s.lengths(choices, double, single)
		if kind == lay.InStretches {
			return first + second, ok
		}
		return math.Max(first, second), ok
	}
	var out []arrangement
	for _, s := range sharings(choices, guess) {
		length, _ := guess(s)
		for _, back := range t.ends() {
			double.PointBack, single.PointBack = back, back
			out = append(out, arrangement{kind, double, single, depth, s.split(choices), length})
		}
	}
	return out
}

// depths are how far the selvedge may sensibly be folded in: as far as each
// piece that can be cut double needs.
func (t *Planner) depths() []float64 {
	open := bed.Of(t.Cloth, lay.Open)
	widest := bed.Bed{Kind: lay.FoldedAlong, Shared: true, Width: bed.UsableWidth(lay.Open, t.Cloth)/2 - 1,
		V: bed.UsableWidth(lay.Open, t.Cloth) / 2}
	var out []float64
	for _, d := range t.Wanted {
		made, ok := templatesIn(t.strict(), widest, d)
		if !ok && !d.Piece.Pair && d.Cut > 1 {
			made, ok = templatesIn(t.strict(), widest, d.Of(d.Cut-1, 1))
		}
		if !ok {
			continue
		}
		for _, turn := range made[0].Turns {
			// Up to 1 mm, so that it can be measured.
			across := rules.Across(made[0].Outline, turn)
			if turn.Pin == layout.PinNone {
				low, _ := widest.FoldClear(t.Cloth)
				across += low
			}
			depth := math.Ceil(across + t.Cloth.Selvedge + open.LostLow - 1e-6)
			out = append(out, onCentreLine(t.Cloth, depth))
		}
	}
	slices.Sort(out)
	return thinned(slices.Compact(out), mostDepths)
}

// onCentreLine deepens a fold until it lies on the chosen line of the repeat,
// where pieces on the fold are to have their centre.
func onCentreLine(c cloth.Cloth, depth float64) float64 {
	r := c.Repeat
	if r.Across == 0 || len(r.Centred) == 0 {
		return depth
	}
	return r.CentreLine + float64(math.Ceil((depth-r.CentreLine)/r.Across-1e-9)*r.Across)
}

// mostDepths are tried of one cloth: more would differ by less than a seam
// [source.OwnChoice].
const mostDepths = 12

// thinned keeps a number of the values, spread evenly, the first and the last
// among them.
func thinned(values []float64, most int) []float64 {
	if len(values) <= most {
		return values
	}
	out := make([]float64, most)
	for i := range out {
		out[i] = values[i*(len(values)-1)/(most-1)]
	}
	return out
}

// How the budget of two beds is spent [source.OwnChoice].
const (
	// mostArrangements are solved, briefly, for each end that pieces may point to.
	mostArrangements = 6
	// briefShare is their share of the time; the rest improves the best.
	briefShare = 0.5
	// improvements of the best, one after the other.
	improvements = 2
)

// shortestGuessed are the arrangements that are tried, in their order.
func (t *Planner) shortestGuessed(all []arrangement) []arrangement {
	slices.SortStableFunc(all, func(a, b arrangement) int { return cmp.Compare(a.guess, b.guess) })
	return all[:min(mostArrangements*len(t.ends()), len(all))]
}

// inTwoBeds solves the arrangements that look shortest, each briefly, and the
// best of them for as long again. It returns the last reason when none can be.
func (t *Planner) inTwoBeds(all []arrangement, why error) (*SolvedLay, error, error) {
	all = t.shortestGuessed(all)
	whole := 1.0
	if len(t.Options.Lays) != 1 {
		whole = rareShare
	}
	var best *SolvedLay
	var chosen arrangement
	for _, a := range all {
		found, reason, err := t.solveBeds(a, whole*briefShare/float64(len(all)), best, nil)
		if err != nil {
			return nil, nil, err
		}
		if reason != nil {
			why = reason
		}
		if found != nil && (best == nil || found.Taken < best.Taken) {
			best, chosen = found, a
		}
	}
	if best == nil {
		return nil, why, nil
	}
	for range improvements {
		if t.isHopeless(best) {
			break
		}
		found, _, err := t.solveBeds(chosen, whole*(1-briefShare)/improvements, nil, best)
		if err != nil {
			return nil, nil, err
		}
		if found != nil && found.Taken < best.Taken {
			best = found
		}
	}
	best.Bound = t.OpenBound()
	return best, nil, nil
}

// solveBeds finds the layouts of both beds of an arrangement, with a share of
// the budget; warm is a layout of the same to improve on. It gives up, without
// a reason, when the lay comes out no shorter than the one to beat.
func (t *Planner) solveBeds(a arrangement, share float64, beat, warm *SolvedLay) (found *SolvedLay, why, err error) {
	demands, beds := [][]rules.Demand{a.split.double, a.split.single}, []bed.Bed{a.double, a.single}
	shares := bedShares(a, share, warm)
	var solved []SolvedBed
	var known lay.Places
	for i, b := range beds {
		if i == 1 && a.lay == lay.InStretches {
			b = bed.OpenAfter(t.Cloth, solved[0].Layout.Length)
			b.PointBack = a.single.PointBack
		}
		templates, why := rules.TemplatesOf(t.strict(), b, demands[i])
		if why != nil {
			return nil, why, nil
		}
		var start *layout.Layout
		if warm != nil {
			start = &warm.Beds[i].Layout
		}
		one, why, err := t.solveAt(a.lay, b, templates, shares[i], known, start)
		if one == nil {
			return nil, why, err
		}
		if beat != nil && one.Bed.Before+one.Layout.Length >= beat.Taken {
			return nil, nil, nil
		}
		solved, known = append(solved, *one), one.matching(t.Cloth).Found(one.Problem, one.Layout)
	}
	found = LayOf(t.Cloth, solved...)
	found.Depth = a.depth
	t.tell(a.lay, found)
	return found, nil, nil
}

// bedShares divides a share of the budget. Of beds that are solved already and
// lie side by side only the longer one matters.
func bedShares(a arrangement, share float64, warm *SolvedLay) [2]float64 {
	if warm == nil || a.lay == lay.InStretches {
		return [2]float64{share / 2, share / 2}
	}
	if warm.Beds[0].Layout.Length > warm.Beds[1].Layout.Length {
		return [2]float64{float64(0.9 * share), float64(0.1 * share)}
	}
	return [2]float64{float64(0.1 * share), float64(0.9 * share)}
}
