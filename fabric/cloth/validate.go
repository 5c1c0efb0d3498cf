package cloth

import (
	"errors"
	"fmt"
)

// Check says whether the cloth is sound:
//
//  1. its width is a positive length;
//  2. its selvedges are not negative and leave some width between them;
//  3. its step and the straightening of its ends are not negative;
//  4. its nap is one of the three;
//  5. the gap is not negative, the tilt no more than 5 %, the shrinkage no
//     more than 30 %, the repeat not negative;
//  6. its flaws have sound outlines;
//  7. each rule that pieces keep finds what it needs.
func (c Cloth) Check() error {
	var faults []error
	fault := func(format string, values ...any) {
		faults = append(faults, fmt.Errorf("%s: "+format, append([]any{c}, values...)...))
	}
	switch {
	case !IsLength(c.Width) || c.Width == 0:
		fault("the width is %s; give the width of the cloth from edge to edge, such as 140 cm", c.Say(c.Width))
	case !IsLength(c.Selvedge):
		fault("the selvedge is %s; it cannot be negative (10 mm each side is usual)", c.Say(c.Selvedge))
	case 2*c.Selvedge >= c.Width:
		fault("two selvedges of %s leave nothing of a width of %s; give the selvedge of one side (10 mm is usual)",
			c.Say(c.Selvedge), c.Say(c.Width))
	}
	if !IsLength(c.Step) {
		fault("the step of the shop is %s; it cannot be negative (10 cm, or 1/8 yd, is usual)", c.Say(c.Step))
	}
	if !IsLength(c.Straighten) {
		fault("straightening the ends takes %s; it cannot be negative (20 to 50 mm is usual)", c.Say(c.Straighten))
	}
	if !IsLength(c.HandLaying.Share) || !IsLength(c.HandLaying.Length) {
		fault("hand laying cannot take less than nothing (2 %% of the length is usual)")
	}
	if !IsLength(c.Safety.Share) || !IsLength(c.Safety.Length) || !IsLength(c.Minimum) {
		fault("the safety and the shop's minimum cannot be negative")
	}
	if c.Nap < EitherWay || c.Nap > OneWayPerGarment {
		fault("the nap must be %q, %q or %q", EitherWay, OneWay, OneWayPerGarment)
	}
	return errors.Join(append(faults, c.checkHandling())...)
}

// checkHandling is rules 5 to 7.
func (c Cloth) checkHandling() error {
	var faults []error
	fault := func(format string, values ...any) {
		faults = append(faults, fmt.Errorf("%s: "+format, append([]any{c}, values...)...))
	}
	if !IsLength(c.Gap) {
		fault("the gap between pieces is %s; it cannot be negative", c.Say(c.Gap))
	}
	if !(c.Tilt >= 0 && c.Tilt <= mostTilt) {
		fault("the tilt is %.3g %%; it must be from 0 to 5 %% (1 to 3 %% is tolerated on cheap goods)", 100*c.Tilt)
	}
	for _, share := range []float64{c.Shrinkage.Warp, c.Shrinkage.Weft} {
		if !(share >= 0 && share <= mostShrinkage) {
			fault("a shrinkage of %.3g %% cannot be; it must be from 0 to 30 %% (0 to 8 %% is usual)", 100*share)
		}
	}
	for _, repeat := range []float64{c.Repeat.Along, c.Repeat.Across} {
		if !IsLength(repeat) || repeat > 0 && repeat < leastRepeat {
			fault("a repeat of %s cannot be matched; give the length after which the pattern comes again, 2 mm or more, or "+
				"none for plain cloth", c.Say(repeat))
		}
	}
	if !IsLength(c.Repeat.CentreLine) {
		fault("the centre line lies %s from the selvedge; it cannot be negative", c.Say(c.Repeat.CentreLine))
	}
	if len(c.Repeat.Centred) > 0 && c.Repeat.Across == 0 {
		fault("pieces can only be centred on stripes along the cloth; give the repeat across")
	}
	for _, rule := range c.rules() {
		if err := rule.check(c.Width, c.Repeat, c.Say); err != nil {
			fault("%s", err)
		}
	}
	for _, flaw := range c.Flaws {
		if err := flaw.Check(); err != nil {
			fault("%s", err)
		}
	}
	return errors.Join(faults...)
}

// What a cloth can be at most, as shares; finer stripes match anywhere
// [source.OwnChoice].
const (
	mostTilt      = 0.05
	mostShrinkage = 0.3
	leastRepeat   = 2.0 // mm
)

// String names the cloth in messages.
func (c Cloth) String() string {
	if c.Name == "" {
		return "cloth"
	}
	return "cloth " + c.Name
}
