package quote

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

func TestCompareSaysWhyADearerMetreIsTheCheaperDress(t *testing.T) {
	at := func(name string, width float64, price Money) Offer {
		return Offer{Name: name, Cloth: cloth.Cloth{Width: width, PurchaseStep: 100},
			Price: &Price{Money: price, Per: measure.Metre}}
	}
	short := at("End of bolt", 1400, 2000)
	short.Price, short.Remnant = nil, &Remnant{Length: 1500, Price: 1500}
	none := at("Ribbon", 300, 100)
	ranked := Compare([]Candidate{
		{Offer: at("Narrow", 1150, 1500), Found: Found{Lay: "open", Taken: 2960, Bound: 2500}},
		{Offer: at("Wide", 1500, 1900), Found: Found{Lay: "open", Taken: 2040, Bound: 1900}},
		{Offer: short, Found: Found{Lay: "open", Taken: 2200, Bound: 1400}},
		{Offer: none, Impossible: "front: it is 40 cm wide"},
	}, Units{})
	var names []string
	for _, option := range ranked {
		names = append(names, option.Offer.Name)
	}
	assert.Equal(t, []string{"Wide", "Narrow", "End of bolt", "Ribbon"}, names)
	assert.Equal(t, Money(3990), ranked[0].Cost)
	assert.InDelta(t, 60, ranked[0].LeftOver, 1e-6)
	assert.Contains(t, ranked[2].Refused, "70 cm too short for the lay that was found; it is not proven")
	assert.Equal(t, []string{"Wide is 4.00\u00a0EUR dearer a metre than Narrow, and saves 5.10\u00a0EUR: it is 35 cm " +
		"wider, the pieces take 0.92 m less."}, Why(ranked, money(t, "EUR"), Units{}))
}

func TestRemnants(t *testing.T) {
	offer := Offer{Name: "End of bolt", Cloth: cloth.Cloth{Width: 1400, PurchaseStep: 100},
		Price: &Price{Money: 2000, Per: measure.Metre}, Remnant: &Remnant{Length: 1650, Price: 1500}}
	ranked := Compare([]Candidate{{Offer: offer, Found: Found{Taken: 1600, Bound: 1400}}}, Units{})
	require.True(t, ranked[0].FromRemnant)
	assert.InDelta(t, 50, ranked[0].LeftOver, 1e-9)
	assert.Equal(t, Money(1500), ranked[0].Cost)
	assert.Contains(t, Why(ranked, money(t, "EUR"), Units{})[0], "is a remnant")

	offer.Remnant.Length = 1390
	ranked = Compare([]Candidate{{Offer: offer, Found: Found{Taken: 1600, Bound: 1400}}}, Units{})
	assert.False(t, ranked[0].FromRemnant)
	assert.Contains(t, ranked[1].Refused, "cannot do: no way of laying takes less than 1.40 m")
}

// Shrinkage is lost of the shortest length that could be, not of the lay that
// was found, and safety proves nothing: 4.50 m of lay and 3 cm of ends take
// 4.77 m of a cloth that loses 5 %.
func TestNoProofAgainstARemnantThatCanDo(t *testing.T) {
	offer := Offer{Name: "End of bolt", Remnant: &Remnant{Length: 4830}, Cloth: cloth.Cloth{Width: 1400, Straighten: 30,
		Shrinkage: cloth.Shrinkage{Warp: 0.05}, Safety: cloth.Addition{Share: 0.05, Length: 100}}}
	refused := func(taken, bound float64) string {
		return Compare([]Candidate{{Offer: offer, Found: Found{Taken: taken, Bound: bound}}}, Units{})[0].Refused
	}
	assert.Contains(t, refused(4900, 4500), "it is not proven that none fits")
	assert.Empty(t, refused(4500, 4500), "the lay that was found fits on it")
	assert.Contains(t, refused(4900, 4600), "no way of laying takes less than 4.87 m")
}

// The ranking is by what is paid, and nothing that is refused stands above
// anything that is not.
func TestCompareRanks(t *testing.T) {
	euro := money(t, "EUR")
	rapid.Check(t, func(t *rapid.T) {
		var all []Candidate
		for range rapid.IntRange(1, 6).Draw(t, "offers") {
			c := Candidate{Offer: someOffer(t), Found: someFound(t)}
			if rapid.Bool().Draw(t, "remnant") {
				c.Offer.Remnant = &Remnant{Length: rapid.Float64Range(100, 20_000).Draw(t, "length"), Price: someMoney(t, "whole")}
			}
			all = append(all, c)
		}
		units := Units{Inches: rapid.Bool().Draw(t, "inches")}
		ranked := Compare(all, units)
		assert.NoError(t, ProvenShown(ranked, euro, units))
		for i := 1; i < len(ranked); i++ {
			a, b := ranked[i-1], ranked[i]
			assert.False(t, a.Refused != "" && b.Refused == "")
			if a.Refused == "" && b.Refused == "" {
				assert.LessOrEqual(t, a.Cost, b.Cost)
				assert.GreaterOrEqual(t, a.LeftOver, -remnantTolerance-1e-6)
			}
		}
	})
}

func TestUnitsOfTheClient(t *testing.T) {
	metric, imperial := cloth.Cloth{PurchaseStep: 100}, cloth.Cloth{PurchaseStep: eighth}
	assert.Equal(t, "1.90 m", Units{}.Bought(metric, 1900))
	assert.Equal(t, "1.95 m (2 1/8 yd)", Units{}.Bought(imperial, 17*eighth))
	assert.Equal(t, "2 1/8 yd", Units{Inches: true}.Bought(imperial, 17*eighth))
	assert.Equal(t, "2 1/8 yd (1.90 m)", Units{Inches: true}.Bought(metric, 1900))
}
