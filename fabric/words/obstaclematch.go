package words

import (
	"fmt"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/marks"
)

// Pieces that cannot be matched.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.MatchedNowhere: always("matched to the stripes it finds no place across the width; take a wider cloth, " +
		"or match less"),
	lay.PatternTurned: always("the pattern of the upper ply runs the other way; cut the cloth across and turn the upper " +
		"length round, lay it open, or say that the repeat is even"),
	lay.StripesTurned: always("the warp of the upper ply runs the other way, so that stripes across cannot " +
		"meet; cut the cloth across and turn the upper length round, or lay it open"),
	lay.TwoFolds: always("stripes along cannot meet about two folds at once; fold the cloth in half, or lay it open"),
	lay.OffCentreLine: always("its centre would not lie on the chosen line of the repeat, because the fold does not; " +
		"fold one selvedge in, or lay the cloth open"),
	lay.UnmatchedPoint: func(_ cloth.Cloth, r lay.Reason) string {
		what := "right and left of it cannot be matched"
		if r.Point != marks.None {
			what = "its point \"" + r.Point.String() + "\" cannot be matched"
		}
		return fmt.Sprintf("%s %s in this lay; lay the cloth open", what, alongOrAcross(r.Across))
	},
})

func alongOrAcross(isAcross bool) string {
	if isAcross {
		return "across"
	}
	return "along the warp"
}
