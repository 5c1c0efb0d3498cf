package plan

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/nest/layout"
)

// Rule is what a piece in a hand breaks.
type Rule int

// The rules that a piece may break.
const (
	// Turned otherwise than its grain, the nap or the fold allow.
	Turned Rule = iota
	// OverEdge of the cloth.
	OverEdge
	// OnFlaw, or where the cloth may not be used.
	OnFlaw
	// TooNear to another piece: the gap is not kept.
	TooNear
	// AgainstOthers: it points the other way than the rest of its garment, or of all.
	AgainstOthers
	// OffRepeat: its match points are off the print.
	OffRepeat
	// OtherPart: it reaches onto the other part of the lay, where it would be cut another
	// number of times.
	OtherPart
)

// Broken is a rule that is broken, and where.
type Broken struct {
	Rule Rule
	Area []orb.Ring
}

// Overlap is with another piece, by its index.
type Overlap struct {
	With int
	Area []orb.Ring
}

// Looked is what a piece meets where a hand holds it.
type Looked struct {
	// X, Y and Outline are where it comes to lie.
	X, Y    float64
	Outline orb.Ring
	// Free says that it lies where it may.
	Free     bool
	Overlaps []Overlap
	Broken   []Broken
	// Length of the lay with it, Taken, Need and Buy as in lay.Plan.
	Length, Taken, Need, Buy float64
}

// Reach is how far a piece slides out of an overlap, and Snap how near it is drawn into
// contact, mm [source.OwnChoice].
const (
	Reach = 60
	Snap  = 6
)

// Look at one of the pieces held elsewhere; slide lets it come into contact. It keeps to
// the part of the lay that it lies on.
func (b *Bench) Look(all []lay.Laid, piece int, held lay.Laid, slide bool) (Looked, error) {
	on, err := b.under(all, piece)
	if err != nil {
		return Looked{}, err
	}
	placed, still := on.still(all, piece)
	at, ok := on.placement(held, placed)
	if !ok {
		outline := orb.Ring(motion.Mapped(motion.MotionOf(held.Turn, held.Mirrored, held.X, held.Y), on.drawn(held)))
		return b.looked(all, piece, held, outline, []Broken{{Rule: Turned}}), nil
	}
	if slide {
		hand, err := b.hand(on, all, piece, at.Item, still)
		if err != nil {
			return Looked{}, err
		}
		at, _ = hand.Slide(at, Reach, Snap)
	}
	item := on.Problem.Items[at.Item]
	held.X, held.Y = at.X+on.Bed.At[0], at.Y+on.Bed.At[1]
	if t := on.Templates[at.Item]; t.IsAlike && held.Mirrored {
		// held as its image, which the problem knows by its own turn
		held.Mirrored, held.Turn = item.Turns[at.Turn].Mirrored, motion.WholeTurn(item.Turns[at.Turn].Degrees)
	}
	outline := moveRing(on.Problem.Placed(at), on.Bed.At)
	return b.looked(all, piece, held, outline, on.broken(at, still)), nil
}

// broken are the rules that a placement breaks, overlaps apart.
func (b benchBed) broken(at layout.Placement, still []layout.Placement) []Broken {
	p, ring := b.Problem, b.Problem.Placed(at)
	var out []Broken
	if beyond := b.beyond(ring, b.border); len(beyond) > 0 {
		out = append(out, Broken{OtherPart, b.inLay(beyond)})
	}
	if over := b.overEdge(ring); len(over) > 0 {
		out = append(out, Broken{OverEdge, b.inLay(over)})
	}
	var flawed []orb.Ring
	for _, zone := range p.Zones {
		flawed = append(flawed, motion.Common(ring, zone)...)
	}
	if len(flawed) > 0 {
		out = append(out, Broken{OnFlaw, b.inLay(flawed)})
	}
	item := p.Items[at.Item]
	direction := item.Turns[at.Turn].Direction
	if slices.ContainsFunc(still, func(o layout.Placement) bool {
		other := p.Items[o.Item]
		return item.Group != 0 && other.Group == item.Group && other.Turns[o.Turn].Direction != direction
	}) {
		out = append(out, Broken{Rule: AgainstOthers})
	}
	if len(out) == 0 && !canLie(p, []layout.Placement{at}) {
		out = append(out, Broken{Rule: OffRepeat})
	}
	if len(out) == 0 && p.Gap > 0 && b.isTooNear(at, still) {
		out = append(out, Broken{Rule: TooNear})
	}
	return out
}

// overEdge is what of a ring lies beyond the cut end or the edges of the bed, but for the
// side on which the other part of the lay is.
func (b benchBed) overEdge(ring orb.Ring) []orb.Ring {
	var out []orb.Ring
	for _, edge := range []side{atEnd, atLow, atHigh} {
		if edge != b.border {
			out = append(out, b.beyond(ring, edge)...)
		}
	}
	return out
}

// looked sums up what a piece meets.
func (b *Bench) looked(all []lay.Laid, piece int, held lay.Laid, outline orb.Ring, broken []Broken) Looked {
	out := Looked{X: held.X, Y: held.Y, Outline: outline, Broken: broken}
	region := layout.NewRegion(outline)
	for i, other := range all {
		if i == piece {
			out.Length = math.Max(out.Length, outline.Bound().Max[0])
			continue
		}
		out.Length = math.Max(out.Length, other.Outline.Bound().Max[0])
		if !region.Bound().Intersects(other.Outline.Bound()) {
			continue
		}
		least := layout.AreaTolerance * math.Min(region.Area(), layout.Area(other.Outline))
		if region.OverlapArea(layout.NewRegion(other.Outline)) <= math.Max(least, leastShown) {
			continue
		}
		out.Overlaps = append(out.Overlaps, Overlap{i, motion.Common(outline, other.Outline)})
	}
	out.Free = len(out.Overlaps) == 0 && len(broken) == 0
	c := b.planner.Cloth
	out.Taken = out.Length // of two beds neither lies across
	if len(b.beds) == 1 {
		out.Taken = b.beds[0].Bed.Taken(c, out.Length-b.beds[0].Bed.At[0])
	}
	out.Need = purchase.Need(c, out.Taken)
	out.Buy = purchase.RoundUp(c, out.Need)
	return out
}

// leastShown is the area of an overlap that is shown while a piece is held, mm2
// [source.OwnChoice].
const leastShown = 0.5
