// Package words says in sentences what a lay is and how it is made, for commands,
// plans on paper and pages alike.
package words

import (
	"fmt"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// Spreading says in sentences how the cloth is spread, so that it can be done
// with a tape, chalk and pins. Say prints a length.
func Spreading(p lay.Plan, say func(mm float64) string) []string {
	var out []string
	switch p.Lay {
	case lay.Open:
		out = append(append(beginning(p), openOut, "Smooth it without stretching: the weft must lie square to the selvedge."),
			"All distances across are measured from the outer edge of the selvedge nearest to you.")
	case lay.FoldedAlong:
		out = foldInHalf(p)
	case lay.FoldedAcross:
		out = foldAcross(p, say)
	case lay.CutAcross:
		out = cutAcross(p, say)
	case lay.SelvedgeIn:
		out = foldOneIn(p, say)
	case lay.BothSelvedgesIn:
		out = foldBothIn(p, say)
	case lay.InStretches:
		out = foldAndOpen(p, say)
	}
	return append(out, Rules(p.Cloth, say)...)
}

const openOut = "Spread the cloth in one layer, right side up, with one selvedge along the side of the table " +
	"nearest to you and the cut end on your left."

// beginning is what comes before every lay.
func beginning(p lay.Plan) []string {
	out := append(rightSide(p), "Straighten the cut end: cut along one weft thread, square to the selvedge.")
	return append(out, flawsFirst(p)...)
}

// rightSide says which it is where both sides look alike.
func rightSide(p lay.Plan) []string {
	if !p.Cloth.Alike {
		return nil
	}
	return []string{"Both sides of this cloth look alike: choose one as its right side, and put a pin into that."}
}

// flawsFirst says how the flaws are found again: they are measured from the
// end that is cut straight.
func flawsFirst(p lay.Plan) []string {
	if !slices.ContainsFunc(p.Cloth.Flaws, func(f cloth.Flaw) bool { return !f.OffCloth }) {
		return nil
	}
	text := "Right side up, with the straightened end on your left, find each flaw at the distances that were " +
		"measured from that end and from the selvedge nearest to you"
	if p.Plies == 1 {
		return []string{text + "; chalk round it."}
	}
	return []string{text + ". Run a thread through the cloth beside it, so that it shows on both sides when the " +
		"cloth is double: the plan hatches it, in whichever layer it lies."}
}

// apart is how far pins and dots lie from each other.
func apart(p lay.Plan) string {
	if p.Cloth.Inches {
		return "about every 12 in"
	}
	return "about every 30 cm"
}

// pinTogether says how two layers are fixed to each other.
func pinTogether(p lay.Plan) []string {
	return append(stripesTogether(p), "Pin the selvedges together "+apart(p)+".")
}

// stripesTogether says how stripes across lie in both layers: both have them
// at the same places along, but not always at the same places across.
func stripesTogether(p lay.Plan) []string {
	if p.Cloth.Repeat.Along == 0 {
		return nil
	}
	return []string{"Stick a pin through both layers on a line of the pattern that runs across the cloth, " + apart(p) +
		": it must come out on the same line below. Shift the upper layer until it does."}
}

func foldInHalf(p lay.Plan) []string {
	out := append(beginning(p),
		"Fold the cloth in half along its length, right sides together, until the two selvedges lie exactly on each other.",
		"Turn it so that the fold runs along the side of the table nearest to you and the cut end is on your left.",
		"Smooth it until the fold lies without a ripple.")
	return append(append(out, pinTogether(p)...), "All distances across are measured from the fold.")
}

func foldAcross(p lay.Plan, say func(mm float64) string) []string {
	out := append(rightSide(p),
		fmt.Sprintf("Straighten both cut ends: cut along one weft thread, square to the selvedge. At least %s must be "+
			"left.", say(p.Taken)),
		"Lay the cloth right side up. Take one cut end and bring it over onto the other, right sides together: ends on "+
			"ends, selvedges on selvedges.",
		"Turn it so that the fold is on your left, the cut ends on your right and both selvedges of one side along the "+
			"side of the table nearest to you.",
		fmt.Sprintf("Measure from the fold to the cut ends at both selvedges: it must be the same, and at least %s. Pin "+
			"the selvedges together %s.", say(p.Length), apart(p)))
	return append(out,
		"All distances along are measured from the fold, all distances across from the outer edge of the selvedge "+
			"nearest to you.")
}

func cutAcross(p lay.Plan, say func(mm float64) string) []string {
	cut := fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.",
		say(p.Taken-p.Length))
	if p.Cloth.Repeat.Along > 0 {
		cut = fmt.Sprintf("Measure %s along both selvedges, a whole number of repeats, and cut the cloth across there, "+
			"at the same place of the pattern as the cut end.", say(p.Taken-p.Length))
	}
	out := append(beginning(p), cut,
		"On each of the two lengths, put a pin into both selvedges at the end that lay nearer to the first cut end.",
		"Lay the first length right side up, one selvedge along the side of the table nearest to you, its pinned end on "+
			"your left.",
		"Lay the second length on it right side down, its pinned end on your left too: left ends on each other, "+
			"selvedges on selvedges. So the warp of both runs the same way.")
	return append(append(out, pinTogether(p)...),
		"All distances along are measured from the left ends, all distances across from the outer edge of the selvedge "+
			"nearest to you.")
}

func foldOneIn(p lay.Plan, say func(mm float64) string) []string {
	out := append(beginning(p), openOut,
		fmt.Sprintf("Put pins %s from the edge of the selvedge nearest to you, %s. Bring that edge over onto the pins, "+
			"right sides together.", say(2*p.FoldedIn), apart(p)),
		fmt.Sprintf("Measure from the fold to that edge: it must be %s everywhere. Smooth the fold, and take the pins "+
			"out.", say(p.FoldedIn)))
	return append(append(out, stripesTogether(p)...),
		"Pin the edge down "+apart(p)+".",
		"Between the fold and that edge there are two layers; beyond it one, right side up.",
		"All distances across are measured from the fold, which now lies nearest to you.")
}

func foldBothIn(p lay.Plan, say func(mm float64) string) []string {
	out := append(beginning(p), openOut,
		fmt.Sprintf("Put pins along the middle, %s from either edge, %s. Bring both selvedges over onto the pins, right "+
			"sides together, until their edges meet there and do not overlap.", say(p.Width), apart(p)),
		fmt.Sprintf("Measure from fold to fold: it must be %s everywhere. Smooth both folds, and take the pins out.",
			say(p.Width)))
	return append(append(out, stripesTogether(p)...),
		"Pin both edges down "+apart(p)+".",
		"No piece may cross the line where the selvedges meet.",
		"All distances across are measured from the fold nearest to you.")
}

func foldAndOpen(p lay.Plan, say func(mm float64) string) []string {
	at := 0.0
	if len(p.Beds) > 1 {
		at = p.Beds[1].X
	}
	out := append(beginning(p),
		fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.", say(at)),
		"First length: fold it in half along, right sides together, selvedge exactly on selvedge, the fold nearest to "+
			"you and the first cut end on your left.")
	return append(append(out, pinTogether(p)...),
		"Second length: spread it in one layer, right side up, one selvedge nearest to you and the end just cut on your "+
			"left.",
		"On each length, distances along are measured from its own left end; distances across from the fold on the "+
			"first, from the outer edge of the selvedge nearest to you on the second.")
}
