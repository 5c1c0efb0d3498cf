package words

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
)

// Reckoned is a part of a length to buy, mm, with its reason and the key of the job
// that changes it. Key is empty where none does.
type Reckoned struct {
	Part     quote.Component
	Length   float64
	Why, Key string
}

// Say gives the part in one line: "hand laying: 2 % of the lay, our own choice
// (hand_laying)".
func (r Reckoned) Say() string {
	text := r.Part.String() + ": " + r.Why
	if r.Key != "" {
		text += " (" + r.Key + ")"
	}
	return text
}

// leastPart is a length worth a line of its own, mm.
const leastPart = 0.5

// Parts are the lines that a length to buy is reckoned in: a length, and what it is
// for. What takes nothing shares the last one.
func Parts(work *job.Work, found app.Estimated) [][2]string {
	var out [][2]string
	var none []string
	for _, part := range Reckoning(work, found) {
		if part.Length < leastPart {
			none = append(none, part.Say())
			continue
		}
		out = append(out, [2]string{PartLength(work, part), part.Say()})
	}
	if len(none) > 0 {
		out = append(out, [2]string{"nothing", strings.Join(none, "; ")})
	}
	return out
}

// PartLength prints the length of a part.
func PartLength(work *job.Work, r Reckoned) string {
	if r.Part == quote.ByLay {
		return work.FormatLong(r.Length)
	}
	return work.Format(r.Length)
}

// Reckoning lists the parts of a length to buy. The shop's minimum is left out where
// it plays no part.
func Reckoning(work *job.Work, found app.Estimated) []Reckoned {
	var out []Reckoned
	for _, part := range found.Amount.Components() {
		if part.Component == quote.ByMinimum && part.Length == 0 {
			continue
		}
		one := Reckoned{Part: part.Component, Length: part.Length}
		one.Why, one.Key = reasonFor(work, found, part.Component)
		out = append(out, one)
	}
	return out
}

// reasonFor a part, and the key that changes it.
func reasonFor(work *job.Work, found app.Estimated, part quote.Component) (why, key string) {
	c := found.Cloth
	switch part {
	case quote.ByLay:
		if found.Amount.Bound == 0 { // of pieces that are only approximate nothing is proven
			return found.Amount.Lay, ""
		}
		return fmt.Sprintf("%s; no lay takes less than %s", found.Amount.Lay, work.FormatAtLeast(found.Amount.Bound)), ""
	case quote.ByHand:
		return added(work, c.HandLaying, cloth.UsualHandLaying, "of the lay"), "hand_laying"
	case quote.ByEnds:
		if c.Straighten == 0 {
			return "none is given", "straighten"
		}
		return "for both cut ends, as the job has it", "straighten"
	case quote.ByWash:
		return shrinks(c), "fibre, shrinkage"
	case quote.BySafety:
		return added(work, c.Safety, cloth.Addition{}, "of all this"), "safety"
	case quote.ByStep:
		return "up to the shop's step of " + work.Format(c.PurchaseStep), "step"
	}
	return "the shop cuts no less than " + work.Format(c.Minimum), "minimum"
}

// added says what is added, and whether it is the usual.
func added(work *job.Work, a, usual cloth.Addition, of string) string {
	text := ""
	if a.Share > 0 {
		text = percent(a.Share) + " " + of
	} else if a.Length > 0 {
		text = work.Format(a.Length)
	}
	switch {
	case text == "":
		return "none is asked for"
	case a == usual:
		return text + ", our own choice"
	}
	return text + ", as the job has it"
}

func percent(share float64) string { return fmt.Sprintf("%.3g %%", 100*share) }

// shrinks says what a cloth loses in its first wash.
func shrinks(c cloth.Cloth) string {
	s := c.Shrinkage
	switch {
	case s.CutFirst && s.Warp > 0:
		return fmt.Sprintf("the pieces are cut larger by %s instead", percent(s.Warp))
	case s.Of != cloth.UnknownFibre:
		return fmt.Sprintf("%s loses up to %s in the first wash, common practice", s.Of, percent(s.Warp))
	case s.Warp > 0:
		return percent(s.Warp) + " in the first wash, as the job has it"
	}
	return "no fibre is given, or it is washed"
}
