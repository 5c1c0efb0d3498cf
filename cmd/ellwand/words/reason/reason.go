// Package reason says why something cannot be laid.
package reason

import (
	"slices"
	"strings"

	"ellwand/fabric/lay"
)

// WhyNot says of each lay that cannot be why it cannot. Lays with the same
// reason share a line.
func WhyNot(lays []lay.Plan) []string {
	var lines []string
	for _, plan := range lays {
		switch {
		case plan.Possible():
		case plan.Throughout != nil:
			lines = append(lines, plan.Lay.String()+": "+plan.Impossible)
		default:
			lines = append(lines, plan.Lay.String()+": not possible: "+Once(plan.Impossible))
		}
	}
	return byReason(lines)
}

// Once makes one line of those that give the same reason: the same piece of
// many garments, or several pieces, stand in the way for it.
func Once(text string) string {
	return strings.Join(byReason(strings.Split(text, "\n")), "\n  ")
}

// byReason joins the names of lines "name: reason" that share a reason.
func byReason(lines []string) []string {
	var reasons []string
	names := map[string][]string{}
	for _, line := range lines {
		name, reason, _ := strings.Cut(line, ": ")
		if names[reason] == nil {
			reasons = append(reasons, reason)
		}
		if !slices.Contains(names[reason], name) {
			names[reason] = append(names[reason], name)
		}
	}
	out := make([]string, len(reasons))
	for i, reason := range reasons {
		out[i] = strings.Join(names[reason], ", ")
		if reason != "" {
			out[i] += ": " + reason
		}
	}
	return out
}
