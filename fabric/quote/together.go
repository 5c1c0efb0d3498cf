package quote

import (
	"fmt"
)

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

func savingOf(cloth string, option Option) (Saving, bool) {
	if len(option.Alone) < 2 {
		return Saving{}, false
	}
	out := Saving{Cloth: cloth, option: option, Garments: len(option.Alone), Together: option.Amount.Buy}
	offer := option.Offer
	var cost Money
	for _, found := range option.Alone {
		buy := AmountOf(offer, found).Buy
		out.OneByOne += buy
		if offer.Price != nil {
			cost += offer.Price.For(buy)
		}
	}
	if !option.FromRemnant {
		out.Money = cost - option.Cost
	}
	return out, true
}

// Say says what is saved: "shell: the 4 garments laid together take 8.40 m;
// bought one by one they take 9.60 m, 22.20 EUR more".
func (s Saving) Say(currency Currency, units Units) string {
	bought := func(mm float64) string { return units.Bought(s.option.Offer.Cloth, mm) }
	text := fmt.Sprintf("%s: the %d garments laid together take %s; ", s.Cloth, s.Garments, bought(s.Together))
	if s.OneByOne-s.Together <= -1 {
		return text + fmt.Sprintf("bought one by one they take only %s", bought(s.OneByOne))
	}
	if s.OneByOne-s.Together < 1 {
		return text + "bought one by one they take as much"
	}
	text += fmt.Sprintf("bought one by one they take %s", bought(s.OneByOne))
	if s.Money > 0 {
		text += ", " + currency.Say(s.Money) + " more"
	}
	return text
}
