package quote

import (
	"fmt"
	"math"
	"sort"
	"strings"
)

// Option is one way to buy the cloth for a job: from the bolt of an offer, or
// its remnant.
type Option struct {
	Offer  Offer
	Amount Amount
	// FromRemnant says that the remnant is taken in place of a length from
	// the bolt.
	FromRemnant bool
	// Bought is the length paid for and LeftOver what of it is not needed,
	// mm; Cost what is paid.
	Bought, LeftOver float64
	Cost             Money
	// Range is between which amounts that from the bolt may prove to lie; the zero one
	// where nobody has reckoned it.
	Range Range
	// Alone is what each garment takes by itself, as in the candidate.
	Alone []Found
	// Refused says why this way is none. Empty when it is one.
	Refused string
}

// Candidate is an offer with what was found on it; Impossible says why no lay
// of its cloth is possible.
type Candidate struct {
	Offer Offer
	// Found is the lay of all garments together, and Alone that of each single
	// garment, repeated for its quantity. Fewer than two single ones say
	// nothing of laying together.
	Found      Found
	Alone      []Found
	Impossible string
}

// Compare ranks every way to buy: the cheapest first, of equals the one that
// leaves less over; what is refused comes last, in the order given.
func Compare(all []Candidate, units Units) []Option {
	var out []Option
	for _, c := range all {
		if c.Impossible != "" {
			out = append(out, Option{Offer: c.Offer, Refused: c.Impossible})
			continue
		}
		amount := AmountOf(c.Offer, c.Found.AboveEach(c.Alone))
		if c.Offer.Price != nil {
			out = append(out, Option{Offer: c.Offer, Amount: amount, Alone: c.Alone, Bought: amount.Buy,
				LeftOver: amount.Buy - amount.Need(), Cost: c.Offer.Price.For(amount.Buy)})
		}
		if c.Offer.Remnant != nil {
			option := remnantOf(c.Offer, amount, units)
			option.Alone = c.Alone
			out = append(out, option)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].before(out[j]) })
	return out
}

func (o Option) before(other Option) bool {
	switch {
	case (o.Refused == "") != (other.Refused == ""):
		return o.Refused == ""
	case o.Refused != "":
		return false
	case o.Cost != other.Cost:
		return o.Cost < other.Cost
	}
	return o.LeftOver < other.LeftOver
}

// remnantTolerance, mm: a remnant is not measured finer [source.OwnChoice].
const remnantTolerance = 1.0

func remnantOf(offer Offer, amount Amount, units Units) Option {
	out := Option{Offer: offer, Amount: amount, FromRemnant: true, Bought: offer.Remnant.Length, Cost: offer.Remnant.Price}
	// The maker's safety is for what is still to be bought: here a lay is found
	// that fits, or none is.
	ends := math.Max(0, offer.Remnant.Straighten-amount.Straighten)
	out.LeftOver = out.Bought - (amount.Need() - amount.Safety) - ends
	switch {
	case out.LeftOver >= -remnantTolerance:
	case amount.Never > out.Bought+remnantTolerance:
		out.Refused = fmt.Sprintf("the remnant of %s cannot do: no way of laying takes less than %s",
			units.Long(out.Bought), units.AtLeast(amount.Never))
	default:
		out.Refused = fmt.Sprintf("the remnant of %s is %s too short for the lay that was found; it is not proven that "+
			"none fits", units.Long(out.Bought), units.Short(-out.LeftOver))
	}
	return out
}

// Why says why the cheapest option is the cheapest, a sentence for each offer
// whose metre is cheaper, or one when its own metre is the cheapest.
func Why(ranked []Option, currency Currency, units Units) []string {
	if len(ranked) < 2 || ranked[0].Refused != "" {
		return nil
	}
	best := ranked[0]
	if best.FromRemnant {
		return []string{fmt.Sprintf("%s is a remnant at a fixed price, and long enough.", best.Offer.Name)}
	}
	var out []string
	for _, other := range ranked[1:] {
		if other.Refused != "" || other.FromRemnant || other.Offer.Price.perMetre() >= best.Offer.Price.perMetre() {
			continue
		}
		out = append(out, best.against(other, currency, units))
	}
	if len(out) == 0 {
		return []string{fmt.Sprintf("%s, the cheapest %s, is the cheapest for this job too.", best.Offer.Name,
			best.Offer.Price.Each())}
	}
	return out
}

// against explains how a dearer length makes the cheaper garment.
func (o Option) against(other Option, currency Currency, units Units) string {
	price := o.Offer.Price
	dearer := Money(price.perMetre()-other.Offer.Price.perMetre()+0.5).times(price.micrometres(), micrometresPerMetre)
	outcome := "costs the same"
	if o.Cost < other.Cost {
		outcome = "saves " + currency.Say(other.Cost-o.Cost)
	}
	return fmt.Sprintf("%s is %s dearer %s than %s, and %s: %s.",
		o.Offer.Name, currency.Say(dearer), price.Each(), other.Offer.Name, outcome, strings.Join(o.reasons(other, units),
			", "))
}

func (o Option) reasons(other Option, units Units) []string {
	var out []string
	if wider := o.Offer.Cloth.Width - other.Offer.Cloth.Width; wider >= 1 {
		out = append(out, "it is "+units.Short(wider)+" wider")
	}
	if less := other.Amount.Taken - o.Amount.Taken; less >= 1 {
		out = append(out, "the pieces take "+units.Long(less)+" less")
	}
	if less := other.Amount.Shrinkage - o.Amount.Shrinkage; less >= 1 {
		out = append(out, "it shrinks by "+units.Short(less)+" less")
	}
	if less := other.Amount.Minimum - o.Amount.Minimum; less >= 1 {
		out = append(out, "the other shop cuts no less than "+units.Long(other.Offer.Cloth.Minimum))
	}
	if less := other.Amount.Rounding - o.Amount.Rounding; less >= 10 {
		out = append(out, units.Short(less)+" less are lost to rounding")
	}
	if len(out) == 0 {
		out = append(out, "less of it has to be bought")
	}
	return out
}
