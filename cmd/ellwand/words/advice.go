// Package words has the sentences about what was found that the program says
// in several places: on the screen, beside the JSON, and wherever else it is
// shown to people.
package words

import (
	"fmt"
	"math"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/fabric/words"
	"ellwand/pieces/measure"
)

// Buy gives the length to buy, the shop's way first: "1.9 m (2 1/8 yd)".
func Buy(c cloth.Cloth, plan lay.Plan) string {
	metric, yards := quote.InBothSystems(c, plan.Need, plan.Buy)
	metres, inYards := measure.Metric.Purchase(metric), measure.Imperial.Purchase(yards)
	if quote.SoldInYards(c) {
		return fmt.Sprintf("%s (%s)", inYards, metres)
	}
	return fmt.Sprintf("%s (%s)", metres, inYards)
}

// Plies says in how many plies the cloth lies: "2", or "2 and 1" where only a
// part of it is double.
func Plies(plan lay.Plan) string {
	if plan.Lay == lay.SelvedgeIn || plan.Lay == lay.InStretches {
		return "2 and 1"
	}
	return fmt.Sprint(plan.Plies)
}

// Advice says what to buy, how to lay it, and what opening the cloth saves.
func Advice(work *job.Work, need plan.Requirement) string {
	chosen := need.Lays[need.Chosen]
	text := fmt.Sprintf("Buy %s and lay it %s.", Buy(need.Cloth, chosen), chosen.Lay.Way())
	open, folded, both := openAndFolded(need)
	switch {
	case !both:
	case folded.Taken-open.Taken >= 1:
		text += fmt.Sprintf(" Opening the cloth saves %s of length against folding it", work.Format(folded.Taken-open.Taken))
		if folded.Buy <= open.Buy {
			text += ", too little to buy less"
		}
		text += "."
	case chosen.Lay == lay.Open || chosen.Lay == lay.FoldedAlong:
		text += " Opening the cloth saves nothing; folded there is half the chalking and cutting."
	}
	if print := words.Rules(chosen.Cloth, work.Format); print != nil {
		text += "\n" + strings.Join(print, "\n")
	}
	return text
}

// Notes are the cautions about a plan.
func Notes(p lay.Plan) []string { return words.Notes(p) }

// Spreading says how the cloth is spread in a lay that is not just open or folded
// once; nothing for those.
func Spreading(work *job.Work, need plan.Requirement) []string {
	chosen := need.Lays[need.Chosen]
	if chosen.Lay == lay.Open || chosen.Lay == lay.FoldedAlong {
		return nil
	}
	return words.Spreading(chosen, work.Format)
}

// OtherLays counts the lays that a requirement does not come to, in one line;
// empty where there are none.
func OtherLays(need plan.Requirement) string {
	impossible, idle := 0, 0
	for _, p := range need.Lays {
		switch {
		case p.Possible():
		case p.Throughout != nil:
			idle++
		default:
			impossible++
		}
	}
	var parts []string
	if impossible > 0 {
		parts = append(parts, counted(impossible, "other lay is", "other lays are")+" not possible")
	}
	if idle > 0 {
		parts = append(parts, counted(idle, "gains", "gain")+" nothing")
	}
	if len(parts) == 0 {
		return ""
	}
	return strings.Join(parts, ", ") + "; --why says of each why."
}

func counted(n int, one, several string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, several)
}

// BuyInStore gives the length to buy as the shop counts: "1.9 m".
func BuyInStore(c cloth.Cloth, plan lay.Plan) string {
	metric, yards := quote.InBothSystems(c, plan.Need, plan.Buy)
	if quote.SoldInYards(c) {
		return measure.Imperial.Purchase(yards)
	}
	return measure.Metric.Purchase(metric)
}

// eighth of a yard, mm [source.YardAndPound].
const eighth = 914.4 / 8

// LeastInStore says a length, mm, that no lay can do without, in the units that BuyInStore
// has: "1 7/8 yd", never more than it is; empty where nothing is left of it.
func LeastInStore(work *job.Work, c cloth.Cloth, mm float64) string {
	if !quote.SoldInYards(c) {
		return work.FormatAtLeast(mm)
	}
	least := math.Floor(mm/eighth) * eighth
	if least == 0 {
		return ""
	}
	return measure.Length(least).Format(measure.Yard)
}

// shopUnits prints lengths to buy as the shop counts, never less than they are.
func shopUnits(c cloth.Cloth) func(mm float64) string {
	if quote.SoldInYards(c) {
		return measure.Imperial.Purchase
	}
	return measure.Metric.Purchase
}

// openAndFolded returns the two plans when both are possible.
func openAndFolded(need plan.Requirement) (open, folded lay.Plan, both bool) {
	var haveOpen, haveFolded bool
	for _, p := range need.Lays {
		switch {
		case !p.Possible():
		case p.Lay == lay.Open:
			open, haveOpen = p, true
		case p.Lay == lay.FoldedAlong:
			folded, haveFolded = p, true
		}
	}
	return open, folded, haveOpen && haveFolded
}

// Matching says what is matched, what it costs, and what the rule of thumb
// would have said. The requirement has a Matching.
func Matching(work *job.Work, need plan.Requirement) string {
	m, all := need.Matching, work.PiecesOf(need.Cloth.Name)
	chosen := need.Lays[need.Chosen]
	if len(chosen.Matches) == 0 {
		return "Nothing is matched: no seam that runs along the body joins these pieces. What hangs side by side, as " +
			"curtains " +
			"do, is matched when the repeat names it: hang_side_by_side: [" + all[0].Name + "]."
	}
	var text strings.Builder
	for _, line := range words.Matches(chosen, all) {
		fmt.Fprintf(&text, "Matched: %s.\n", line)
	}
	if rest := words.Unmatched(chosen, all); len(rest) > 0 {
		fmt.Fprintf(&text, "Not matched to anything: %s.\n", strings.Join(rest, ", "))
	}
	if apart := words.ApartAcross(chosen, all); len(apart) > 0 {
		fmt.Fprintf(&text, "Not matched across: %s to each other, which hang side by side; the print does not go on from "+
			"one to the next.\n", strings.Join(apart, " and "))
	}
	more := "no more"
	if m.Extra() >= 0.5 {
		more = work.Format(m.Extra()) + " more"
	}
	fmt.Fprintf(&text, "Matching takes %s than plain cloth (%s)", more, work.FormatLong(m.Plain))
	if m.Repeats >= 0.05 {
		fmt.Fprintf(&text, ", %.1f repeats", m.Repeats)
	}
	fmt.Fprintf(&text, "; the rule of thumb, one repeat more than plain, comes to %s.", work.FormatLong(m.RuleOfThumb))
	return text.String()
}
