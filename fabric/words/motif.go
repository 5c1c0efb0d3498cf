package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

var _ = register(motif)

var _ = callTask(lay.ToBearAMotif, "to centre a motif on", "ein Motiv mittig tragen")

// motif says on what a motif of the print is centred; nothing for a cloth where
// none is. Say prints a length.
func motif(c cloth.Cloth, say func(mm float64) string) []string {
	asked := c.Motif
	if len(asked.Pieces) == 0 {
		return nil
	}
	what := "middle"
	if asked.Point != marks.None {
		what = asked.Point.String()
	}
	return []string{fmt.Sprintf("A motif has its centre %s from the straightened cut end and %s from the edge of the "+
		"selvedge nearest to you: check that. The centre of a motif falls on the %s of %s.",
		say(asked.Along), say(asked.Across), what, strings.Join(asked.Pieces, ", "))}
}

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.NegativeMotif: func(c cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say("the centre of the motif lies %s along and %s across; neither can be negative",
			"die Mitte des Motivs liegt %s längs und %s quer; beides kann nicht negativ sein",
			c.Say(f.Length),
			c.Say(f.Other))
	},
	cloth.MotifWithoutRepeat: alwaysFaulty("a motif can only be centred where the print repeats; give the repeat along "+
		"and across",
		"ein Motiv lässt sich nur mittig legen, wo das Muster wiederkommt; geben Sie den Rapport "+
			"längs und quer an"),
})

var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NoMotifPoint: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("a motif is to be centred on its point %q, which it has not; "+
			"name a mark or a match point of it, or leave the point out for its middle",
			"ein Motiv soll mittig auf seinem Punkt %q sitzen, den es nicht hat; nennen Sie ein "+
				"Zeichen oder einen Passpunkt, oder lassen Sie den Punkt weg: dann ist es die Mitte", r.Point)
	},
	lay.OffMotif: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("a motif cannot be centred on it %s in this lay; "+
			"lay the cloth open, or centre fewer pieces",
			"ein Motiv kann in dieser Lage %s nicht mittig darauf sitzen; legen Sie den Stoff offen, "+
				"oder weniger Teile mittig", alongOrAcross(r.Across))
	},
})
