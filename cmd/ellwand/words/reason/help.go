package reason

import (
	"fmt"
	"strings"

	"ellwand/fabric/remnant"
)

// Help says in a phrase what to give up so that a remnant may be enough: "lay it open
// instead of folded". Say prints a length.
func Help(gives []remnant.Given, say func(mm float64) string) string {
	phrases := make([]string, len(gives))
	for i, given := range gives {
		phrases[i] = phraseOf(given, say)
	}
	return strings.Join(phrases, ", and ")
}

func phraseOf(given remnant.Given, say func(mm float64) string) string {
	named := strings.Join(given.Pieces, " and the ")
	switch given.Of {
	case remnant.CloseLaying:
		return "lay and chalk it to the millimetre, so that hand laying takes nothing"
	case remnant.StraightEnds:
		return "find that both cut ends run along a thread, and need no straightening"
	case remnant.LaidOpen:
		return "lay it open instead of folded"
	case remnant.LowerAllowances:
		return fmt.Sprintf("lower every seam allowance that is wider to %s (the hems stay)", say(given.Least))
	case remnant.NarrowerHems:
		return fmt.Sprintf("turn up %s less of hem (never under %s)", say(given.By), say(given.Least))
	case remnant.Shorter:
		what := given.Garment
		if given.Part != "" {
			what = fmt.Sprintf("%s of the %s", given.Part, given.Garment)
		}
		return fmt.Sprintf("shorten the %s by %s", what, say(given.By))
	case remnant.OnCrossGrain:
		return fmt.Sprintf("put the %s on the cross grain", named)
	case remnant.CutInTwo:
		return fmt.Sprintf("piece the %s: cut it in two with a seam across its middle", named)
	case remnant.SeamForFold:
		return fmt.Sprintf("cut the %s in two halves with a seam instead of the fold", named)
	case remnant.OtherCloth:
		return fmt.Sprintf("cut the %s from another cloth", named)
	case remnant.NapPerGarment:
		return "let each garment have the nap its own way (their colours will differ a little)"
	case remnant.NapIgnored:
		return "let the pieces lie both ways of the nap (look at it in daylight first: it may show)"
	}
	return fmt.Sprintf("make size %s instead of %s", given.Size, given.Former)
}
