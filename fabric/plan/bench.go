package plan

import (
	"context"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// Bench is one lay of a cloth on which pieces are moved by hand. In a lay of two parts a
// piece goes onto the other with as many copies as are cut at once there. It is for one
// goroutine.
type Bench struct {
	planner *Planner
	kind    lay.Kind
	// depth by which a selvedge is folded in, as in lay.Plan.
	depth float64
	// beds in the order of the parts.
	beds   []SolvedBed
	bound  float64
	places lay.Places
	// taken is the piece in hand with what lies still, as it was last taken up.
	taken *taken
	// over is the piece on the other part, as it was last carried there.
	over *across
}

type taken struct {
	all   []lay.Laid
	piece int
	hand  *nest.Hand
}

// across is a lay of two parts when one of its pieces is on the other part.
type across struct {
	// from and piece are what it was made for; why it cannot be.
	from  []lay.Laid
	piece int
	why   error

	bench *Bench
	// all that lie there by then, the piece at an index, each with its own in from.
	all   []lay.Laid
	at    int
	index []int
	// comes are further copies that lie on that part then, and goes those of from that do
	// not lie any more.
	comes []lay.Laid
	goes  []int
}

// NewBench spreads a cloth for laying pieces by hand, as it is spread in a plan: in its
// lay, on a repeat with its match points at its places, and in a lay of two parts shared
// out between them as its pieces are. tables may be nil. The error is the lay.Reason why
// the lay cannot be.
func NewBench(c cloth.Cloth, all []pieces.Piece, as lay.Plan, tables *nest.Tables) (*Bench, error) {
	if err := CheckJob(c, all); err != nil {
		return nil, err
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(c, all))
	if err != nil {
		return nil, err
	}
	if tables == nil {
		tables = NewTables()
	}
	t := &Planner{Ctx: context.Background(), Cloth: c, Asked: all, Wanted: wanted, Options: Options{Tables: tables}}
	out := &Bench{planner: t, kind: as.Lay, places: as.Places}
	if as.Lay == lay.SelvedgeIn || as.Lay == lay.InStretches {
		out.depth, out.bound = as.FoldedIn, t.OpenBound()
		out.beds, err = t.bedsSharedAs(as)
		return out, err
	}
	one, err := t.bedToLay(as.Lay, as.Places)
	out.beds, out.bound = []SolvedBed{one}, one.Bound
	return out, err
}

// hand takes a piece up, unless it is in hand already.
func (b *Bench) hand(on benchBed, all []lay.Laid, piece, item int, still []layout.Placement) (*nest.Hand, error) {
	if t := b.taken; t != nil && t.piece == piece && sameList(t.all, all) {
		return t.hand, nil
	}
	hand, err := nest.NewHand(on.upToBorder(), item, still, b.planner.Options.Tables)
	if err == nil {
		b.taken = &taken{all, piece, hand}
	}
	return hand, err
}

// sameList says that two lists are one and the same.
func sameList(a, b []lay.Laid) bool { return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0]) }

// under a piece is the bed that it lies on, where all others lie still.
func (b *Bench) under(all []lay.Laid, piece int) (benchBed, error) {
	if len(b.beds) == 1 {
		return benchBed{SolvedBed: b.beds[0], asked: b.planner.Asked, isAll: true}, nil
	}
	part := all[piece].Bed
	out := benchBed{SolvedBed: b.beds[part], asked: b.planner.Asked, part: part}
	switch {
	case b.kind == lay.SelvedgeIn && part == 0:
		out.border = atHigh
	case b.kind == lay.SelvedgeIn:
		out.border = atLow
	case part == 0:
		out.border = ahead
		out.room = beginOf(all, 1) - b.planner.Cloth.Gap
	default:
		out.border = atEnd
		one, err := b.openBehind(endOf(all, 0))
		out.SolvedBed = one
		return out, err
	}
	return out, nil
}

// openBehind is the open stretch behind a folded one of that length.
func (b *Bench) openBehind(length float64) (SolvedBed, error) {
	moved, err := b.planner.bedBehind(b.beds[1], length, b.places)
	if err == nil {
		b.beds[1] = moved
	}
	return moved, err
}

// laid are the beds with all pieces as they lie. It reports false where one cannot lie so
// on its bed; that is left out.
func (b *Bench) laid(all []lay.Laid) (out []SolvedBed, whole bool) {
	count := 0
	for part, one := range b.beds {
		if part == 1 && b.kind == lay.InStretches {
			if behind, err := b.openBehind(out[0].Layout.Length); err == nil {
				one = behind
			}
		}
		on := benchBed{SolvedBed: one, asked: b.planner.Asked, part: part, isAll: len(b.beds) == 1}
		_, placements := on.still(all, -1)
		one.Layout = layout.Layout{Placements: placements}
		one.Layout.Length = LengthOf(one.Problem, one.Layout)
		count += len(placements)
		out = append(out, one)
	}
	return out, count == len(all)
}

// Plan of all pieces as they lie. Where that is no layout, or breaks a rule, it is drawn
// all the same, and proven is false.
func (b *Bench) Plan(all []lay.Laid) (out lay.Plan, proven bool) {
	beds, whole := b.laid(all)
	if whole && areVerified(beds) {
		found := LayOf(b.planner.Cloth, beds...)
		found.Depth, found.Bound = b.depth, min(b.bound, found.Taken)
		if len(beds) == 1 {
			found.Bound = min(b.bound, beds[0].Layout.Length)
		}
		if plan, err := b.planner.planOf(b.kind, found); err == nil {
			return plan, true
		}
	}
	out = lay.Plan{Cloth: b.planner.Cloth, Asked: b.planner.Asked, Lay: b.kind, Plies: b.kind.Plies(), FoldedIn: b.depth}
	Fill(&out, beds)
	markByHand(&out)
	return out, false
}

func areVerified(beds []SolvedBed) bool {
	for _, one := range beds {
		if verify.Layout(one.Problem, one.Layout) != nil {
			return false
		}
	}
	return true
}
