package quote

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
)

// Each figure of an amount is refused when it alone is wrong, wherever amounts leave.
func TestWrongAmountsAreRefused(t *testing.T) {
	offer := Offer{Cloth: cloth.Cloth{Width: 1400, Selvedge: 10, Step: 100, Straighten: 30, Safety: cloth.Addition{Share: 0.05}}}
	good := AmountOf(offer, Found{Lay: "open", Taken: 1234, Bound: 1100, Density: 0.8})
	require.NoError(t, Proven([]Option{{Offer: offer, Amount: good}}))
	for name, spoil := range map[string]func(*Amount){
		"taken":      func(a *Amount) { a.Taken -= 200 },
		"straighten": func(a *Amount) { a.Straighten = 0 },
		"safety":     func(a *Amount) { a.Safety = 0 },
		"rounding":   func(a *Amount) { a.Rounding++ },
		"buy":        func(a *Amount) { a.Buy -= 100 },
		"a step more": func(a *Amount) {
			a.Buy += 100
			a.Rounding += 100
		},
		"bound":      func(a *Amount) { a.Bound = 1300 },
		"efficiency": func(a *Amount) { a.Density = 1.1 },
	} {
		t.Run(name, func(t *testing.T) {
			amount := good
			spoil(&amount)
			require.ErrorIs(t, Proven([]Option{{Offer: offer, Amount: amount}}), plan.ErrInternal)
			table := Table{Cloths: []ClothTable{{Rows: []TableRow{{Cells: []Cell{{Offer: offer, Amount: amount}}}}}}}
			assert.ErrorIs(t, table.proven(), plan.ErrInternal)
			_, err := Of(Request{Garments: []Garment{{}}, Cloths: []ClothRequest{{Option: Option{Offer: offer, Amount: amount}}}})
			assert.ErrorIs(t, err, plan.ErrInternal)
		})
	}
}
