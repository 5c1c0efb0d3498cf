package quote

import (
	"math/big"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces/measure"
	"ellwand/testdata/sample"
)

func money(t require.TestingT, code string) Currency {
	c, err := ParseCurrency(code)
	require.NoError(t, err)
	return c
}

// Decimals by ISO 4217, list one (from memory).
func TestDecimals(t *testing.T) {
	for code, want := range map[string]int{
		"EUR": 2, "USD": 2, "GBP": 2, "CHF": 2, "NGN": 2, "INR": 2, "MAD": 2, "BRL": 2, "SEK": 2, "PLN": 2,
		"JPY": 0, "KRW": 0, "VND": 0, "CLP": 0, "XOF": 0, "XAF": 0, "UGX": 0, "PYG": 0, "RWF": 0,
		"BHD": 3, "KWD": 3, "OMR": 3, "TND": 3, "JOD": 3,
	} {
		assert.Equal(t, want, money(t, code).Decimals(), code)
	}
	for _, code := range []string{"", "euro", "XYZ", "€"} {
		_, err := ParseCurrency(code)
		assert.ErrorContains(t, err, "ISO 4217")
	}
}

func TestParseMoney(t *testing.T) {
	for _, tt := range []struct {
		code, text string
		want       Money
		printed    string
	}{
		{"EUR", "12.50", 1250, "12.50"}, {"EUR", "12,5", 1250, "12.50"}, {"EUR", "12", 1200, "12.00"},
		{"EUR", "0", 0, "0.00"}, {"EUR", "0.05", 5, "0.05"}, {"EUR", "1 234 567.89", 123456789, "1\u00a0234\u00a0567.89"},
		{"EUR", "12.50 EUR", 1250, "12.50"}, {"JPY", "JPY 1250", 1250, "1\u00a0250"}, {"KWD", "1.25", 1250, "1.250"},
		{"KWD", "0.005", 5, "0.005"},
	} {
		got, err := money(t, tt.code).Parse(tt.text)
		require.NoError(t, err, tt.text)
		assert.Equal(t, tt.want, got, tt.text)
		assert.Equal(t, tt.printed, money(t, tt.code).Format(got))
	}
	assert.Equal(t, "-0.05", money(t, "EUR").Format(-5))
	assert.Equal(t, "1\u00a0250.00\u00a0EUR", money(t, "EUR").Say(125000))
	assert.Equal(t, "1250.00", money(t, "EUR").Plain(125000))
}

func TestParseMoneyRefuses(t *testing.T) {
	for _, tt := range []struct{ code, text, want string }{
		{"EUR", "-1", "is not an amount"}, {"EUR", "", "is not an amount"}, {"EUR", "1e3", "is not an amount"},
		{"EUR", "twelve", "is not an amount"}, {"EUR", "12 USD", "is not an amount"},
		{"EUR", "1,250", "has 3 decimals, and EUR has 2"}, {"JPY", "12.5", "has decimals, and JPY has none"},
		{"KWD", "0.0005", "has 4 decimals"}, {"EUR", "99999999999999", "more than any quote"},
	} {
		_, err := money(t, tt.code).Parse(tt.text)
		assert.ErrorContains(t, err, tt.want, tt.text)
	}
}

func TestParseShare(t *testing.T) {
	for text, want := range map[string]Share{"21 %": 210_000, "8.1%": 81_000, "7,7 %": 77_000, "0": 0, "0.0001": 1,
		"100": whole} {
		got, err := ParseShare(text)
		require.NoError(t, err)
		assert.Equal(t, want, got, text)
	}
	for _, text := range []string{"", "-5 %", "a tenth", "1.23456 %", "1001 %"} {
		_, err := ParseShare(text)
		assert.Error(t, err, text)
	}
	assert.Equal(t, "8.1 %", Share(81_000).String())
	assert.InDelta(t, 0.081, Share(81_000).Fraction(), 1e-15)
}

// Rounding against exact fractions of the standard library.
func TestRoundingIsToTheNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := Money(rapid.Int64Range(-mostMoney, mostMoney).Draw(t, "money"))
		by := rapid.Int64Range(0, 10_000_000).Draw(t, "by")
		over := rapid.Int64Range(1, 10_000_000).Draw(t, "over")
		exact := new(big.Rat).Mul(big.NewRat(int64(m), 1), big.NewRat(by, over))
		away := new(big.Rat).Sub(exact, big.NewRat(int64(m.times(by, over)), 1))
		assert.LessOrEqual(t, new(big.Rat).Abs(away).Cmp(big.NewRat(1, 2)), 0)
		if away.Cmp(big.NewRat(0, 1)) != 0 && new(big.Rat).Abs(away).Cmp(big.NewRat(1, 2)) == 0 {
			assert.NotEqual(t, exact.Sign(), away.Sign(), "halves go away from zero")
		}
	})
	for _, tt := range []struct{ m, want Money }{{5, 3}, {-5, -3}, {1, 1}, {-1, -1}, {3, 2}, {4, 2}} {
		assert.Equal(t, tt.want, tt.m.times(1, 2), strconv.Itoa(int(tt.m)))
	}
}

func TestSplitIsWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := Money(rapid.Int64Range(-1_000_000, mostMoney).Draw(t, "money"))
		weights := rapid.SliceOfN(rapid.Int64Range(0, 1_000_000), 1, 12).Draw(t, "weights")
		parts := m.Split(weights)
		assert.Equal(t, m, sum(parts...))
		total := int64(0)
		for _, w := range weights {
			total += w
		}
		for i, part := range parts {
			if total == 0 {
				continue
			}
			exact := new(big.Rat).Mul(big.NewRat(int64(m), 1), big.NewRat(weights[i], total))
			away := exact.Sub(exact, big.NewRat(int64(part), 1))
			assert.Negative(t, away.Abs(away).Cmp(big.NewRat(1, 1)), "each part within one minor unit")
		}
	})
	assert.Equal(t, []Money{34, 33, 33}, Money(100).Split([]int64{1, 1, 1}))
}

func TestPriceOfALength(t *testing.T) {
	for _, tt := range []struct {
		price  Price
		length float64
		want   Money
	}{
		{Price{1295, measure.Metre}, 2100, 2720}, // 27.195: half up
		{Price{1600, measure.Yard}, 2.125 * 914.4, 3400},
		{Price{999, measure.Yard}, 914.4 / 8, 125}, // 124.875
		{Price{1000, measure.Yard}, 1000, 1094},    // 1093.61
		{Price{1000, measure.Metre}, 0, 0},
	} {
		assert.Equal(t, tt.want, tt.price.For(tt.length))
	}
	assert.Equal(t, Money(2375), ForMinutes(2500, 57))
}

func FuzzParseMoney(f *testing.F) {
	sample.MinimizeBriefly()
	for _, text := range []string{"12.50", "1 250,5", "EUR 3", "99999999999999", "0.0001"} {
		f.Add(text, "EUR")
	}
	f.Fuzz(func(t *testing.T, text, code string) {
		c, err := ParseCurrency(code)
		if err != nil {
			return
		}
		got, err := c.Parse(text)
		if err != nil {
			return
		}
		again, err := c.Parse(c.Format(got))
		require.NoError(t, err)
		assert.Equal(t, got, again)
	})
}

func sum(all ...Money) Money {
	var out Money
	for _, m := range all {
		out += m
	}
	return out
}
