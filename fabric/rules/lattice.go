package rules

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// This file turns the repeat into geometry: each template that takes part in a
// match may lie on a lattice of positions only.

// axis is one direction of the repeat.
type axis int

const (
	alongWarp axis = iota
	acrossWarp
)

func (a axis) period(repeat cloth.Repeat) float64 {
	if a == alongWarp {
		return repeat.Along
	}
	return repeat.Across
}

// Matching binds the templates of one bed to the repeat.
type Matching struct {
	cloth     cloth.Cloth
	bed       bed.Bed
	templates []Template
	names     []string // of the match points to keep, the most important first
	known     lay.Places
	Kept      []lay.Match
	Dropped   []string
	// first constraint of each template on each axis, to find the offset of
	// every turn, and how many there are.
	ties [2][][]tie
	sets [2]*unionFind
	// together are the pairs whose right and left must point the same way.
	together []int
	err      error
}

// tie binds a point of a template to a place.
type tie struct {
	node  string
	point orb.Point
}

// Match computes the ties of all templates of a bed.
func Match(c cloth.Cloth, b bed.Bed, templates []Template, names []string, known lay.Places) *Matching {
	m := &Matching{cloth: c, bed: b, templates: templates, names: names, known: known}
	for _, a := range []axis{alongWarp, acrossWarp} {
		if a.period(c.Repeat) > 0 {
			m.bindAxis(a)
		}
	}
	return m
}

// baseTurn is the turn that all others are reckoned from: the first one up the
// lay.
func (t Template) baseTurn() layout.Turn {
	for _, turn := range t.Turns {
		if turn.Direction == upTheLay {
			return turn
		}
	}
	return t.Turns[0]
}

// at is the place of a point in a turn, less the position of the template, on
// an axis; sign is -1 where the lower ply gives the side that is not drawn.
func (m *Matching) at(a axis, turn layout.Turn, p orb.Point) (q, sign float64) {
	r := geometry.Apply(geometry.MotionOf(turn.Degrees, turn.Mirrored, 0, 0), p)
	if a == alongWarp {
		return r[0], 1
	}
	q, sign = r[1], 1
	if m.bed.MirrorsAcross() {
		q -= m.bed.MirrorLine()
		if turn.Mirrored {
			sign = -1
		}
	}
	return q, sign
}

func itemNode(i int) string { return fmt.Sprintf("template %d", i) }

// joinPairs makes the right and the left of such pieces point the same way. A
// nap that binds them does so already.
func (m *Matching) joinPairs(problem *layout.Problem) {
	for i, t := range m.templates {
		item := &problem.Items[i]
		if item.Group == 0 && slices.Contains(m.together, t.Source) {
			item.Group = 1 + len(m.templates) + t.Source
		}
	}
}

// toBed brings a place on the open cloth to the bed; on two plies across, that
// is the distance from the line about which they mirror.
func (m *Matching) toBed(a axis, place float64, name string) float64 {
	if a == alongWarp {
		return place - m.bed.Before
	}
	return place - m.bed.V - m.bed.MirrorLine()
}

// toCloth brings it back.
func (m *Matching) toCloth(a axis, place float64) float64 {
	if a == alongWarp {
		return place + m.bed.Before
	}
	return place + m.bed.V + m.bed.MirrorLine()
}

// Apply binds the items of the problem. It fails when a matched piece finds no
// place across the cloth, or when the plies cannot match.
func (m *Matching) Apply(problem *layout.Problem) error {
	err := m.err
	m.joinPairs(problem)
	for _, a := range []axis{alongWarp, acrossWarp} {
		if m.sets[a] == nil {
			continue
		}
		if a == alongWarp && m.bed.Kind == lay.FoldedAcross && m.anyTie(a) {
			return errors.New("the warp of the upper ply runs the other way, so that stripes across cannot meet; cut the cloth across and turn the upper length round, or lay it open")
		}
		if a == acrossWarp && m.bed.Kind == lay.BothSelvedgesIn && m.anyTie(a) {
			return errors.New("stripes along cannot meet about two folds at once; fold the cloth in half, or lay it open")
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
			faults = append(faults, lay.Because(m.templates[i].Piece.Name, "matched to the stripes it finds no place across the width; take a wider cloth, or match less"))
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
	m.sets[a].bind(fixedPlace, root, sign*-low-above)
}

// lowest extent of a turned outline on an axis.
func lowest(outline orb.Ring, turn layout.Turn, a axis) float64 {
	motion := geometry.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
	low := math.Inf(1)
	for _, p := range outline {
		low = math.Min(low, geometry.Apply(motion, p)[a])
	}
	return low
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
			here := sign*place - q
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
		first := turn.OffsetY + math.Ceil((low-turn.OffsetY)/period-1e-9)*period
		if first <= high+fitTolerance {
			out = append(out, turn)
		}
	}
	return out
}

// Found gives the places of all points of a solved bed, on the open cloth, for
// what is laid after.
func (m *Matching) Found(problem layout.Problem, placed layout.Layout) lay.Places {
	var out lay.Places
	for _, a := range []axis{alongWarp, acrossWarp} {
		out[a] = map[string]float64{}
		for name, place := range m.known[a] {
			out[a][name] = place
		}
		for node, place := range m.placesInBed(a, problem, placed) {
			out[a][node] = m.toCloth(a, place)
			if name, isPoint := pointOf(node); a == acrossWarp && isPoint && m.bed.Plies() == 2 {
				out[a][sideName(a, name, true)] = m.toCloth(a, m.imageOf(place))
			}
		}
	}
	return out
}

// placesInBed gives the points that are bound to the cloth their places on the
// lattice, and those of a template that nothing bound, or that had two places,
// the places where it came to lie: turned end for end, its points lie otherwise
// to each other.
func (m *Matching) placesInBed(a axis, problem layout.Problem, placed layout.Layout) map[string]float64 {
	out := map[string]float64{}
	if m.sets[a] == nil {
		return out
	}
	for _, at := range placed.Placements {
		for _, tie := range m.ties[a][at.Item] {
			root, place := m.sets[a].root(tie.node)
			if root != fixedPlace || a == acrossWarp && m.periodAcross(at.Item) < m.sets[a].period {
				place = m.whereLaid(a, problem, at, tie.point)
			}
			out[tie.node] = place
		}
	}
	return out
}

// whereLaid is the place of a point of a template on an axis of the bed.
func (m *Matching) whereLaid(a axis, problem layout.Problem, at layout.Placement, p orb.Point) float64 {
	_, sign := m.at(a, problem.Items[at.Item].Turns[at.Turn], p)
	place := geometry.Apply(PlacementMotion(problem, at), p)[a]
	if a == acrossWarp {
		place -= m.bed.MirrorLine()
	}
	return sign * place
}

// imageOf a place across is where the upper ply has it.
func (m *Matching) imageOf(place float64) float64 {
	if m.bed.MirrorsAcross() {
		return -place
	}
	return place
}

func pointOf(node string) (string, bool) {
	const prefix = "point "
	if len(node) > len(prefix) && node[:len(prefix)] == prefix {
		return node[len(prefix):], true
	}
	return "", false
}
