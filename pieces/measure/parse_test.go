package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/testdata/sample"
)

// 1 yd = 0.9144 m and 1 in = 25.4 mm exactly: international yard and pound
// agreement, 1959.
func TestInternationalYardAndPoundAgreement(t *testing.T) {
	for text, want := range map[string]Length{"1 in": 25.4, "1 yd": 914.4, "36 in": 914.4, "1 m": 1000, "1 cm": 10,
		"1 mm": 1} {
		got, err := Parse(text, Millimetre)
		require.NoError(t, err)
		assert.Equal(t, want, got, text)
	}
}

func TestParse(t *testing.T) {
	cases := []struct {
		text string
		unit Unit
		want Length
	}{
		{"16 3/8", Inch, 415.925},
		{`16 3/8"`, Centimetre, 415.925},
		{"16 3/8 in", Centimetre, 415.925},
		{"16-3/8 in", Centimetre, 415.925},
		{"16⅜", Inch, 415.925},
		{"16 ⅜″", Centimetre, 415.925},
		{"16⅜”", Centimetre, 415.925},
		{"16 3⁄8''", Centimetre, 415.925},
		{"⅝ in", Centimetre, 15.875},
		{"5/8", Inch, 15.875},
		{" 5 / 8  inches ", Centimetre, 15.875},
		{"9/8 in", Centimetre, 28.575},
		{"0.5in.", Centimetre, 12.7},
		{"41,5 cm", Inch, 415},
		{"41.5cm", Inch, 415},
		{"41.5", Centimetre, 415},
		{".5 m", Inch, 500},
		{"41 1/2 CM", Inch, 415},
		{"1.35 m", Inch, 1350},
		{"1,35\u00a0metres", Inch, 1350},
		{"2 1/8 yd", Metre, 1943.1},
		{"2⅛yards", Metre, 1943.1},
		{"12 mm", Inch, 12},
		{"0", Metre, 0},
		{`5'5"`, Centimetre, 65 * 25.4},
		{"5′5″", Centimetre, 65 * 25.4},
		{"5’ 5 1/2”", Centimetre, 65.5 * 25.4},
		{"5'5", Centimetre, 65 * 25.4},
		{"5 ft 5 in", Centimetre, 65 * 25.4},
		{"5ft", Centimetre, 5 * 304.8},
		{"5 1/2 feet", Centimetre, 5.5 * 304.8},
		{"-1 foot 11 inches", Centimetre, -23 * 25.4},
		{"16''", Centimetre, 16 * 25.4},
		{"-2 cm", Inch, -20},
		{"−1 1/2 in", Inch, -38.1},
		{"0,125 in", Inch, 3.175},
		{"1.500 m", Inch, 1500},
		{"007 cm", Inch, 70},
		{"109375 yd", Inch, 100_012_500},
		{"-100012.5 m", Inch, -100_012_500},
	}
	for _, c := range cases {
		got, err := Parse(c.text, c.unit)
		if assert.NoError(t, err, c.text) {
			assert.Equal(t, c.want, got, c.text)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	cases := map[string]string{
		"":            "the length is missing: " + expected.String(),
		"  ":          "the length is missing: " + expected.String(),
		"cm":          `"cm" is not a length: it has no number; ` + expected.String(),
		"wide":        `"wide" is not a length: "wide" is not a unit; ` + expected.String(),
		"12 furlongs": `"12 furlongs" is not a length: "furlongs" is not a unit; ` + expected.String(),
		"12 1/0 in":   `"12 1/0 in" is not a length: the fraction 1/0 divides by nothing; ` + expected.String(),
		"12 9/8 in": `"12 9/8 in" is not a length: the fraction 9/8 after a whole number must be less than 1; ` +
			expected.String(),
		"1,500 mm": `"1,500 mm" is not a length: "1,500" could be 1500 or 1.500; write it without the comma or with ` +
			`a decimal point`,
		"1.2.3 cm":   `"1.2.3 cm" is not a length: "1.2.3" is not a number; ` + expected.String(),
		"1.234,5 mm": `"1.234,5 mm" is not a length: "1.234,5" is not a number; ` + expected.String(),
		"1e3 mm":     `"1e3 mm" is not a length: "1e3" is not a number; ` + expected.String(),
		"--2 cm":     `"--2 cm" is not a length: "-2" is not a number; ` + expected.String(),
		"1.5 1/2 in": `"1.5 1/2 in" is not a length: "1.5 1/2" is not a number; ` + expected.String(),
		"58-60 in": `"58-60 in" is not a length: "58-60" is a range; write one figure, of a cloth's width the ` +
			`smaller: 58`,
		"58–60 in": `"58–60 in" is not a length: "58-60" is a range; write one figure, of a cloth's width the ` +
			`smaller: 58`,
		"1,40 to 1,50 m": `"1,40 to 1,50 m" is not a length: "1,40 to 1,50" is a range; write one figure, of a cloth's ` +
			`width the smaller: 1,40`,
		"5'13\"":        `"5'13\"" is not a length: a foot has 12 inches; write the inches after it below 12`,
		"5.5'2\"":       `"5.5'2\"" is not a length: the feet before inches must be a whole number; ` + expected.String(),
		"1 yd 9 in":     `"1 yd 9 in" is not a length: "1 yd 9" is not a number; ` + expected.String(),
		"1234567890 mm": `"1234567890 mm" is not a length: "1234567890" is not a number; ` + expected.String(),
		"100012.51 m":   `"100012.51 m" is not a length: it is longer than 100 km; ` + expected.String(),
		"-109376 yd":    `"-109376 yd" is not a length: it is longer than 100 km; ` + expected.String(),
		"five cm":       `"five cm" is not a length: "five cm" is not a unit; ` + expected.String(),
		"NaN":           `"NaN" is not a length: "NaN" is not a unit; ` + expected.String(),
		"16 3/8 in or so, says the lady next door": `"16 3/8 in or so, says the lady next door" is not a length: "in ` +
			`or so, says the lady next door" is not a unit; ` + expected.String(),
		"1234567890123456789012345678901234567890 mm": `"1234567890123456789012345678901234567890"... is too long for a ` +
			`length: ` + expected.String(),
	}
	for text, want := range cases {
		_, err := Parse(text, Centimetre)
		assert.EqualError(t, err, want, text)
	}
}

func TestParseUnit(t *testing.T) {
	for text, want := range map[string]Unit{"mm": Millimetre, "cm": Centimetre, " M ": Metre, "Inches": Inch,
		"in": Inch, "yd": Yard, "yards": Yard} {
		got, err := ParseUnit(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got, text)
	}
	for _, text := range []string{"", "ell", "cm2"} {
		_, err := ParseUnit(text)
		assert.ErrorContains(t, err, "is not a unit of length: write mm, cm, m, in or yd", text)
	}
}

// What is printed reads back as the same length, within half the step that
// the unit is printed to, and printing that again changes nothing.
func TestFormatAndParseAgree(t *testing.T) {
	half := map[Unit]float64{Millimetre: 0.5, Centimetre: 0.5, Metre: 5, Inch: 25.4 / 32, Yard: 914.4 / 16}
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Float64Range(-1e6, 1e6).Draw(t, "length"))
		u := Unit(rapid.IntRange(0, 4).Draw(t, "unit"))
		other := Unit(rapid.IntRange(0, 4).Draw(t, "default"))
		text := l.Format(u)
		back, err := Parse(text, other)
		require.NoError(t, err)
		assert.LessOrEqual(t, math.Abs(float64(back-l)), half[u]+1e-6, text)
		assert.Equal(t, text, back.Format(u))
	})
}

// Every 1/16 in, 1/8 yd and 0.1 cm is read to the nearest float64 and printed
// as it was written.
func TestEveryStepSurvives(t *testing.T) {
	for i := range 2000 {
		for u, step := range map[Unit]float64{Inch: 25.4 / 16, Yard: 914.4 / 8, Centimetre: 1, Metre: 10} {
			text := Length(float64(i) * step).Format(u)
			back, err := Parse(text, Millimetre)
			require.NoError(t, err)
			assert.InDelta(t, float64(i)*step, float64(back), 1e-9)
			assert.Equal(t, text, back.Format(u))
		}
	}
}

func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	for _, text := range []string{"16 3/8", `16⅜"`, "41,5 cm", "2 1/8 yd", "-.5m", "1,500", "", "½½", "1/", "′′",
		"9 9/10 in.", "999999999 yd", "109375 yd"} {
		f.Add(text, 3)
	}
	f.Fuzz(func(t *testing.T, text string, unit int) {
		u := Unit(unit)
		l, err := Parse(text, u)
		if err != nil {
			assert.Zero(t, l)
			assert.NotEmpty(t, err.Error())
			return
		}
		require.False(t, math.IsNaN(float64(l)) || math.IsInf(float64(l), 0), text)
		back, err := Parse(l.Format(Inch), u)
		require.NoError(t, err, text)
		assert.LessOrEqual(t, math.Abs(float64(back-l)), 25.4/32+1e-6+1e-9*math.Abs(float64(l)), text)
	})
}

func BenchmarkParse(b *testing.B) {
	for b.Loop() {
		if l, err := Parse("16 3/8 in", Centimetre); err != nil || l != 415.925 {
			b.Fatal(l, err)
		}
	}
}
