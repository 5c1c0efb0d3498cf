package purchase

import (
	"fmt"
	"math"

	"ellwand/pieces/measure"
)

const (
	// chartNote is what the note under the chart adds for a large difference
	// in width, one-directional cloth, or sleeves cut in one with the body
	// [source.ConversionChart].
	chartNote = 914.4 / 4

	// someDifference and largeDifference are the ratios of two widths between
	// which the note grows from nothing to the whole. The chart leaves it to the
	// reader what is large; these set apart its ends, 35-36 in from 52-54 in and
	// wider, and leave 44 to 60 in alone [source.OwnChoice].
	someDifference  = 1.4
	largeDifference = 1.5 // [source.OwnChoice]

	// sleevesDifference is the ratio at which sleeves cut in one with the body
	// take the whole of the note: that of 60 in to 48 in [source.OwnChoice].
	sleevesDifference = 1.25
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
	// Basis says what the length was found by.
	Basis ConversionBasis
	// FromColumn and ToColumn are where it stands in the chart, Row (from 1) the
	// row that the known amount has reached there; Between says that it lies
	// between this and the next. Set where the Basis is the chart.
	FromColumn, ToColumn string
	Row                  int
	Between              bool
	// Uncovered says why the chart does not cover. Empty when it does.
	Uncovered string
	// Added is what the chart's note adds, mm, included in Length; Why names
	// the reasons.
	Added float64
	Why   []string
}

// ConversionBasis is what a conversion was found by.
type ConversionBasis int

const (
	// SameWidth: what is enough is enough.
	SameWidth ConversionBasis = iota
	// ByChart: the chart covers both widths and the length.
	ByChart
	// ByArea: what lies outside the chart goes by equal area with a margin.
	ByArea
)

// FromChart says that something of it was read from the chart or its note.
func (c Conversion) FromChart() bool { return c.Basis == ByChart || c.Added > noise }

// Convert converts a known amount of cloth to another width: by the
// conversion chart where that covers, otherwise by area with a margin. It is
// what can be said without the pieces; a lay of them says it better. Nap apart,
//
//  1. the same width takes the same amount, and a wider one never more: what
//     is enough on a narrow cloth can be cut from a wide one;
//  2. more is never needed in a wider cloth than in a narrower one;
//  3. a longer known length never comes to less, and a little more of it
//     never to much more.
func Convert(request ConversionRequest) (Conversion, error) {
	if _, err := ConvertByArea(request.Length, request.From, request.To); err != nil {
		return Conversion{}, err
	}
	if request.Length == 0 {
		return Conversion{}, fmt.Errorf("the known length is 0; give what is known to be enough, such as 2 1/4 yd")
	}
	out := request.basis()
	plain := request.plain(request.To)
	out.Length = request.least()
	out.Added = out.Length - plain
	if out.Added > noise {
		out.Why = request.reasons()
	} else {
		out.Length, out.Added = plain, 0
	}
	return out, nil
}

// Purchase rounds the length up to the step of a shop, mm, but not above an
// amount that is known to be enough.
func (r ConversionRequest) Purchase(found Conversion, step float64) float64 {
	buy := float64(measure.RoundUp(measure.Length(found.Length), measure.Length(step)))
	if r.To >= r.From && !r.OneWay {
		return math.Min(buy, r.Length)
	}
	return buy
}

// plain is the known amount in another width, without the note: by the chart
// as far as the way from one width to the other lies in it, by area before and
// after. mm.
func (r ConversionRequest) plain(width float64) float64 {
	from, to := inChart(r.From), inChart(width)
	if from == to { // the chart has no part in it
		return float64(r.Length * perLength(r.From, width))
	}
	length := throughChart(r.Length*perLength(r.From, from), from, to)
	return float64(length * perLength(to, width))
}

func inChart(width float64) float64 { return math.Min(math.Max(width, narrowest()), widest()) }

// note is what the note under the chart adds in a width, mm. Any number of
// reasons adds it once, as the note has it. For sleeves cut in one with the
// body it grows from nothing, since in the known width they are in the amount.
func (r ConversionRequest) note(width float64) float64 {
	if r.OneWay {
		return chartNote
	}
	lower, upper := someDifference, largeDifference
	if r.SleevesInOne {
		lower, upper = 1, sleevesDifference
	}
	ratio := r.difference(width)
	return float64(chartNote * math.Min(1, math.Max(0, (ratio-lower)/(upper-lower))))
}

// difference is the ratio of two widths, as far as they lie in the chart.
func (r ConversionRequest) difference(width float64) float64 {
	from, to := inChart(r.From), inChart(width)
	return math.Max(from, to) / math.Min(from, to)
}

// least is the known amount with the note: for a wider cloth no more than for
// any width on the way to it. Length and note run straight between the columns
// and the bends of the note, so that these are all the widths to try. mm.
func (r ConversionRequest) least() float64 {
	out := r.plain(r.To) + r.note(r.To)
	widths := append(edges(inChart(r.From)), r.From)
	for _, bend := range []float64{sleevesDifference, someDifference, largeDifference} {
		widths = append(widths, inChart(r.From)*bend)
	}
	for _, width := range widths {
		if width >= r.From && width <= r.To {
			out = math.Min(out, r.plain(width)+r.note(width))
		}
	}
	return out
}

// reasons for what the note adds.
func (r ConversionRequest) reasons() []string {
	var out []string
	if r.difference(r.To) > someDifference {
		out = append(out, "a large difference in width")
	}
	if r.OneWay {
		out = append(out, "one-way cloth")
	}
	if r.SleevesInOne && r.From != r.To {
		out = append(out, "sleeves cut in one with the body")
	}
	return out
}

// basis says what a conversion is found by.
func (r ConversionRequest) basis() Conversion {
	if r.From == r.To {
		return Conversion{Basis: SameWidth}
	}
	for _, width := range []float64{r.From, r.To} {
		if inChart(width) != width {
			return Conversion{Basis: ByArea,
				Uncovered: fmt.Sprintf("the chart has no column for a width of %s", centimetres(width))}
		}
	}
	first, last := column(0, r.From), column(len(chartEighths)-1, r.From)
	if r.Length < first-noise || r.Length > last+noise {
		return Conversion{Basis: ByArea, Uncovered: fmt.Sprintf("in %s cloth the chart runs from %s to %s", headOf(r.From),
			measure.Length(first).Format(measure.Yard), measure.Length(last).Format(measure.Yard))}
	}
	row, share := rowOf(r.Length, r.From)
	if last-r.Length < noise {
		row, share = row+1, 0
	}
	return Conversion{Basis: ByChart, FromColumn: headOf(r.From), ToColumn: headOf(r.To), Row: row + 1,
		Between: share*(last-first) > 1}
}

// nearColumn, mm, is how far a width may lie from a column and still be called
// by its head: 115 cm is sold as 45 in, 140 cm as 54 in (pattern envelopes
// print them side by side: [source.CommonPractice]).
const nearColumn = 1.25 * inch

// headOf names the column nearest to a width of the chart, or the two that it
// lies between.
func headOf(width float64) string {
	best, least := -1, nearColumn
	for i, c := range chartColumns {
		away := math.Max(0, math.Max(c.low-width, width-c.high))
		if away <= least && (best < 0 || away < least) {
			best, least = i, away
		}
	}
	if best >= 0 {
		return chartColumns[best].head
	}
	i := 1
	for chartColumns[i].low < width {
		i++
	}
	return chartColumns[i-1].head + " to " + chartColumns[i].head
}
