package quote

import (
	"bytes"
	"encoding/csv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/pieces/paper"
)

func cellOf(width float64, nap cloth.Nap, taken float64) Cell {
	offer := Offer{Cloth: cloth.Cloth{Name: "shell", Width: width, Nap: nap, PurchaseStep: 100}}
	return Cell{Offer: offer, Amount: AmountOf(offer, Found{Lay: "open", Taken: taken, Bound: 700, Density: 0.8})}
}

func sampleTable() Table {
	plain := TableRow{Name: "size 12 | skirt",
		Cells: []Cell{cellOf(1150, 0, 1310), cellOf(1400, 0, 1320),
			{Offer: cellOf(1500, 0, 1).Offer, Impossible: "too narrow"}}}
	napped := TableRow{Name: plain.Name, Nap: cloth.OneWay,
		Cells: []Cell{cellOf(1150, 1, 1250), cellOf(1400, 1, 1330), cellOf(1500, 1, 1100)}}
	return Table{Title: "Harbour skirt", Cloths: []ClothTable{{Cloth: "shell", Widths: []float64{1150, 1400, 1500},
		Rows: []TableRow{plain, napped}}}}
}

// A cell takes the larger amount of an easier one, and says so; never a smaller one.
func TestRaiseTo(t *testing.T) {
	table := sampleTable()
	cells := table.Cloths[0].Rows[0].Cells
	cells[0].RaiseTo(cells[1])
	assert.False(t, cells[0].IsRaised, "1.31 and 1.32 m are bought as 1.40 m")
	cells[1].Amount = AmountOf(cells[1].Offer, Found{Lay: "open", Taken: 1480, Bound: 900, Density: 0.8})
	cells[0].RaiseTo(cells[1])
	assert.True(t, cells[0].IsRaised)
	assert.InDelta(t, 1500, cells[0].Amount.Buy, 1e-9)
	assert.InDelta(t, 700, cells[0].Amount.Bound, 1e-9, "what is proven of this cloth")
	require.NoError(t, table.Proven())
	assert.Contains(t, table.Cloths[0].Raised(), "for which more was found")
	cells[0].RaiseTo(cells[2])
	assert.InDelta(t, 1500, cells[0].Amount.Buy, 1e-9, "nothing is possible on that one")
	cells[1].RaiseTo(cellOf(1400, 0, 900))
	assert.InDelta(t, 1500, cells[1].Amount.Buy, 1e-9)
	assert.False(t, cells[1].IsRaised)
}

func TestTableAsCSV(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, sampleTable().WriteCSV(&out))
	rows, err := csv.NewReader(&out).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 7)
	// 1.31 m is bought as 1.40 m; in eighths of a yard, 114.3 mm, it takes 12:
	// 1 1/2 yd.
	assert.Equal(t, []string{"shell", "size 12 | skirt", "without nap", "1150", "1.4", "1.5", "1310", "700", "open", "0",
		"0", "0", "0", "90", "0"}, rows[1])
	assert.Equal(t, []string{"shell", "size 12 | skirt", "without nap", "1500", "", "", "", "", "not possible", "", "",
		"", "", "", ""}, rows[3])
}

// 1.33 m is 90 % more than the 0.70 m that are proven, and 1.31 m is 9 cm short of
// the 1.40 m that are bought.
func TestTableAsMarkdown(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, sampleTable().WriteMarkdown(&out))
	assert.Equal(t, `# Harbour skirt

## shell

|  | nap | 115 cm | 140 cm | 150 cm |
|---|---|---|---|---|
| size 12 \| skirt | without nap | 1.40 m (1 1/2 yd) | 1.40 m (1 1/2 yd) | – |
| size 12 \| skirt | with nap | 1.30 m (1 3/8 yd) | 1.40 m (1 1/2 yd) | 1.10 m (1 1/4 yd) |

The amounts rest on the lays that were found, at most 90 % longer than what is proven to be needed, rounding up to 9 cm.
`, out.String())
}

func TestTableAsPDF(t *testing.T) {
	table := sampleTable()
	for range 30 {
		table.Cloths[0].Rows = append(table.Cloths[0].Rows, table.Cloths[0].Rows[:2]...)
	}
	var out, again bytes.Buffer
	require.NoError(t, table.WritePDF(&out, paper.A4))
	require.NoError(t, table.WritePDF(&again, paper.A4))
	assert.True(t, bytes.Equal(out.Bytes(), again.Bytes()), "the same bytes from run to run")
	words, info := read(t, out.Bytes())
	assert.Regexp(t, `Pages: +3\n`, info)
	assert.Contains(t, words, "Shell 115 cm 140 cm 150 cm")
	assert.Contains(t, words, "without nap 1.40 m 1.40 m –")

	wide := &table.Cloths[0]
	wide.Widths, wide.Rows = nil, []TableRow{{Name: "size 12"}}
	for i := range 10 {
		if i == 9 {
			require.NoError(t, table.WritePDF(&out, paper.A4), "nine at the most")
		}
		wide.Widths = append(wide.Widths, 1000+float64(i))
		wide.Rows[0].Cells = append(wide.Rows[0].Cells, cellOf(1000+float64(i), 0, 1310))
	}
	assert.ErrorContains(t, table.WritePDF(&out, paper.A4), "too many widths")
}

// What is not measured is said once below a table, by the most of any amount.
func TestNotMeasured(t *testing.T) {
	table := sampleTable()
	cells := table.Cloths[0].Rows[0].Cells
	assert.Empty(t, table.Cloths[0].NotMeasured(Units{}))
	buy := cells[0].Amount.Buy
	cells[0].Range = Range{Low: buy - 100, High: buy}
	cells[1].Range = Range{Low: cells[1].Amount.Buy - 50, High: cells[1].Amount.Buy + 200}
	assert.Equal(t, "For what is not measured they may prove to be up to 10 cm less, or 20 cm more; the estimate says "+
		"what would narrow that.", table.Cloths[0].NotMeasured(Units{}))
}
