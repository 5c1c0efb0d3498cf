package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
)

var _ = register(border)

// border says where the hems of the pieces on the border print lie; nothing for a
// cloth without one. Say prints a length.
func border(c cloth.Cloth, say func(mm float64) string) []string {
	asked := c.Border
	if len(asked.Pieces) == 0 {
		return nil
	}
	selvedge := "selvedge nearest to you"
	if asked.Selvedge == cloth.Far {
		selvedge = "far selvedge"
	}
	return []string{fmt.Sprintf("The border runs along the %s: chalk a line %s from its outer edge. On it lie the "+
		"hems of %s, the pieces lying across the cloth.",
		selvedge, say(asked.Line), strings.Join(asked.Pieces, ", "))}
}
