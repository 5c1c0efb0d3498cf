package main

import (
	"fmt"
	"strings"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
	"ellwand/fabric/remnant"
)

func (e *env) printRemnants(work *job.Work, all []asked, budget time.Duration) {
	fmt.Fprintln(e.out, work.Title())
	for _, a := range all {
		fmt.Fprintf(e.out, "\n%s, %s, nap %s: %s\n", a.cloth.Name, sizeText(work, a), a.cloth.Nap, answerText(a, budget))
		for _, line := range remnantLines(work, a) {
			fmt.Fprintln(e.out, line)
		}
	}
}

// sizeText gives the size of the cloth, or of each of the remnants that are
// asked about together.
func sizeText(work *job.Work, a asked) string {
	if len(a.offcuts) == 0 {
		return fmt.Sprintf("%s wide, %s", work.Format(a.cloth.Width), lengthText(work, a))
	}
	var out []string
	for i, o := range a.offcuts {
		width, length := o.Width, o.Length
		if len(o.Outline) > 0 {
			box := o.Outline.Bound()
			width, length = box.Max[1]-box.Min[1], box.Max[0]-box.Min[0]
		}
		out = append(out, fmt.Sprintf("%s (%s wide, %s long)", a.row[i].Name, work.Format(width), work.FormatLong(length)))
	}
	return strings.Join(out, " and ")
}

// lengthText gives the length, and what is left of it to lay on.
func lengthText(work *job.Work, a asked) string {
	text := work.FormatLong(a.length) + " long"
	if a.length-a.fit.Usable < 0.5 {
		return text
	}
	return fmt.Sprintf("%s (%s to lay on)", text, work.FormatLong(max(0, a.fit.Usable)))
}

func answerText(a asked, budget time.Duration) string {
	switch a.fit.Answer {
	case fabric.Enough:
		return "yes, it is enough."
	case fabric.TooLittle:
		return "no, it cannot be."
	}
	return fmt.Sprintf("not found within %g s, nor proven impossible.", budget.Seconds())
}

func remnantLines(work *job.Work, a asked) []string {
	var out []string
	switch a.fit.Answer {
	case fabric.Enough:
		out = enoughLines(work, a)
	case fabric.TooLittle:
		out = []string{capital(once(a.fit.Proof)) + "."}
	default:
		out = []string{closestText(work, a)}
	}
	if len(a.tried) > 0 {
		out = append(out, wayLines(work, a)...)
	}
	return out
}

func enoughLines(work *job.Work, a asked) []string {
	plan, spare := a.fit.Plan, a.fit.Spare
	if len(a.row) > 0 {
		return append(rowLines(a), plan.Notes...)
	}
	out := []string{fmt.Sprintf("Lay it %s; the pieces take %s.", plan.Lay.Way(), work.FormatLong(plan.Taken))}
	for _, reason := range a.fit.Reasons {
		out = append(out, fmt.Sprintf("Not %s: %s.", reason.Lay.Way(), once(reason.Why)))
	}
	switch {
	case spare.Length*spare.Width == 0:
		out = append(out, "Nothing is left over in one piece.")
	default:
		out = append(out, fmt.Sprintf("Left over: a clean end of %s over the whole width. The largest free rectangle is %s along by %s across; it begins %s from the cut end and %s from the edge.",
			work.Format(spare.CleanEnd), work.Format(spare.Length), work.Format(spare.Width), work.Format(spare.X), work.Format(spare.Y)))
	}
	return append(out, plan.Notes...)
}

// rowLines say what is cut from each of several remnants.
func rowLines(a asked) []string {
	out := []string{fmt.Sprintf("Lay each %s.", a.fit.Plan.Lay.Way())}
	for _, place := range a.row {
		var names []string
		for _, piece := range a.fit.Plan.Pieces {
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

// closestText says which pieces stick out, and by how much.
func closestText(work *job.Work, a asked) string {
	plan := a.fit.Plan
	if len(plan.Pieces) == 0 {
		return "The search was ended before its first layout."
	}
	const most = 3
	var out []string
	for i, over := range a.fit.Over {
		if i == most {
			out = append(out, fmt.Sprintf("%d more by less", len(a.fit.Over)-most))
			break
		}
		out = append(out, fmt.Sprintf("%s by %s", over.Name, work.Format(over.By)))
	}
	return fmt.Sprintf("The closest try, laid %s, takes %s, which is %s too much; over the end stick out: %s.",
		plan.Lay.Way(), work.FormatLong(plan.Taken), work.Format(plan.Taken-a.fit.Usable), strings.Join(out, ", "))
}

func wayLines(work *job.Work, a asked) []string {
	if len(a.ways) == 0 {
		out := []string{"Nothing that was tried made it fit:"}
		for _, what := range a.tried {
			out = append(out, "  "+what)
		}
		return out
	}
	out := []string{"It would fit, in the order of least harm, if you"}
	for i, way := range a.ways {
		out = append(out, fmt.Sprintf("  %d. %s (laid %s, takes %s)", i+1, way.Change.Say(way.By, work.Format), way.Fit.Plan.Lay.Way(), work.FormatLong(way.Fit.Plan.Taken)))
	}
	return out
}

// capital makes the first letter of a sentence one.
func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// remnantReport is what remnant prints as JSON. Answer is "yes", "cannot be"
// or "not found".
type remnantReport struct {
	Job    string               `json:"job"`
	Cloths []remnantClothReport `json:"cloths"`
}

type remnantClothReport struct {
	Name     string  `json:"name"`
	WidthMM  float64 `json:"width_mm"`
	LengthMM float64 `json:"length_mm"`
	UsableMM float64 `json:"usable_length_mm"`
	Nap      string  `json:"nap"`
	// Remnants are where each of several lies in the row that the layout shows.
	Remnants []rowReport      `json:"remnants,omitempty"`
	Answer   string           `json:"answer"`
	Lay      string           `json:"lay,omitempty"`
	TakenMM  float64          `json:"taken_mm,omitempty"`
	Left     *spareReport     `json:"left,omitempty"`
	Proof    string           `json:"proof,omitempty"`
	Over     []overhangReport `json:"over,omitempty"`
	Ways     []wayReport      `json:"changes"`
}

type rowReport struct {
	Name   string  `json:"name"`
	FromMM float64 `json:"from_mm"`
	ToMM   float64 `json:"to_mm"`
}

type spareReport struct {
	CleanEndMM float64 `json:"clean_end_mm"`
	XMM        float64 `json:"rectangle_x_mm"`
	YMM        float64 `json:"rectangle_y_mm"`
	LengthMM   float64 `json:"rectangle_length_mm"`
	WidthMM    float64 `json:"rectangle_width_mm"`
}

type overhangReport struct {
	Piece   string  `json:"piece"`
	Garment string  `json:"garment"`
	ByMM    float64 `json:"by_mm"`
}

type wayReport struct {
	Kind    string  `json:"kind"`
	Text    string  `json:"text"`
	ByMM    float64 `json:"by_mm,omitempty"`
	Lay     string  `json:"lay"`
	TakenMM float64 `json:"taken_mm"`
}

func remnantReportOf(work *job.Work, all []asked) remnantReport {
	out := remnantReport{Job: work.Name, Cloths: []remnantClothReport{}}
	for _, a := range all {
		out.Cloths = append(out.Cloths, remnantClothReportOf(work, a))
	}
	return out
}

func remnantClothReportOf(work *job.Work, a asked) remnantClothReport {
	out := remnantClothReport{
		Name: a.cloth.Name, WidthMM: tidy(a.cloth.Width), LengthMM: tidy(a.length), UsableMM: tidy(a.fit.Usable),
		Nap: a.cloth.Nap.String(), Answer: a.fit.Answer.String(), Proof: a.fit.Proof, Ways: []wayReport{},
	}
	for _, place := range a.row {
		out.Remnants = append(out.Remnants, rowReport{place.Name, tidy(place.From), tidy(place.To)})
	}
	if len(a.fit.Plan.Pieces) > 0 {
		out.Lay, out.TakenMM = a.fit.Plan.Lay.String(), tidy(a.fit.Plan.Taken)
	}
	if spare := a.fit.Spare; a.fit.Answer == fabric.Enough {
		out.Left = &spareReport{CleanEndMM: tidy(spare.CleanEnd), XMM: spare.X, YMM: spare.Y, LengthMM: spare.Length, WidthMM: spare.Width}
	}
	for _, over := range a.fit.Over {
		out.Over = append(out.Over, overhangReport{over.Name, over.Garment, tidy(over.By)})
	}
	for _, way := range a.ways {
		out.Ways = append(out.Ways, wayReportOf(work, way))
	}
	return out
}

func wayReportOf(work *job.Work, way remnant.Remedy) wayReport {
	return wayReport{
		Kind: way.Change.Kind, Text: way.Change.Say(way.By, work.Format), ByMM: tidy(way.By),
		Lay: way.Fit.Plan.Lay.String(), TakenMM: tidy(way.Fit.Plan.Taken),
	}
}
