package purchase

import "math"

// chartColumn is a column of the conversion chart: the widths it stands for.
type chartColumn struct {
	head      string
	low, high float64 // mm
}

// chartColumns are the heads of the chart, narrow to wide
// [source.ConversionChart].
var chartColumns = []chartColumn{
	{"35-36 in", 35 * inch, 36 * inch}, {"39 in", 39 * inch, 39 * inch}, {"41 in", 41 * inch, 41 * inch},
	{"44-45 in", 44 * inch, 45 * inch}, {"50 in", 50 * inch, 50 * inch}, {"52-54 in", 52 * inch, 54 * inch},
	{"58-60 in", 58 * inch, 60 * inch}, {"66 in", 66 * inch, 66 * inch},
}

// chartEighths is the extension-service fabric conversion chart, in eighths
// of a yard; each row is the same garment in the widths of chartColumns (as
// reprinted at sewwithsarah.com, "Fabric conversion chart")
// [source.ConversionChart].
var chartEighths = [][]int{
	{14, 12, 12, 11, 10, 9, 8, 7},
	{16, 14, 14, 13, 12, 11, 10, 9},
	{18, 16, 16, 14, 13, 12, 11, 10},
	{20, 18, 18, 17, 14, 14, 13, 12},
	{23, 20, 20, 18, 16, 15, 14, 13},
	{25, 22, 22, 20, 18, 16, 15, 14},
	{27, 24, 23, 22, 19, 18, 16, 15},
	{30, 26, 25, 23, 21, 19, 18, 17},
	{34, 28, 27, 25, 22, 21, 19, 18},
	{36, 30, 29, 27, 24, 22, 21, 20},
	{38, 32, 31, 29, 26, 23, 22, 21},
	{40, 34, 33, 31, 27, 25, 23, 22},
}

// inch, and the eighth of a yard, mm [source.YardAndPound].
const (
	inch   = 25.4
	eighth = 914.4 / 8
)

// noise is what arithmetic may add to a length, mm [source.OwnChoice].
const noise = 1e-6

// narrowest and widest cloth of the chart, mm.
func narrowest() float64 { return chartColumns[0].low }
func widest() float64    { return chartColumns[len(chartColumns)-1].high }

// column is a row of the chart, from 0, at a width within the chart: between
// two columns on the straight line from one to the other. As equal area falls
// ever less steeply, that line lies above it. mm.
func column(row int, width float64) float64 {
	cells := chartEighths[row]
	for i, c := range chartColumns {
		switch {
		case width > c.high:
			continue
		case width >= c.low || i == 0:
			return float64(float64(cells[i]) * eighth)
		}
		before := chartColumns[i-1].high
		share := (width - before) / (c.low - before)
		return float64((float64(cells[i-1]) + float64(share*float64(cells[i]-cells[i-1]))) * eighth)
	}
	return float64(float64(cells[len(cells)-1]) * eighth)
}

// throughChart takes a length known to be enough in one width of the chart to
// another: from the known width and from column to column on straight lines. mm.
func throughChart(length, from, to float64) float64 {
	low, high := narrowest(), widest() // next to the width, below and above
	for _, edge := range edges(from) {
		if edge <= to {
			low = math.Max(low, edge)
		}
		if edge >= to {
			high = math.Min(high, edge)
		}
	}
	narrow := atEdge(length, from, low)
	if low == high {
		return narrow
	}
	return narrow + float64((to-low)/(high-low)*(atEdge(length, from, high)-narrow))
}

// edges are the known width and where the columns begin and end, mm.
func edges(from float64) []float64 {
	out := []float64{from}
	for _, c := range chartColumns {
		out = append(out, c.low, c.high)
	}
	return out
}

// atEdge takes a length known to be enough to where a column begins or ends.
// Between two rows it goes by the share of the way, below the first and above
// the last by area with its margin: so no step of the length makes a jump, and
// a longer one never comes to less. mm.
func atEdge(length, from, edge float64) float64 {
	last := len(chartEighths) - 1
	first, most := column(0, from), column(last, from)
	switch {
	case from == edge:
		return length
	case length < first:
		return math.Min(column(0, edge), length*math.Max(column(0, edge)/first, perLength(from, edge)))
	case length >= most:
		return column(last, edge) + float64((length-most)*perLength(from, edge))
	}
	row, share := rowOf(length, from)
	return column(row, edge) + float64(share*(column(row+1, edge)-column(row, edge)))
}

// rowOf is the row, from 0, at or below a length in a width of the chart, and
// the share of the way to the next.
func rowOf(length, width float64) (row int, share float64) {
	for row < len(chartEighths)-2 && column(row+1, width) <= length+noise {
		row++
	}
	low, high := column(row, width), column(row+1, width)
	return row, (length - low) / (high - low)
}

// perLength is what each mm of one width takes of another: equal area with
// AreaMargin. It is never more than itself for a wider cloth, and grows from
// there without a jump.
func perLength(from, to float64) float64 {
	ratio := from / to
	if ratio <= 1 {
		return math.Min(1, ratio*(1+AreaMargin))
	}
	return ratio * math.Min(ratio, 1+AreaMargin)
}

// AreaMargin is the most that is added to a length converted by area. Where the
// chart covers, its lengths exceed equal area by 14 % at the most
// [source.OwnChoice].
const AreaMargin = 0.15
