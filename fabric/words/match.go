package words

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Match says what is matched, for a report: "front armhole of sleeve and
// front bodice, along the warp".
func Match(m lay.Match, all []pieces.Piece) string {
	var names []string
	for _, source := range m.Pieces {
		if !slices.Contains(names, all[source].Name) {
			names = append(names, all[source].Name)
		}
	}
	way := "along the warp"
	if m.Across {
		way = "across"
	}
	what := m.Name.String()
	if what == "" {
		what = "right and left"
	}
	return fmt.Sprintf("%s of %s, %s", what, strings.Join(names, " and "), way)
}
