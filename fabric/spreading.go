package fabric

import (
	"fmt"
	"slices"

	"ellwand/fabric/cloth"
)

// OnTable is the length of the cloth as it lies on the table, as bought, mm:
// half of it where it is folded or cut across.
func (p LayPlan) OnTable() float64 {
	if !p.Lay.isAcross() {
		return p.laidLength()
	}
	return max(p.Length, p.laidLength()/2)
}

// laidLength is the length bought, as it is when it is laid.
func (p LayPlan) laidLength() float64 {
	if p.Cloth.Shrinkage.CutFirst {
		return p.Buy
	}
	return p.Buy * (1 - p.Cloth.Shrinkage.Warp)
}

// PartOf is the part of the lay on which a piece lies.
func (p LayPlan) PartOf(l Laid) Part {
	if l.Part < len(p.Parts) {
		return p.Parts[l.Part]
	}
	return Part{Length: p.Length, Width: p.Width, Plies: p.Lay.Plies(), FoldLow: p.Lay == FoldedAlong || p.Lay == BothSelvedgesIn}
}

// Spreading says in sentences how the cloth is spread, so that it can be done
// with a tape, chalk and pins. Say prints a length.
func (p LayPlan) Spreading(say func(mm float64) string) []string {
	if p.Lay == Open {
		return append(append(p.beginning(), openOut, "Smooth it without stretching: the weft must lie square to the selvedge."),
			"All distances across are measured from the outer edge of the selvedge nearest to you.")
	}
	var out []string
	switch p.Lay {
	case FoldedAlong:
		out = p.foldInHalf()
	case FoldedAcross:
		out = p.foldAcross(say)
	case CutAcross:
		out = p.cutAcross(say)
	case SelvedgeIn:
		out = p.foldOneIn(say)
	case BothSelvedgesIn:
		out = p.foldBothIn(say)
	case InStretches:
		out = p.foldAndOpen(say)
	}
	return out
}

const openOut = "Spread the cloth in one layer, right side up, with one selvedge along the side of the table nearest to you and the cut end on your left."

// beginning is what comes before every lay.
func (p LayPlan) beginning() []string {
	out := append(p.rightSide(), "Straighten the cut end: cut along one weft thread, square to the selvedge.")
	return append(out, p.flawsFirst()...)
}

// rightSide says which it is where both sides look alike.
func (p LayPlan) rightSide() []string {
	if !p.Cloth.Alike {
		return nil
	}
	return []string{"Both sides of this cloth look alike: choose one as its right side, and put a pin into that."}
}

// flawsFirst says how the flaws are found again: they are measured from the
// end that is cut straight.
func (p LayPlan) flawsFirst() []string {
	if !slices.ContainsFunc(p.Cloth.Flaws, func(f cloth.Flaw) bool { return !f.OffCloth }) {
		return nil
	}
	text := "Right side up, with the straightened end on your left, find each flaw at the distances that were measured from that end and from the selvedge nearest to you"
	if p.Plies == 1 {
		return []string{text + "; chalk round it."}
	}
	return []string{text + ". Run a thread through the cloth beside it, so that it shows on both sides when the cloth is double: the plan hatches it, in whichever layer it lies."}
}

// apart is how far pins and dots lie from each other.
func (p LayPlan) apart() string {
	if p.Cloth.Inches {
		return "about every 12 in"
	}
	return "about every 30 cm"
}

// pinTogether says how two layers are fixed to each other.
func (p LayPlan) pinTogether() []string {
	return append(p.stripesTogether(), "Pin the selvedges together "+p.apart()+".")
}

// stripesTogether says how stripes across lie in both layers: both have them
// at the same places along, but not always at the same places across.
func (p LayPlan) stripesTogether() []string {
	if p.Cloth.Repeat.Along == 0 {
		return nil
	}
	return []string{"Stick a pin through both layers on a line of the pattern that runs across the cloth, " + p.apart() +
		": it must come out on the same line below. Shift the upper layer until it does."}
}

func (p LayPlan) foldInHalf() []string {
	out := append(p.beginning(),
		"Fold the cloth in half along its length, right sides together, until the two selvedges lie exactly on each other.",
		"Turn it so that the fold runs along the side of the table nearest to you and the cut end is on your left.",
		"Smooth it until the fold lies without a ripple.")
	return append(append(out, p.pinTogether()...), "All distances across are measured from the fold.")
}

func (p LayPlan) foldAcross(say func(mm float64) string) []string {
	out := append(p.rightSide(),
		fmt.Sprintf("Straighten both cut ends: cut along one weft thread, square to the selvedge. At least %s must be left.", say(p.Taken)),
		"Lay the cloth right side up. Take one cut end and bring it over onto the other, right sides together: ends on ends, selvedges on selvedges.",
		"Turn it so that the fold is on your left, the cut ends on your right and both selvedges of one side along the side of the table nearest to you.",
		fmt.Sprintf("Measure from the fold to the cut ends at both selvedges: it must be the same, and at least %s. Pin the selvedges together %s.", say(p.Length), p.apart()))
	return append(out,
		"All distances along are measured from the fold, all distances across from the outer edge of the selvedge nearest to you.")
}

func (p LayPlan) cutAcross(say func(mm float64) string) []string {
	cut := fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.", say(p.Taken-p.Length))
	if p.Cloth.Repeat.Along > 0 {
		cut = fmt.Sprintf("Measure %s along both selvedges, a whole number of repeats, and cut the cloth across there, at the same place of the pattern as the cut end.", say(p.Taken-p.Length))
	}
	out := append(p.beginning(), cut,
		"On each of the two lengths, put a pin into both selvedges at the end that lay nearer to the first cut end.",
		"Lay the first length right side up, one selvedge along the side of the table nearest to you, its pinned end on your left.",
		"Lay the second length on it right side down, its pinned end on your left too: left ends on each other, selvedges on selvedges. So the warp of both runs the same way.")
	return append(append(out, p.pinTogether()...),
		"All distances along are measured from the left ends, all distances across from the outer edge of the selvedge nearest to you.")
}

func (p LayPlan) foldOneIn(say func(mm float64) string) []string {
	out := append(p.beginning(), openOut,
		fmt.Sprintf("Put pins %s from the edge of the selvedge nearest to you, %s. Bring that edge over onto the pins, right sides together.", say(2*p.FoldedIn), p.apart()),
		fmt.Sprintf("Measure from the fold to that edge: it must be %s everywhere. Smooth the fold, and take the pins out.", say(p.FoldedIn)))
	return append(append(out, p.stripesTogether()...),
		"Pin the edge down "+p.apart()+".",
		"Between the fold and that edge there are two layers; beyond it one, right side up.",
		"All distances across are measured from the fold, which now lies nearest to you.")
}

func (p LayPlan) foldBothIn(say func(mm float64) string) []string {
	out := append(p.beginning(), openOut,
		fmt.Sprintf("Put pins along the middle, %s from either edge, %s. Bring both selvedges over onto the pins, right sides together, until their edges meet there and do not overlap.", say(p.Width), p.apart()),
		fmt.Sprintf("Measure from fold to fold: it must be %s everywhere. Smooth both folds, and take the pins out.", say(p.Width)))
	return append(append(out, p.stripesTogether()...),
		"Pin both edges down "+p.apart()+".",
		"No piece may cross the line where the selvedges meet.",
		"All distances across are measured from the fold nearest to you.")
}

func (p LayPlan) foldAndOpen(say func(mm float64) string) []string {
	at := 0.0
	if len(p.Parts) > 1 {
		at = p.Parts[1].X
	}
	out := append(p.beginning(),
		fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.", say(at)),
		"First length: fold it in half along, right sides together, selvedge exactly on selvedge, the fold nearest to you and the first cut end on your left.")
	return append(append(out, p.pinTogether()...),
		"Second length: spread it in one layer, right side up, one selvedge nearest to you and the end just cut on your left.",
		"On each length, distances along are measured from its own left end; distances across from the fold on the first, from the outer edge of the selvedge nearest to you on the second.")
}

// Least is a length of cloth that no layout in this lay can beat, mm: Bound,
// or twice as much where the cloth is folded or cut across.
func (p LayPlan) Least() float64 {
	if p.Lay.isAcross() {
		return 2 * p.Bound
	}
	return p.Bound
}
