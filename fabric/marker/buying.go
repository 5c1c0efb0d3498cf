package marker

import (
	"strings"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
)

// leastPart of a length to buy is worth a word, mm [source.OwnChoice].
const leastPart = 0.5

// buying says what the length to buy is the sum of; nothing of cloth that is there.
func buying(plan lay.Plan, options Options) []string {
	if options.Remnant || plan.There > 0 {
		return nil
	}
	parts := purchase.PartsOf(plan)
	said := []string{options.Long(plan.Taken) + " for the lay"}
	for _, part := range []struct {
		length float64
		what   string
	}{
		{parts.HandLaying, "for laying by hand"}, {parts.Straighten, "for straightening the ends"},
		{parts.Shrinkage, "that it shrinks"}, {parts.Safety, "to be safe"}, {parts.Rounding, "up to what the shop cuts"},
	} {
		if part.length >= leastPart {
			said = append(said, options.Short(part.length)+" "+part.what)
		}
	}
	return []string{"Buy " + options.bought(plan.Buy) + ": " + strings.Join(said, ", ") + "."}
}
