package words

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
)

// PieceOfCloth gives the size of a piece of cloth, or of each of the remnants
// that are asked about together.
func PieceOfCloth(work *job.Work, a app.RemnantAnswer) string {
	if len(a.Offcuts) == 0 {
		return fmt.Sprintf("%s wide, %s", work.Format(a.Cloth.Width), lengthAndUsable(work, a))
	}
	var out []string
	for i, o := range a.Offcuts {
		width, length := o.Width, o.Length
		if len(o.Outline) > 0 {
			box := o.Outline.Bound()
			width, length = box.Max[1]-box.Min[1], box.Max[0]-box.Min[0]
		}
		out = append(out, fmt.Sprintf("%s (%s wide, %s long)", a.Row[i].Name, work.Format(width), work.FormatLong(length)))
	}
	return strings.Join(out, " and ")
}

// lengthAndUsable gives the length, and what is left of it to lay on.
func lengthAndUsable(work *job.Work, a app.RemnantAnswer) string {
	text := work.FormatLong(a.Length) + " long"
	if a.Length-a.Fit.Usable < 0.5 {
		return text
	}
	return fmt.Sprintf("%s (%s to lay on)", text, work.FormatLong(max(0, a.Fit.Usable)))
}

// IsEnough answers whether a remnant is enough, and how long it was looked for.
func IsEnough(a app.RemnantAnswer, search app.Search) string {
	switch a.Fit.Answer {
	case remnant.Enough:
		return "yes, it is enough."
	case remnant.TooLittle:
		return "no, it cannot be."
	}
	switch {
	case a.Ended.Early && len(a.Tried) == 0:
		return fmt.Sprintf("not found in %s, when the search was ended early at %s, nor proven impossible.", a.Ended.Time(),
			a.Ended.Share())
	case search.Passes == 1:
		return "not found in one pass, nor proven impossible."
	case search.Passes > 1:
		return fmt.Sprintf("not found in %d passes, nor proven impossible.", search.Passes)
	}
	return fmt.Sprintf("not found with the %s effort, nor proven impossible.", search.Effort)
}

// Evidence for the answer, and what would make it fit, each a line. Without why,
// several lays that cannot be and what was tried in vain are counted only.
func Evidence(work *job.Work, a app.RemnantAnswer, why bool) []string {
	var out []string
	switch a.Fit.Answer {
	case remnant.Enough:
		out = enough(work, a, why)
	case remnant.TooLittle:
		out = []string{capital(reason.Of(a.Cloth, a.Fit.Proof).String()) + "."}
	default:
		out = []string{unproven(work, a)}
	}
	if len(a.Rough) > 0 {
		out = append(out, Rough(work, a.Rough, a.Accuracy))
	}
	if a.Stay && a.Fit.Answer != remnant.Enough {
		out = append(out, "What would make it fit is not looked for where pieces stay as they lie.")
	}
	if len(a.Tried) > 0 {
		out = append(out, ways(work, a, why)...)
	}
	return out
}

func enough(work *job.Work, a app.RemnantAnswer, why bool) []string {
	laid, spare := a.Fit.Plan, a.Fit.Spare
	if len(a.Row) > 0 {
		out := fromEach(a)
		if a.Fit.Kept {
			out = append(out, Kept)
		}
		return append(append(out, left(work, a)...), words.Notes(laid)...)
	}
	out := []string{fmt.Sprintf("Lay it %s; the pieces take %s.", laid.Lay.Way(), work.FormatLong(laid.Taken))}
	if n := len(a.Fit.Reasons); n > 1 && !why {
		out = append(out, counted(n, "other lay", "other lays")+" cannot be; --why says of each why.")
	} else {
		for _, not := range a.Fit.Reasons {
			out = append(out, fmt.Sprintf("Not %s: %s.", not.Lay.Way(), reason.Of(a.Cloth, not.Why)))
		}
	}
	switch {
	case spare.Length*spare.Width == 0:
		out = append(out, "Nothing is left over in one piece.")
	default:
		out = append(out, fmt.Sprintf("Left over: a clean end of %s over the whole width. The largest free rectangle "+
			"is %s along by %s across; "+
			"it begins %s from the cut end and %s from the edge.",
			work.Format(spare.CleanEnd), work.Format(spare.Length), work.Format(spare.Width), work.Format(spare.X),
			work.Format(spare.Y)))
	}
	if sure := TakesOfRemnant(work, a); sure != "" {
		out = append(out, sure)
	}
	if a.Fit.Kept {
		out = append(out, Kept)
	}
	return append(append(out, left(work, a)...), words.Notes(laid)...)
}

// left says what of the length is left for the hand, and for the cut ends where the
// job does not say.
func left(work *job.Work, a app.RemnantAnswer) []string {
	var out []string
	if by := a.Cloth.HandLaying.Of(a.Fit.Plan.Taken); by > 0 {
		out = append(out, fmt.Sprintf("%s of the length are left for laying by hand; write hand_laying: none to lay it "+
			"to the millimetre.", work.Format(by)))
	}
	if a.OnThread == nil {
		return out
	}
	return append(out, fmt.Sprintf("%s of the length are left for straightening the cut ends, which takes %s; "+
		"where both run along a thread, write straighten: 0.",
		work.Format(plan.LeastStraightening), words.Straightening(a.Cloth)))
}

// fromEach says what is cut from each of several remnants.
func fromEach(a app.RemnantAnswer) []string {
	out := []string{fmt.Sprintf("Lay each %s.", a.Fit.Plan.Lay.Way())}
	for _, place := range a.Row {
		var names []string
		for _, piece := range a.Fit.Plan.Pieces {
			if x := piece.Outline.Bound().Center()[0]; x > place.From && x < place.To {
				names = append(names, piece.Name)
			}
		}
		if len(names) == 0 {
			names = []string{"nothing"}
		}
		out = append(out, fmt.Sprintf("From %s: %s.", place.Name, strings.Join(names, ", ")))
	}
	return out
}

// unproven is the closest try; or of outlines that are only approximate why they
// do not fit, which proves nothing of the true ones.
func unproven(work *job.Work, a app.RemnantAnswer) string {
	if len(a.Fit.Proof) == 0 {
		return closest(work, a)
	}
	if len(a.Approximate) == 0 {
		return fmt.Sprintf("As the pieces are laid, %s; as small as they may be, that is not so, and this is no proof.",
			reason.Of(a.Cloth, a.Fit.Proof))
	}
	return fmt.Sprintf("As the outlines are given, %s. But the job calls %s approximate, so that this is no proof: "+
		"lay the "+
		"pieces themselves on the cloth.", reason.Of(a.Cloth, a.Fit.Proof), strings.Join(a.Approximate, ", "))
}

// closest says which pieces stick out, and by how much.
func closest(work *job.Work, a app.RemnantAnswer) string {
	plan := a.Fit.Plan
	if len(plan.Pieces) == 0 {
		return "The search was ended before its first layout."
	}
	const most = 3
	var out []string
	for i, over := range a.Fit.Over {
		if i == most {
			out = append(out, fmt.Sprintf("%d more by less", len(a.Fit.Over)-most))
			break
		}
		out = append(out, fmt.Sprintf("%s by %s", over.Name, work.Format(over.By)))
	}
	return fmt.Sprintf("The closest try, laid %s, takes %s, which is %s too much; over the end stick out: %s.",
		plan.Lay.Way(), work.FormatLong(plan.Taken), work.Format(plan.Taken-a.Fit.Usable), strings.Join(out, ", "))
}

func ways(work *job.Work, a app.RemnantAnswer, why bool) []string {
	if len(a.Ways) == 0 {
		if !why {
			return []string{"Nothing that was tried made it fit: " + counted(len(a.Tried), "change", "changes") +
				" in vain; --why lists them."}
		}
		out := []string{"Nothing that was tried made it fit:"}
		for _, what := range a.Tried {
			out = append(out, "  "+what)
		}
		return out
	}
	out := []string{"It would fit, in the order of least harm, if you"}
	for i, way := range a.Ways {
		out = append(out, fmt.Sprintf("  %d. %s (laid %s, takes %s)",
			i+1, reason.Help(way.Change.With(way.By), work.Format), way.Fit.Plan.Lay.Way(), work.FormatLong(way.Fit.Plan.Taken)))
	}
	return out
}

// capital makes the first letter of a sentence one.
func capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}
