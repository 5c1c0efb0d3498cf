package words

import (
	"fmt"
	"maps"

	"ellwand/fabric/cloth"
	"ellwand/pieces/language"
)

// Faulty says what is wrong with a cloth, and what would help, without its name.
func Faulty(c cloth.Cloth, f cloth.Fault) language.Sentence {
	if say, known := faulty[f.Of]; known {
		return say(c, f)
	}
	return language.Name(string(f.Of))
}

// sentenceOfFault of a cloth.
type sentenceOfFault func(c cloth.Cloth, f cloth.Fault) language.Sentence

// faulty are the sentences of what a cloth cannot have.
var faulty = map[cloth.Defect]sentenceOfFault{}

// blame defects by their sentences.
func blame(sentences map[cloth.Defect]sentenceOfFault) bool {
	maps.Copy(faulty, sentences)
	return true
}

// ofLength is a sentence with the length that is wrong.
func ofLength(english, german string) sentenceOfFault {
	return func(c cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say(english, german, c.Say(f.Length))
	}
}

// alwaysFaulty is the same sentence of every cloth.
func alwaysFaulty(english, german string) sentenceOfFault {
	return func(cloth.Cloth, cloth.Fault) language.Sentence { return language.Say(english, german) }
}

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.NoWidth: ofLength("the width is %s; give the width of the cloth from edge to edge, such as 140 cm",
		"die Breite ist %s; geben Sie die Stoffbreite von Kante zu Kante an, etwa 140 cm"),
	cloth.NegativeSelvedge: ofLength("the selvedge is %s; it cannot be negative (10 mm each side is "+
		"usual)", "die Webkante ist %s; sie kann nicht negativ sein (üblich sind je Seite 10 mm)"),
	cloth.OnlySelvedges: func(c cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say("two selvedges of %s leave nothing of a width of %s; give the selvedge of one side (10 mm is "+
			"usual)",
			"zwei Webkanten von %s lassen von einer Breite von %s nichts; geben Sie die Webkante einer "+
				"Seite an (üblich sind 10 mm)", c.Say(f.Length), c.Say(f.Other))
	},
	cloth.NegativeStep: ofLength("the step of the shop is %s; it cannot be negative (10 cm, or 1/8 yd, is usual)",
		"die Stufe des Ladens ist %s; sie kann nicht negativ sein (üblich sind 10 cm oder 1/8 yd)"),
	cloth.NegativeStraighten: ofLength("straightening the ends takes %s; it cannot be negative (20 to 50 mm is "+
		"usual)",
		"das Begradigen der Enden nimmt %s; es kann nicht negativ sein (üblich sind 20 bis 50 mm)"),
	cloth.NegativeHandLaying: alwaysFaulty("hand laying cannot take less than nothing (2 %% of the length is usual)",
		"der Zuschlag für das Auflegen kann nicht weniger als nichts sein (üblich sind 2 %% der "+
			"Länge)"),
	cloth.NegativeSafety: alwaysFaulty("the safety and the shop's minimum cannot be negative",
		"Sicherheitszuschlag und Mindestmenge können nicht negativ sein"),
	cloth.UnknownNap: func(cloth.Cloth, cloth.Fault) language.Sentence {
		return language.Say("the nap must be %q, %q or %q", "der Strich muss %q, %q oder %q sein", cloth.EitherWay,
			cloth.OneWay, cloth.OneWayPerGarment)
	},
})

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.NegativeGap: ofLength("the gap between pieces is %s; it cannot be negative",
		"der Abstand zwischen Teilen ist %s; er kann nicht negativ sein"),
	cloth.TiltOutside: func(_ cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say("the tilt is %s; it must be from 0 to %s (1 to 3 %% is tolerated on cheap goods)",
			"die Schieflage ist %s; sie muss 0 bis %s sein (bei billiger Ware gehen 1 bis 3 %%)",
			percent(f.Share), percent(cloth.MostTilt))
	},
	cloth.ShrinkageOutside: func(_ cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say("a shrinkage of %s cannot be; it must be from 0 to %s (0 to 8 %% is usual)",
			"ein Einlaufen um %s geht nicht; es muss 0 bis %s sein (üblich sind 0 bis 8 %%)",
			percent(f.Share), percent(cloth.MostShrinkage))
	},
	cloth.RepeatTooFine: ofLength("a repeat of %s cannot be matched; give the length after which the pattern comes "+
		"again, 2 mm or more, or none for plain cloth",
		"auf einen Rapport von %s lässt sich nicht anpassen; geben Sie die Länge an, nach der "+
			"das Muster wiederkommt, 2 mm oder mehr, oder keine bei glattem Stoff"),
	cloth.NegativeCentreLine: ofLength("the centre line lies %s from the selvedge; it cannot be negative",
		"die Mittellinie liegt %s von der Webkante; das kann nicht negativ sein"),
	cloth.NoStripes: alwaysFaulty("pieces can only be centred on stripes along the cloth; give the repeat "+
		"across", "Teile lassen sich nur auf Längsstreifen mittig legen; geben Sie den Rapport quer an"),
})

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.FlawWithoutNumber: ofFlaw("%s has a corner that is not a number",
		"%s hat eine Ecke, die keine Zahl ist"),
	cloth.FlawOfNothing: ofFlaw("%s encloses nothing; give three corners or more, or a circle with a radius",
		"%s umschließt nichts; geben Sie mindestens drei Ecken an, oder einen Kreis mit Halbmesser"),
	cloth.FlawCrossed: ofFlaw("%s has an outline that crosses itself; draw it as one simple loop",
		"%s hat einen Umriss, der sich kreuzt; zeichnen Sie ihn als einfache Schleife"),
})

func percent(share float64) string { return fmt.Sprintf("%.3g %%", 100*share) }

// ofFlaw is a sentence about a flaw.
func ofFlaw(english, german string) sentenceOfFault {
	return func(_ cloth.Cloth, f cloth.Fault) language.Sentence {
		return language.Say(english, german, flawNamed(f.Flaw))
	}
}

// flawNamed names a flaw, which may have no name.
func flawNamed(name string) language.Sentence {
	if name == "" {
		return language.Say("a flaw", "ein Fehler")
	}
	return language.Say("the flaw %s", "der Fehler %s", name)
}

// clothNamed names a cloth, which may have no name.
func clothNamed(c cloth.Cloth) language.Sentence {
	if c.Name == "" {
		return language.Say("cloth", "Stoff")
	}
	return language.Say("cloth %s", "Stoff %s", c.Name)
}
