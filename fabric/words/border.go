package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
)

var _ = register(border)

var _ = callTask(lay.ToLieOnTheBorder, "to lie on the border", "auf der Bordüre liegen")

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
	cloth.BorderOffCloth: ofLength("the line of the border lies %s from the selvedge; it must lie on the cloth",
		"die Linie der Bordüre liegt %s von der Webkante; sie muss auf dem Stoff liegen"),
})

var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NoHem: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("it is to lie on the border and has no edge %q; say which edge is its hem",
			"es soll auf der Bordüre liegen und hat keine Kante %q; sagen Sie, welche Kante sein Saum "+
				"ist", r.Edge)
	},
	lay.CurvedHem: always("its hem is curved and cannot lie on the line of the border; "+
		"straighten the hem, or leave the piece off the border",
		"sein Saum ist gebogen und kann nicht auf der Linie der Bordüre liegen; machen Sie ihn "+
			"gerade, oder nehmen Sie das Teil von der Bordüre"),
	lay.SlantedHem: always("its hem is not square to its grainline and cannot lie on the border; "+
		"draw the grainline square to the hem, or leave the piece off the border",
		"sein Saum steht nicht rechtwinklig zum Fadenlauf und kann nicht auf der Bordüre liegen; "+
			"zeichnen Sie den Fadenlauf rechtwinklig, oder nehmen Sie das Teil von der Bordüre"),
	lay.BorderOnOnePly: always("the border runs along one selvedge, and the upper ply does not have it there; lay "+
		"the cloth open",
		"die Bordüre läuft an einer Webkante, und die obere Stofflage hat sie dort nicht; legen "+
			"Sie den Stoff offen"),
	lay.BorderAgainstNap: always("with its hem on the border the nap would run the wrong way over it; "+
		"let the cloth go either way, or leave the piece off the border",
		"mit dem Saum auf der Bordüre liefe der Strich verkehrt; lassen Sie beide Richtungen zu, "+
			"oder nehmen Sie das Teil von der Bordüre"),
	lay.BorderOutside: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("with its hem on the line of the border, %s from the edge, it does not lie between the "+
			"selvedges; move the line, take a wider cloth, or leave the piece off the border",
			"mit dem Saum auf der Linie der Bordüre, %s vom Rand, liegt es nicht zwischen den "+
				"Webkanten; verschieben Sie die Linie, nehmen Sie breiteren Stoff, oder nehmen Sie das "+
				"Teil von der Bordüre", c.Say(r.Takes))
	},
})
