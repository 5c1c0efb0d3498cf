// Package reason says why something cannot be laid.
package reason

import (
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/words"
	"ellwand/pieces/language"
)

// WhyNot says of each lay that cannot be why it cannot. Lays with the same
// reason share a line, and so do pieces within it.
func WhyNot(lays []lay.Plan) []language.Sentence {
	var out words.Shared
	for _, plan := range lays {
		switch {
		case plan.Possible():
		case plan.Throughout != nil:
			out.Add(language.Say("%s", "%s", plan.Lay), words.Why(plan))
		default:
			out.Add(language.Say("%s", "%s", plan.Lay), language.Say("not possible: %s", "geht nicht: %s",
				Of(plan.Cloth, plan.Why)))
		}
	}
	return out.Lines()
}

// Of a cloth says several reasons, each once with the pieces that it is about.
func Of(c cloth.Cloth, reasons []lay.Reason) language.Sentence {
	return language.Join("\n  ", words.ReasonLines(c, reasons)...)
}
