package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/nest/portable"
	"ellwand/pieces"
)

// How the head lies on the armhole [source.OwnChoice].
const (
	// hugWithin is how far the head may lie beside the armhole's own curve under the
	// arm, in mm. It uses all of it, first inside the curve and at last outside,
	// so that it leaves it as little upright as can be.
	hugWithin = 2.5
	// soonestMost and latestMost are where along the hollow it bends most, as a share
	// of its length: the later, the less it runs inside the armhole's curve.
	soonestMost = 0.5
	latestMost  = 0.9
	// leastEarly and earliest are how much it bends at the underarm, as a share of the
	// most that it bends: the more, the further inside it runs.
	earliest = 2.5
	// latestKnee is how long it may bend so little, as a share of its length: on an
	// armhole that is wide and low.
	latestKnee = 0.6
	// flatten is how exactly the armhole's curve is measured against, in mm.
	flatten = 0.02
)

// armhole is a half of an armhole, laid out from the underarm at the origin, the
// centre of the body to the right, the side seam straight down.
type armhole struct {
	path                 pieces.Path
	length, depth, notch float64
}

// layOut lays out a half of an armhole, which runs from the underarm to the
// shoulder of a piece drawn with its centre line on the left.
func layOut(path pieces.Path, notch float64) armhole {
	at, way := path.Start(), path.Tangent(0)
	level := pieces.Turn(-portable.Atan2(way[1], -way[0]) * 180 / math.Pi)
	level = pieces.Move(-at[0], -at[1]).Then(pieces.MirrorX()).Then(level)
	laid := path.Map(level)
	return armhole{laid, laid.Length(), laid.End()[1], notch}
}

// hollow is the lower part of the head, up to where its round begins: from the
// underarm, level, its bend changes evenly to that where it bends most, and from
// there evenly to none.
type hollow struct {
	length float64
	// knee is where its bend begins to change: at the underarm, or after a stretch
	// along which it bends alike.
	begin, knee, most, end node
	// kneeAt and mostAt are where the knee is and where it bends most, as shares of its
	// length.
	kneeAt, mostAt float64
}

// leastEarly is how much it bends at the underarm at least, as a share of the most that
// it bends. The second is for an armhole so wide and low that none of the first lies on
// it [source.OwnChoice].
var leastEarly = [...]float64{0.1, 0.05}

// softness is by how much the hollow ends outside the armhole's curve, as a share
// of hugWithin: the more, the less upright it ends, and the wider is the sleeve.
// The first is the usual; where it gives no head that suits a stiffer one may
// [source.OwnChoice].
var softness = [...]float64{1, 0.5, 0, -0.5, -1}

// hollows of the armhole up to a height: one for each softness. On the way they lie as
// far inside the armhole's curve as they end outside it; ok is false for an armhole that
// has none.
func (a armhole) hollows(height float64) (all [len(softness)]hollow, ok bool) {
	least, nearest := math.Inf(1), hollow{}
	for _, early := range leastEarly {
		all, near, beside := a.hollowsFrom(height, early)
		if all[0].length > 0 {
			return all, true
		}
		if beside < least {
			least, nearest = beside, near
		}
	}
	// On one as wide and low as a bust girth beyond 140 cm may make it, the one that
	// lies nearest is the best that there is: Beside tells how near.
	for i := range all {
		all[i] = nearest
	}
	return all, !math.IsInf(least, 1)
}

// hollowsFrom are the hollows that bend so much at the underarm, or more, as a share of
// the most that they bend; none where none lies on the armhole, but the nearest and how
// far beside it that lies.
func (a armhole) hollowsFrom(height, early float64) (all [len(softness)]hollow, nearest hollow, least float64) {
	_, _, rising := a.below(height)
	least = math.Inf(1)
	ok := false
	// An armhole with no hollow of a softness takes the next stiffer one.
	for i := len(softness) - 1; i >= 0; i-- {
		outside := softness[i] * hugWithin
		// What lies outside the curve lies lower than the place beside it.
		line, at, way := a.below(height + float64(max(0, outside)*rising[0]))
		h, beside := hollowBeside(line, construct.Go(at, construct.Square(way), -outside), outside, early)
		if beside < least {
			least, nearest = beside, h
		}
		if beside < hugWithin+besideExact {
			all[i], ok = h, true
		} else if ok {
			all[i] = all[i+1]
		}
	}
	// One with none so stiff takes the stiffest that it has.
	for i := 1; i < len(all) && ok; i++ {
		if all[i].length == 0 {
			all[i] = all[i-1]
		}
	}
	return all, nearest, least
}

// besideExact is how exactly a hollow lies as far beside the armhole as is wanted,
// in mm [source.OwnChoice].
const besideExact = 0.1

// hollowBeside is the hollow that ends at a place, and on the way there lies as far
// inside a line as is wanted, or outside it where that is less than 0, or as near to
// that as can be; how far beside it lies is infinite where there is none.
func hollowBeside(line orb.LineString, end orb.Point, wanted, least float64) (h hollow, beside float64) {
	// Late counts from -1, where it bends early and runs further inside, over 0 to 1,
	// where it bends late, and to 2, where it first bends little for long.
	draw := func(late float64) float64 {
		mostAt := soonestMost + float64(max(0, min(late, 1))*(latestMost-soonestMost))
		drawn, ok := hollowTo(end, max(least, -late*earliest), float64(max(0, late-1)*latestKnee), mostAt)
		if !ok {
			beside = math.Inf(1)
			return -2 * hugWithin
		}
		h = drawn
		inside, outside := drawn.beside(line)
		beside = max(inside, outside)
		if wanted < 0 {
			return -wanted - outside
		}
		return inside - wanted
	}
	draw(root(-1, 2, 1e-3, draw))
	return h, beside
}

// below is the armhole up to a height, as a line; and where it comes to it and
// which way it runs there.
func (a armhole) below(height float64) (line orb.LineString, at, way orb.Point) {
	all := a.path.Flatten(flatten)
	for i := 1; i < len(all); i++ {
		p, q := all[i-1], all[i]
		if q[1] >= height || i == len(all)-1 {
			at = construct.Between(p, q, min(1, (height-p[1])/(q[1]-p[1])))
			return all[:i+1], at, construct.Direction(p, q)
		}
	}
	return all, a.path.End(), orb.Point{0, 1}
}

// hollowTo is the hollow that ends at a place; early is how much it bends at the
// underarm and as far as kneeAt, as a share of the most, and mostAt where that is. ok is
// false where it would have to turn back.
func hollowTo(end orb.Point, early, kneeAt, mostAt float64) (h hollow, ok bool) {
	// All hollows that turn as much are alike in shape: a scale makes one end there.
	turning := func(by float64) hollow {
		bend := 2 * by / (1 - kneeAt + float64(early*(mostAt+kneeAt)))
		begin := node{bend: float64(early * bend)}
		knee := begin.after(kneeAt, begin.bend)
		most := knee.after(mostAt-kneeAt, bend)
		return hollow{1, begin, knee, most, most.after(1-mostAt, 0), kneeAt, mostAt}
	}
	wanted := portable.Atan2(end[1], end[0])
	too := func(by float64) float64 {
		at := turning(by).end.at
		return portable.Atan2(at[1], at[0]) - wanted
	}
	// Between them a hollow turns, in radians [source.OwnChoice].
	const least, most = 0.1, 2.8
	if too(least) > 0 || too(most) < 0 {
		return h, false
	}
	h = turning(root(least, most, 1e-9, too))
	return h.scaled(portable.Hypot(end[0], end[1]) / portable.Hypot(h.end.at[0], h.end.at[1])), true
}

func (h hollow) scaled(by float64) hollow {
	scaled := func(n node) node {
		return node{orb.Point{float64(by * n.at[0]), float64(by * n.at[1])}, n.heading, n.bend / by}
	}
	return hollow{float64(by * h.length), scaled(h.begin), scaled(h.knee), scaled(h.most), scaled(h.end),
		h.kneeAt, h.mostAt}
}

// at is the node a share of the way along it.
func (h hollow) at(share float64) node {
	switch {
	case share < h.kneeAt:
		return h.begin.after(share*h.length, h.begin.bend)
	case share < h.mostAt:
		along := (share - h.kneeAt) / (h.mostAt - h.kneeAt)
		return h.knee.after((share-h.kneeAt)*h.length, h.knee.bend+float64(along*(h.most.bend-h.knee.bend)))
	}
	return h.most.after((share-h.mostAt)*h.length, float64((1-share)/(1-h.mostAt)*h.most.bend))
}

// isFlat says that it bends next to nothing at the underarm, as the second of leastEarly
// has it.
func (h hollow) isFlat() bool {
	return h.begin.bend < (leastEarly[0]+leastEarly[1])/2*h.most.bend
}

// marks are the places on it that the head is drawn through: a quarter and half of the
// way to where it bends most, or half of the way to the knee and the knee where that is
// later, there, and halfway from there to its end. A flat one has one more from the knee
// on, without which its curve would waver there.
func (h hollow) marks() []mark {
	first := max(h.kneeAt, h.mostAt/2)
	all := []mark{
		{h.at(first / 2).at, "in the hollow, where it bends little"},
		{h.at(first).at, "in the hollow, on the way to where it bends most"},
		{h.most.at, "in the hollow, where it bends most"},
		{h.at((1 + h.mostAt) / 2).at, "in the hollow, halfway from there to its end"},
	}
	if h.isFlat() {
		next := mark{h.at((first + h.mostAt) / 2).at, "in the hollow, halfway from there to where it bends most"}
		all = slices.Insert(all, 2, next)
	}
	return all
}

// beside is the furthest that the hollow lies inside a line, to the left of it, and
// outside.
func (h hollow) beside(line orb.LineString) (inside, outside float64) {
	// parts are as many as show where it lies furthest [source.OwnChoice].
	const parts = 16
	next := 1
	for i := range parts {
		at := h.at(float64(i+1) / parts).at
		for next < len(line)-1 && ahead(line[next], line[next-1], at) {
			next++
		}
		end := line[next]
		off := cross(construct.Direction(line[next-1], end), orb.Point{at[0] - end[0], at[1] - end[1]})
		inside, outside = max(inside, off), max(outside, -off)
	}
	return inside, outside
}

// ahead reports whether a place lies beyond the end of a chord.
func ahead(end, start, at orb.Point) bool {
	return float64((at[0]-end[0])*(end[0]-start[0]))+float64((at[1]-end[1])*(end[1]-start[1])) > 0
}

// turned is the hollow turned about the underarm, by radians.
func (h hollow) turned(by float64) hollow {
	turn := pieces.Turn(by * 180 / math.Pi)
	for _, n := range []*node{&h.begin, &h.knee, &h.most, &h.end} {
		n.at = turn.Apply(n.at)
		n.heading += by
	}
	return h
}
