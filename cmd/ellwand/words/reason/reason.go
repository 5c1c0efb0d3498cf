// Package reason says why something cannot be laid.
package reason

import (
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/words"
)

// WhyNot says of each lay that cannot be why it cannot. Lays with the same
// reason share a line, and so do pieces within it.
func WhyNot(lays []lay.Plan) []string {
	var out words.Shared
	for _, plan := range lays {
		switch {
		case plan.Possible():
		case plan.Throughout != nil:
			out.Add(plan.Lay.String(), words.WhyNot(plan))
		default:
			out.Add(plan.Lay.String(), "not possible: "+Of(plan.Cloth, plan.Why))
		}
	}
	return out.Lines()
}

// Of a cloth says several reasons, each once with the pieces that it is about.
func Of(c cloth.Cloth, reasons []lay.Reason) string {
	return strings.Join(words.ReasonLines(c, reasons), "\n  ")
}
