package fabric

import (
	"errors"
	"math"
	"slices"

	"ellwand/nest"
	"ellwand/pieces"
)

// split is how the pieces are shared between a double bed and a single one.
type split struct{ double, single []demand }

// choice of a piece between the two beds.
type choice struct {
	demand
	// onDouble is how many can come out of the double bed; the rest cannot.
	onDouble int
}

// choicesFor asks of every piece how many of it a double bed can give: all, or
// none, or, of single pieces that are their own mirror image, all but the odd
// one.
func choicesFor(cloth Cloth, double bed, wanted []demand) []choice {
	out := make([]choice, len(wanted))
	for i, d := range wanted {
		out[i].demand = d
		for _, n := range []int{d.cut, d.cut - 1} {
			if n > 0 && (n == d.cut || !d.piece.Pair) && fits(cloth, double, d.of(n, 1)) {
				out[i].onDouble = n
				break
			}
		}
	}
	return out
}

func fits(cloth Cloth, b bed, d demand) bool {
	if b.width <= 0 {
		return false
	}
	_, err := templatesOf(cloth, b, []demand{d})
	return err == nil
}

// splitBy makes the demands of both beds: open names the pieces that could be
// cut double and are not.
func splitBy(choices []choice, open func(choice) bool) split {
	var out split
	for _, c := range choices {
		n := c.onDouble
		if open(c) {
			n = 0
		}
		first := 1
		if n > 0 {
			out.double = append(out.double, c.of(n, 1))
			first += templatesFor(c.piece, n)
		}
		if rest := c.cut - n; rest > 0 {
			out.single = append(out.single, c.of(rest, first))
		}
	}
	return out
}

// templatesFor so many of a piece on the double bed.
func templatesFor(piece pieces.Piece, cut int) int {
	if piece.Fold != "" {
		return cut
	}
	return cut / 2
}

// openBound is a length of cloth that no lay can beat, since every lay opened
// out is an open one: that of the open cloth, without a gap. 0 when the
// pieces cannot be laid open.
func (t *table) openBound() float64 {
	cloth := t.cloth
	cloth.Gap = 0
	b := bedOf(cloth, Open)
	templates, err := templatesOf(cloth, b, t.wanted)
	if err != nil {
		return 0
	}
	problem, err := plainProblem(cloth, b, templates)
	if err != nil {
		return 0
	}
	return nest.Bound(problem)
}

// strict is the cloth as it binds the pieces of a lay of two beds, which are
// solved one after the other: garments that may oppose each other all point
// one way there.
func (t *table) strict() Cloth {
	cloth := t.cloth
	if cloth.Nap == OneWayPerGarment {
		cloth.Nap = OneWay
	}
	return cloth
}

// guess is how long a bed will be, before it is solved: by area at the
// efficiency that garments usually reach, by the longest piece, and by the
// pieces that queue along the fold.
func guess(b bed, templates []template) float64 {
	const usualEfficiency = 0.82
	area, longest, queue := 0.0, 0.0, 0.0
	for _, t := range templates {
		area += float64(t.copies) * math.Abs(areaOf(t.outline))
		along := math.Inf(1)
		for _, turn := range t.turns {
			along = math.Min(along, lengthAlong(t, turn))
		}
		longest = math.Max(longest, along)
		if t.onFold {
			queue += float64(t.copies) * along
		}
	}
	return math.Max(area/(usualEfficiency*b.width), math.Max(longest, queue))
}

// lengthAlong is the extent of a turned template in x.
func lengthAlong(t template, turn nest.Turn) float64 {
	turn.Degrees += 90
	return across(t.outline, turn)
}

// inStretches folds one length of the cloth along the warp and lays the next
// open: what cannot be cut double, and what is better cut singly, goes on the
// open one.
func (t *table) inStretches() (found *spread, why, err error) {
	double := bedOf(t.cloth, FoldedAlong)
	choices := choicesFor(t.strict(), double, t.wanted)
	var best *spread
	why = errors.New("everything can be cut from the folded cloth, or nothing can; lay it folded or open throughout")
	for _, open := range t.openCandidates(choices, double) {
		s := splitBy(choices, func(c choice) bool { return slices.Contains(open, c.source) })
		if len(s.double) == 0 || len(s.single) == 0 {
			continue
		}
		one, reason, err := t.stretches(double, s)
		if err != nil {
			return nil, nil, err
		}
		if one == nil {
			why = reason
			continue
		}
		if best == nil || one.taken < best.taken {
			best = one
		}
	}
	if best != nil {
		best.bound = t.openBound()
	}
	return best, why, nil
}

// openCandidates are the sets of pieces to try on the open stretch besides
// those that must lie there: none, and each of the three pieces that leave
// the most beside them on the folded cloth.
func (t *table) openCandidates(choices []choice, double bed) [][]int {
	type waste struct {
		source int
		area   float64
	}
	var wastes []waste
	out := [][]int{nil}
	for _, c := range choices {
		if c.onDouble == 0 {
			continue
		}
		templates, err := templatesOf(t.strict(), double, []demand{c.of(c.onDouble, 1)})
		if err != nil {
			continue
		}
		beside := math.Inf(1)
		for _, turn := range templates[0].turns {
			wide := across(templates[0].outline, turn)
			if 2*wide > double.width { // nothing of its size fits beside it
				beside = math.Min(beside, (double.width-wide)*lengthAlong(templates[0], turn))
			}
		}
		if !math.IsInf(beside, 1) {
			wastes = append(wastes, waste{c.source, beside})
		}
	}
	slices.SortStableFunc(wastes, func(a, b waste) int { return int(math.Copysign(1, b.area-a.area)) })
	for i := range min(3, len(wastes)) {
		out = append(out, []int{wastes[i].source})
	}
	return out
}

// stretches solves a folded stretch and the open one behind it.
func (t *table) stretches(double bed, s split) (found *spread, why, err error) {
	templates, why := templatesOf(t.strict(), double, s.double)
	if why != nil {
		return nil, why, nil
	}
	first, why, err := t.solveAt(InStretches, double, templates, 1, places{})
	if first == nil {
		return nil, why, err
	}
	single := openAfter(t.cloth, first.layout.Length)
	if templates, why = templatesOf(t.strict(), single, s.single); why != nil {
		return nil, why, nil
	}
	second, why, err := t.solveAt(InStretches, single, templates, 1, first.matching(t.cloth).found(*first))
	if second == nil {
		return nil, why, err
	}
	return spreadOf(t.cloth, *first, *second), nil, nil
}

// selvedgeIn folds one selvedge in as far as the pieces make best.
func (t *table) selvedgeIn() (found *spread, why, err error) {
	depths, why := t.depths()
	if why != nil {
		return nil, why, nil
	}
	type candidate struct {
		depth float64
		split split
		guess float64
	}
	var all []candidate
	why = errors.New("the pieces do not share out between two plies and one; fold the cloth along the warp, or lay it open")
	for _, depth := range depths {
		double, single := foldedIn(t.cloth, depth)
		if s, length, ok := t.balanced(double, single); ok {
			all = append(all, candidate{depth, s, length})
		}
	}
	slices.SortStableFunc(all, func(a, b candidate) int { return int(math.Copysign(1, a.guess-b.guess)) })
	var best *spread
	for _, c := range all[:min(2, len(all))] {
		double, single := foldedIn(t.cloth, c.depth)
		one, reason, err := t.sideBySide(double, single, c.split)
		if err != nil {
			return nil, nil, err
		}
		if one == nil {
			why = reason
			continue
		}
		one.depth = c.depth
		if best == nil || one.taken < best.taken {
			best = one
		}
	}
	if best != nil {
		best.bound = t.openBound()
	}
	return best, why, nil
}

// depths are how far the selvedge may sensibly be folded in: as far as the
// widest piece on the fold, or one that can be cut double, needs.
func (t *table) depths() ([]float64, error) {
	widest := bed{lay: FoldedAlong, width: Open.UsableWidth(t.cloth)/2 - 1, v: Open.UsableWidth(t.cloth) / 2}
	least, faded := 0.0, bedOf(t.cloth, Open).lostLow
	var out []float64
	for _, c := range choicesFor(t.strict(), widest, t.wanted) {
		if c.onDouble == 0 {
			continue
		}
		templates, err := templatesOf(t.strict(), widest, []demand{c.of(c.onDouble, 1)})
		if err != nil {
			continue
		}
		for _, turn := range templates[0].turns {
			// Up to 1 mm, so that it can be measured.
			depth := math.Ceil(across(templates[0].outline, turn) + t.cloth.Selvedge + faded - 1e-6)
			out = append(out, depth)
			if templates[0].onFold {
				least = math.Max(least, depth)
			}
		}
	}
	if len(out) == 0 {
		return nil, errors.New("no piece can be cut from two plies; lay the cloth open")
	}
	for i, depth := range out {
		out[i] = onCentreLine(t.cloth, depth)
	}
	slices.Sort(out)
	out = slices.DeleteFunc(slices.Compact(out), func(depth float64) bool { return depth < least })
	return thinned(out, mostDepths), nil
}

// onCentreLine deepens a fold until it lies on the chosen line of the repeat,
// where pieces on the fold are to have their centre.
func onCentreLine(cloth Cloth, depth float64) float64 {
	r := cloth.Repeat
	if r.Across == 0 || len(r.Centred) == 0 {
		return depth
	}
	return r.CentreLine + math.Ceil((depth-r.CentreLine)/r.Across-1e-9)*r.Across
}

// mostDepths are tried of one cloth: more would differ by less than a seam.
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

// balanced shares the pieces between the two beds so that both come out about
// as long; a piece that fits only one goes there. It guesses the length.
func (t *table) balanced(double, single bed) (split, float64, bool) {
	if single.width <= 0 || double.width <= 0 {
		return split{}, 0, false
	}
	choices := choicesFor(t.strict(), double, t.wanted)
	var free []int
	open := map[int]bool{}
	for i, c := range choices {
		if c.onDouble == 0 {
			continue
		}
		if c.piece.Fold == "" && fits(t.strict(), single, c.demand) {
			free = append(free, i)
		}
	}
	slices.SortStableFunc(free, func(a, b int) int {
		return int(math.Copysign(1, areaOfPiece(choices[b].piece)-areaOfPiece(choices[a].piece)))
	})
	best, length, found := split{}, math.Inf(1), false
	try := func() bool {
		s := splitBy(choices, func(c choice) bool { return open[c.source] })
		one, ok := t.guessed(double, single, s)
		if !ok || one >= length {
			return false
		}
		best, length, found = s, one, true
		return true
	}
	try()
	for _, i := range free {
		open[choices[i].source] = true
		if !try() {
			open[choices[i].source] = false
		}
	}
	return best, length, found
}

func areaOfPiece(p pieces.Piece) float64 {
	return math.Abs(areaOf(p.SeamOutline(drawTolerance))) * float64(p.Cut)
}

// guessed is the length of two beds side by side, if all pieces fit and both
// have some.
func (t *table) guessed(double, single bed, s split) (float64, bool) {
	if len(s.double) == 0 || len(s.single) == 0 {
		return 0, false
	}
	longest := 0.0
	for _, part := range []struct {
		bed     bed
		demands []demand
	}{{double, s.double}, {single, s.single}} {
		templates, err := templatesOf(t.strict(), part.bed, part.demands)
		if err != nil {
			return 0, false
		}
		longest = math.Max(longest, guess(part.bed, templates))
	}
	return longest, true
}

// sideBySide solves two beds that lie beside each other.
func (t *table) sideBySide(double, single bed, s split) (found *spread, why, err error) {
	var beds []lain
	var known places
	for _, part := range []struct {
		bed     bed
		demands []demand
	}{{double, s.double}, {single, s.single}} {
		templates, why := templatesOf(t.strict(), part.bed, part.demands)
		if why != nil {
			return nil, why, nil
		}
		one, why, err := t.solveAt(SelvedgeIn, part.bed, templates, 1, known)
		if one == nil {
			return nil, why, err
		}
		beds, known = append(beds, *one), one.matching(t.cloth).found(*one)
	}
	return spreadOf(t.cloth, beds...), nil, nil
}
