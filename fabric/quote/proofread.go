package quote

import (
	"errors"
	"fmt"
	"regexp"
	"strings"

	"ellwand/fabric/check"
	"ellwand/pieces/measure"
)

// Steps to which lengths are rounded on paper, mm: sizes to 1 mm or 1/16 in, lengths
// of cloth to 1 cm or 1/16 in, what is bought up to 1 cm or 1/8 yd.
func (u Units) steps() (short, long, bought float64) {
	if u.Inches {
		return 25.4 / 16, 25.4 / 16, eighth
	}
	return 1, 10, 10
}

var laidIn = regexp.MustCompile(`^(\d.*?)(?: \(never below (.+)\))?$`)

// restsOnReadAgain reads what an amount is said to rest on (see Amount.RestsOn), and
// holds it against the amount.
func restsOnReadAgain(said string, a Amount, units Units) error {
	said, isLaid := strings.CutPrefix(said, "laid "+a.Lay+" in ")
	parts := strings.Split(said, ", ")
	short, long, _ := units.steps()
	laid := laidIn.FindStringSubmatch(parts[0])
	if laid == nil || !isLaid {
		return fmt.Errorf("%q does not say what is laid", said)
	}
	faults := []error{check.Shown(laid[1], a.Taken, long)}
	if a.Bound > 0 || laid[2] != "" {
		faults = append(faults, check.ShownAtLeast(laid[2], a.Bound, long))
	}
	return errors.Join(append(faults, additionsReadAgain(parts[1:], a, "", short))...)
}

// additionsReadAgain holds texts such as "safety 9 cm" against the parts of an amount:
// each that is 0.5 mm or more is said, once.
func additionsReadAgain(said []string, a Amount, upTo string, step float64) error {
	var faults []error
	left := said
	for _, part := range []struct {
		name   string
		length float64
	}{
		{"hand laying", a.HandLaying}, {"straightening", a.Straighten}, {"shrinkage", a.Shrinkage}, {"safety", a.Safety},
		{"rounding", a.Rounding}, {"the shop's minimum", a.Minimum},
	} {
		if part.length < 0.5 {
			continue
		}
		if len(left) == 0 || !strings.HasPrefix(left[0], part.name+" "+upTo) {
			faults = append(faults, fmt.Errorf("%s of %.1f mm is not said", part.name, part.length))
			continue
		}
		faults = append(faults, check.Shown(strings.TrimPrefix(left[0], part.name+" "+upTo), part.length, step))
		left = left[1:]
	}
	if len(left) > 0 {
		faults = append(faults, fmt.Errorf("%q is added, and is nothing", left[0]))
	}
	return errors.Join(faults...)
}

// boughtReadAgain holds what is said to be bought (see Units.Bought) against it.
func boughtReadAgain(said string, mm float64) error {
	first, second, both := strings.Cut(said, " (")
	faults := []error{check.ShownToBuy(first, mm, stepOf(first))}
	if both {
		second = strings.TrimSuffix(second, ")")
		faults = append(faults, check.ShownToBuy(second, mm, stepOf(second)))
	}
	return errors.Join(faults...)
}

// stepOf a length to buy by its unit, mm.
func stepOf(text string) float64 {
	if strings.HasSuffix(text, measure.Yard.String()) {
		return eighth
	}
	return 10
}
