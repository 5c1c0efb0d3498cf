package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

var _ = register(border)

var _ = callTask(lay.ToLieOnTheBorder, "to lie on the border")

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

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.BorderOffCloth: ofLength("the line of the border lies %s from the selvedge; it must lie on the cloth"),
})

var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NoHem: func(_ cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("it is to lie on the border and has no edge %q; say which edge is its hem", r.Edge)
	},
	lay.CurvedHem: always("its hem is curved and cannot lie on the line of the border; " +
		"straighten the hem, or leave the piece off the border"),
	lay.SlantedHem: always("its hem is not square to its grainline and cannot lie on the border; " +
		"draw the grainline square to the hem, or leave the piece off the border"),
	lay.BorderOnOnePly: always("the border runs along one selvedge, and the upper ply does not have it there; lay " +
		"the cloth open"),
	lay.BorderAgainstNap: always("with its hem on the border the nap would run the wrong way over it; " +
		"let the cloth go either way, or leave the piece off the border"),
	lay.BorderOutside: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("with its hem on the line of the border, %s from the edge, it does not lie between the "+
			"selvedges; move the line, take a wider cloth, or leave the piece off the border", c.Say(r.Takes))
	},
})
