package words

import (
	"fmt"
	"math"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// Remnants that are too little.
var _ = explain(map[lay.Obstacle]sentenceOf{
	lay.NothingLeft: func(c cloth.Cloth, r lay.Reason) string {
		return "straightening the cut ends and wetting leave nothing of a length of " + c.Say(r.Room)
	},
	lay.LengthShort: tooShort,
	lay.AreaShort: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("the pieces cover %s with their allowances, and there are only %s of usable cloth",
			area(c, r.Takes, r.Room), area(c, r.Room, r.Takes))
	},
	lay.TooWideTogether: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s together are too wide for %s of cloth on a length of %s", listed(r.Pieces), c.Say(r.Width),
			c.Say(r.Room))
	},
	lay.TooLong: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s is %s long in every way its grain allows, and there are only %s of cloth",
			listed(r.Pieces), c.Say(r.Takes), c.Say(r.Room))
	},
	lay.NoPlace: func(c cloth.Cloth, r lay.Reason) string {
		return fmt.Sprintf("%s does not fit on %s by %s clear of the flaws in any way its grain allows",
			listed(r.Pieces), c.Say(r.Room), c.Say(r.Width))
	},
})

func tooShort(c cloth.Cloth, r lay.Reason) string {
	if len(r.Pieces) == 0 {
		return fmt.Sprintf("however the pieces are laid, they take %s of this cloth, and there are %s",
			atLeast(c, r.Takes), c.Say(r.Room))
	}
	return fmt.Sprintf("%s cannot lie side by side closely enough: however they are laid they take %s of length, "+
		"and there are %s", listed(r.Pieces), atLeast(c, r.Takes), c.Say(r.Room))
}

// listed joins names as in "front, back and sleeve (2)".
func listed(names []string) string {
	if len(names) == 1 {
		return names[0]
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// area prints one with the digits that tell it from another.
func area(c cloth.Cloth, mm2, other float64) string {
	unit, name := 1e6, "m2"
	if c.Inches {
		unit, name = 914.4*914.4, "sq yd"
	}
	digits := 2
	for ; digits < 6 && math.Abs(mm2-other)/unit*math.Pow10(digits) < 0.5; digits++ {
	}
	return fmt.Sprintf("%.*f %s", digits, mm2/unit, name)
}

// atLeast prints a bound so that it does not look like the length that it
// exceeds.
func atLeast(c cloth.Cloth, mm float64) string {
	unit := 1.0
	if c.Inches {
		unit = 25.4 / 16
	}
	return "at least " + c.Say(math.Ceil(mm/unit)*unit)
}
