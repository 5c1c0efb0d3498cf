package rules

import (
	"errors"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// pointTogether makes pieces point the same way: all of a garment on a repeat that is not
// even, matched or not, since what is upside down shows; and of an even one the right and
// the left of some pairs. A nap that binds them does so already.
func (m *Matching) pointTogether(problem *layout.Problem) {
	garments := map[string]int{}
	for i, t := range m.templates {
		item := &problem.Items[i]
		if garments[t.Asked.Garment] == 0 {
			garments[t.Asked.Garment] = len(garments) + 1
		}
		switch {
		case item.Group != 0:
		case m.isUneven():
			item.Group = garmentGroups + garments[t.Asked.Garment]
		case m.cloth.Repeat.Even && slices.Contains(m.together, t.Source):
			item.Group = 1 + len(m.templates) + t.Source
		}
	}
}

// garmentGroups begins the groups of garments, beyond any of pieces
// [source.OwnChoice].
const garmentGroups = 1 << 20

// isUneven reports whether the print looks otherwise when it is turned end for end.
func (m *Matching) isUneven() bool { return !m.cloth.Repeat.IsPlain() && !m.cloth.Repeat.Even }

// Apply binds the items of the problem. It fails when a matched piece finds no
// place across the cloth, or when the plies cannot match.
func (m *Matching) Apply(problem *layout.Problem) error {
	err := m.err
	m.pointTogether(problem)
	if m.bed.Kind == lay.FoldedAcross && m.isUneven() {
		return lay.Reason{Of: lay.PatternTurned}
	}
	for _, a := range []axis{alongWarp, acrossWarp} {
		if m.sets[a] == nil {
			continue
		}
		if a == alongWarp && m.bed.Kind == lay.FoldedAcross && m.anyTie(a) {
			return lay.Reason{Of: lay.StripesTurned}
		}
		if a == acrossWarp && m.bed.Kind == lay.BothSelvedgesIn && m.anyTie(a) {
			return lay.Reason{Of: lay.TwoFolds}
		}
		err = errors.Join(err, m.settle(a, problem))
	}
	return err
}

func (m *Matching) anyTie(a axis) bool {
	return slices.ContainsFunc(m.ties[a], func(ties []tie) bool { return len(ties) > 0 })
}

// settle gives each free set of ties a place, and every turn of its templates
// the offset that follows.
func (m *Matching) settle(a axis, problem *layout.Problem) error {
	var faults []error
	for i := range m.templates {
		if len(m.ties[a][i]) == 0 {
			continue
		}
		if !m.sets[a].isBound(itemNode(i)) {
			if t := m.templates[i]; t.Yields == 2 && t.Asked.Pair {
				problem.Items[i].Tilt = 0 // as the right and the left of it do not tilt when laid singly
			}
			continue
		}
		if a == acrossWarp && m.templates[i].OnFold {
			problem.Items[i].Turns = m.onTheFold(i, problem.Items[i].Turns)
			continue
		}
		m.place(a, i, problem)
		item := &problem.Items[i]
		item.Tilt = 0
		item.Turns = m.offsets(a, i, item.Turns)
		if a == alongWarp {
			item.PeriodX = m.sets[a].period
		} else {
			item.PeriodY = m.periodAcross(i)
			item.Turns = withRoom(item.Turns, item.Outline, item.PeriodY, problem.Width)
		}
		if len(item.Turns) == 0 {
			item.Turns = m.templates[i].Turns
			faults = append(faults, lay.Reason{Of: lay.MatchedNowhere, Piece: m.templates[i].Piece.Name})
		}
	}
	return errors.Join(faults...)
}

// periodAcross of a template: half the repeat where two plies give the right
// and the left of a single pair and nothing else ties it. Both match then when
// the line about which the plies mirror lies in the middle of a repeat, as well
// as on its beginning.
func (m *Matching) periodAcross(i int) float64 {
	t, ties, period := m.templates[i], m.ties[acrossWarp][i], m.sets[acrossWarp].period
	if m.bed.MirrorsAcross() && t.Copies == 1 && len(ties) == 1 && ties[0].node == pairNode(t.Source) {
		return period / 2
	}
	return period
}

// place fixes a free set so that this template lies at its edge: the cut end,
// or y = 0.
func (m *Matching) place(a axis, i int, problem *layout.Problem) {
	root, above := m.sets[a].root(itemNode(i))
	if root == fixedPlace {
		return
	}
	t := m.templates[i]
	turn := t.baseTurn()
	low := lowest(t.Outline, turn, a)
	_, sign := m.at(a, turn, orb.Point{})
	m.sets[a].bind(fixedPlace, root, float64(sign*-low)-above)
}

// offsets gives every turn its place on the lattice. A template with several
// ties keeps only the turns in which they agree.
func (m *Matching) offsets(a axis, i int, turns []layout.Turn) []layout.Turn {
	set := m.sets[a]
	var out []layout.Turn
	for _, turn := range turns {
		var offset float64
		agree := true
		for k, one := range m.ties[a][i] {
			_, place := set.root(one.node)
			q, sign := m.at(a, turn, one.point)
			here := float64(sign*place) - q
			if k == 0 {
				offset = here
			}
			agree = agree && math.Abs(math.Remainder(here-offset, set.period)) <= set.tolerance
		}
		if !agree {
			continue
		}
		if a == alongWarp {
			turn.OffsetX = offset
		} else {
			turn.OffsetY = offset
		}
		out = append(out, turn)
	}
	return out
}

// onTheFold keeps the turns in which a piece, whose place across is the fold,
// has its points where they match: one end for end or the other.
func (m *Matching) onTheFold(i int, turns []layout.Turn) []layout.Turn {
	var out []layout.Turn
	for _, turn := range m.offsets(acrossWarp, i, turns) {
		onFold := -lowest(m.templates[i].Outline, turn, acrossWarp)
		if math.Abs(math.Remainder(turn.OffsetY-onFold, m.sets[acrossWarp].period)) <= m.sets[acrossWarp].tolerance {
			turn.OffsetY = 0
			out = append(out, turn)
		}
	}
	return out
}

// withRoom keeps the turns that have a place of the lattice within the width.
func withRoom(turns []layout.Turn, outline orb.Ring, period, width float64) []layout.Turn {
	var out []layout.Turn
	for _, turn := range turns {
		low := -lowest(outline, turn, acrossWarp)
		high := low + width - Across(outline, turn)
		first := turn.OffsetY + float64(math.Ceil((low-turn.OffsetY)/period-1e-9)*period)
		if first <= high+fitTolerance {
			out = append(out, turn)
		}
	}
	return out
}
