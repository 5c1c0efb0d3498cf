package quote

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/pieces/measure"
)

// Each figure of an amount is refused when it alone is wrong, wherever amounts leave.
func TestWrongAmountsAreRefused(t *testing.T) {
	offer := Offer{Cloth: cloth.Cloth{Width: 1400, Selvedge: 10, PurchaseStep: 100, Straighten: 30, Minimum: 500,
		HandLaying: cloth.Addition{Share: 0.02, Length: 5},
		Safety:     cloth.Addition{Share: 0.05}, Shrinkage: cloth.Shrinkage{Warp: 0.03}},
		Price: &Price{Money: 1850, Per: measure.Metre}}
	good := AmountOf(offer, Found{Lay: "open", Taken: 1234, Bound: 1100, Density: 0.8})
	require.NoError(t, good.Proven(offer.Cloth, Units{}))
	for name, spoil := range map[string]func(*Amount){
		"taken":       func(a *Amount) { a.Taken -= 200 },
		"hand laying": func(a *Amount) { a.HandLaying = 0 },
		"straighten":  func(a *Amount) { a.Straighten = 0 },
		"safety":      func(a *Amount) { a.Safety = 0 },
		"rounding":    func(a *Amount) { a.Rounding++ },
		"buy":         func(a *Amount) { a.Buy -= 100 },
		"a step more": func(a *Amount) {
			a.Buy += 100
			a.Rounding += 100
		},
		"bound": func(a *Amount) { a.Bound = 1300 },
		"never": func(a *Amount) { a.Never -= 50 },
		"one for another": func(a *Amount) {
			a.Straighten, a.Safety = a.Safety, a.Straighten
		},
		"minimum": func(a *Amount) {
			a.Minimum, a.Rounding = a.Rounding, 0
		},
		"efficiency": func(a *Amount) { a.Density = 1.1 },
	} {
		t.Run(name, func(t *testing.T) {
			amount := good
			spoil(&amount)
			require.ErrorIs(t, amount.Proven(offer.Cloth, Units{}), plan.ErrInternal)
			table := Table{Cloths: []ClothTable{{Rows: []TableRow{{Cells: []Cell{{Offer: offer, Amount: amount}}}}}}}
			assert.ErrorIs(t, table.Proven(), plan.ErrInternal)
			_, err := Of(Request{Garments: []Garment{{}}, Cloths: []ClothRequest{{Option: bought(offer, amount)}}})
			assert.ErrorIs(t, err, plan.ErrInternal)
		})
	}
}

// bought is an amount of an offer from the bolt.
func bought(offer Offer, a Amount) Option {
	return Option{Offer: offer, Amount: a, Bought: a.Buy, LeftOver: a.Buy - a.Need(), Cost: offer.Price.For(a.Buy)}
}

// Each sum and each figure of a line of a quote is refused when it alone is wrong.
func TestWrongSumsAreRefused(t *testing.T) {
	currency, err := ParseCurrency("EUR")
	require.NoError(t, err)
	offer := Offer{Cloth: cloth.Cloth{Width: 1400, PurchaseStep: 100, Straighten: 30},
		Price: &Price{Money: 1850, Per: measure.Metre}}
	remnant := offer
	remnant.Remnant = &Remnant{Length: 2000, Price: 1200, Straighten: 20}
	found := Found{Lay: "open", Taken: 1234, Bound: 1100, Density: 0.8}
	together := bought(offer, AmountOf(offer, found))
	together.Alone = []Found{{Lay: "open", Taken: 800, Bound: 700, Density: 0.7},
		{Lay: "open", Taken: 700, Bound: 600, Density: 0.7}}
	request := Request{
		Currency: currency, Garments: []Garment{{Quantity: 2}},
		Cloths: []ClothRequest{{Cloth: "shell", Option: together},
			{Cloth: "lining", Option: remnantOf(remnant, AmountOf(remnant, found), Units{})}},
		Notions: []Notion{{Name: "zip", Count: 3, Price: 420}},
		Making:  []Work{{Name: "sewing", Minutes: 195, PerHour: 2811}, {Name: "fitting", Sum: 5000}},
		Margin:  75_000, Deposit: 400_000, Tax: &Tax{Name: "VAT", Rate: 210_000},
	}
	included := request
	included.Tax = &Tax{Name: "VAT", Rate: 210_000, Included: true}
	untaxed := request
	untaxed.Tax = nil
	for _, asked := range []Request{request, included, untaxed} {
		_, err := Of(asked)
		require.NoError(t, err)
	}
	for name, spoil := range map[string]func(*Quote){
		"cloth":             func(q *Quote) { q.Lines[0].Cost++ },
		"amount":            func(q *Quote) { q.Lines[0].Amount = "1.40 m" },
		"price":             func(q *Quote) { q.Lines[0].Each = "18.40 a metre" },
		"remnant":           func(q *Quote) { q.Lines[1].Cost-- },
		"margin":            func(q *Quote) { q.Lines[2].Cost += 2 },
		"count":             func(q *Quote) { q.Lines[3].Amount = "4" },
		"notions":           func(q *Quote) { q.Lines[3].Cost += 420 },
		"hours":             func(q *Quote) { q.Lines[4].Amount = "3 h 51 min" },
		"making":            func(q *Quote) { q.Lines[4].Cost -= 2 },
		"an hour":           func(q *Quote) { q.Lines[4].Each = "28.10 an hour" },
		"a fixed sum":       func(q *Quote) { q.Lines[5].Cost = 0 },
		"a line is missing": func(q *Quote) { q.Lines = q.Lines[:5] },
		"a line too many":   func(q *Quote) { q.Lines = append(q.Lines, Line{Group: Making}) },
		"sum":               func(q *Quote) { q.Subtotal++ },
		"tax":               func(q *Quote) { q.TaxSum, q.Total, q.Balance = q.TaxSum+2, q.Total+2, q.Balance+2 },
		"total":             func(q *Quote) { q.Total, q.Balance = q.Total+1, q.Balance+1 },
		"deposit":           func(q *Quote) { q.DepositSum, q.Balance = q.DepositSum+2, q.Balance-2 },
		"balance":           func(q *Quote) { q.Balance++ },
		"one by one":        func(q *Quote) { q.Together[0].OneByOne += 100 },
		"saved":             func(q *Quote) { q.Together[0].Money += 100 },
		"bought":            func(q *Quote) { q.Cloths[0].Option.Bought += 100 },
		"left over":         func(q *Quote) { q.Cloths[0].Option.LeftOver += 100 },
		"left of a remnant": func(q *Quote) { q.Cloths[1].Option.LeftOver += 100 },
	} {
		t.Run(name, func(t *testing.T) {
			quote, err := Of(request)
			require.NoError(t, err)
			quote.Cloths = append([]ClothRequest{}, quote.Cloths...)
			spoil(&quote)
			assert.ErrorIs(t, quote.proven(), plan.ErrInternal)
		})
	}
	wrongly := included
	quote, err := Of(wrongly)
	require.NoError(t, err)
	quote.TaxSum += 2
	assert.ErrorIs(t, quote.proven(), plan.ErrInternal, "an included tax")
}

// What a table shows is read again: a cell, and what the amounts rest on.
func TestTablesAreReadAgain(t *testing.T) {
	good := sampleTable()
	require.NoError(t, good.Proven())
	good.Inches = true
	require.NoError(t, good.Proven())
	amount := sampleTable().Cloths[0].Rows[0].Cells[0].Amount
	amount.Lay = "part folded, part open" // with a comma of its own
	require.NoError(t, restsOnReadAgain(amount.RestsOn(Units{}), amount, Units{}))
	cell := sampleTable().Cloths[0].Rows[0].Cells[0]
	require.NoError(t, cell.readAgain())
	cell.Amount.Taken += 100 // the texts are of what is bought
	assert.Error(t, cell.readAgain())
	for _, said := range []string{
		"laid open in 1.31 m (never below 0.70 m), rounding 9.1 cm",
		"laid open in 1.32 m (never below 0.70 m), rounding 9 cm",
		"laid open in 1.31 m (never below 0.71 m), rounding 9 cm", "laid open in 1.31 m (never below 0.70 m)",
		"laid open in 1.31 m (never below 0.70 m), safety 3 cm, rounding 9 cm", "laid open",
		"laid open in 1.31 m (never below 0.70 m), rounding 9 cm, rounding 9 cm",
	} {
		assert.Error(t, restsOnReadAgain(said, sampleTable().Cloths[0].Rows[0].Cells[0].Amount, Units{}), said)
	}
}
