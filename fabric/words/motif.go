package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
)

// Motif says on what a motif of the print is centred; nothing for a cloth where
// none is. Say prints a length.
func Motif(c cloth.Cloth, say func(mm float64) string) []string {
	motif := c.Motif
	if len(motif.Pieces) == 0 {
		return nil
	}
	what := "middle"
	if motif.Point != "" {
		what = motif.Point
	}
	return []string{fmt.Sprintf("A motif has its centre %s from the straightened cut end and %s from the edge of the selvedge nearest to you: check that. The centre of a motif falls on the %s of %s.",
		say(motif.Along), say(motif.Across), what, strings.Join(motif.Pieces, ", "))}
}
