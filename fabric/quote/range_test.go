package quote

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
)

// By hand: a lay of 2.00 m that may be 3 % or 4 % off, 5 % in all, is 1.90 to 2.10 m.
func TestRangeByHand(t *testing.T) {
	c := cloth.Cloth{Width: 1400, PurchaseStep: 100}
	a := AmountOf(Offer{Cloth: c}, Found{Lay: "open", Taken: 2000, Bound: 1500})
	r := RangeOf(c, a, Doubt{Measures, 0.03, 0.03}, Doubt{TrueWidth, 0.04, 0.04}, Doubt{Of: Washing})
	assert.InDelta(t, 1900, r.Low, 1e-9)
	assert.InDelta(t, 2100, r.High, 1e-9)
	assert.Equal(t, []Doubt{{Measures, 0.03, 0.03}, {TrueWidth, 0.04, 0.04}}, r.Doubts, "what is no doubt is left out")
}

// The doubts, by hand: 138 cm usable of 140, 1 cm either way; cotton loses 3 to 5 % along
// and half of it across; no search finds less than the bound.
func TestDoubtsByHand(t *testing.T) {
	c := cloth.Cloth{Width: 1400, Selvedge: 10, Shrinkage: cloth.Cotton.Shrinkage(false)}
	width := WidthDoubt(c)
	assert.InDelta(t, 1-138.0/139, width.Less, 1e-9)
	assert.InDelta(t, 138.0/137-1, width.More, 1e-9)
	assert.InDelta(t, 0.03, WashDoubt(c).Less, 1e-9)
	assert.Zero(t, WashDoubt(c).More, "reckoned with the most")
	assert.Zero(t, WashDoubt(cloth.Cloth{Shrinkage: cloth.Shrinkage{Warp: 0.04}}).Less, "the maker knows")
	for searched, less := range map[Searched]float64{Briefly: 0.15, Quickly: 0.08, Fully: 0.04} {
		assert.InDelta(t, less, SearchDoubt(Found{Taken: 1000, Bound: 800}, searched).Less, 1e-9)
		assert.InDelta(t, 0.02, SearchDoubt(Found{Taken: 1000, Bound: 980}, searched).Less, 1e-9)
	}
}

// The amount lies in its range, and a doubt more never narrows it.
func TestRangeHoldsTheAmount(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		offer, found := someOffer(t), someFound(t)
		a := AmountOf(offer, found)
		var doubts []Doubt
		last := RangeOf(offer.Cloth, a)
		assert.Equal(t, Range{Low: last.Low, High: a.Buy}, last, "none may be above")
		for _, of := range []Unknown{Measures, TrueWidth, Searching} {
			share := rapid.Float64Range(0, 0.2)
			doubt := Doubt{of, share.Draw(t, "less"), share.Draw(t, "more")}
			if of == Searching {
				doubt = SearchDoubt(found, Searched(rapid.IntRange(0, 2).Draw(t, "searched")))
			}
			doubts = append(doubts, doubt)
			next := RangeOf(offer.Cloth, a, append([]Doubt{}, doubts...)...)
			assert.LessOrEqual(t, next.Low, last.Low)
			assert.GreaterOrEqual(t, next.High, last.High)
			last = next
			assert.NoError(t, last.Proven(offer.Cloth, a))
		}
		assert.LessOrEqual(t, last.Low, a.Buy)
		assert.GreaterOrEqual(t, last.High, a.Buy)
	})
}

// A range that is anything else than its doubts make it is refused.
func TestRangeIsProven(t *testing.T) {
	c := cloth.Cloth{Width: 1400, PurchaseStep: 100, Straighten: 30, HandLaying: cloth.UsualHandLaying,
		Safety: cloth.Addition{Share: 0.05}}
	a := AmountOf(Offer{Cloth: c}, Found{Lay: "open", Taken: 2000, Bound: 1500, Density: 0.8})
	good := RangeOf(c, a, Doubt{Measures, 0.09, 0.12}, Doubt{Searching, 0.15, 0})
	assert.NoError(t, good.Proven(c, a))
	for want, spoil := range map[string]func(r *Range){
		"its lower end a step too high":   func(r *Range) { r.Low += 100 },
		"its lower end a step too low":    func(r *Range) { r.Low -= 100 },
		"its lower end the amount itself": func(r *Range) { r.Low = a.Buy },
		"its upper end a step too high":   func(r *Range) { r.High += 100 },
		"its upper end the amount itself": func(r *Range) { r.High = a.Buy },
		"both ends exchanged":             func(r *Range) { r.Low, r.High = r.High, r.Low },
		"a doubt that is no number":       func(r *Range) { r.Doubts[0].More = math.NaN() },
		"a search below the bound":        func(r *Range) { r.Doubts[1].Less = 0.3 },
		"a doubt that is left out":        func(r *Range) { r.Doubts = r.Doubts[1:] },
	} {
		spoiled := good
		spoiled.Doubts = slices.Clone(good.Doubts)
		spoil(&spoiled)
		assert.ErrorIs(t, spoiled.Proven(c, a), plan.ErrInternal, want)
	}
}
