package quote

import (
	"context"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// someMoney stays where five hundred of a thing still come to less than the
// most that an amount may be.
func someMoney(t *rapid.T, name string) Money {
	return Money(rapid.Int64Range(0, 1_000_000).Draw(t, name))
}

func someShare(t *rapid.T, name string) Share {
	return Share(rapid.Int64Range(0, int64(whole)).Draw(t, name))
}

func someOffer(t *rapid.T) Offer {
	return Offer{
		Name: "offer",
		Cloth: cloth.Cloth{Name: "shell", Width: rapid.Float64Range(700, 1800).Draw(t, "width"), Selvedge: 10,
			PurchaseStep: rapid.SampledFrom([]float64{0, 50, 100, 250, eighth, 2 * eighth}).Draw(t, "step"),
			Straighten:   rapid.Float64Range(0, 50).Draw(t, "straighten"),
			Shrinkage: cloth.Shrinkage{Warp: rapid.Float64Range(0, 0.08).Draw(t, "shrinkage"),
				CutFirst: rapid.Bool().Draw(t, "cut first")},
			Minimum:    rapid.SampledFrom([]float64{0, 300, 914.4}).Draw(t, "minimum"),
			HandLaying: cloth.Addition{Share: rapid.Float64Range(0, 0.05).Draw(t, "by hand")},
			Safety: cloth.Addition{Share: rapid.Float64Range(0, 0.2).Draw(t, "safety"),
				Length: rapid.Float64Range(0, 200).Draw(t, "more")}},
		Price: &Price{Money: someMoney(t, "price"),
			Per: rapid.SampledFrom([]measure.Unit{measure.Metre, measure.Yard}).Draw(t, "per")},
	}
}

func someFound(t *rapid.T) Found {
	taken := rapid.Float64Range(50, 20_000).Draw(t, "taken")
	return Found{Lay: "open", Taken: taken, Bound: taken * rapid.Float64Range(0, 1).Draw(t, "bound"), Density: 0.8}
}

func someRequest(t *rapid.T) Request {
	out := Request{
		Currency: money(t, rapid.SampledFrom([]string{"EUR", "JPY", "KWD", "USD", "TND", "XOF"}).Draw(t, "currency")),
		Date:     time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC),
		Garments: []Garment{{Name: "dress", Quantity: 1}},
		Margin:   someShare(t, "margin"), Deposit: someShare(t, "deposit"),
	}
	for range rapid.IntRange(0, 3).Draw(t, "cloths") {
		option := Compare([]Candidate{{Offer: someOffer(t), Found: someFound(t)}}, Units{})[0]
		out.Cloths = append(out.Cloths, ClothRequest{Cloth: "shell", Option: option})
	}
	for range rapid.IntRange(0, 4).Draw(t, "notions") {
		out.Notions = append(out.Notions, Notion{"zip", rapid.IntRange(1, 500).Draw(t, "count"), someMoney(t, "each")})
	}
	for range rapid.IntRange(0, 2).Draw(t, "making") {
		out.Making = append(out.Making, Work{"making", rapid.IntRange(0, 6000).Draw(t, "minutes"), someMoney(t, "hour"),
			someMoney(t, "sum")})
	}
	if rapid.Bool().Draw(t, "taxed") {
		out.Tax = &Tax{"VAT", someShare(t, "rate"), rapid.Bool().Draw(t, "included")}
	}
	return out
}

// In currencies with 0, 2 and 3 decimals, whatever is printed adds up to what
// is printed below it, to the last minor unit: the amounts are read back from
// their text.
func TestPartsSumToTheTotal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		request := someRequest(t)
		q, err := Of(request)
		require.NoError(t, err)
		printed := func(m Money) Money {
			back, err := q.Currency.Parse(q.Currency.Format(m))
			require.NoError(t, err)
			return back
		}
		var lines Money
		for _, line := range q.Lines {
			lines += printed(line.Cost)
		}
		assert.Equal(t, printed(q.Subtotal), lines)
		assert.Equal(t, printed(q.Total), printed(q.DepositSum)+printed(q.Balance))
		switch {
		case q.Tax == nil:
			assert.Equal(t, q.Subtotal, q.Total)
		case q.Tax.Included:
			assert.Equal(t, q.Subtotal, q.Total)
			net := q.Total - q.TaxSum
			assert.InDelta(t, float64(q.TaxSum), float64(net)*float64(q.Tax.Rate)/1e6, 1.01,
				"the tax on the net price, to the last unit")
		default:
			assert.Equal(t, printed(q.Total), printed(q.Subtotal)+printed(q.TaxSum))
			assert.InDelta(t, float64(q.Subtotal)*float64(q.Tax.Rate)/1e6, float64(q.TaxSum), 0.51)
		}
	})
}

// What the client reads comes to the same sum, without the maker's reckoning.
func TestTheClientsQuoteSumsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q, err := Of(someRequest(t))
		require.NoError(t, err)
		client := q.ForClient()
		var lines Money
		for _, line := range client.Lines {
			lines += line.Cost
			assert.Empty(t, line.Notes)
			assert.NotContains(t, line.Text, "Margin")
			if line.Group == Making {
				assert.Empty(t, line.Amount+line.Each, "hours and rate")
			}
			if line.Group == Cloth && q.Margin > 0 {
				assert.Empty(t, line.Each, "a metre at this price would come to less")
			}
		}
		assert.Equal(t, q.Subtotal, lines)
		assert.Equal(t, []Money{q.Subtotal, q.TaxSum, q.Total, q.DepositSum, q.Balance},
			[]Money{client.Subtotal, client.TaxSum, client.Total, client.DepositSum, client.Balance})
		assert.Empty(t, client.Together)
		assert.NoError(t, q.proven(), "the quote itself is left as it was")
	})
}

// A quote reckoned by hand, in three currencies.
func TestQuoteByHand(t *testing.T) {
	offer := Offer{Name: "crepe", Cloth: cloth.Cloth{Name: "shell", Width: 1400, PurchaseStep: 100, Straighten: 30,
		Safety: cloth.Addition{Share: 0.05}}, Price: &Price{Money: 1895, Per: measure.Metre}}
	option := Compare([]Candidate{{Offer: offer, Found: Found{Lay: "open", Taken: 2030, Bound: 1800}}}, Units{})[0]
	// 2030 + 30 + 5 % = 2163, so 2.20 m are bought: 41.69.
	assert.InDelta(t, 2200, option.Bought, 1e-9)
	request := Request{
		Currency: money(t, "EUR"), Garments: []Garment{{Name: "dress", Quantity: 1}},
		Cloths:  []ClothRequest{{Cloth: "shell", Option: option}},
		Notions: []Notion{{"zip", 1, 420}, {"buttons", 6, 45}},
		Making:  []Work{{Name: "cutting and sewing", Minutes: 390, PerHour: 2800}},
		Margin:  100_000, Tax: &Tax{Name: "VAT", Rate: 210_000}, Deposit: 400_000,
	}
	q, err := Of(request)
	require.NoError(t, err)
	var costs []Money
	for _, line := range q.Lines {
		costs = append(costs, line.Cost)
	}
	assert.Equal(t, []Money{4169, 417, 420, 270, 18200}, costs)
	assert.Equal(t, []Money{23476, 4930, 28406, 11362, 17044},
		[]Money{q.Subtotal, q.TaxSum, q.Total, q.DepositSum, q.Balance})

	request.Tax.Included = true
	q, err = Of(request)
	require.NoError(t, err)
	assert.Equal(t, []Money{23476, 4074}, []Money{q.Total, q.TaxSum}) // 234.76 * 21 / 121
}

func TestQuoteRefuses(t *testing.T) {
	day := time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC)
	sound := Request{Currency: money(t, "EUR"), Garments: []Garment{{Name: "dress", Quantity: 1}}, Date: day}
	for want, change := range map[string]func(*Request){
		"no garments":         func(r *Request) { r.Garments = nil },
		"before its own date": func(r *Request) { r.ValidUntil = day.AddDate(0, 0, -1) },
		"more than the whole": func(r *Request) { r.Deposit = whole + 1 },
		"too narrow":          func(r *Request) { r.Cloths = []ClothRequest{{Option: Option{Refused: "too narrow"}}} },
	} {
		request := sound
		change(&request)
		_, err := Of(request)
		assert.ErrorContains(t, err, want)
	}
}

// What an amount rests on adds up to it, and a purchase is never less than
// what is needed.
func TestAmountAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		offer, found := someOffer(t), someFound(t)
		a := AmountOf(offer, found)
		assert.InDelta(t, a.Buy, a.Taken+a.HandLaying+a.Straighten+a.Shrinkage+a.Safety+a.Rounding+a.Minimum, 1e-6)
		assert.GreaterOrEqual(t, a.Buy, found.Taken-1e-6)
		assert.GreaterOrEqual(t, a.Buy, offer.Cloth.Minimum-1e-6)
		assert.LessOrEqual(t, a.Never, a.Buy+1e-6)
		if step := offer.Cloth.PurchaseStep; step > 0 {
			assert.InDelta(t, a.Buy, float64(measure.RoundUp(measure.Length(a.Buy), measure.Length(step))), 1e-6)
		}
	})
}

// The length that is quoted is that of the lay of all together, whose plan can be drawn,
// whatever single garments take; no bound is above it, and none below theirs. Where one
// by one comes out shorter, that is said as it is. That it does not is for those who lay.
func TestTheQuotedLengthHasAPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		offer := someOffer(t)
		var alone []Found
		for range rapid.IntRange(2, 12).Draw(t, "garments") {
			alone = append(alone, someFound(t))
		}
		found := someFound(t)
		option := Compare([]Candidate{{Offer: offer, Found: found, Alone: alone}}, Units{})[0]
		assert.Equal(t, found.Taken, option.Amount.Taken)
		assert.LessOrEqual(t, option.Amount.Bound, option.Amount.Taken)
		for _, single := range alone {
			assert.GreaterOrEqual(t, option.Amount.Bound, min(single.Bound, found.Taken))
		}
		saving, ok := savingOf("shell", option)
		require.True(t, ok)
		said := saving.Say(Currency{}, Units{})
		assert.Equal(t, saving.OneByOne-saving.Together <= -1, strings.Contains(said, "one by one they take only"), said)
	})
}

// The amount is what the lay itself says is to be bought.
func TestAmountAgreesWithTheLay(t *testing.T) {
	for i, shrinkage := range []cloth.Shrinkage{{}, {Warp: 0.05, Weft: 0.02}, {Warp: 0.05, CutFirst: true}} {
		c := cloth.Cloth{Name: "shell", Width: 900, Selvedge: 10, PurchaseStep: 100, Straighten: 30, Shrinkage: shrinkage,
			Safety: cloth.Addition{Share: 0.03, Length: 20}, Minimum: 1500 * float64(i)}
		pocket := pieces.Rectangle("pocket", 200, 310)
		pocket.Cut, pocket.Cloth = 7, "shell"
		need, err := plan.Require(context.Background(), c, []pieces.Piece{pocket},
			plan.Options{Passes: 20, Workers: 1, Lays: []lay.Kind{lay.Open}})
		require.NoError(t, err)
		amount := AmountOf(Offer{Cloth: c}, FoundIn(need))
		assert.InDelta(t, need.Buy, amount.Buy, 1e-6)
		assert.InDelta(t, need.Lays[need.Chosen].Need, amount.Need(), 1e-6)
	}
}
