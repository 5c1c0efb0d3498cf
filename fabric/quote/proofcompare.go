package quote

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strings"

	"ellwand/fabric/check"
)

// Shown is what is shown of a way to buy, in words.
type Shown struct{ Width, Price, Bought, Cost, LeftOver string }

// Shown words an option.
func (o Option) Shown(currency Currency, units Units) Shown {
	out := Shown{Width: units.Short(o.Offer.Cloth.Width), Price: "the whole", Cost: currency.Format(o.Cost),
		Bought: units.Bought(o.Offer.Cloth, o.Bought), LeftOver: units.Short(math.Max(o.LeftOver, 0))}
	if !o.FromRemnant {
		out.Price = currency.Format(o.Offer.Price.Money) + " " + o.Offer.Price.Each()
	}
	return out
}

// ProvenShown has the options that are shown, and the sentences of Why, read again. The
// error is of plan.ErrInternal: a figure that is wrong is not shown.
func ProvenShown(ranked []Option, currency Currency, units Units) error {
	var faults []error
	for _, o := range ranked {
		switch {
		case o.Refused == "":
			faults = append(faults, wrong(o.Offer.Cloth, o.readAgain(o.Shown(currency, units), currency, units)))
		case o.FromRemnant:
			faults = append(faults, wrong(o.Offer.Cloth, o.refusalReadAgain(units)))
		}
	}
	if len(ranked) > 0 {
		faults = append(faults, wrong(ranked[0].Offer.Cloth,
			whyReadAgain(Why(ranked, currency, units), ranked, currency, units)))
	}
	return errors.Join(faults...)
}

func (o Option) readAgain(said Shown, currency Currency, units Units) error {
	short, _, _ := units.steps()
	faults := []error{check.Shown(said.Width, o.Offer.Cloth.Width, short), boughtReadAgain(said.Bought, o.Bought),
		check.Shown(said.LeftOver, math.Max(o.LeftOver, 0), short), moneyReadAgain(said.Cost, currency, o.Cost)}
	if !o.FromRemnant {
		price, _, _ := strings.Cut(said.Price, " a")
		faults = append(faults, moneyReadAgain(price, currency, o.Offer.Price.Money))
	}
	return errors.Join(faults...)
}

func moneyReadAgain(text string, currency Currency, want Money) error {
	said, err := currency.Parse(text)
	if err != nil || said != want {
		return fmt.Errorf("%q stands where a sum of %d is meant", text, want)
	}
	return nil
}

// The sentences of a remnant that is refused.
var (
	cannotDo = regexp.MustCompile(`^the remnant of (.+) cannot do: no way of laying takes less than (.+)$`)
	tooShort = regexp.MustCompile(`^the remnant of (.+) is (.+) too short for the lay that was found; `)
)

func (o Option) refusalReadAgain(units Units) error {
	short, long, _ := units.steps()
	if said := cannotDo.FindStringSubmatch(o.Refused); said != nil && o.Amount.Never > o.Bought {
		return errors.Join(check.Shown(said[1], o.Bought, long), check.ShownAtLeast(said[2], o.Amount.Never, long))
	}
	if said := tooShort.FindStringSubmatch(o.Refused); said != nil && o.LeftOver < 0 {
		return errors.Join(check.Shown(said[1], o.Bought, long), check.Shown(said[2], -o.LeftOver, short))
	}
	return fmt.Errorf("%q refuses %.1f mm of which %.1f mm are left over", o.Refused, o.Bought, o.LeftOver)
}

// whyReadAgain holds the sentences of why an option is the cheapest against it and the
// others: each whose length is cheaper has one, and no other.
func whyReadAgain(said []string, ranked []Option, currency Currency, units Units) error {
	if len(ranked) < 2 || ranked[0].Refused != "" || ranked[0].FromRemnant {
		return nil // no figure is said
	}
	best := ranked[0]
	perMillimetre := func(o Option) float64 {
		return float64(o.Offer.Price.Money) / float64(o.Offer.Price.micrometres())
	}
	var faults []error
	cheaper := 0
	for _, other := range ranked[1:] {
		if other.Refused == "" && other.Cost < best.Cost {
			faults = append(faults, fmt.Errorf("%s costs %d, and less is paid for another", best.Offer.Name, best.Cost))
		}
		if other.Refused != "" || other.FromRemnant || perMillimetre(other) >= perMillimetre(best)*(1-1e-12) {
			continue
		}
		if cheaper++; len(said) < cheaper {
			faults = append(faults, fmt.Errorf("it is not said why %s is dearer", other.Offer.Name))
			continue
		}
		faults = append(faults, best.againstReadAgain(said[cheaper-1], other, currency, units))
	}
	if len(said) != max(cheaper, 1) || cheaper == 0 && !strings.HasPrefix(said[0], best.Offer.Name+", the cheapest ") {
		faults = append(faults, fmt.Errorf("%d sentences say of %d cheaper lengths why they are not taken",
			len(said), cheaper))
	}
	return errors.Join(faults...)
}

// againstReadAgain holds "Wide is 4.00 EUR dearer a metre than Narrow, and saves 5.10
// EUR: it is 35 cm wider." against both options.
func (o Option) againstReadAgain(said string, other Option, currency Currency, units Units) error {
	price := o.Offer.Price
	rest, isOf := strings.CutPrefix(said, o.Offer.Name+" is ")
	dearer, rest, isAgainst := strings.Cut(rest, " dearer "+price.Each()+" than "+other.Offer.Name+", and ")
	outcome, reasons, hasReasons := strings.Cut(rest, ": ")
	if !isOf || !isAgainst || !hasReasons {
		return fmt.Errorf("%q does not say how %s is cheaper than %s", said, o.Offer.Name, other.Offer.Name)
	}
	var faults []error
	exact := float64(price.Money) - float64(other.Offer.Price.Money)*float64(price.micrometres())/
		float64(other.Offer.Price.micrometres())
	// It is rounded for a metre, and again for a yard.
	if more, err := currency.Parse(dearer); err != nil || math.Abs(float64(more)-exact) > 1+1e-9*exact {
		faults = append(faults, fmt.Errorf("%q stands where %.2f are meant", dearer, exact))
	}
	if saved, saves := strings.CutPrefix(outcome, "saves "); saves || o.Cost != other.Cost {
		faults = append(faults, moneyReadAgain(saved, currency, other.Cost-o.Cost))
	}
	return errors.Join(append(faults, o.reasonsReadAgain(strings.TrimSuffix(reasons, "."), other, units))...)
}

// reasonsReadAgain: each difference that counts is said, once.
func (o Option) reasonsReadAgain(said string, other Option, units Units) error {
	short, long, _ := units.steps()
	var faults []error
	left := strings.Split(said, ", ")
	least := other.Offer.Cloth.Minimum
	for _, reason := range []struct {
		before, after         string
		by, least, says, step float64
	}{
		{"it is ", " wider", o.Offer.Cloth.Width - other.Offer.Cloth.Width, 1, 0, short},
		{"the pieces take ", " less", other.Amount.Taken - o.Amount.Taken, 1, 0, long},
		{"it shrinks by ", " less", other.Amount.Shrinkage - o.Amount.Shrinkage, 1, 0, short},
		{"the other shop cuts no less than ", "", other.Amount.Minimum - o.Amount.Minimum, 1, least, long},
		{"", " less are lost to rounding", other.Amount.Rounding - o.Amount.Rounding, 10, 0, short},
	} {
		if reason.by < reason.least {
			continue
		}
		if reason.says == 0 {
			reason.says = reason.by
		}
		if len(left) == 0 {
			faults = append(faults, fmt.Errorf("%.1f mm less are not said", reason.by))
			continue
		}
		length := strings.TrimSuffix(strings.TrimPrefix(left[0], reason.before), reason.after)
		faults = append(faults, check.Shown(length, reason.says, reason.step))
		left = left[1:]
	}
	if len(left) > 0 && !(len(faults) == 0 && left[0] == "less of it has to be bought") {
		faults = append(faults, fmt.Errorf("%q is said, and is nothing", left[0]))
	}
	return errors.Join(faults...)
}
