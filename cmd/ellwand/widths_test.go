package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

func TestParseWidths(t *testing.T) {
	for _, tt := range []struct {
		text string
		unit measure.Unit
		want []float64
	}{
		{"115cm,140cm", measure.Centimetre, []float64{1150, 1400}},
		{"115,140,150", measure.Centimetre, []float64{1150, 1400, 1500}},
		{"115, 140 cm", measure.Centimetre, []float64{1150, 1400}},
		{"1,50 m", measure.Centimetre, []float64{1500}},
		{"1,15m,1,40m", measure.Centimetre, []float64{1150, 1400}},
		{"90,5 cm,140cm", measure.Centimetre, []float64{905, 1400}},
		{"45,60in", measure.Inch, []float64{45 * 25.4, 60 * 25.4}},
		{`45",60"`, measure.Inch, []float64{45 * 25.4, 60 * 25.4}},
		{"4'2\"", measure.Inch, []float64{50 * 25.4}},
	} {
		got, err := parseWidths([]string{tt.text}, tt.unit)
		require.NoError(t, err, tt.text)
		assert.InDeltaSlice(t, tt.want, got, 1e-9, tt.text)
	}
	_, err := parseWidths([]string{"90,75 cm"}, measure.Centimetre)
	assert.EqualError(t, err, `--widths: "90,75 cm" could be one width, 90.75 cm, or two; write a decimal point, or `+
		`each width with its unit`)
	_, err = parseWidths([]string{"58-60 in"}, measure.Inch)
	assert.ErrorContains(t, err, "is a range")
	_, err = parseWidths([]string{"1,50"}, measure.Centimetre)
	assert.EqualError(t, err, "--widths: 1,50 cm is no piece of cloth; were metres meant? Write 1.50m")
	_, err = parseWidths([]string{"1,50"}, measure.Metre)
	assert.NoError(t, err)
}

func TestWidthsByCloth(t *testing.T) {
	work := &job.Work{Unit: measure.Centimetre,
		Cloths: []job.Goods{{Cloth: cloth.Cloth{Name: "shell"}}, {Cloth: cloth.Cloth{Name: "lining"}}}}
	for _, tt := range []struct {
		texts []string
		want  []float64
	}{
		{nil, []float64{0, 0}},
		{[]string{"140cm"}, []float64{1400, 1400}},
		{[]string{"lining=1,40 m"}, []float64{0, 1400}},
		{[]string{"lining=140", "150"}, []float64{1500, 1400}},
	} {
		got, err := widthsByCloth(tt.texts, work)
		require.NoError(t, err)
		assert.Equal(t, tt.want, got)
	}
}
