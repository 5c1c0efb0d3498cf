package words

import (
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

// Pieces that cannot be matched.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.MatchedNowhere: always("matched to the stripes it finds no place across the width; take a wider cloth, "+
		"or match less",
		"auf die Streifen gepasst findet es quer keinen Platz; nehmen Sie breiteren Stoff, oder "+
			"passen Sie weniger an"),
	lay.PatternTurned: always("the pattern of the upper ply runs the other way; cut the cloth across and turn the upper "+
		"length round, lay it open, or say that the repeat is even",
		"das Muster der oberen Stofflage läuft andersherum; schneiden Sie den Stoff quer durch "+
			"und drehen Sie die obere Länge, legen Sie ihn offen, oder sagen Sie, dass der Rapport "+
			"auch umgedreht gleich ist"),
	lay.StripesTurned: always("the warp of the upper ply runs the other way, so that stripes across cannot "+
		"meet; cut the cloth across and turn the upper length round, or lay it open",
		"die Kette der oberen Stofflage läuft andersherum, Querstreifen können sich nicht "+
			"treffen; schneiden Sie den Stoff quer durch und drehen Sie die obere Länge, oder legen "+
			"Sie ihn offen"),
	lay.TwoFolds: always("stripes along cannot meet about two folds at once; fold the cloth in half, or lay it open",
		"Längsstreifen können sich nicht an zwei Brüchen zugleich treffen; falten Sie den Stoff "+
			"in der Hälfte, oder legen Sie ihn offen"),
	lay.OffCentreLine: always("its centre would not lie on the chosen line of the repeat, because the fold does not; "+
		"fold one selvedge in, or lay the cloth open",
		"seine Mitte läge nicht auf der gewählten Linie des Rapports, weil der Bruch es nicht "+
			"tut; schlagen Sie eine Webkante ein, oder legen Sie den Stoff offen"),
	lay.UnmatchedPoint: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		what := language.Say("right and left of it cannot be matched", "rechts und links davon passen")
		if r.Point != marks.None {
			what = language.Say("its point %q cannot be matched", "sein Punkt %q passt", r.Point)
		}
		return language.Say("%s %s in this lay; lay the cloth open",
			"%s %s in dieser Lage nicht; legen Sie den Stoff offen", what, alongOrAcross(r.Across))
	},
})

func alongOrAcross(isAcross bool) language.Sentence {
	if isAcross {
		return language.Say("across", "quer")
	}
	return language.Say("along the warp", "längs")
}
