package purchase_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/purchase"
	"ellwand/pieces/measure"
)

// conversionChart is the extension-service fabric conversion chart (Rutgers
// Cooperative Extension, as reprinted at sewwithsarah.com, "Fabric conversion
// chart"): each row is one garment, in yards, in cloths of the widths below.
const conversionChart = `
1 3/4 | 1 1/2 | 1 1/2 | 1 3/8 | 1 1/4 | 1 1/8 | 1     | 7/8
2     | 1 3/4 | 1 3/4 | 1 5/8 | 1 1/2 | 1 3/8 | 1 1/4 | 1 1/8
2 1/4 | 2     | 2     | 1 3/4 | 1 5/8 | 1 1/2 | 1 3/8 | 1 1/4
2 1/2 | 2 1/4 | 2 1/4 | 2 1/8 | 1 3/4 | 1 3/4 | 1 5/8 | 1 1/2
2 7/8 | 2 1/2 | 2 1/2 | 2 1/4 | 2     | 1 7/8 | 1 3/4 | 1 5/8
3 1/8 | 2 3/4 | 2 3/4 | 2 1/2 | 2 1/4 | 2     | 1 7/8 | 1 3/4
3 3/8 | 3     | 2 7/8 | 2 3/4 | 2 3/8 | 2 1/4 | 2     | 1 7/8
3 3/4 | 3 1/4 | 3 1/8 | 2 7/8 | 2 5/8 | 2 3/8 | 2 1/4 | 2 1/8
4 1/4 | 3 1/2 | 3 3/8 | 3 1/8 | 2 3/4 | 2 5/8 | 2 3/8 | 2 1/4
4 1/2 | 3 3/4 | 3 5/8 | 3 3/8 | 3     | 2 3/4 | 2 5/8 | 2 1/2
4 3/4 | 4     | 3 7/8 | 3 5/8 | 3 1/4 | 2 7/8 | 2 3/4 | 2 5/8
5     | 4 1/4 | 4 1/8 | 3 7/8 | 3 3/8 | 3 1/8 | 2 7/8 | 2 3/4`

// chartWidths are the column heads in inches; of a range, its middle.
var chartWidths = []float64{35.5, 39, 41, 44.5, 50, 53, 59, 66}

func chart(t *testing.T) [][]float64 {
	t.Helper()
	var rows [][]float64
	for _, line := range strings.Split(strings.TrimSpace(conversionChart), "\n") {
		var row []float64
		for _, cell := range strings.Split(line, "|") {
			length, err := measure.Parse(strings.TrimSpace(cell), measure.Yard)
			require.NoError(t, err)
			row = append(row, float64(length))
		}
		require.Len(t, row, len(chartWidths))
		rows = append(rows, row)
	}
	return rows
}

// rowSteps is by how many steps to the neighbouring row of its column a
// length lies away from a row.
func rowSteps(rows [][]float64, row, column int, length float64) float64 {
	other := row + 1
	if length < rows[row][column] {
		other = row - 1
	}
	if other < 0 || other >= len(rows) {
		other = 2*row - other
	}
	return math.Abs(length-rows[row][column]) / math.Abs(rows[other][column]-rows[row][column])
}

func TestConvertByAreaFollowsTheConversionChart(t *testing.T) {
	rows := chart(t)
	const usual = 3 // 44-45 in
	within, all := 0, 0
	for from := range chartWidths {
		for to := range chartWidths {
			for row := range rows {
				if from == to {
					continue
				}
				got, err := purchase.ConvertByArea(rows[row][from], chartWidths[from]*25.4, chartWidths[to]*25.4)
				require.NoError(t, err)
				steps := rowSteps(rows, row, to, got)
				all++
				if steps <= 1+1e-9 {
					within++
				}
				// The chart gives its narrowest and widest cloth a little
				// more than the area in the long rows, for pieces that will
				// not lie side by side. Between the other columns equal area
				// is right to one row.
				if from == usual && to > 0 && to < len(chartWidths)-1 {
					assert.LessOrEqual(t, steps, 1+1e-9, "row %d, %g in to %g in", row+1, chartWidths[from], chartWidths[to])
				}
				assert.InEpsilon(t, rows[row][to], got, 0.16, "row %d, %g in to %g in", row+1, chartWidths[from], chartWidths[to])
			}
		}
	}
	t.Logf("%d of %d conversions lie within one row step", within, all)
	assert.Greater(t, within*100, all*80)
}

func TestConvertByAreaRefusesNonsense(t *testing.T) {
	_, err := purchase.ConvertByArea(-1, 900, 1400)
	assert.ErrorContains(t, err, "cannot be negative")
	_, err = purchase.ConvertByArea(1000, 0, 1400)
	assert.ErrorContains(t, err, "more than 0")
}
