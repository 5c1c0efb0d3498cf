package job

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
	"ellwand/pieces/measure"
)

const pricedJob = `job: Bridesmaids
client: Pilar Quenaya
units: cm
currency: EUR
wearers:
  - {name: Imke, size: 12, table: women}
  - {name: Rosalind, size: 16, table: women, body: {waist_girth: 90}}
garments:
  - name: skirt
    skirt: {shape: a-line}
    notions: [{name: zip, price: 4.20}, {name: buttons, count: 2, price: 0.45}]
    making: {hours: 3:30}
  - name: sash
    for: [Imke]
    quantity: 2
    pieces: [{name: tie, width: 20, height: 150}]
    notions: [{name: buttons, price: 0.45}]
    making: {sum: 15}
cloths:
  - name: shell
    nap: one way
    safety: 5 %
    minimum: 50
    offers:
      - {name: Crepe, width: 150, price: 24.50, step: 10, shrinkage: {warp: 3 %}}
      - {name: Linen, width: 54 in, price: 18 per yd, step: 1/8 yd, nap: either way, remnant: 2.4 m, remnant_price: 30}
quote:
  number: 2026-014
  maker: [Atelier Quenaya, Weaver's Row 3]
  date: 2026-03-02
  valid_days: 30
  rate: 28
  notions: [{name: thread, count: 3, price: 2.60}]
  making: [{name: fittings, hours: 1.5, rate: 20}]
  margin: 10 %
  tax: {name: VAT, rate: 21 %, included: no}
  deposit: 40 %
  terms: [Two fittings are included., The deposit buys the cloth.]
`

// A rate of 0 is a rate: what is made for nothing.
func TestRateOfNothing(t *testing.T) {
	work, err := resolve(t, "job: Gift\nunits: cm\ncurrency: EUR\nquote: {rate: 0}\ngarments:\n"+
		"  - {name: bag, making: {hours: 2}, pieces: [{name: side, width: 30, height: 40}]}\ncloths: [{name: shell, "+
		"width: 90, price: 9}]\n")
	require.NoError(t, err)
	require.Len(t, work.Quote.Making, 1)
	assert.Equal(t, 120, work.Quote.Making[0].Minutes)
	assert.Zero(t, work.Quote.Making[0].PerHour)
}

func TestPricedJob(t *testing.T) {
	work, err := resolve(t, pricedJob)
	require.NoError(t, err)
	var names []string
	for _, made := range work.Garments {
		names = append(names, made.Name)
	}
	assert.Equal(t, []string{"skirt, Imke", "skirt, Rosalind", "sash, Imke"}, names)
	assert.Equal(t, "16", work.Garments[1].Pieces[0].Size)

	offers := work.Cloths[0].Offers
	require.Len(t, offers, 2)
	assert.Equal(t, quote.Offer{Name: "Crepe", Price: &quote.Price{Money: 2450, Per: measure.Metre},
		Cloth: cloth.Cloth{Name: "shell", Width: 1500, Selvedge: 10, Nap: cloth.OneWay, PurchaseStep: 100, Minimum: 500,
			HandLaying: cloth.UsualHandLaying, Safety: cloth.Addition{Share: 0.05}, Shrinkage: cloth.Shrinkage{Warp: 0.03}}},
		offers[0])
	assert.Equal(t, &quote.Price{Money: 1800, Per: measure.Yard}, offers[1].Price)
	assert.Equal(t, &quote.Remnant{Length: 2400, Price: 3000, Straighten: 20}, offers[1].Remnant)
	assert.Equal(t, cloth.EitherWay, offers[1].Cloth.Nap)
	assert.InDelta(t, 54*25.4, offers[1].Cloth.Width, 1e-9)
	assert.Equal(t, []float64{1500, 54 * 25.4}, work.Cloths[0].Widths)

	q := work.Quote
	assert.Equal(t, []quote.Notion{{Name: "zip", Count: 2, Price: 420}, {Name: "buttons", Count: 6, Price: 45},
		{Name: "thread", Count: 3, Price: 260}}, q.Notions)
	assert.Equal(t, []quote.Work{
		{Name: "skirt (2)", Minutes: 420, PerHour: 2800}, {Name: "sash (2)", Sum: 3000},
		{Name: "fittings", Minutes: 90, PerHour: 2000},
	}, q.Making)
	assert.Equal(t, &quote.Tax{Name: "VAT", Rate: 210_000}, q.Tax)
	assert.Equal(t, time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC), q.Date)
	assert.Equal(t, 30, work.ValidDays)
	assert.Equal(t, []string{"Two fittings are included.", "The deposit buys the cloth."}, q.Terms)
	assert.NoError(t, compiled(t).Validate(instanceOf(t, []byte(pricedJob))))
}

func TestPriceInEachWidth(t *testing.T) {
	work, err := resolve(t, `job: a
units: in
currency: USD
garments: [{name: g, pieces: [{name: p, width: 5, height: 6}]}]
cloths: [{name: shell, widths: [45, 60], price: 12.5, safety: 4 in}]
`)
	require.NoError(t, err)
	offers := work.Cloths[0].Offers
	require.Len(t, offers, 2)
	assert.Equal(t, "shell, 60 in", offers[1].Name)
	assert.Equal(t, &quote.Price{Money: 1250, Per: measure.Yard}, offers[1].Price)
	assert.InDelta(t, 101.6, offers[1].Cloth.Safety.Length, 1e-9)
}

func TestPricesRefuse(t *testing.T) {
	const start = "job: a\nunits: cm\ngarments: [{name: g, pieces: [{name: p, width: 5, height: 6}]"
	for _, c := range []struct{ job, fault string }{
		{start + "}]\ncloths: [{name: c, width: 90, price: 12}]\n",
			"is in no currency; add a line at the top level, such as: currency: EUR"},
		{start + "}]\ncurrency: gold\ncloths: [{name: c, width: 90, price: 12}]\n", "is not a currency"},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, width: 90, price: 12.345}]\n", "has 3 decimals, and EUR has 2"},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, width: 90, price: 12 per cm}]\n", "priced by the metre or the yard"},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, offers: [{name: a, width: 90}]}]\n", `offer "a" has no price`},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, offers: [{name: a, price: 9}]}]\n",
			`offer "a": the width is missing`},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, width: 90, offers: [{name: a, price: 9}, {name: A, price: 8}]}]\n",
			"two offers named"},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, width: 90, offers: [{name: a, remnant_price: 9}]}]\n",
			"without the length of the remnant"},
		{start + "}]\ncurrency: EUR\ncloths: [{name: c, width: 90, safety: lots}]\n", "the safety"},
		{start + ", for: [Imke]}]\ncloths: [{name: c, width: 90}]\n", "the job has no wearers"},
		{start + ", for: [Imka]}]\nwearers: [{name: Imke, size: 12, table: women}]\ncloths: [{name: c, width: 90}]\n",
			"did you mean Imke?"},
		{start + "}]\nsize: 12\ntable: women\nwearers: [{name: I, size: 12, table: women}]\ncloths: [{name: c, " +
			"width: 90}]\n", "remove the one at the top"},
		{start + "}]\nwearers: [{name: I, size: 13, table: women}]\ncloths: [{name: c, width: 90}]\n", "x.yaml:4: the table"},
		{start + "}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: {tax: {name: VAT}}\n", "the tax has no rate"},
		{start + "}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: {deposit: 140 %}\n",
			"cannot be more than the whole"},
		{start + "}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: {date: 2.3.2026}\n", "write year-month-day"},
		{start + "}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: {valid_until: 2026-05-01, valid_days: 3}\n",
			"keep one of them"},
		{start + ", making: {hours: a day}}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: {rate: 20}\n",
			"write them such as 6.5 or 6:30"},
		{start + ", making: {hours: 2}}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\n",
			"the rate of the making is missing"},
		{start + ", making: {hours: 2, sum: 3}}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\n", "both hours and a sum"},
		{start + ", making: {}}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\n", "neither hours nor a sum"},
		{start + ", notions: [{name: zip, price: -1}]}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\nquote: " +
			"{rate: 20}\n", "is not an amount"},
		{start + ", notions: [{name: zip, count: 0, price: 1}]}]\ncloths: [{name: c, width: 90}]\ncurrency: EUR\n",
			"whole number from 1"},
	} {
		_, err := resolve(t, c.job)
		assert.ErrorContains(t, err, c.fault)
	}
}
