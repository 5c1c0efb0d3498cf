package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestFormat(t *testing.T) {
	cases := []struct {
		length Length
		unit   Unit
		want   string
	}{
		{415.925, Inch, "16 3/8 in"},
		{415.925, Centimetre, "41.6 cm"},
		{415, Centimetre, "41.5 cm"},
		{410, Centimetre, "41 cm"},
		{1350, Metre, "1.35 m"},
		{1200, Metre, "1.20 m"},
		{1943.1, Yard, "2 1/8 yd"},
		{914.4, Yard, "1 yd"},
		{457.2, Yard, "1/2 yd"},
		{415.4, Millimetre, "415 mm"},
		{9.525, Inch, "3/8 in"},
		{0.7, Inch, "0 in"},
		{0.8, Inch, "1/16 in"},
		{25.3, Inch, "1 in"},
		{-38.1, Inch, "-1 1/2 in"},
		{-0.01, Centimetre, "0 cm"},
		{-20, Centimetre, "-2 cm"},
		{-0.2, Inch, "0 in"},
		{0.5, Centimetre, "0.1 cm"},
		{1.005 * 1000, Metre, "1.01 m"},
		{0, Metre, "0.00 m"},
	}
	for _, c := range cases {
		assert.Equal(t, c.want, c.length.Format(c.unit))
	}
}

func TestUnitString(t *testing.T) {
	assert.Equal(t, "mm cm m in yd", Millimetre.String()+" "+Centimetre.String()+" "+Metre.String()+" "+Inch.String()+
		" "+Yard.String())
	assert.Equal(t, "unknown unit", Unit(9).String())
}

func TestRoundUp(t *testing.T) {
	cases := map[string][3]Length{
		"1.20 m on 10 cm stays":                   {1200, 100, 1200},
		"arithmetic noise above it too":           {1200.0000000001, 100, 1200},
		"a hair over is a step more":              {1200.001, 100, 1300},
		"less goes up":                            {1101, 100, 1200},
		"2 1/8 yd on 1/8 yd stays":                {1943.1, 114.3, 1943.1},
		"a sum of tenths":                         {0.1 + 0.2, 0.1, 0.3},
		"nothing":                                 {0, 100, 0},
		"quarter yard":                            {1000, 228.6, 1143},
		"no step leaves it":                       {1234.5, 0, 1234.5},
		"a negative step leaves it":               {1234.5, -1, 1234.5},
		"an endless step leaves it":               {1234.5, Length(math.Inf(1)), 1234.5},
		"large lengths keep their relative noise": {1e9 + 1e-7, 100, 1e9},
	}
	for name, c := range cases {
		assert.InDelta(t, float64(c[2]), float64(RoundUp(c[0], c[1])), 1e-9, name)
	}
	assert.Equal(t, Length(1200), RoundUp(12*100*(1+1e-15), 100), "exactly 1.20 m")
}

func TestAtLeastNeverSaysMore(t *testing.T) {
	assert.Equal(t, "1.81 m", Metric.ClothAtLeast(1819.9))
	assert.Equal(t, "1.82 m", Metric.ClothAtLeast(1820*(1-1e-15)), "exactly 1.82 m")
	assert.Equal(t, "0.00 m", Metric.ClothAtLeast(3))
	assert.Equal(t, "16 5/16 in", Imperial.ClothAtLeast(16.374*25.4))
}

func TestRoundUpNeverRoundsDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Float64Range(0, 1e6).Draw(t, "length"))
		step := Length(rapid.SampledFrom([]float64{1, 10, 100, 250, 114.3, 228.6, 0.1}).Draw(t, "step"))
		up := RoundUp(l, step)
		assert.GreaterOrEqual(t, float64(up), float64(l)-1e-6)
		assert.Less(t, float64(up-l), float64(step)+1e-6)
		assert.Equal(t, up, RoundUp(up, step), "what is rounded stays")
		steps := float64(up / step)
		assert.InDelta(t, math.Round(steps), steps, 1e-6)
	})
}
