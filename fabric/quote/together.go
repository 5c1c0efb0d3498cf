package quote

import (
	"fmt"
	"math"
)

// InSuccession lays garments one after the other, each as it lies alone: a lay
// of all of them that always exists, so that laying together is never longer
// than the sum of the single lays.
func InSuccession(alone []Found) Found {
	out := Found{Lay: "garment after garment"}
	var filled float64
	for _, found := range alone {
		out.Taken += found.Taken
		out.Bound = math.Max(out.Bound, found.Bound)
		filled += found.Density * found.Taken
	}
	if out.Taken > 0 {
		out.Density = filled / out.Taken
	}
	return out
}

// Saving is what one cloth saves by being laid together for all garments,
// against buying for each garment by itself.
type Saving struct {
	Cloth    string
	option   Option
	Garments int
	// OneByOne and Together are the lengths to buy, mm; Money is what the
	// difference costs, 0 for a remnant, whose price is fixed.
	OneByOne, Together float64
	Money              Money
}

func savingOf(cloth ClothRequest) (Saving, bool) {
	if len(cloth.Option.Alone) < 2 {
		return Saving{}, false
	}
	out := Saving{Cloth: cloth.Cloth, option: cloth.Option, Garments: len(cloth.Option.Alone), Together: cloth.Option.Amount.Buy}
	offer := cloth.Option.Offer
	var cost Money
	for _, found := range cloth.Option.Alone {
		buy := AmountOf(offer, found).Buy
		out.OneByOne += buy
		if offer.Price != nil {
			cost += offer.Price.For(buy)
		}
	}
	if !cloth.Option.FromRemnant {
		out.Money = cost - cloth.Option.Cost
	}
	return out, true
}

// Say says what is saved: "shell: the 4 garments laid together take 8.40 m;
// bought one by one they take 9.60 m, 22.20 EUR more".
func (s Saving) Say(currency Currency, units Units) string {
	bought := func(mm float64) string { return units.Bought(s.option.Offer.Cloth, mm) }
	text := fmt.Sprintf("%s: the %d garments laid together take %s; ", s.Cloth, s.Garments, bought(s.Together))
	if s.OneByOne-s.Together < 1 {
		return text + "bought one by one they take as much"
	}
	text += fmt.Sprintf("bought one by one they take %s", bought(s.OneByOne))
	if s.Money > 0 {
		text += ", " + currency.Say(s.Money) + " more"
	}
	return text
}
