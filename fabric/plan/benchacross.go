package plan

import (
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
)

// This file moves a piece onto the other part of a lay of two. As many copies go with it
// as two plies give at once: what lay double lies twice on the open part, and two single
// ones become one on the folded part.

// PartAt is the part of a lay of two that the middle of a held piece is over.
func (b *Bench) PartAt(all []lay.Laid, piece int, held lay.Laid) int {
	own := all[piece].Bed
	if len(b.beds) == 1 {
		return own
	}
	on := benchBed{SolvedBed: b.beds[own], asked: b.planner.Asked}
	ring := motion.Mapped(motion.MotionOf(held.Turn, held.Mirrored, held.X, held.Y), on.drawn(held))
	middle := ring.Bound().Center()
	isBehind := false
	switch {
	case b.kind == lay.SelvedgeIn:
		isBehind = middle[1] > b.beds[1].Bed.At[1]
	case own == 0:
		isBehind = middle[0] > beginOf(all, 1)
	default:
		isBehind = middle[0] > endOf(all, 0)
	}
	if isBehind {
		return 1
	}
	return 0
}

// Across lays a piece on the other part, where a hand holds it, and its further copies
// where there is room. It gives the lay as it is spread then and all its pieces; the error
// is the lay.Reason why it cannot lie on that part.
func (b *Bench) Across(all []lay.Laid, piece int, held lay.Laid) (*Bench, []lay.Laid, error) {
	to := b.carried(all, piece)
	if to.why != nil {
		return nil, nil, to.why
	}
	out := slices.Clone(to.all)
	out[to.at] = to.bench.lying(out, to.at, held)
	for _, one := range to.comes {
		out = append(out, to.bench.beside(out, one))
	}
	return to.bench, out, nil
}

// Goes are the pieces that do not lie any more when a piece is on the other part: it gives
// them there, too.
func (b *Bench) Goes(all []lay.Laid, piece int) []int { return b.carried(all, piece).goes }

// carried is the lay with a piece on the other part, as it was last carried there.
func (b *Bench) carried(all []lay.Laid, piece int) *across {
	if a := b.over; a != nil && a.piece == piece && sameList(a.from, all) {
		return a
	}
	b.over = &across{from: all, piece: piece}
	b.over.why = b.carry(b.over)
	return b.over
}

// carry spreads the lay with the piece on the other part; the lay.Reason why that cannot be.
func (b *Bench) carry(a *across) error {
	t, to := b.planner, 1-a.from[a.piece].Bed
	double, single, why := t.bedsInTwo(b.kind, b.depth)
	if why != nil {
		return why
	}
	choices, ok := choicesFor(t.strict(), double, single, t.Wanted)
	if !ok {
		return lay.Reason{Of: lay.NotShared}
	}
	shared, _ := t.sharedIn(lay.Plan{Pieces: a.from}, choices)
	source := lay.SourcesIn(t.Asked).Of(a.from[a.piece])
	i := slices.IndexFunc(choices, func(c choice) bool { return c.Source == source })
	if to == 0 {
		shared[i] += choices[i].step
	} else {
		shared[i] -= choices[i].step
	}
	if why := t.whyNotShared(choices[i], shared[i], []bed.Bed{double, single}[to]); why != nil {
		return why
	}
	parts := shared.split(choices)
	if len(parts.double) == 0 || len(parts.single) == 0 {
		return lay.Reason{Of: lay.LastOnPart, Piece: choices[i].Piece.Name}
	}
	double.PointBack, single.PointBack = b.beds[0].Bed.PointBack, b.beds[1].Bed.PointBack
	solved, err := t.bedsFor(parts, double, single, b.places)
	if err != nil {
		return err
	}
	a.bench = &Bench{planner: t, kind: b.kind, depth: b.depth, beds: solved, bound: b.bound, places: b.places}
	a.shareOut(choices[i], to)
	return nil
}

// whyNotShared says why so many of a piece cannot come out of the double bed, by the bed
// that more of it would lie on; nil if they can.
func (t *Planner) whyNotShared(c choice, double int, to bed.Bed) error {
	if double >= c.least && double <= c.most {
		return nil
	}
	if _, why := rules.TemplatesOf(t.strict(), to, []rules.Demand{c.Of(c.Cut, 1)}); why != nil {
		return lay.Reasons(why)[0]
	}
	return lay.Reason{Of: lay.NotShared}
}
