package words

import (
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

// Pieces on a fold or on two plies.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.WarpTurned: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("the cloth goes %s, and %s", "der Stoff geht %s, und %s", r.Nap, againstTheWarp)
	},
	lay.PieceTurned: func(_ cloth.Cloth, _ lay.Reason) language.Sentence {
		return language.Say("it must go one way, and %s", "es muss in einer Richtung liegen, und %s", againstTheWarp)
	},
	lay.OffFold: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("its edge %q cannot lie on the fold, because then its grainline would not lie %s; "+
			"lay the cloth open, or draw the grainline to suit the fold",
			"seine Kante %q kann nicht im Bruch liegen, weil der Fadenlauf dann nicht %s läge; legen "+
				"Sie den Stoff offen, oder zeichnen Sie den Fadenlauf passend zum Bruch",
			r.Edge, lieInWords(r.Grain))
	},
	lay.OddCount: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s cannot be cut from two plies, which give two at a time; "+
			"lay the cloth open, or cut one more",
			"%s lässt sich nicht aus zwei Stofflagen schneiden, die je zwei auf einmal geben; legen "+
				"Sie den Stoff offen, oder schneiden Sie eines mehr zu", countInWords(r.Count))
	},
	lay.Unpaired: always("two plies give a right and a left, but this piece is not its own mirror image and is no pair; "+
		"lay the cloth open, or say that it is a pair",
		"zwei Stofflagen geben ein rechtes und ein linkes, aber dieses Teil ist nicht sein eigenes "+
			"Spiegelbild und kein Paar; legen Sie den Stoff offen, oder sagen Sie, dass es gegengleich "+
			"ist"),
})

// againstTheWarp is why nothing that goes one way is cut from a cloth folded across.
var againstTheWarp = language.Say("in the upper ply the warp runs the other way; cut the cloth across and turn the "+
	"upper length round, or lay it open",
	"in der oberen Stofflage läuft die Kette andersherum; schneiden Sie den Stoff quer "+
		"durch und drehen Sie die obere Länge, oder legen Sie ihn offen")

// Pieces that find no room across.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.FlawOnFold: always("a flaw runs along the fold; lay the cloth open, or fold it elsewhere",
		"ein Fehler läuft am Bruch entlang; legen Sie den Stoff offen, oder falten Sie ihn anderswo"),
	lay.FlawsLeave: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("it is %s wide, and flaws that run along the cloth leave only %s in one piece; "+
			"lay the cloth another way, or take another cloth",
			"es ist %s breit, und Fehler längs im Stoff lassen nur %s am Stück; legen Sie ihn anders "+
				"auf, oder nehmen Sie anderen", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanFolded: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("it is %s wide and the folded cloth only %s; lay the cloth open, or take a wider cloth",
			"es ist %s breit und der gefaltete Stoff nur %s; legen Sie ihn offen, oder nehmen Sie "+
				"breiteren",
			c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanHalf: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("it is %s wide, and from a fold to where the selvedges meet there are only %s; "+
			"lay the cloth open, or take a wider cloth",
			"es ist %s breit, und vom Bruch bis dahin, wo die Webkanten sich treffen, sind es nur %s; "+
				"legen Sie den Stoff offen, oder nehmen Sie breiteren", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.WiderThanCloth: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("it is %s wide in the narrowest way its grain allows, and the cloth only %s between the "+
			"selvedges; take a wider cloth, turn the piece to the cross grain, or divide it by a seam (of a band: "+
			"grain: either, or joins: 1)",
			"es ist in der schmalsten Richtung, die der Fadenlauf erlaubt, %s breit, und der Stoff "+
				"zwischen den Webkanten nur %s; nehmen Sie breiteren, legen Sie das Teil quer zum "+
				"Fadenlauf, oder teilen Sie es durch eine Naht (einen Streifen: Fadenlauf beliebig, oder 1 "+
				"Ansatznaht)", c.Say(r.Takes), c.Say(r.Room))
	},
	lay.FlawsMove: always("the cloth has flaws, and where the fold or cut across it falls depends on the length, "+
		"so that they would lie elsewhere each time; lay it open or folded along the warp",
		"der Stoff hat Fehler, und wohin ein Querbruch oder Querschnitt fällt, hängt von der "+
			"Länge ab: sie lägen jedes Mal anderswo; legen Sie ihn offen oder längs gefaltet"),
})

// Lays of two parts, and pieces that are to stay.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.AllOrNothing: always("everything can be cut from the folded cloth, or nothing can; lay it folded or "+
		"open throughout",
		"aus dem gefalteten Stoff lässt sich alles schneiden, oder nichts; legen Sie ihn ganz "+
			"gefaltet oder ganz offen"),
	lay.NothingDouble: always("no piece can be cut from two plies; lay the cloth open",
		"kein Teil lässt sich aus zwei Stofflagen schneiden; legen Sie den Stoff offen"),
	lay.NotShared: always("the pieces do not share out between two plies and one; fold the cloth along the warp, "+
		"or lay it open",
		"die Teile lassen sich nicht auf zwei Stofflagen und eine verteilen; falten Sie den Stoff "+
			"längs, oder legen Sie ihn offen"),
	lay.LastOnPart: always("nothing else lies on its part; fold the cloth along the warp, or lay it open",
		"auf seinem Abschnitt liegt sonst nichts; falten Sie den Stoff längs, oder legen Sie ihn "+
			"offen"),
	lay.NoGain: noGain,
	lay.FixedNowhereIn: always("pieces stay where they lie only if it is said how far the selvedge is folded in, and "+
		"that is less than the width of the cloth",
		"Teile bleiben nur liegen, wenn gesagt ist, wie weit die Webkante eingeschlagen ist, und "+
			"das weniger ist als die Breite des Stoffs"),
	lay.FixedTurned: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s cannot stay where it lies: there are not as many of it to be cut, or it is turned as its "+
			"grain, the nap or the fold forbid",
			"%s kann nicht liegen bleiben: so oft wird es nicht zugeschnitten, oder es "+
				"ist so gedreht, wie Fadenlauf, Strich oder Bruch es verbieten", strings.Join(r.Pieces, ", "))
	},
	lay.FixedOnFlaw: func(_ cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s cannot stay where it lies: a flaw or the edge of the cloth is there",
			"%s kann nicht liegen bleiben: dort ist ein Fehler oder der Rand des Stoffs", strings.Join(r.Pieces,
				", "))
	},
	lay.FixedTooNear: always("what is to stay cannot lie so: pieces overlap, or lie nearer to each other than the gap",
		"was bleiben soll, kann so nicht liegen: Teile überdecken sich, oder liegen näher als "+
			"der Abstand"),
})

func noGain(c cloth.Cloth, r lay.Reason) language.Sentence {
	gain := language.Say("takes no more, with less to chalk", "braucht nicht mehr, mit weniger anzuzeichnen")
	if r.Takes > 0 {
		gain = language.Say("takes %s less", "braucht %s weniger", c.Say(r.Takes))
	}
	return language.Say("nothing is gained by it; lay the cloth %s throughout, which %s",
		"dadurch wird nichts gewonnen; legen Sie den Stoff durchgehend %s, das %s", r.Throughout, gain)
}

func countInWords(n int) language.Counted {
	return language.Counted{N: n, One: language.Say("a single piece", "ein einzelnes Teil"),
		Several: language.Say("%d single pieces", "%d einzelne Teile")}
}

func lieInWords(lie pieces.GrainLie) language.Sentence {
	return [...]language.Sentence{language.Say("along the warp", "längs"), language.Say("along the weft", "quer"),
		language.Say("at 45 degrees to the warp", "im Winkel von 45 Grad zur Kette"),
		language.Say("along the warp or the weft", "längs oder quer")}[lie]
}
