package plan

import (
	"context"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// Bench is one lay of a cloth on which pieces are moved by hand. It is for one goroutine.
type Bench struct {
	table *Table
	kind  lay.Kind
	one   SolvedBed
	// taken is the piece in hand with what lies still, as it was last taken up.
	taken *taken
}

type taken struct {
	all   []lay.Laid
	piece int
	hand  *nest.Hand
}

// NewBench spreads a cloth for laying pieces by hand, on a repeat with its match points at
// places; tables may be nil. The error is the lay.Reason why the lay cannot be.
func NewBench(c cloth.Cloth, all []pieces.Piece, kind lay.Kind, places lay.Places, tables *nest.Tables) (*Bench,
	error) {
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return nil, lay.Reason{Of: lay.FixedInParts}
	}
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
	t := &Table{Ctx: context.Background(), Cloth: c, Asked: all, Wanted: wanted, Options: Options{Tables: tables}}
	b := bed.Of(c, kind)
	templates, err := rules.TemplatesOf(c, b, wanted)
	if err != nil {
		return nil, err
	}
	problem, matched, err := rules.ProblemAt(c, b, templates, t.joins(), places)
	if err != nil {
		return nil, err
	}
	one := SolvedBed{Bed: b, Templates: templates, Problem: problem, Bound: bound.Length(problem), matched: matched}
	return &Bench{table: t, kind: kind, one: one}, nil
}

// hand takes a piece up, unless it is in hand already.
func (b *Bench) hand(all []lay.Laid, piece, item int, still []layout.Placement) (*nest.Hand, error) {
	if t := b.taken; t != nil && t.piece == piece && sameList(t.all, all) {
		return t.hand, nil
	}
	hand, err := nest.NewHand(b.one.Problem, item, still, b.table.Options.Tables)
	if err == nil {
		b.taken = &taken{all, piece, hand}
	}
	return hand, err
}

// sameList says that two lists are one and the same.
func sameList(a, b []lay.Laid) bool { return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0]) }

// still are the placements of all but one piece; placed counts them by template. One that
// cannot lie so is left out.
func (b *Bench) still(all []lay.Laid, but int) (placed []int, out []layout.Placement) {
	placed = make([]int, len(b.one.Templates))
	for i, l := range all {
		if i == but {
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
func (b *Bench) placement(l lay.Laid, placed []int) (layout.Placement, bool) {
	l.X, l.Y = l.X-b.one.Bed.At[0], l.Y-b.one.Bed.At[1]
	source := lay.SourcesIn(b.table.Asked).Of(l)
	if at, ok := relaidPiece(l, source, b.one.Templates, b.one.Problem, placed); ok || !l.OnFold {
		return at, ok
	}
	box := motion.Mapped(motion.MotionOf(l.Turn, l.Mirrored, l.X, l.Y), b.drawn(l)).Bound()
	for _, y := range []float64{l.Y - box.Min[1], l.Y + b.one.Problem.Width - box.Max[1]} {
		l.Y = y
		if at, ok := relaidPiece(l, source, b.one.Templates, b.one.Problem, placed); ok {
			return at, true
		}
	}
	return layout.Placement{}, false
}

// drawn is the outline of the template of a piece.
func (b *Bench) drawn(l lay.Laid) orb.LineString {
	source := lay.SourcesIn(b.table.Asked).Of(l)
	for _, t := range b.one.Templates {
		if t.Source == source && t.OnFold == l.OnFold {
			return orb.LineString(t.Outline)
		}
	}
	return orb.LineString(l.Outline)
}

// Plan of all pieces as they lie. Where that is no layout, or breaks a rule, it is drawn
// all the same, and proven is false.
func (b *Bench) Plan(all []lay.Laid) (out lay.Plan, proven bool) {
	_, placements := b.still(all, -1)
	laid := layout.Layout{Placements: placements}
	if len(placements) == len(all) {
		if plan, ok := b.table.better(b.kind, b.one, laid); ok {
			return plan, true
		}
	}
	laid.Length = LengthOf(b.one.Problem, laid)
	one := b.one
	one.Layout = laid
	out = lay.Plan{Cloth: b.table.Cloth, Asked: b.table.Asked, Lay: b.kind, Plies: b.kind.Plies()}
	Fill(&out, []SolvedBed{one})
	markByHand(&out)
	return out, false
}

// Verified says whether all pieces lie where they may.
func (b *Bench) Verified(all []lay.Laid) bool {
	_, placements := b.still(all, -1)
	laid := layout.Layout{Placements: placements}
	laid.Length = LengthOf(b.one.Problem, laid)
	return len(placements) == len(all) && verify.Layout(b.one.Problem, laid) == nil
}
