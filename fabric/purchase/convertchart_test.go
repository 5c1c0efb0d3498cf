package purchase_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

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
				got := convert(t, purchase.ConversionRequest{Length: row[from], From: chartWidths[from] * 25.4, To: chartWidths[to] * 25.4})
				require.True(t, got.ByChart)
				first := i
				for first > 0 && rows[first-1][from] == row[from] {
					first--
				}
				assert.InDelta(t, rows[first][to], got.Length-got.Added, 1e-6, "row %d, %g in to %g in", i+1, chartWidths[from], chartWidths[to])
			}
		}
	}
}

func TestConvert(t *testing.T) {
	tests := []struct {
		name    string
		request purchase.ConversionRequest
		want    string // yards
		byChart bool
	}{
		{"a row of the chart", purchase.ConversionRequest{Length: 2.25 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1 3/4", true},
		{"between two rows the longer counts", purchase.ConversionRequest{Length: 2.3 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1 7/8", true},
		{"metric widths count as their neighbours", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400}, "1 7/8", true},
		{"one-way cloth takes the note's quarter", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400, OneWay: true}, "2 1/8", true},
		{"reasons do not add up", purchase.ConversionRequest{Length: 2.25 * yard, From: 1150, To: 1400, OneWay: true, SleevesInOne: true}, "2 1/8", true},
		{"a large difference", purchase.ConversionRequest{Length: 2.875 * yard, From: 900, To: 1500}, "2", true},
		{"no column for 122 cm", purchase.ConversionRequest{Length: 2 * yard, From: 1220, To: 1525}, "1 7/8", false},
		{"longer than the chart", purchase.ConversionRequest{Length: 10 * yard, From: 45 * 25.4, To: 60 * 25.4}, "8 5/8", false},
		{"shorter than the chart", purchase.ConversionRequest{Length: 0.5 * yard, From: 45 * 25.4, To: 60 * 25.4}, "1/2", false},
		{"the same width outside the chart", purchase.ConversionRequest{Length: 10 * yard, From: 1220, To: 1220}, "10", false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := convert(t, tt.request)
			assert.Equal(t, tt.want+" yd", measure.RoundUp(measure.Length(got.Length), yard/8).Format(measure.Yard))
			assert.Equal(t, tt.byChart, got.ByChart)
			assert.Equal(t, tt.byChart, got.Uncovered == "")
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

// A longer known length never converts to less, and one-way cloth never takes
// less than cloth without nap.
func TestConvertIsMonotone(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		request := purchase.ConversionRequest{
			Length: rapid.Float64Range(100, 8000).Draw(rt, "length"),
			From:   rapid.Float64Range(600, 2000).Draw(rt, "from"),
			To:     rapid.Float64Range(600, 2000).Draw(rt, "to"),
		}
		plain, err := purchase.Convert(request)
		require.NoError(rt, err)
		area, err := purchase.ConvertByArea(request.Length, request.From, request.To)
		require.NoError(rt, err)
		assert.GreaterOrEqual(rt, plain.Length, 0.7*area)
		request.OneWay = true
		napped, err := purchase.Convert(request)
		require.NoError(rt, err)
		assert.GreaterOrEqual(rt, napped.Length, plain.Length)
	})
}
