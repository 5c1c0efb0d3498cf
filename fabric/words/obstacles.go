package words

import (
	"fmt"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Pieces on a fold or on two plies.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.WarpTurned: func(_ cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("the cloth goes %s, and %s", r.Nap, againstTheWarp)
	},
	lay.PieceTurned: func(_ cloth.Cloth, _ lay.Reason) string {
		return "it must go one way, and " + againstTheWarp
	},
	lay.OffFold: func(_ cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("its edge %q cannot lie on the fold, because then its grainline would not lie %s; "+
			"lay the cloth open, or draw the grainline to suit the fold", r.Edge, lieInWords(r.Grain))
	},
	lay.OddCount: func(_ cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s cannot be cut from two plies, which give two at a time; "+
			"lay the cloth open, or cut one more", countInWords(r.Count))
	},
	lay.Unpaired: always("two plies give a right and a left, but this piece is not its own mirror image and is no pair; " +
		"lay the cloth open, or say that it is a pair"),
})

// againstTheWarp is why nothing that goes one way is cut from a cloth folded across.
const againstTheWarp = "in the upper ply the warp runs the other way; cut the cloth across and turn the upper " +
	"length round, or lay it open"

// Pieces that find no room across.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.FlawOnFold: always("a flaw runs along the fold; lay the cloth open, or fold it elsewhere"),
	lay.FlawsLeave: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("it is %s wide, and flaws that run along the cloth leave only %s in one piece; "+
			"lay the cloth another way, or take another cloth", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanFolded: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("it is %s wide and the folded cloth only %s; lay the cloth open, or take a wider cloth",
			c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanHalf: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("it is %s wide, and from a fold to where the selvedges meet there are only %s; "+
			"lay the cloth open, or take a wider cloth", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanCloth: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("it is %s wide in the narrowest way its grain allows, and the cloth only %s between the "+
			"selvedges; take a wider cloth, turn the piece to the cross grain, or divide it by a seam (of a band: "+
			"grain: either, or joins: 1)", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.FlawsMove: always("the cloth has flaws, and where the fold or cut across it falls depends on the length, " +
		"so that they would lie elsewhere each time; lay it open or folded along the warp"),
})

// Lays of two parts, and pieces that are to stay.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.AllOrNothing: always("everything can be cut from the folded cloth, or nothing can; lay it folded or " +
		"open throughout"),
	lay.NothingDouble: always("no piece can be cut from two plies; lay the cloth open"),
	lay.NotShared: always("the pieces do not share out between two plies and one; fold the cloth along the warp, " +
		"or lay it open"),
	lay.LastOnPart: always("nothing else lies on its part; fold the cloth along the warp, or lay it open"),
	lay.NoGain:     noGain,
	lay.FixedNowhereIn: always("pieces stay where they lie only if it is said how far the selvedge is folded in, and " +
		"that is less than the width of the cloth"),
	lay.FixedTurned: func(_ cloth.Cloth, r lay.Reason) string {
		return strings.Join(r.Pieces, ", ") +
			" cannot stay where it lies: there are not as many of it to be cut, or it is turned as its grain, the nap or " +
			"the fold forbid"
	},
	lay.FixedOnFlaw: func(_ cloth.Cloth, r lay.Reason) string {
		return strings.Join(r.Pieces, ", ") + " cannot stay where it lies: a flaw or the edge of the cloth is there"
	},
	lay.FixedTooNear: always("what is to stay cannot lie so: pieces overlap, or lie nearer to each other than the gap"),
})

func noGain(c cloth.Cloth, r lay.Reason) string {
	gain := "takes no more, with less to chalk"
	if r.Takes > 0 {
		gain = fmt.Sprintf("takes %s less", c.Say(r.Takes))
	}
	return fmt.Sprintf("nothing is gained by it; lay the cloth %s throughout, which %s", r.Throughout, gain)
}

func countInWords(n int) string {
	if n == 1 {
		return "a single piece"
	}
	return fmt.Sprintf("%d single pieces", n)
}

func lieInWords(lie pieces.GrainLie) string {
	return [...]string{"along the warp", "along the weft", "at 45 degrees to the warp", "along the warp or the weft"}[lie]
}
