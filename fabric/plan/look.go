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
	// OtherPart: it reaches onto the other part of the lay, where it is cut another number
	// of times.
	OtherPart
)

// Broken is a rule that is broken, and where.
type Broken struct {
	Rule Rule
	Area []orb.Ring
	// Why it cannot lie on the other part, where a hand has carried it there: a lay.Reason.
	Why error
}

// Overlap is with another piece, by its index.
type Overlap struct {
	With int
	Area []orb.Ring
}

// Looked is what a piece meets where a hand holds it.
type Looked struct {
	// As it comes to lie; of what is drawn it has the outline alone.
	lay.Laid
	// Comes and Goes are how many copies come with it on the other part, and do not lie any
	// more by themselves.
	Comes, Goes int
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

// Look at one of the pieces held elsewhere, on the part of the lay that it is held on;
// slide lets it come into contact.
func (b *Bench) Look(all []lay.Laid, piece int, held lay.Laid, slide bool) (Looked, error) {
	own := all[piece].Bed
	if held.Bed == own {
		return b.lookHere(all, piece, held, slide)
	}
	if a := b.carried(all, piece); a.why == nil {
		return a.look(held, slide)
	}
	held.Bed = own
	found, err := b.lookHere(all, piece, held, slide)
	found.Free = false
	found.Broken = append([]Broken{{Rule: OtherPart, Why: b.over.why}}, slices.DeleteFunc(found.Broken,
		func(o Broken) bool { return o.Rule == OtherPart })...)
	return found, err
}

// look at the piece on the other part.
func (a *across) look(held lay.Laid, slide bool) (Looked, error) {
	found, err := a.bench.lookHere(a.all, a.at, a.bench.lying(a.all, a.at, held), slide)
	for i := range found.Overlaps {
		found.Overlaps[i].With = a.index[found.Overlaps[i].With]
	}
	found.Comes, found.Goes = len(a.comes), len(a.goes)
	all := slices.Clone(a.all)
	all[a.at] = found.Laid
	for _, one := range a.comes {
		all = append(all, a.bench.beside(all, one))
	}
	a.bench.measure(&found, math.Max(found.Length, math.Max(endOf(all, 0), endOf(all, 1))))
	return found, err
}

func (b *Bench) lookHere(all []lay.Laid, piece int, held lay.Laid, slide bool) (Looked, error) {
	on, err := b.under(all, piece)
	if err != nil {
		return Looked{}, err
	}
	placed, still := on.still(all, piece)
	at, ok := on.placement(held, placed)
	if !ok {
		held.Outline = orb.Ring(motion.Mapped(motion.MotionOf(held.Turn, held.Mirrored, held.X, held.Y), on.drawn(held)))
		return b.looked(all, piece, held, []Broken{{Rule: Turned}}), nil
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
	held.Outline = moveRing(on.Problem.Placed(at), on.Bed.At)
	return b.looked(all, piece, held, on.broken(at, still)), nil
}

// broken are the rules that a placement breaks, overlaps apart.
func (b benchBed) broken(at layout.Placement, still []layout.Placement) []Broken {
	p, ring := b.Problem, b.Problem.Placed(at)
	var out []Broken
	if beyond := b.beyond(ring, b.border); len(beyond) > 0 {
		out = append(out, Broken{Rule: OtherPart, Area: b.inLay(beyond)})
	}
	if over := b.overEdge(ring); len(over) > 0 {
		out = append(out, Broken{Rule: OverEdge, Area: b.inLay(over)})
	}
	var flawed []orb.Ring
	for _, zone := range p.Zones {
		flawed = append(flawed, motion.Common(ring, zone)...)
	}
	if len(flawed) > 0 {
		out = append(out, Broken{Rule: OnFlaw, Area: b.inLay(flawed)})
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
func (b *Bench) looked(all []lay.Laid, piece int, held lay.Laid, broken []Broken) Looked {
	out, outline := Looked{Laid: held, Broken: broken}, held.Outline
	region, length := layout.NewRegion(outline), 0.0
	for i, other := range all {
		if i == piece {
			length = math.Max(length, outline.Bound().Max[0])
			continue
		}
		length = math.Max(length, other.Outline.Bound().Max[0])
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
	b.measure(&out, length)
	return out
}

// measure what a lay of that length takes.
func (b *Bench) measure(out *Looked, length float64) {
	c := b.planner.Cloth
	out.Length = length
	out.Taken = out.Length // of two beds neither lies across
	if len(b.beds) == 1 {
		out.Taken = b.beds[0].Bed.Taken(c, out.Length-b.beds[0].Bed.At[0])
	}
	out.Need = purchase.Need(c, out.Taken)
	out.Buy = purchase.RoundUp(c, out.Need)
}

// leastShown is the area of an overlap that is shown while a piece is held, mm2
// [source.OwnChoice].
const leastShown = 0.5
