package paper

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/measure"
	"ellwand/testdata/sample"
)

func read(t testing.TB, name string) Paper {
	t.Helper()
	paper, err := Parse(name, measure.Millimetre)
	require.NoError(t, err)
	return paper
}

func TestParse(t *testing.T) {
	assert.Equal(t, Paper{210, 297, UsualMargin, UsualOverlap, measure.Millimetre}, read(t, " A4 "))
	assert.InDelta(t, 609.6, read(t, "24in x 36in").Width, 1e-9)
	// na_legal_8.5x14in and na_ledger_11x17in of PWG 5101.1, from memory.
	assert.InDelta(t, 14*25.4, read(t, "legal").Height, 1e-9)
	assert.InDelta(t, 17*25.4, read(t, "tabloid").Height, 1e-9)
	assert.InDelta(t, 900, read(t, "600×900").Height, 1e-9)
	inches, err := Parse("24x36", measure.Inch)
	require.NoError(t, err)
	assert.InDelta(t, 914.4, inches.Height, 1e-9)
	_, err = Parse("b7", measure.Inch)
	assert.ErrorContains(t, err, "such as 24inx36in")
	for _, bad := range []string{"", "a99", "10", "x", "3 cubits x 4 cubits", "axb"} {
		_, err := Parse(bad, measure.Millimetre)
		assert.Error(t, err, bad)
	}
	_, err = Parse("a5x", measure.Millimetre)
	assert.ErrorContains(t, err, `the paper "a5x" is not known; use one of a0, a1`)
	for _, c := range []struct {
		paper Paper
		want  string
	}{
		{Paper{Height: 60, Margin: 10, Overlap: 12}, "a roll of 60 mm with a margin of 10 mm"},
		{Paper{Width: 210, Height: 297, Margin: -1, Overlap: 10}, "negative"},
		{Paper{Width: 210, Height: 297, Margin: 10, Overlap: math.NaN()}, "negative"},
		{Paper{Width: math.NaN(), Height: 297, Margin: 10, Overlap: 10}, "too large"},
		{Paper{Width: 9000, Height: 297, Margin: 10, Overlap: 10}, "too large"},
		{Paper{Width: 210, Height: 297, Margin: 60, Overlap: 10}, "leaves 80 mm x 167 mm for the pieces"},
		{Paper{Width: 101.6, Height: 101.6, Margin: 6.35, Unit: measure.Inch},
			"a sheet of 4 in x 4 in with a margin of 1/4 in and an overlap of 0 in leaves 3 1/2 in x 3 1/2 in for " +
				"the pieces; 4 3/16 in x 4 15/16 in are needed"},
	} {
		assert.ErrorContains(t, c.paper.Check(), c.want)
	}
}

func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	for _, text := range append(Names(), "600mmx900mm", "24in x 36in", "x", "1e999x2") {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		paper, err := Parse(text, measure.Millimetre)
		if err == nil && paper.Check() == nil && !paper.IsRoll() {
			width, height := paper.Cell()
			assert.Positive(t, min(width, height), strings.ToValidUTF8(text, "?"))
		}
	})
}

func TestWays(t *testing.T) {
	assert.Equal(t, A4, A4.Upright())
	assert.Equal(t, A4, A4.OnItsSide().Upright())
	side := Letter.OnItsSide()
	assert.InDelta(t, 11*25.4, side.Width, 1e-9)
	assert.InDelta(t, 8.5*25.4, side.Height, 1e-9)
	assert.Equal(t, side, side.OnItsSide())
	roll := Paper{Height: 914, Margin: 10, Overlap: 12}
	assert.True(t, roll.IsRoll())
	assert.Equal(t, roll, roll.Turned(), "a roll has one way")
	assert.Equal(t, roll, roll.Upright())
	assert.Equal(t, roll, roll.OnItsSide())
	width, height := roll.Cell()
	assert.Zero(t, width)
	assert.InDelta(t, 914-20-12, height, 1e-9)
	assert.False(t, A4.IsRoll())
}

// TestCheckAtItsLimits: a cell of 106 x 125 mm is the least, either way round,
// and a side of 5 m the most.
func TestCheckAtItsLimits(t *testing.T) {
	for _, c := range []struct {
		width, height float64
		ok            bool
	}{
		{106, 125, true}, {125, 106, true}, {105.9, 125, false}, {106, 124.9, false}, {125, 105.9, false},
		{5000, 5000, true}, {5000.1, 300, false}, {300, 5000.1, false},
		{0, 106, true}, {0, 105.9, false}, // rolls
	} {
		assert.Equal(t, c.ok, Paper{Width: c.width, Height: c.height}.Check() == nil, "%v", c)
	}
	assert.Error(t, Paper{Width: 300, Height: 300, Overlap: -1}.Check())
	assert.NoError(t, Paper{Width: 106 + 20 + 12, Height: 125 + 20 + 12, Margin: 10, Overlap: 12}.Check())
}

func TestNames(t *testing.T) {
	assert.Equal(t, []string{"a0", "a1", "a2", "a3", "a4", "a5", "letter", "legal", "tabloid"}, Names())
	// ISO 216: each is half the one before, rounded down to a mm.
	for i, name := range Names()[:5] {
		larger, smaller := read(t, name), read(t, Names()[i+1])
		assert.Equal(t, larger.Width, smaller.Height, name)
		assert.InDelta(t, larger.Height/2, smaller.Width, 0.5, name)
	}
	for _, name := range Names() {
		require.NoError(t, read(t, name).Check())
	}
}
