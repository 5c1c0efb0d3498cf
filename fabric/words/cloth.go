package words

import (
	"fmt"
	"maps"

	"ellwand/fabric/cloth"
)

// Faulty says what is wrong with a cloth, and what would help, without its name.
func Faulty(c cloth.Cloth, f cloth.Fault) string {
	if say, known := faulty[f.Of]; known {
		return say(c, f)
	}
	return string(f.Of)
}

// sentenceOfFault of a cloth.
type sentenceOfFault func(c cloth.Cloth, f cloth.Fault) string

// faulty are the sentences of what a cloth cannot have.
var faulty = map[cloth.Defect]sentenceOfFault{}

// blame defects by their sentences.
func blame(sentences map[cloth.Defect]sentenceOfFault) bool {
	maps.Copy(faulty, sentences)
	return true
}

// ofLength is a sentence with the length that is wrong.
func ofLength(format string) sentenceOfFault {
	return func(c cloth.Cloth, f cloth.Fault) string { return fmt.Sprintf(format, c.Say(f.Length)) }
}

// alwaysFaulty is the same sentence of every cloth.
func alwaysFaulty(text string) sentenceOfFault {
	return func(cloth.Cloth, cloth.Fault) string { return text }
}

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.NoWidth: ofLength("the width is %s; give the width of the cloth from edge to edge, such as 140 cm"),
	cloth.NegativeSelvedge: ofLength("the selvedge is %s; it cannot be negative (10 mm each side is " +
		"usual)"),
	cloth.OnlySelvedges: func(c cloth.Cloth, f cloth.Fault) string {
		return fmt.Sprintf("two selvedges of %s leave nothing of a width of %s; give the selvedge of one side (10 mm is "+
			"usual)", c.Say(f.Length), c.Say(f.Other))
	},
	cloth.NegativeStep: ofLength("the step of the shop is %s; it cannot be negative (10 cm, or 1/8 yd, is usual)"),
	cloth.NegativeStraighten: ofLength("straightening the ends takes %s; it cannot be negative (20 to 50 mm is " +
		"usual)"),
	cloth.NegativeHandLaying: alwaysFaulty("hand laying cannot take less than nothing (2 % of the length is usual)"),
	cloth.NegativeSafety:     alwaysFaulty("the safety and the shop's minimum cannot be negative"),
	cloth.UnknownNap: alwaysFaulty(fmt.Sprintf("the nap must be %q, %q or %q", cloth.EitherWay, cloth.OneWay,
		cloth.OneWayPerGarment)),
})

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.NegativeGap: ofLength("the gap between pieces is %s; it cannot be negative"),
	cloth.TiltOutside: func(_ cloth.Cloth, f cloth.Fault) string {
		return fmt.Sprintf("the tilt is %s; it must be from 0 to %s (1 to 3 %% is tolerated on cheap goods)",
			percent(f.Share), percent(cloth.MostTilt))
	},
	cloth.ShrinkageOutside: func(_ cloth.Cloth, f cloth.Fault) string {
		return fmt.Sprintf("a shrinkage of %s cannot be; it must be from 0 to %s (0 to 8 %% is usual)",
			percent(f.Share), percent(cloth.MostShrinkage))
	},
	cloth.RepeatTooFine: ofLength("a repeat of %s cannot be matched; give the length after which the pattern comes " +
		"again, 2 mm or more, or none for plain cloth"),
	cloth.NegativeCentreLine: ofLength("the centre line lies %s from the selvedge; it cannot be negative"),
	cloth.NoStripes: alwaysFaulty("pieces can only be centred on stripes along the cloth; give the repeat " +
		"across"),
})

var _ = blame(map[cloth.Defect]sentenceOfFault{
	cloth.FlawWithoutNumber: ofFlaw("%s has a corner that is not a number"),
	cloth.FlawOfNothing:     ofFlaw("%s encloses nothing; give three corners or more, or a circle with a radius"),
	cloth.FlawCrossed:       ofFlaw("%s has an outline that crosses itself; draw it as one simple loop"),
})

func percent(share float64) string { return fmt.Sprintf("%.3g %%", 100*share) }

// ofFlaw is a sentence about a flaw.
func ofFlaw(format string) sentenceOfFault {
	return func(_ cloth.Cloth, f cloth.Fault) string { return fmt.Sprintf(format, cloth.Flaw{Name: f.Flaw}) }
}
