package app

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/linework"
)

const twoCloths = `job: cushion
units: cm
currency: EUR
garments:
  - name: cushion
    pieces: [{name: front, width: 40, height: 40}, {name: back, width: 40, height: 40, cloth: lining}]
cloths:
  - {name: shell, widths: [140, 90], price: 10}
  - {name: lining, width: 140}
`

func resolved(t *testing.T, text string) *job.Work {
	t.Helper()
	file, err := job.Parse("x.yaml", []byte(text))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	return work
}

// Whoever asks calls the arguments by names of their own, and what the job
// lacks is said at the line of its cloth.
func TestRefusedCallsArgumentsAsAsked(t *testing.T) {
	work := resolved(t, twoCloths)
	_, several := PiecesOfCloth(work, RemnantQuestion{Length: 1000})
	_, unknown := PiecesOfCloth(work, RemnantQuestion{Cloth: "silk"})
	_, none := PiecesOfCloth(work, RemnantQuestion{})
	_, lengthless := PiecesOfCloth(work, RemnantQuestion{Cloth: "lining"})
	_, wide := PiecesOfCloth(work, RemnantQuestion{Cloth: "shell", Length: 1000})
	_, unpriced := Priced(work, "lining")
	_, unquoted := quotedCloths(work, nil)
	_, offer := quotedCloths(resolved(t, priceTheLining), []string{"stall"})
	_, widths := OneWidthEach(work, []float64{1, 2, 3})
	for want, err := range map[string]error{
		"the job has 2 cloths; say which one the piece is of: <cloth> shell or " +
			"<cloth> lining": several,
		`<cloth> "silk": the job has no such cloth; it has shell and lining`: unknown,
		"x.yaml:8: no cloth has a length; add length: to the cloth that is there already, or ask with <cloth> shell " +
			"<length> 1.6m": none,
		`x.yaml:9: the length of cloth "lining" is not known; add length: to it, or ask with <length> 1.6m`: lengthless,
		`x.yaml:8: cloth "shell" has 2 widths; say which one the piece has: <width> 140cm`:                  wide,
		"x.yaml:9: no cloth has a price, so there is nothing to reckon; give the job a currency, and the cloth a " +
			"price or offers": unpriced,
		`x.yaml:9: cloth "lining" has no price; add currency: at the top level, and to the cloth a price such as: price: ` +
			`18.50`: unquoted,
		`<offer> "stall": the job has no such offer; it has: shell, 140 cm; shell, 90 cm; lining`: offer,
		"<widths> names 3 widths, but the job has 2 cloths; give one width for all, or " +
			"one for each": widths,
		"x.pdf: 2 lines run off the sheets, and how these go together was not found; say how they lie, such as " +
			`<rows> "1 2 3/4 5 6" (row by row), and how far they lie over each other, such as <overlap> 10mm`: notDrawn("x.pdf",
			&linework.Fault{Of: linework.SheetsUnjoined, Number: 2}),
		"x.pdf: how far the sheets lie over each other was not found, since the lines fit by several; measure it, or read " +
			"it in the instructions, and say it, such as <overlap> 10mm (sheets: 1 2/3 4)": notDrawn("x.pdf",
			&linework.Fault{Of: linework.OverlapUnsure, Text: "1 2/3 4"}),
	} {
		var refused *Refused
		require.True(t, errors.As(err, &refused), "%v", err)
		assert.Equal(t, want, refused.Calling(func(a Argument) string { return "<" + string(a) + ">" }))
	}
}

const priceTheLining = `job: cushion
units: cm
currency: EUR
garments:
  - name: cushion
    pieces: [{name: front, width: 40, height: 40}, {name: back, width: 40, height: 40, cloth: lining}]
cloths:
  - {name: shell, widths: [140, 90], price: 10}
  - {name: lining, width: 140, price: 5}
`

// Each cloth has one width: its first, the one for all, or its own of as many.
func TestOneWidthEach(t *testing.T) {
	work := resolved(t, twoCloths)
	for _, tt := range []struct{ asked, want []float64 }{
		{nil, []float64{1400, 1400}}, {[]float64{1150}, []float64{1150, 1150}}, {[]float64{900, 1500}, []float64{900, 1500}},
	} {
		cloths, err := OneWidthEach(work, tt.asked)
		require.NoError(t, err)
		var got []float64
		for _, c := range cloths {
			got = append(got, c.Width)
		}
		assert.Equal(t, tt.want, got)
	}
	all, err := Cloths(work, nil)
	require.NoError(t, err)
	assert.Len(t, all, 3)
	_, err = Cloths(work, []float64{15})
	assert.ErrorContains(t, err, `cloth "shell": a width of 1.5 cm leaves nothing between selvedges of 1 cm`)
}
