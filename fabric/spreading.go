package fabric

import "fmt"

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
	straighten := "Straighten the cut end: cut along one weft thread, square to the selvedge."
	open := "Spread the cloth in one layer, right side up, with one selvedge along the side of the table nearest to you and the cut end on your left."
	smooth := "Smooth it without stretching: the weft must lie square to the selvedge."
	fold := "Smooth it until the fold hangs without a ripple. Pin the selvedges together about every 30 cm (12 in)."
	switch p.Lay {
	case FoldedAlong:
		return []string{straighten,
			"Fold the cloth in half along its length, right sides together, until the two selvedges lie exactly on each other.",
			"Turn it so that the fold runs along the side of the table nearest to you and the cut end is on your left.",
			fold,
			"All distances across are measured from the fold."}
	case FoldedAcross:
		return []string{
			fmt.Sprintf("Straighten both cut ends: cut along one weft thread, square to the selvedge. At least %s must be left.", say(p.Taken)),
			"Lay the cloth right side up. Take one cut end and bring it over onto the other, right sides together: ends on ends, selvedges on selvedges.",
			"Turn it so that the fold is on your left, the cut ends on your right and both selvedges of one side along the side of the table nearest to you.",
			fmt.Sprintf("Measure from the fold to the cut ends at both selvedges: it must be the same, and at least %s. Pin the selvedges together about every 30 cm (12 in).", say(p.Length)),
			"All distances along are measured from the fold, all distances across from the outer edge of the selvedge nearest to you."}
	case CutAcross:
		return []string{straighten,
			fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.", say(p.Taken-p.Length)),
			"Mark the wrong side of both lengths with a chalk arrow that points away from the first cut end, so that you can tell their direction.",
			"Lay the first length right side up, one selvedge along the side of the table nearest to you, its arrow pointing to your right.",
			"Turn the second length over sidewise, like a page, and lay it right side down on the first, its arrow pointing to your right too; the left ends and the selvedges lie exactly on each other. Pin them about every 30 cm (12 in).",
			"All distances along are measured from the left ends, all distances across from the outer edge of the selvedge nearest to you."}
	case SelvedgeIn:
		return []string{straighten, open,
			fmt.Sprintf("Chalk dots %s from the edge of the selvedge nearest to you, about every 30 cm (12 in). Bring that edge over onto the dots, right sides together.", say(2*p.FoldedIn)),
			fmt.Sprintf("Measure from the fold to that edge: it must be %s everywhere. Smooth the fold, and pin the edge down.", say(p.FoldedIn)),
			"Between the fold and that edge there are two layers; beyond it one, right side up.",
			"All distances across are measured from the fold, which now lies nearest to you."}
	case BothSelvedgesIn:
		return []string{straighten, open,
			fmt.Sprintf("Chalk dots along the middle, %s from either edge, about every 30 cm (12 in). Bring both selvedges over onto the dots, right sides together, until their edges meet there and do not overlap.", say(p.Width)),
			fmt.Sprintf("Measure from fold to fold: it must be %s everywhere. Smooth both folds, and pin both edges down.", say(p.Width)),
			"No piece may cross the line where the selvedges meet.",
			"All distances across are measured from the fold nearest to you."}
	case InStretches:
		at := 0.0
		if len(p.Parts) > 1 {
			at = p.Parts[1].X
		}
		return []string{straighten,
			fmt.Sprintf("Measure %s along both selvedges, join the marks with chalk, and cut the cloth across there.", say(at)),
			"First length: fold it in half along, right sides together, selvedge exactly on selvedge, the fold nearest to you and the cut end on your left. Pin the selvedges together about every 30 cm (12 in).",
			"Second length: spread it in one layer, right side up, one selvedge nearest to you and the end just cut on your left.",
			"On each length, distances along are measured from its own left end; distances across from the fold on the first, from the outer edge of the selvedge nearest to you on the second."}
	}
	return []string{straighten, open, smooth,
		"All distances across are measured from the outer edge of the selvedge nearest to you."}
}

// Least is a length of cloth that no layout in this lay can beat, mm: Bound,
// or twice as much where the cloth is folded or cut across.
func (p LayPlan) Least() float64 {
	if p.Lay.isAcross() {
		return 2 * p.Bound
	}
	return p.Bound
}
