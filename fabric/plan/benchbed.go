package plan

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// benchBed is one bed with the pieces that lie on it, in the frame of the bed.
type benchBed struct {
	SolvedBed
	asked []pieces.Piece
	// part of the lay that it is, unless it is all.
	part  int
	isAll bool
	// border is the side on which the other part of the lay lies; room is where that
	// begins along, if it lies ahead.
	border side
	room   float64
}

// side of a bed.
type side int

const (
	noSide side = iota
	// atEnd nearest to the cut end, atLow at y = 0, atHigh at the width.
	atEnd
	atLow
	atHigh
	// ahead along the cloth.
	ahead
)

// shownAhead is how much of a part that lies ahead is in the way of a piece in hand, mm:
// more than it slides and is long [source.OwnChoice].
const shownAhead = 5000

// upToBorder is the problem in which nothing may lie on a part ahead.
func (b benchBed) upToBorder() layout.Problem {
	out := b.Problem
	if b.border == ahead && !math.IsInf(b.room, 0) {
		out.Zones = append(slices.Clip(out.Zones), geometry.Rectangle(b.room, 0, b.room+shownAhead, out.Width))
	}
	return out
}

// beyond a side is what of a ring lies there.
func (b benchBed) beyond(ring orb.Ring, s side) []orb.Ring {
	box := ring.Bound()
	switch s {
	case noSide:
		return nil
	case atEnd:
		box.Max[0] = -gapSlack
	case atLow:
		box.Max[1] = -gapSlack
	case atHigh:
		box.Min[1] = b.Problem.Width + gapSlack
	case ahead:
		box.Min[0] = b.room + gapSlack
	}
	if box.Min[0] >= box.Max[0] || box.Min[1] >= box.Max[1] {
		return nil
	}
	parts, err := motion.Clipped(ring, box.Min[0], box.Min[1], box.Max[0], box.Max[1])
	if err != nil {
		return nil
	}
	return parts
}

// gapSlack, mm, is what outlines drawn from chords may take of a gap [source.OwnChoice].
const gapSlack = 0.01

// still are the placements of all pieces of the bed but one; placed counts them by
// template. One that cannot lie so is left out.
func (b benchBed) still(all []lay.Laid, but int) (placed []int, out []layout.Placement) {
	placed = make([]int, len(b.Templates))
	for i, l := range all {
		if i == but || l.Bed != b.part && !b.isAll {
			continue
		}
		if at, ok := b.placement(l, placed); ok {
			placed[at.Item]++
			out = append(out, at)
		}
	}
	return placed, out
}

// placement of a piece as it lies; on a fold it keeps to that.
func (b benchBed) placement(l lay.Laid, placed []int) (layout.Placement, bool) {
	l.X, l.Y = l.X-b.Bed.At[0], l.Y-b.Bed.At[1]
	source := lay.SourcesIn(b.asked).Of(l)
	if at, ok := relaidPiece(l, source, b.Templates, b.Problem, placed); ok || !l.OnFold {
		return at, ok
	}
	box := motion.Mapped(motion.MotionOf(l.Turn, l.Mirrored, l.X, l.Y), b.drawn(l)).Bound()
	for _, y := range []float64{l.Y - box.Min[1], l.Y + b.Problem.Width - box.Max[1]} {
		l.Y = y
		if at, ok := relaidPiece(l, source, b.Templates, b.Problem, placed); ok {
			return at, true
		}
	}
	return layout.Placement{}, false
}

// drawn is the outline of the template of a piece.
func (b benchBed) drawn(l lay.Laid) orb.LineString {
	source := lay.SourcesIn(b.asked).Of(l)
	for _, t := range b.Templates {
		if t.Source == source && t.OnFold == l.OnFold {
			return orb.LineString(t.Outline)
		}
	}
	return orb.LineString(l.Outline)
}

// isTooNear says that the gap to another piece is not kept, though they do not overlap.
func (b benchBed) isTooNear(at layout.Placement, still []layout.Placement) bool {
	region := layout.NewRegion(b.Problem.Placed(at))
	least := b.Problem.Gap - gapSlack
	for _, other := range still {
		ring := b.Problem.Placed(other)
		if !region.Bound().Pad(b.Problem.Gap).Intersects(ring.Bound()) {
			continue
		}
		if _, _, near := region.Nearest(layout.NewRegion(ring), least); near {
			return true
		}
	}
	return false
}

// inLay brings rings from the bed to the frame of the lay.
func (b benchBed) inLay(rings []orb.Ring) []orb.Ring {
	out := make([]orb.Ring, len(rings))
	for i, ring := range rings {
		out[i] = moveRing(ring, b.Bed.At)
	}
	return out
}

func moveRing(ring orb.Ring, by orb.Point) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, p := range ring {
		out[i] = geometry.Add(p, by)
	}
	return out
}

// endOf a part is where its pieces end along the lay, beginOf where they begin: nowhere if
// there are none.
func endOf(all []lay.Laid, part int) float64 {
	end := 0.0
	for _, l := range all {
		if l.Bed == part {
			end = math.Max(end, l.Outline.Bound().Max[0])
		}
	}
	return end
}

func beginOf(all []lay.Laid, part int) float64 {
	begin := math.Inf(1)
	for _, l := range all {
		if l.Bed == part {
			begin = math.Min(begin, l.Outline.Bound().Min[0])
		}
	}
	return begin
}
