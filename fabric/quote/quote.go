package quote

import (
	"errors"
	"fmt"
	"strings"
	"time"
)

// Group of lines.
type Group string

// The groups, in the order of the quote.
const (
	Cloth   Group = "cloth"
	Notions Group = "notions"
	Making  Group = "making"
)

// Line is one priced line.
type Line struct {
	Group Group
	Text  string
	// Amount and Each are how much, and the price of one: "2.10 m" at "18.50
	// a metre". May be empty.
	Amount, Each string
	// Notes say what the amount rests on. May be empty.
	Notes []string
	Cost  Money
}

// Quote is a request with its sums. Lines add up to Subtotal; Subtotal and Tax,
// when it is not included, to Total; DepositSum and Balance to Total: each to
// the last minor unit.
type Quote struct {
	Request
	Lines               []Line
	Subtotal            Money
	TaxSum              Money // of it, or on it
	Total               Money
	DepositSum, Balance Money
	Together            []Saving
}

func (r Request) check() error {
	var faults []error
	if len(r.Garments) == 0 {
		faults = append(faults, errors.New("the quote has no garments"))
	}
	for _, cloth := range r.Cloths {
		if cloth.Option.Refused != "" {
			faults = append(faults, fmt.Errorf("cloth %q: %s", cloth.Cloth, cloth.Option.Refused))
		}
	}
	if !r.ValidUntil.IsZero() && r.ValidUntil.Before(r.Date) {
		faults = append(faults,
			fmt.Errorf("the quote is valid until %s, before its own date, %s", r.ValidUntil.Format(time.DateOnly),
				r.Date.Format(time.DateOnly)))
	}
	if r.Deposit > whole {
		faults = append(faults, fmt.Errorf("a deposit of %s is more than the whole", r.Deposit))
	}
	return errors.Join(faults...)
}

func (r Request) lines() []Line {
	var out []Line
	var cloths Money
	for _, cloth := range r.Cloths {
		line := r.clothLine(cloth)
		cloths += line.Cost
		out = append(out, line)
	}
	if r.Margin > 0 {
		out = append(out, Line{Group: Cloth, Text: "Margin on the cloth", Amount: r.Margin.String(),
			Cost: r.Margin.Of(cloths)})
	}
	for _, notion := range r.Notions {
		out = append(out, Line{Group: Notions, Text: notion.Name, Amount: fmt.Sprint(notion.Count),
			Each: r.Currency.Format(notion.Price), Cost: notion.Price.Times(notion.Count)})
	}
	for _, work := range r.Making {
		line := Line{Group: Making, Text: work.Name, Cost: work.Cost()}
		if work.Minutes > 0 {
			line.Amount, line.Each = hours(work.Minutes), r.Currency.Format(work.PerHour)+" an hour"
		}
		out = append(out, line)
	}
	return out
}

func (r Request) clothLine(cloth ClothRequest) Line {
	option := cloth.Option
	offer := option.Offer
	line := Line{Group: Cloth, Text: clothText(cloth, r.Units), Amount: r.Units.Bought(offer.Cloth, option.Bought),
		Cost: option.Cost}
	if option.FromRemnant {
		line.Each = "remnant"
	} else {
		line.Each = r.Currency.Format(offer.Price.Money) + " " + offer.Price.Each()
	}
	line.Notes = append([]string{option.Amount.RestsOn(r.Units)}, cloth.Notes...)
	return line
}

// clothText names a cloth for the client: "Shell: Harbour Mills crepe, 140 cm
// wide, one way".
func clothText(cloth ClothRequest, units Units) string {
	offer := cloth.Option.Offer
	text := capital(cloth.Cloth)
	if offer.Name != "" && !strings.HasPrefix(offer.Name, cloth.Cloth) {
		text += ": " + offer.Name
	}
	text += ", " + units.Short(offer.Cloth.Width) + " wide"
	if offer.Cloth.Nap != 0 {
		text += ", " + offer.Cloth.Nap.String()
	}
	return text
}

// marks of the lays that the quote rests on: "Plans: shell K7P3-2MXD, lining 3M2P-77AB".
func (q Quote) marks() string {
	var out []string
	for _, cloth := range q.Cloths {
		if mark := cloth.Option.Amount.Mark; mark != "" {
			out = append(out, cloth.Cloth+" "+mark)
		}
	}
	if len(out) == 0 {
		return ""
	}
	return "Plans: " + strings.Join(out, ", ")
}

// hours prints minutes of work: "6 h", "6 h 30 min".
func hours(minutes int) string {
	switch {
	case minutes%60 == 0:
		return fmt.Sprintf("%d h", minutes/60)
	case minutes < 60:
		return fmt.Sprintf("%d min", minutes)
	}
	return fmt.Sprintf("%d h %02d min", minutes/60, minutes%60)
}
