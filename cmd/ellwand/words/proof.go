package words

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/measure"
)

// Proven has the lays of each cloth, the parts of what is bought of it, and what is said
// of it in sentences, read again from their texts. The error is of plan.ErrInternal: a figure that is wrong is not
// shown.
func Proven(work *job.Work, needs []app.Estimated) error {
	var faults []error
	for _, found := range needs {
		err := errors.Join(partsReadAgain(Parts(work, found), work, found), sentencesReadAgain(work, found))
		for _, p := range found.Lays {
			if p.Possible() {
				err = errors.Join(err, layReadAgain(LayOf(work, found.Cloth, p), work, found.Cloth, p))
			}
		}
		faults = append(faults, blamed(found.Cloth, err))
	}
	return errors.Join(faults...)
}

// Lay is what is shown of a lay that is possible, in words.
type Lay struct{ Plies, Length, Efficiency, Never, Buy, InStore string }

// LayOf words a lay of a cloth.
func LayOf(work *job.Work, c cloth.Cloth, p lay.Plan) Lay {
	out := Lay{Plies: Plies(p), Length: work.FormatLong(p.Taken), Efficiency: fmt.Sprintf("%.1f %%", 100*p.Density),
		Never: notProven, Buy: Buy(c, p), InStore: BuyInStore(c, p)}
	if p.Bound > 0 {
		out.Never = work.FormatAtLeast(p.Least())
	}
	return out
}

// notProven stands for the length that no layout can beat where all pieces are only
// approximate.
const notProven = "not proven"

func layReadAgain(said Lay, work *job.Work, c cloth.Cloth, p lay.Plan) error {
	faults := []error{check.Shown(said.Length, p.Taken, longStep(work))}
	percent, err := strconv.ParseFloat(strings.TrimSuffix(said.Efficiency, " %"), 64)
	if off := percent - 100*p.Density; err != nil || off > 0.051 || off < -0.051 {
		faults = append(faults, fmt.Errorf("%q stands for %.4f", said.Efficiency, p.Density))
	}
	least := p.Bound
	if p.Lay.IsAcross() {
		least *= 2
	}
	if least > 0 || said.Never != notProven {
		faults = append(faults, check.ShownAtLeast(said.Never, least, longStep(work)))
	}
	return errors.Join(append(faults, buyReadAgain(said.Buy, c, p), check.ShownToBuy(said.InStore, p.Buy, shopStep(c)))...)
}

// partsReadAgain holds the lines of a length to buy against its parts: each that is
// worth a line has one, and together they come to what is bought, to their roundings.
func partsReadAgain(lines [][2]string, work *job.Work, found app.Estimated) error {
	a := found.Amount
	short, long := work.Unit.System().Step(), longStep(work)
	var faults []error
	left, sum, slack := lines, 0.0, 0.0
	for _, part := range []struct {
		name         string
		length, step float64
	}{
		{"the lay", a.Taken, long}, {"hand laying", a.HandLaying, short}, {"straightening", a.Straighten, short},
		{"shrinkage", a.Shrinkage, short}, {"safety", a.Safety, short}, {"rounding", a.Rounding, short},
		{"the shop's minimum", a.Minimum, short},
	} {
		if part.length < leastPart {
			continue
		}
		if len(left) == 0 || !strings.HasPrefix(left[0][1], part.name+": ") {
			faults = append(faults, fmt.Errorf("%s of %.1f mm is not said", part.name, part.length))
			continue
		}
		faults = append(faults, check.Shown(left[0][0], part.length, part.step), reasonReadAgain(left[0][1], work, found))
		length, err := measure.Parse(left[0][0], measure.Millimetre)
		faults = append(faults, err)
		sum, slack, left = sum+float64(length), slack+part.step/2, left[1:]
	}
	slack += 7 * leastPart // of those without a line
	if off := sum - a.Buy; off > slack || off < -slack {
		faults = append(faults, fmt.Errorf("the parts come to %.1f mm, and %.1f mm are bought", sum, a.Buy))
	}
	if len(left) > 1 || len(left) == 1 && left[0][0] != "nothing" {
		faults = append(faults, fmt.Errorf("%q is added, and is nothing", left[0][1]))
	}
	return errors.Join(faults...)
}

// reasonReadAgain holds the length that is named in the reason for a part against the
// cloth.
func reasonReadAgain(text string, work *job.Work, found app.Estimated) error {
	text, _, _ = strings.Cut(text, " (")
	var faults []error
	if _, said, is := strings.Cut(text, "no lay takes less than "); is {
		faults = append(faults, check.ShownAtLeast(said, found.Amount.Bound, longStep(work)))
	}
	for _, named := range []struct {
		before       string
		length, step float64
	}{
		{"up to the shop's step of ", found.Cloth.PurchaseStep, work.Unit.System().Step()},
		{"the shop cuts no less than ", found.Cloth.Minimum, work.Unit.System().Step()},
	} {
		if _, said, is := strings.Cut(text, named.before); is {
			faults = append(faults, check.Shown(said, named.length, named.step))
		}
	}
	return errors.Join(faults...)
}
