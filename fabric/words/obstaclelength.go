package words

import (
	"math"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/role"
)

// Remnants that are too little.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NothingLeft: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("straightening the cut ends and wetting leave nothing of a length of %s",
			"Begradigen und Einlaufen lassen von einer Länge von %s nichts übrig", c.Say(r.Room))
	},
	lay.LengthShort: tooShort,
	lay.AreaShort: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("the pieces cover %s with their allowances, and there are only %s of usable cloth",
			"die Teile bedecken mit ihren Nahtzugaben %s, und es sind nur %s brauchbarer Stoff da",
			area(c, r.Takes, r.Room), area(c, r.Room, r.Takes))
	},
	lay.TooWideTogether: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s together are too wide for %s of cloth on a length of %s",
			"%s zusammen sind zu breit für %s Stoff auf einer Länge von %s",
			listed(r.Pieces), c.Say(r.Width),
			c.Say(r.Room))
	},
	lay.TooLong: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s is %s long in every way its grain allows, and there are only %s of cloth",
			"%s ist in jeder Richtung, die der Fadenlauf erlaubt, %s lang, und es sind nur %s Stoff da",
			listed(r.Pieces), c.Say(r.Takes), c.Say(r.Room))
	},
	lay.NoPlace: func(c cloth.Cloth, r lay.Reason) language.Sentence {
		return language.Say("%s does not fit on %s by %s clear of the flaws in any way its grain allows",
			"%s passt in keiner Richtung, die der Fadenlauf erlaubt, auf %s mal %s ohne Fehler",
			listed(r.Pieces), c.Say(r.Room), c.Say(r.Width))
	},
})

func tooShort(c cloth.Cloth, r lay.Reason) language.Sentence {
	if len(r.Pieces) == 0 {
		return language.Say("however the pieces are laid, they take %s of this cloth, and there are %s",
			"wie die Teile auch liegen, brauchen sie %s von diesem Stoff, und es sind %s da",
			atLeast(c, r.Takes), c.Say(r.Room))
	}
	return language.Say("%s cannot lie side by side closely enough: however they are laid they take %s of length, "+
		"and there are %s",
		"%s können nicht eng genug nebeneinander liegen: wie sie auch liegen, brauchen sie %s "+
			"Länge, und es sind %s da", listed(r.Pieces), atLeast(c, r.Takes), c.Say(r.Room))
}

// listed joins names as in "front, back and sleeve (2)".
func listed(names []string) language.Sentence {
	all := make([]language.Sentence, len(names))
	for i, name := range names {
		all[i] = role.Called(name)
	}
	return language.List(all...)
}

// area prints one with the digits that tell it from another.
func area(c cloth.Cloth, mm2, other float64) language.Sentence {
	unit, name := 1e6, "m2"
	if c.Inches {
		unit, name = 914.4*914.4, "sq yd"
	}
	digits := 2
	for ; digits < 6 && math.Abs(mm2-other)/unit*math.Pow10(digits) < 0.5; digits++ {
	}
	return language.Say("%.*f %s", "%.*f %s", digits, mm2/unit, name)
}

// atLeast prints a bound so that it does not look like the length that it
// exceeds.
func atLeast(c cloth.Cloth, mm float64) language.Sentence {
	unit := 1.0
	if c.Inches {
		unit = 25.4 / 16
	}
	return language.Say("at least %s", "mindestens %s", c.Say(math.Ceil(mm/unit)*unit))
}
