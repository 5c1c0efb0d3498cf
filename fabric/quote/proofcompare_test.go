package quote

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/pieces/measure"
)

// spoiledRanked are offers with every reason that a dearer length can have.
func spoiledRanked() []Option {
	at := func(name string, price Money, c cloth.Cloth) Offer {
		return Offer{Name: name, Cloth: c, Price: &Price{Money: price, Per: measure.Metre}}
	}
	short := at("End of bolt", 0, cloth.Cloth{Width: 1400, PurchaseStep: 100})
	short.Price, short.Remnant = nil, &Remnant{Length: 1500, Price: 1500}
	return Compare([]Candidate{
		{Offer: at("Narrow", 1500, cloth.Cloth{Width: 1150, PurchaseStep: 500, Minimum: 4500,
			Shrinkage: cloth.Shrinkage{Warp: 0.05}}),
			Found: Found{Lay: "open", Taken: 2960, Bound: 2500}},
		{Offer: at("Wide", 1900, cloth.Cloth{Width: 1500, PurchaseStep: 100}),
			Found: Found{Lay: "open", Taken: 2040, Bound: 1900}},
		{Offer: short, Found: Found{Lay: "open", Taken: 2200, Bound: 1400}},
	}, Units{})
}

// Each figure of the sentences that compare is read again, and refused when it alone is
// wrong, or left out.
func TestWrongSentencesOfAComparisonAreRefused(t *testing.T) {
	ranked, euro := spoiledRanked(), money(t, "EUR")
	require.NoError(t, ProvenShown(ranked, euro, Units{}))
	good := Why(ranked, euro, Units{})
	require.Len(t, good, 1)
	for _, change := range [][2]string{
		{"4.00", "4.02"}, {"saves 27.60", "saves 27.61"}, {"35 cm wider", "34 cm wider"}, {"0.92 m less", "0.94 m less"},
		{"shrinks by 15.6 cm", "shrinks by 15.8 cm"}, {"no less than 4.50 m", "no less than 4.40 m"},
		{"32.4 cm less are lost", "32.6 cm less are lost"}, {", the pieces take 0.92 m less", ""},
		{"than Narrow", "than None"},
		{"lost to rounding", "lost to rounding, less of it has to be bought"},
		{"saves 27.60\u00a0EUR", "costs the same"},
	} {
		require.Contains(t, good[0], change[0])
		said := strings.Replace(good[0], change[0], change[1], 1)
		assert.Error(t, whyReadAgain([]string{said}, ranked, euro, Units{}), said)
	}
	assert.Error(t, whyReadAgain(nil, ranked, euro, Units{}), "nothing is said")
	assert.Error(t, whyReadAgain(append(good, good...), ranked, euro, Units{}), "it is said twice")
	ranked[1].Cost = 0
	assert.ErrorIs(t, ProvenShown(ranked, euro, Units{}), plan.ErrInternal, "another costs less")
}

// So is each figure of the table, and of a remnant that is refused.
func TestWrongCellsOfAComparisonAreRefused(t *testing.T) {
	ranked, euro := spoiledRanked(), money(t, "EUR")
	good := ranked[0].Shown(euro, Units{})
	for name, spoil := range map[string]func(*Shown){
		"width":     func(s *Shown) { s.Width = "149.9 cm" },
		"price":     func(s *Shown) { s.Price = "18.90 a metre" },
		"bought":    func(s *Shown) { s.Bought = "2.09 m" },
		"cost":      func(s *Shown) { s.Cost = "39.80" },
		"left over": func(s *Shown) { s.LeftOver = "6.1 cm" },
	} {
		said := good
		spoil(&said)
		assert.Error(t, ranked[0].readAgain(said, euro, Units{}), name)
	}
	remnant := ranked[2]
	require.NoError(t, remnant.refusalReadAgain(Units{}))
	remnant.LeftOver += 20
	assert.Error(t, remnant.refusalReadAgain(Units{}))
	remnant.Refused = "too short"
	assert.Error(t, remnant.refusalReadAgain(Units{}))
}
