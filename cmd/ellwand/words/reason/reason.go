// Package reason says why something cannot be laid.
package reason

import (
	"slices"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/words"
)

// WhyNot says of each lay that cannot be why it cannot. Lays with the same
// reason share a line, and so do pieces within it.
func WhyNot(lays []lay.Plan) []string {
	var out groups
	for _, plan := range lays {
		switch {
		case plan.Possible():
		case plan.Throughout != nil:
			out.add(plan.Lay.String(), words.WhyNot(plan))
		default:
			out.add(plan.Lay.String(), "not possible: "+Of(plan.Cloth, plan.Why))
		}
	}
	return out.lines()
}

// Of a cloth says several reasons, each once with the pieces that it is about.
func Of(c cloth.Cloth, reasons []lay.Reason) string {
	var out groups
	for _, reason := range reasons {
		out.add(reason.Piece, words.Reason(c, reason))
	}
	return strings.Join(out.lines(), "\n  ")
}

// groups are names by the reason that they share, in the order of the reasons.
type groups struct {
	reasons []string
	names   map[string][]string
}

func (g *groups) add(name, reason string) {
	if g.names == nil {
		g.names = map[string][]string{}
	}
	if g.names[reason] == nil {
		g.reasons = append(g.reasons, reason)
	}
	if !slices.Contains(g.names[reason], name) {
		g.names[reason] = append(g.names[reason], name)
	}
}

// lines give each reason once, after the names that share it.
func (g *groups) lines() []string {
	out := make([]string, len(g.reasons))
	for i, reason := range g.reasons {
		out[i] = strings.Join(g.names[reason], ", ")
		switch {
		case out[i] == "":
			out[i] = reason
		case reason != "":
			out[i] += ": " + reason
		}
	}
	return out
}

// Once makes one line of the lines "name: reason" of an error that give the
// same reason: the same piece of many garments, or several pieces, stand in the
// way for it.
func Once(text string) string {
	var out groups
	for _, line := range strings.Split(text, "\n") {
		name, reason, _ := strings.Cut(line, ": ")
		out.add(name, reason)
	}
	return strings.Join(out.lines(), "\n  ")
}
