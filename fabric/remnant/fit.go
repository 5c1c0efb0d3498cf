package remnant

import (
	"context"
	"fmt"
	"math"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// Remnant is a piece of cloth that is there already.
type Remnant struct {
	Cloth cloth.Cloth
	// Length along the warp as it is now, mm. Positive.
	Length float64
	// Offcuts that lie in a row on the cloth, when it is made of several or is
	// not a rectangle. May be empty.
	Offcuts []lay.OffcutPlace
}

// Answer says whether a remnant is enough.
type Answer int

const (
	// NotFound says that no layout was found and none is proven impossible.
	NotFound Answer = iota
	// Enough says that a layout was found.
	Enough
	// TooLittle says that it is proven that there is no layout.
	TooLittle
)

// String gives "not found", "yes" or "cannot be".
func (a Answer) String() string {
	switch a {
	case NotFound:
		return "not found"
	case Enough:
		return "yes"
	case TooLittle:
		return "cannot be"
	}
	return "unknown"
}

// Result is the answer with its evidence.
type Result struct {
	Answer Answer
	// Plan, when the answer is yes, lays everything on the remnant; its Buy is
	// the length of the remnant. When it is not found, Plan is the closest
	// try: everything laid, on a length that is more than there is; without
	// pieces when the search was ended before its first layout.
	Plan lay.Plan
	// Usable is the length that there is to lay on, mm: the remnant less the
	// straightening of its ends and what it loses when it is wetted.
	Usable float64
	// Over lists the pieces of the closest try that stick out over the end,
	// worst first.
	Over []Overhang
	// Proof says in one sentence why it cannot be.
	Proof string
	// Spare is what is left over when the answer is yes.
	Spare Spare
	// Reasons say why a lay that was asked is out of the question.
	Reasons []LayReason
}

// Overhang is a piece that sticks out over the end of the cloth.
type Overhang struct {
	Name, Garment string
	By            float64 // mm
}

// LayReason says why a lay cannot be.
type LayReason struct {
	Lay lay.Kind
	Why string
}

// usableLength is what there is to lay on.
func (r Remnant) usableLength() float64 {
	length := r.Length - r.Cloth.Straighten
	if !r.Cloth.Shrinkage.CutFirst {
		length *= 1 - r.Cloth.Shrinkage.Warp
	}
	return length
}

// Fit asks whether all pieces can be cut from a remnant: in one of the lays
// asked, or, when none is named, folded along the warp or open. An open lay
// takes whatever any other does, so those two are enough to ask. Options.Time
// is for all of it together.
//
// It stops at the first layout found, and keeps a little of the time to push
// it together, so that what is left over is in one piece. When the context is
// cancelled it answers with what it has. Errors: a cloth or a piece that is
// not sound, or a length that is not positive.
func Fit(ctx context.Context, remnant Remnant, all []pieces.Piece, options plan.Options) (Result, error) {
	if err := plan.CheckJob(remnant.Cloth, all); err != nil {
		return Result{}, err
	}
	if !cloth.IsLength(remnant.Length) || remnant.Length == 0 {
		return Result{}, fmt.Errorf("%s: a length of %s is no cloth; give the length of the piece that there is, such as 1.35 m", remnant.Cloth, remnant.Cloth.Say(remnant.Length))
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(remnant.Cloth, all))
	if err != nil {
		return Result{}, err
	}
	if options.Time == 0 && options.Passes == 0 {
		options.Time = plan.UsualTime
	}
	if len(options.Lays) == 0 {
		options.Lays = []lay.Kind{lay.FoldedAlong, lay.Open}
	}
	q := &question{
		Table:   &plan.Table{Ctx: ctx, Cloth: remnant.Cloth, Asked: all, Wanted: wanted, Options: options},
		remnant: remnant, usable: remnant.usableLength(), strips: map[lay.Kind]layout.Layout{},
	}
	return q.answer()
}

// question is a remnant on the cutting table.
type question struct {
	*plan.Table
	remnant Remnant
	usable  float64
	closest *plan.SolvedLay
	// strips are the layouts found without a limit of length, by lay: where
	// the search on the length that there is begins.
	strips map[lay.Kind]layout.Layout
	lay    lay.Kind // of the closest
}

// setting is one lay that is still open to question.
type setting struct {
	cloth     cloth.Cloth
	lay       lay.Kind
	bed       bed.Bed
	templates []rules.Template
	length    float64 // that the bed may have
}

// isSingle says that the lay is one bed; the others are solved as a whole.
func (s setting) isSingle() bool { return s.lay != lay.SelvedgeIn && s.lay != lay.InStretches }

func (q *question) answer() (Result, error) {
	out := Result{Usable: q.usable}
	if q.usable <= 0 {
		out.Answer = TooLittle
		out.Proof = fmt.Sprintf("straightening the cut ends and wetting leave nothing of a length of %s", q.Cloth.Say(q.remnant.Length))
		return out, nil
	}
	settings := q.settings(&out)
	if len(settings) == 0 {
		out.Answer, out.Proof = TooLittle, out.Reasons[len(out.Reasons)-1].Why
		return out, nil
	}
	lay, found, err := q.search(settings)
	switch {
	case err != nil:
		return Result{}, err
	case found != nil:
		return q.enough(out, lay, found)
	case q.closest != nil:
		closer := q.tidied(q.closest)
		if q.fits(closer) {
			return q.enough(out, q.lay, closer)
		}
		q.closest = closer
		if out.Plan, err = q.plan(q.lay, q.closest); err != nil {
			return Result{}, err
		}
		out.Over = Overhangs(out.Plan, q.usable)
	}
	return out, nil
}

// settings leaves out the lays that are proven impossible.
func (q *question) settings(out *Result) []setting {
	var left []setting
	for _, kind := range lay.Kinds() {
		if !slices.Contains(q.Options.Lays, kind) {
			continue
		}
		s := setting{cloth: q.Cloth, lay: kind, length: q.usable}
		why := ""
		if s.isSingle() {
			s, why = q.single(kind)
		} else if least := q.OpenBound(); least > q.usable*(1+plan.ProofMargin) {
			why = fmt.Sprintf("however the pieces are laid, they take %s of this cloth, and there are %s", atLeast(q.Cloth, least), q.Cloth.Say(q.usable))
		}
		if why != "" {
			out.Reasons = append(out.Reasons, LayReason{kind, why})
			continue
		}
		left = append(left, s)
	}
	// Reasons end with that of the open lay, which says the most.
	slices.SortStableFunc(out.Reasons, func(a, b LayReason) int { return int(b.Lay) - int(a.Lay) })
	slices.SortStableFunc(left, func(a, b setting) int { return int(b.lay) - int(a.lay) })
	return left
}

func (q *question) single(kind lay.Kind) (setting, string) {
	s := setting{cloth: q.Cloth, lay: kind, bed: bed.Of(q.Cloth, kind), length: bedLength(q.Cloth, kind, q.usable)}
	var err error
	if s.templates, err = rules.TemplatesOf(q.Cloth, s.bed, q.Wanted); err != nil {
		return s, err.Error()
	}
	problem, err := rules.ProblemOf(q.Cloth, s.bed, s.templates)
	if err != nil {
		return s, err.Error()
	}
	sheet, err := q.sheet(s, problem)
	if err != nil {
		return s, err.Error()
	}
	return s, misfit(q.Ctx, s, sheet)
}

// bedLength is the greatest length of a bed that takes no more than a length
// of cloth.
func bedLength(c cloth.Cloth, kind lay.Kind, usable float64) float64 {
	switch {
	case !kind.IsAcross():
		return usable
	case kind == lay.FoldedAcross || c.Repeat.Along == 0:
		return usable / 2
	}
	repeats := math.Floor(usable / 2 / c.Repeat.Along)
	return math.Max(repeats*c.Repeat.Along, usable-(repeats+1)*c.Repeat.Along)
}
