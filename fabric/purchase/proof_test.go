package purchase

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Whatever is asked, what the program answers is proven.
func TestConversionsAreProven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.OneOf(rapid.Float64Range(300, 4000), rapid.SampledFrom([]float64{889, 914.4, 1117.6, 1143, 1150,
			1400, 1500, 1524, 1676.4}))
		r := ConversionRequest{
			Length: rapid.OneOf(rapid.Float64Range(1, 30000), rapid.Custom(func(t *rapid.T) float64 {
				return float64(rapid.IntRange(1, 60).Draw(t, "eighths")) * eighth
			})).Draw(t, "length"),
			From: width.Draw(t, "from"), To: width.Draw(t, "to"),
			OneWay: rapid.Bool().Draw(t, "one way"), SleevesInOne: rapid.Bool().Draw(t, "sleeves"),
		}
		found, err := Convert(r)
		require.NoError(t, err)
		for _, step := range []float64{eighth, 100} {
			assert.NoError(t, found.Proven(r, r.Purchase(found, step), step), "%+v", r)
		}
	})
}

// 2 1/4 yd of 45 in are 1 3/4 yd of 60 in by the chart: anything else is refused.
func TestSpoiledConversions(t *testing.T) {
	r := ConversionRequest{Length: 18 * eighth, From: 45 * inch, To: 60 * inch}
	for _, c := range []struct {
		length, added float64
		why           []string
		buy           float64
		want          string
	}{
		{14 * eighth, 0, nil, 14 * eighth, ""},
		{13 * eighth, 0, nil, 13 * eighth, "the chart has"},
		{15 * eighth, 0, nil, 15 * eighth, "the chart has"},
		{14 * eighth, 0, nil, 13 * eighth, "it buys"},
		{14 * eighth, 0, nil, 15 * eighth, "it buys"},
		{14 * eighth, 0, nil, 14.5 * eighth, "no whole number"},
		{17 * eighth, 3 * eighth, []string{"nap"}, 17 * eighth, "the note adds"},
		{16 * eighth, 2 * eighth, nil, 16 * eighth, "for 0 reasons"},
		{19 * eighth, 0, nil, 19 * eighth, "in a wider cloth"},
		{0, 0, nil, 0, "come to"},
	} {
		err := Conversion{Length: c.length, Added: c.added, Why: c.why}.Proven(r, c.buy, eighth)
		if c.want == "" {
			assert.NoError(t, err)
			continue
		}
		assert.ErrorContains(t, err, c.want)
	}
	back := ConversionRequest{Length: 2000, From: 1500, To: 900}
	assert.ErrorContains(t, Conversion{Length: 1900}.Proven(back, 1900, 100), "of a wider cloth")
	back.OneWay = true
	assert.ErrorContains(t, Conversion{Length: 3500}.Proven(back, 3500, 100), "of one-way cloth")
}
