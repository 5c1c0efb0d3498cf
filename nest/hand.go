package nest

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/model"
	"ellwand/nest/layout"
	"ellwand/nest/portable"
)

// Hand moves one piece among others that lie still, as somebody does who lays by hand. It
// is made once for a piece that is taken up, and asked for every place that it is held
// over; an answer takes less than a millisecond among 150 others (BenchmarkSlide). It is
// for one goroutine.
type Hand struct {
	q      *prepared
	item   int
	shapes []int // of the item, by turn and tilt
	still  []model.Spot
}

// NewHand takes up a piece of an item. The placements of the others may overlap, and may
// be of some pieces alone.
func NewHand(p layout.Problem, item int, still []layout.Placement, tables *Tables) (*Hand, error) {
	if err := p.Check(); err != nil {
		return nil, err
	}
	p.Items = slices.Clone(p.Items)
	for i := range p.Items {
		p.Items[i].Group = 0 // which way others point is no matter of where there is room
	}
	start, locked := &layout.Layout{Placements: still}, make([]bool, len(still))
	for i := range locked {
		locked[i] = true
	}
	q, err := prepare(p, start, locked, tables)
	if err != nil {
		return nil, err
	}
	return &Hand{q: q, item: item, shapes: q.addShapes(item), still: q.model.Fixed}, nil
}

// Slide brings the piece from where it is held into contact with what lies there: out of
// an overlap to the nearest place that is free, as far as reach (in the units of the
// problem), or where it is free already up to the edges that are nearer than snap. It
// reports false where there is no such place; then the piece stays as it is held, but
// for a pin or a lattice, which it keeps.
func (h *Hand) Slide(at layout.Placement, reach, snap float64) (layout.Placement, bool) {
	spot := h.q.spotOf(at, h.shapes)
	centre := h.q.centreOf(at, spot.Shape)
	held := place{spot.X, spot.Y}
	v := view{hand: h, shape: spot.Shape}
	v.see(held, reach+snap)
	held = v.kept(held)
	out, free := held, v.isFree(held)
	if free {
		out = v.snapped(held, snap)
	} else if found, ok := v.nearest(held, reach); ok {
		out, free = found, true
	}
	at.X, at.Y = out.x-centre[0], out.y-centre[1]
	if free {
		at.X, at.Y = v.tidied(at.X, at.Y, centre)
	}
	return at, free
}

// place of the centre of a shape.
type place struct{ x, y float64 }

// apart is how far two places lie from each other.
func apart(a, b place) float64 {
	dx, dy := a.x-b.x, a.y-b.y
	return math.Sqrt(float64(dx*dx) + float64(dy*dy))
}

// view is what one shape meets near a place.
type view struct {
	hand  *Hand
	shape int
	near  []model.Spot
}

// see finds what lies within a reach of the shape's box.
func (v *view) see(at place, reach float64) {
	m := v.hand.q.model
	s := &m.Shapes[v.shape]
	for _, other := range v.hand.still {
		o := &m.Shapes[other.Shape]
		if math.Abs(other.X-at.x) <= s.HalfX+o.HalfX+reach+m.Gap && math.Abs(other.Y-at.y) <= s.HalfY+o.HalfY+reach+m.Gap {
			v.near = append(v.near, other)
		}
	}
}

// kept brings a place to the pin and the lattice of the shape, and into the strip.
func (v *view) kept(at place) place {
	m := v.hand.q.model
	s, item := &m.Shapes[v.shape], v.hand.q.problem.Items[v.hand.item]
	low, high := m.RangeY(v.shape)
	at.x, at.y = max(at.x, s.HalfX), min(max(at.y, low), high)
	if item.PeriodX > 0 {
		at.x = s.OffsetX + float64(math.Ceil((at.x-s.OffsetX)/item.PeriodX-0.5)*item.PeriodX)
	}
	if item.PeriodY > 0 && low < high {
		at.y = s.OffsetY + float64(math.Round((at.y-s.OffsetY)/item.PeriodY)*item.PeriodY)
	}
	return at
}

// isFree says that the shape touches at most what lies there.
func (v *view) isFree(at place) bool {
	m := v.hand.q.model
	s := &m.Shapes[v.shape]
	low, high := m.RangeY(v.shape)
	if at.x < s.HalfX-m.Touch || at.y < low-m.Touch || at.y > high+m.Touch {
		return false
	}
	for _, other := range v.near {
		pair := m.Pair(other.Shape, v.shape)
		if pair.Depth(at.x-other.X, at.y-other.Y) > 0 {
			return false
		}
	}
	return true
}

// The ways that are looked along for a free place, and the steps out [source.OwnChoice].
const (
	ways  = 32
	steps = 14
)

// nearest free place within a reach: out along rays in growing steps, then back as far as
// it goes.
func (v *view) nearest(from place, reach float64) (place, bool) {
	best, found, least := from, false, math.Inf(1)
	for i := 1; i <= steps && !found; i++ {
		far := float64(reach*float64(i*i)) / (steps * steps)
		for k := range ways {
			sin, cos := portable.SincosDegrees(float64(360*k) / ways)
			at := v.kept(place{from.x + float64(far*cos), from.y + float64(far*sin)})
			if !v.isFree(at) {
				continue
			}
			at = v.towards(at, from)
			if away := apart(at, from); away < least {
				best, found, least = at, true, away
			}
		}
	}
	if !found {
		return from, false
	}
	for range 3 { // along what it touches, first one way, then the other
		best = v.towards(best, place{from.x, best.y})
		best = v.towards(best, place{best.x, from.y})
	}
	return best, true
}

// halvings bring a place within a millionth of the way.
const halvings = 20

// towards goes from a free place as far to another as it is free. On a lattice it stays.
func (v *view) towards(free, to place) place {
	item := v.hand.q.problem.Items[v.hand.item]
	if item.PeriodX > 0 || item.PeriodY > 0 {
		return free
	}
	if v.isFree(to) {
		return to
	}
	near, far := 0.0, 1.0
	along := func(share float64) place {
		return place{free.x + float64(share*(to.x-free.x)), free.y + float64(share*(to.y-free.y))}
	}
	for range halvings {
		if middle := (near + far) / 2; v.isFree(along(middle)) {
			near = middle
		} else {
			far = middle
		}
	}
	return along(near)
}

// snapped moves a free place into contact along and across, where something is nearer
// than snap.
func (v *view) snapped(at place, snap float64) place {
	for _, axis := range []place{{1, 0}, {0, 1}} {
		best, least := at, snap
		for _, way := range []float64{-snap, snap} {
			to := place{at.x + float64(way*axis.x), at.y + float64(way*axis.y)}
			if v.isFree(to) {
				continue
			}
			found := v.towards(at, to)
			if away := math.Abs(found.x-at.x) + math.Abs(found.y-at.y); away < least {
				best, least = found, away
			}
		}
		at = best
	}
	return at
}

// digits that a place by hand is kept to: hundredths, so that it can be written and read
// [source.OwnChoice].
const digits = 100

// tidied rounds a free position to a neighbour of few digits that is free as well.
func (v *view) tidied(x, y float64, centre orb.Point) (float64, float64) {
	for _, round := range [][2]func(float64) float64{{math.Round, math.Round}, {math.Ceil, math.Round},
		{math.Ceil, math.Ceil}, {math.Ceil, math.Floor}, {math.Floor, math.Ceil}, {math.Floor, math.Floor}} {
		tx, ty := round[0](x*digits)/digits, round[1](y*digits)/digits
		at := place{tx + centre[0], ty + centre[1]}
		if kept := v.kept(at); apart(kept, at) < v.hand.q.model.Touch && v.isFree(at) {
			return tx, ty
		}
	}
	return x, y
}
