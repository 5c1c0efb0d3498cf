package purchase

import (
	"fmt"
	"math"

	"ellwand/pieces/measure"
)

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

const (
	// inch, and the eighth of a yard, mm [source.YardAndPound].
	inch   = 25.4
	eighth = 914.4 / 8 // [source.YardAndPound]

	// chartNote is what the note under the chart adds for a large difference
	// in width, one-directional cloth, or sleeves cut in one with the body
	// [source.ConversionChart].
	chartNote = 914.4 / 4

	// nearColumn, mm, is how far a width may lie from a column and still
	// count as it: 115 cm is sold as 45 in, 140 cm as 54 in (pattern
	// envelopes print them side by side: [source.CommonPractice]).
	nearColumn = 1.25 * inch

	// largeDifference is the ratio of two widths from which on their
	// difference is large. The chart leaves it to the reader; this one sets
	// apart the ends of the chart, 35-36 in from 52-54 in and wider
	// [source.OwnChoice].
	largeDifference = 1.45

	// AreaMargin is added to a length converted by area. Where the chart
	// covers, its lengths exceed equal area by 14 % at the most
	// [source.OwnChoice].
	AreaMargin = 0.15
)

// ConversionRequest asks what a known amount of cloth comes to in another
// width.
type ConversionRequest struct {
	// Length known to be enough, and the widths, from edge to edge, of that
	// cloth and of the one to buy. mm, positive.
	Length, From, To float64
	// OneWay says that the cloth to buy is one-way and the known amount was
	// not.
	OneWay bool
	// SleevesInOne says that the garment's sleeves are cut in one with its
	// body.
	SleevesInOne bool
}

// Conversion is a length of cloth of another width, and what it rests on.
type Conversion struct {
	// Length in mm, not yet rounded to the step of a shop.
	Length float64
	// ByChart says that the chart covers both widths and the
	// length; otherwise the length is that of equal area with AreaMargin.
	ByChart bool
	// FromColumn, ToColumn and Row (from 1) are where it stands in the chart;
	// Tabled is the chart's length in the column of the known cloth, mm.
	FromColumn, ToColumn string
	Row                  int
	Tabled               float64
	// Uncovered says why the chart does not cover. Empty when it does.
	Uncovered string
	// Added is what the chart's note adds, mm, included in Length; Why names
	// the reasons.
	Added float64
	Why   []string
}

// FromChart says that something of it was read from the chart or its note.
func (c Conversion) FromChart() bool { return c.ByChart || c.Added > 0 }

// Convert converts a known amount of cloth to another width: by the
// conversion chart where that covers, otherwise by area with a margin. In the
// chart a length between two rows counts as the longer. It is what can be said
// without the pieces; a lay of them says it better.
func Convert(request ConversionRequest) (Conversion, error) {
	byArea, err := ConvertByArea(request.Length, request.From, request.To)
	if err != nil {
		return Conversion{}, err
	}
	if request.Length == 0 {
		return Conversion{}, fmt.Errorf("the known length is 0; give what is known to be enough, such as 2 1/4 yd")
	}
	out := byTheChart(request)
	if !out.ByChart {
		out.Length = byArea
		if request.From != request.To {
			out.Length *= 1 + AreaMargin
		}
	}
	out.Why = request.reasons()
	if len(out.Why) > 0 {
		out.Added = chartNote
	}
	out.Length += out.Added
	return out, nil
}

// reasons to add what the note under the chart says; any number of them adds
// it once, as the note has it.
func (r ConversionRequest) reasons() []string {
	var out []string
	if math.Max(r.From, r.To)/math.Min(r.From, r.To) >= largeDifference {
		out = append(out, "a large difference in width")
	}
	if r.OneWay {
		out = append(out, "one-way cloth")
	}
	if r.SleevesInOne {
		out = append(out, "sleeves cut in one with the body")
	}
	return out
}

func byTheChart(request ConversionRequest) Conversion {
	from, to := columnOf(request.From), columnOf(request.To)
	for _, side := range []struct {
		column int
		width  float64
	}{{from, request.From}, {to, request.To}} {
		if side.column < 0 {
			return Conversion{Uncovered: fmt.Sprintf("the chart has no column for a width of %s", centimetres(side.width))}
		}
	}
	first, last := chartEighths[0][from], chartEighths[len(chartEighths)-1][from]
	if request.Length < float64(first-1)*eighth || request.Length > float64(last)*eighth+noise {
		return Conversion{Uncovered: fmt.Sprintf("in %s cloth the chart runs from %s to %s", chartColumns[from].head,
			measure.Length(float64(first)*eighth).Format(measure.Yard), measure.Length(float64(last)*eighth).Format(measure.Yard))}
	}
	row := 0
	for float64(chartEighths[row][from])*eighth < request.Length-noise {
		row++
	}
	return Conversion{
		Length: float64(chartEighths[row][to]) * eighth, ByChart: true,
		FromColumn: chartColumns[from].head, ToColumn: chartColumns[to].head,
		Row: row + 1, Tabled: float64(chartEighths[row][from]) * eighth,
	}
}

// noise is what arithmetic may add to a length, mm [source.OwnChoice].
const noise = 1e-6

// columnOf finds the column nearest to a width, or -1 when none is near.
func columnOf(width float64) int {
	best, least := -1, nearColumn
	for i, column := range chartColumns {
		away := math.Max(0, math.Max(column.low-width, width-column.high))
		if away <= least+noise && (best < 0 || away < least) {
			best, least = i, away
		}
	}
	return best
}
