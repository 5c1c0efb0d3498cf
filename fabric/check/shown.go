package check

import (
	"fmt"
	"math"

	"ellwand/pieces/measure"
)

// shownLoss, mm, is what arithmetic loses on the way to a text and back
// [source.OwnChoice].
const shownLoss = 1e-4

// Shown proves that a text says a length, mm: it is read again and may differ by half
// a step, to which it was rounded.
func Shown(text string, length, step float64) error {
	said, err := read(text)
	if err != nil || math.Abs(said-length) > step/2+shownLoss {
		return fmt.Errorf("%q stands where %.2f mm are meant", text, length)
	}
	return nil
}

// ShownAtLeast proves that a text says a length that nothing is shorter than, mm: never
// more than it is, and less than a step less.
func ShownAtLeast(text string, length, step float64) error {
	said, err := read(text)
	if err != nil || said > length+shownLoss || length-said >= step+shownLoss {
		return fmt.Errorf("%q stands where nothing is shorter than %.2f mm", text, length)
	}
	return nil
}

// ShownToBuy proves that a text says a length to buy, mm: never less than it is, and
// less than a step more.
func ShownToBuy(text string, length, step float64) error {
	said, err := read(text)
	if err != nil || said < length-shownLoss || said-length >= step+shownLoss {
		return fmt.Errorf("%q stands where %.2f mm are to be bought", text, length)
	}
	return nil
}

func read(text string) (float64, error) {
	said, err := measure.Parse(text, measure.Millimetre)
	return float64(said), err
}
