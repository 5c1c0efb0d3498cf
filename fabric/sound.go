package fabric

import (
	"errors"
	"fmt"
	"math"

	"ellwand/pieces"
)

// Check says whether the cloth is sound:
//
//  1. its width is a positive length;
//  2. its selvedges are not negative and leave some width between them;
//  3. its step and the straightening of its ends are not negative;
//  4. its nap is one of the three.
func (c Cloth) Check() error {
	var faults []error
	fault := func(format string, values ...any) {
		faults = append(faults, fmt.Errorf("%s: "+format, append([]any{c}, values...)...))
	}
	switch {
	case !isLength(c.Width) || c.Width == 0:
		fault("the width is %s; give the width of the cloth from edge to edge, such as 140 cm", say(c.Width))
	case !isLength(c.Selvedge):
		fault("the selvedge is %s; it cannot be negative (10 mm each side is usual)", say(c.Selvedge))
	case 2*c.Selvedge >= c.Width:
		fault("two selvedges of %s leave nothing of a width of %s; give the selvedge of one side (10 mm is usual)", say(c.Selvedge), say(c.Width))
	}
	if !isLength(c.Step) {
		fault("the step of the shop is %s; it cannot be negative (10 cm, or 1/8 yd, is usual)", say(c.Step))
	}
	if !isLength(c.Straighten) {
		fault("straightening the ends takes %s; it cannot be negative (20 to 50 mm is usual)", say(c.Straighten))
	}
	if c.Nap < EitherWay || c.Nap > OneWayPerGarment {
		fault("the nap must be %q, %q or %q", EitherWay, OneWay, OneWayPerGarment)
	}
	return errors.Join(faults...)
}

// String names the cloth in messages.
func (c Cloth) String() string {
	if c.Name == "" {
		return "cloth"
	}
	return "cloth " + c.Name
}

func isLength(mm float64) bool { return mm >= 0 && !math.IsInf(mm, 1) }

// checkJob refuses what cannot be laid at all, with every reason.
func checkJob(cloth Cloth, all []pieces.Piece, options Options) error {
	faults := []error{cloth.Check()}
	if len(all) == 0 {
		faults = append(faults, fmt.Errorf("%s: there is nothing to cut from it; add a piece, or leave the cloth out", cloth))
	}
	if !isLength(options.Gap) {
		faults = append(faults, fmt.Errorf("the gap between pieces is %s; it cannot be negative", say(options.Gap)))
	}
	for i, piece := range all {
		faults = append(faults, piece.Check())
		if sourceOf(Laid{Name: piece.Name, Garment: piece.Garment, Size: piece.Size}, all) != i {
			faults = append(faults, fmt.Errorf("%s: two pieces have this name in the same garment and size; give one another name, or raise the cut count", piece.Name))
		}
	}
	return errors.Join(faults...)
}
