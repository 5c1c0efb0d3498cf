package purchase_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/purchase"
	"ellwand/pieces/measure"
)

const yard = 914.4

func convert(t *testing.T, request purchase.ConversionRequest) purchase.Conversion {
	t.Helper()
	out, err := purchase.Convert(request)
	require.NoError(t, err)
	return out
}

// Every cell of the chart, as typed for the tests from the same publication,
// comes back.
func TestConvertReadsTheChart(t *testing.T) {
	rows := chart(t)
	for from := range chartWidths {
		for to := range chartWidths {
			for i, row := range rows {
				got := convert(t, purchase.ConversionRequest{Length: row[from], From: chartWidths[from] * 25.4,
					To: chartWidths[to] * 25.4})
				if from != to {
					require.Equal(t, purchase.ByChart, got.Basis)
				}
				assert.InDelta(t, rows[i][to], got.Length-got.Added, 1e-6, "row %d, %g in to %g in", i+1, chartWidths[from],
					chartWidths[to])
			}
		}
	}
}

func TestConvert(t *testing.T) {
	tests := []struct {
		name    string
		request purchase.ConversionRequest
		want    string // yards
		basis   purchase.ConversionBasis
	}{
		{"a row of the chart", purchase.ConversionRequest{Length: 2.25 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1 3/4",
			purchase.ByChart},
		{"between two rows by the share of the way",
			purchase.ConversionRequest{Length: 2.3 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1 7/8", purchase.ByChart},
		{"metric widths count as their neighbours", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400},
			"1 7/8", purchase.ByChart},
		{"one-way cloth takes the note's quarter",
			purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400, OneWay: true}, "2 1/8", purchase.ByChart},
		{"reasons do not add up", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400, OneWay: true,
			SleevesInOne: true}, "2 1/8", purchase.ByChart},
		{"a large difference", purchase.ConversionRequest{Length: 2.875 * yard, From: 900, To: 1500}, "2", purchase.ByChart},
		{"between the columns", purchase.ConversionRequest{Length: 2 * yard, From: 1220, To: 1525}, "1 3/4",
			purchase.ByChart},
		{"wider than the chart", purchase.ConversionRequest{Length: 2 * yard, From: 66 * 25.4, To: 84 * 25.4}, "1 7/8",
			purchase.ByArea},
		{"longer than the chart", purchase.ConversionRequest{Length: 10 * yard, From: 45 * 25.4, To: 60 * 25.4}, "8 1/4",
			purchase.ByArea},
		{"shorter than the chart", purchase.ConversionRequest{Length: 0.5 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1/2",
			purchase.ByArea},
		{"the same width outside the chart", purchase.ConversionRequest{Length: 10 * yard, From: 1220, To: 1220}, "10",
			purchase.SameWidth},
		{"the same width in the chart", purchase.ConversionRequest{Length: 2.3 * yard, From: 1150, To: 1150,
			SleevesInOne: true}, "2 3/8", purchase.SameWidth},
		{"the same width with nap", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1150, OneWay: true},
			"2 1/2", purchase.SameWidth},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := convert(t, tt.request)
			assert.Equal(t, tt.want+" yd", measure.RoundUp(measure.Length(got.Length), yard/8).Format(measure.Yard))
			assert.Equal(t, tt.basis, got.Basis)
			assert.Equal(t, tt.basis == purchase.ByArea, got.Uncovered != "")
		})
	}
}

func TestConvertRefuses(t *testing.T) {
	for want, request := range map[string]purchase.ConversionRequest{
		"cannot be negative": {Length: -1, From: 900, To: 1400},
		"more than 0":        {Length: 1000, To: 1400},
		"known length is 0":  {From: 900, To: 1400},
	} {
		_, err := purchase.Convert(request)
		assert.ErrorContains(t, err, want)
	}
}

// The margin by area covers the chart: wherever both can be had, the length
// by area is not below the chart's.
func TestAreaMarginCoversTheChart(t *testing.T) {
	rows := chart(t)
	largest := 0.0
	for from := range chartWidths {
		for to := range chartWidths {
			for i := range rows {
				area, err := purchase.ConvertByArea(rows[i][from], chartWidths[from], chartWidths[to])
				require.NoError(t, err)
				largest = max(largest, rows[i][to]/area-1)
			}
		}
	}
	assert.InDelta(t, largest, purchase.AreaMargin, 0.015)
	assert.GreaterOrEqual(t, purchase.AreaMargin, largest)
}
