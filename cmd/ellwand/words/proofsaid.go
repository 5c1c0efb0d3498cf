package words

import (
	"errors"
	"fmt"
	"regexp"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// This file reads the figures in sentences again: what is advised, how sure an amount
// is, what matching takes.

var (
	advised = regexp.MustCompile(`^Buy (.+?\)) and lay it (.+?)\.(?:\s|$)`)
	saved   = regexp.MustCompile(`Opening the cloth saves (.+?)(?: of length against folding it` +
		`(, too little to buy less)?\.|;)`)
	sure     = regexp.MustCompile(`^(.+?) are sure: |^It stays (.+?) though |^(.+?) to (.+?), say (.+?): `)
	matching = regexp.MustCompile(`(?s)Matching takes (.+?) than plain cloth \((.+?)\).*; the rule of thumb, ` +
		`one repeat more than plain, comes to (.+?)\.$`)
	cutEnds = regexp.MustCompile(`^With the cut ends it takes (.+?) to (.+?) of the (.+?): `)
)

// sentencesReadAgain holds what is advised of a cloth, how sure its amount is and what
// matching takes against what was found.
func sentencesReadAgain(work *job.Work, found app.Estimated) error {
	err := errors.Join(adviceReadAgain(Advice(work, found.Requirement), work, found.Requirement),
		surenessReadAgain(Sureness(work, found), found),
		betweenReadAgain(Between(found.Cloth, found.Range), found.Cloth, found.Range))
	if found.Matching == nil {
		return err
	}
	return errors.Join(err, matchingReadAgain(Matching(work, found.Requirement), work, found.Requirement))
}

// adviceReadAgain: what is bought and how it is laid is that of the lay chosen, and the
// length that opening the cloth saves is what it takes less than folded.
func adviceReadAgain(text string, work *job.Work, need plan.Requirement) error {
	chosen := need.Lays[need.Chosen]
	said := advised.FindStringSubmatch(text)
	if said == nil || said[2] != chosen.Lay.Way() {
		return fmt.Errorf("%q does not say what to buy for the lay %s", text, chosen.Lay)
	}
	faults := []error{buyReadAgain(said[1], need.Cloth, chosen)}
	saving := saved.FindStringSubmatch(text)
	if saving == nil {
		return errors.Join(faults...)
	}
	open, folded := taken(need, lay.Open), taken(need, lay.FoldedAlong)
	less, buysLess := open.Taken-folded.Taken, open.Buy < folded.Buy
	switch {
	case open.Taken == 0 || folded.Taken == 0:
		faults = append(faults, fmt.Errorf("%q is said where one of the two is not laid", saving[0]))
	case saving[1] == "nothing":
		if -less >= 1 {
			faults = append(faults, fmt.Errorf("%q is said where %.1f mm are saved", saving[0], -less))
		}
	case (saving[2] == "") != buysLess:
		faults = append(faults, fmt.Errorf("%q is said where %.0f mm are bought open and %.0f folded", saving[0], open.Buy,
			folded.Buy))
	default:
		faults = append(faults, check.Shown(saving[1], -less, work.Unit.System().Step()))
	}
	return errors.Join(faults...)
}

// taken is the lay of a kind, the zero one where it is not possible.
func taken(need plan.Requirement, kind lay.Kind) lay.Plan {
	for _, p := range need.Lays {
		if p.Lay == kind && p.Possible() {
			return p
		}
	}
	return lay.Plan{}
}

// surenessReadAgain: the amount and its range are those that were found.
func surenessReadAgain(text string, found app.Estimated) error {
	said := sure.FindStringSubmatch(text)
	if said == nil {
		return fmt.Errorf("%q does not say how sure the amount is", text)
	}
	buy, r := said[1]+said[2]+said[5], found.Range
	faults := []error{check.ShownToBuy(buy, found.Buy, shopStep(found.Cloth))}
	if (said[1] != "") != (len(r.Doubts) == 0) || said[2] != "" && r.Low != r.High {
		faults = append(faults, fmt.Errorf("%q is said of %.0f to %.0f mm", text, r.Low, r.High))
	}
	if said[3] != "" {
		faults = append(faults, betweenReadAgain(said[3]+" to "+said[4], found.Cloth, r))
	}
	return errors.Join(faults...)
}

// betweenReadAgain: both ends of a range are read, in the unit behind the second.
func betweenReadAgain(text string, c cloth.Cloth, r quote.Range) error {
	low, high, several := strings.Cut(text, " to ")
	if !several {
		high = low
	} else {
		low += high[strings.LastIndex(high, " "):]
	}
	return errors.Join(check.ShownToBuy(low, r.Low, shopStep(c)), check.ShownToBuy(high, r.High, shopStep(c)))
}

// matchingReadAgain: what matching takes more than plain cloth, and what the rule of
// thumb comes to.
func matchingReadAgain(text string, work *job.Work, need plan.Requirement) error {
	said := matching.FindStringSubmatch(text)
	if said == nil {
		return nil // nothing is matched
	}
	m, repeat := need.Matching, need.Cloth.Repeat
	more, thumb := need.Lays[need.Chosen].Taken-m.Plain, m.Plain+repeat.Along
	if repeat.Along == 0 {
		thumb = m.Plain + repeat.Across
	}
	faults := []error{check.Shown(said[2], m.Plain, longStep(work)), check.Shown(said[3], thumb, longStep(work))}
	switch length, is := strings.CutSuffix(said[1], " more"); {
	case is && length != "no":
		faults = append(faults, check.Shown(length, more, work.Unit.System().Step()))
	case more >= 0.5:
		faults = append(faults, fmt.Errorf("%q is said where matching takes %.1f mm more", said[1], more))
	}
	return errors.Join(faults...)
}

// ProvenRemnant has the lengths read again that a piece of cloth may prove to take. The
// error is of plan.ErrInternal.
func ProvenRemnant(work *job.Work, a app.RemnantAnswer) error {
	text := TakesOfRemnant(work, a)
	if text == "" {
		return nil
	}
	return blamed(a.Cloth, takesReadAgain(text, work, a))
}

func takesReadAgain(text string, work *job.Work, a app.RemnantAnswer) error {
	said := cutEnds.FindStringSubmatch(text)
	if said == nil {
		return fmt.Errorf("%q does not say what it takes", text)
	}
	low := said[1] + said[2][strings.LastIndex(said[2], " "):]
	return errors.Join(check.Shown(low, a.Range.Low, longStep(work)), check.Shown(said[2], a.Range.High, longStep(work)),
		check.Shown(said[3], a.Length, longStep(work)))
}

// Shown is what is said of a plan that is drawn, in words.
type Shown struct{ Width, Length, Buy string }

// ShownOf words a plan.
func ShownOf(work *job.Work, p lay.Plan) Shown {
	return Shown{work.Format(p.Cloth.Width), work.FormatLong(p.Taken), Buy(p.Cloth, p)}
}

// ProvenPlans has the figures read again that are said of plans that are drawn. The error
// is of plan.ErrInternal.
func ProvenPlans(work *job.Work, plans []app.Planned) error {
	var faults []error
	for _, p := range plans {
		faults = append(faults, blamed(p.Cloth, shownReadAgain(ShownOf(work, p.Plan), work, p.Plan)))
	}
	return errors.Join(faults...)
}

func shownReadAgain(said Shown, work *job.Work, p lay.Plan) error {
	return errors.Join(check.Shown(said.Width, p.Cloth.Width, work.Unit.System().Step()),
		check.Shown(said.Length, p.Taken, longStep(work)), buyReadAgain(said.Buy, p.Cloth, p))
}
