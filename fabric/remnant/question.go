package remnant

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
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

// Overhang is a piece that sticks out over the end of the cloth.
type Overhang struct {
	Name, Garment string
	By            float64 // mm
}

// LayReason says why a lay cannot be.
type LayReason struct {
	Lay lay.Kind
	Why []lay.Reason
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
	// straightening of its ends, what it loses when it is wetted, and what hand
	// laying takes.
	Usable float64
	// Over lists the pieces of the closest try that stick out over the end,
	// worst first.
	Over []Overhang
	// Proof says why it cannot be.
	Proof []lay.Reason
	// Spare is what is left over when the answer is yes.
	Spare Spare
	// Kept says that the lay is one of those that were kept, be it pushed together
	// further; who keeps lays takes it back where this very search had found it.
	Kept bool
	// Work that the searches did.
	Work plan.Work
	// Reasons say why a lay that was asked is out of the question.
	Reasons []LayReason
}

// usableLength is what there is to lay on.
func (r Remnant) usableLength() float64 {
	length := r.Length - r.Cloth.Straighten
	if !r.Cloth.Shrinkage.CutFirst {
		length *= 1 - r.Cloth.Shrinkage.Warp
	}
	return r.Cloth.HandLaying.Within(length)
}

// question is a remnant on the cutting table.
type question struct {
	*plan.Planner
	remnant Remnant
	usable  float64
	closest *plan.SolvedLay
	// strips are the layouts found without a limit of length, by lay: where
	// the search on the length that there is begins.
	strips map[lay.Kind]layout.Layout
	lay    lay.Kind // of the closest
}

// stay reports whether pieces stay where they lie, such as those that are cut already.
func (q *question) stay() bool { return len(q.Options.Fixed.Pieces) > 0 }

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

// Spare is what is left of a remnant, on the cloth lying open.
type Spare struct {
	// CleanEnd is the length, over the whole width, that no piece reaches:
	// the longer one, where there is one at both ends. mm.
	CleanEnd float64
	// Length along the warp and Width across of the largest rectangle between
	// the pieces, clear of flaws and selvedges, and where it begins: X from
	// the cut end, Y from the outer edge of the selvedge nearest to the
	// cutter. Measured in steps of 2 mm, never too large.
	X, Y, Length, Width float64
}

// Offcut is a piece of a cloth that is there already, of any shape, as it is
// before it is wetted.
type Offcut struct {
	Name string // "the one from the skirt"; may be empty
	// Length along the warp and Width across, selvedges included, mm; not
	// used when there is an outline.
	Length, Width float64
	// Outline when it is not a rectangle: a simple ring, x along the warp and
	// y across, y = 0 at the edge nearest to the cutter. Where it is cut and
	// not woven there is no selvedge, but as much is kept off its lowest and
	// its highest edge.
	Outline orb.Ring
	// Flaws in the frame of the offcut.
	Flaws []cloth.Flaw
}
