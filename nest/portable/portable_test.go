package portable

import (
	"encoding/binary"
	"flag"
	"fmt"
	"hash/fnv"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const draws = 20000

var update = flag.Bool("update", false, "write the golden files anew")

// ulps is how many units in its last place a value is off.
func ulps(got, want float64) float64 {
	if got == want {
		return 0
	}
	return math.Abs(got-want) / (math.Nextafter(math.Abs(want), math.Inf(1)) - math.Abs(want))
}

// drawer draws numbers of many sizes.
type drawer struct{ *rand.Rand }

func newDrawer() drawer { return drawer{rand.New(rand.NewPCG(1, 2))} }

func (d drawer) between(low, high float64) float64 { return low + float64((high-low)*d.Float64()) }

func (d drawer) ofAnySize() float64 {
	return math.Ldexp(d.between(-1, 1), d.IntN(60)-30)
}

// Math itself is within a unit in the last place, on one processor or another.
func TestNearMath(t *testing.T) {
	d := newDrawer()
	for range draws {
		x, y := d.ofAnySize(), d.ofAnySize()
		require.LessOrEqual(t, ulps(Hypot(x, y), math.Hypot(x, y)), 2.0, "%v %v", x, y)
		require.LessOrEqual(t, ulps(Atan2(y, x), math.Atan2(y, x)), 2.0, "%v %v", x, y)
		require.LessOrEqual(t, ulps(Log(math.Abs(x)), math.Log(math.Abs(x))), 2.0, "%v", x)
		e := d.between(-700, 700)
		require.LessOrEqual(t, ulps(Exp(e), math.Exp(e)), 2.0, "%v", e)
		e = d.between(-1, 1)
		require.LessOrEqual(t, ulps(Exp(e), math.Exp(e)), 2.0, "%v", e)
		near := d.between(0.9, 1.1)
		require.LessOrEqual(t, ulps(Log(near), math.Log(near)), 2.0, "%v", near)
	}
}

func TestAnglesNearMath(t *testing.T) {
	d := newDrawer()
	for range draws {
		part := d.between(-45, 45)
		sin, cos := SincosDegrees(part)
		require.LessOrEqual(t, ulps(sin, math.Sin(part*math.Pi/180)), 3.0, "%v", part)
		require.LessOrEqual(t, ulps(cos, math.Cos(part*math.Pi/180)), 3.0, "%v", part)
		degrees := d.between(-1000, 1000) // math rounds the radians
		sin, cos = SincosDegrees(degrees)
		wantSin, wantCos := math.Sincos(math.Mod(degrees, 360) * math.Pi / 180)
		require.InDelta(t, wantSin, sin, 2e-15, "%v", degrees)
		require.InDelta(t, wantCos, cos, 2e-15, "%v", degrees)
		for _, most := range []float64{1, 10, 1e5} {
			radians := d.between(-most, most)
			sin, cos = Sincos(radians)
			wantSin, wantCos = math.Sincos(radians)
			require.True(t, math.Abs(sin-wantSin) < 1e-16 || ulps(sin, wantSin) <= 2, "%v", radians)
			require.True(t, math.Abs(cos-wantCos) < 1e-16 || ulps(cos, wantCos) <= 2, "%v", radians)
		}
	}
}

func TestTangentsAndInversesNearMath(t *testing.T) {
	d := newDrawer()
	for range draws {
		x := d.between(-1.5, 1.5)
		require.LessOrEqual(t, ulps(Tan(x), math.Tan(x)), 5.0, "%v", x)
		require.Equal(t, pair(Sincos(x)), pair(Sin(x), Cos(x)))
		slope := d.ofAnySize()
		require.LessOrEqual(t, ulps(Atan(slope), math.Atan(slope)), 2.0, "%v", slope)
		share := d.between(-0.9, 0.9) // math.Asin subtracts near 1
		require.InDelta(t, math.Asin(share), Asin(share), 1e-15, "%v", share)
		require.InDelta(t, math.Acos(share), Acos(share), 2e-15, "%v", share)
		near := 1 - math.Ldexp(d.between(1, 2), -30)
		require.InEpsilon(t, math.Sqrt(2*(1-near)), Acos(near), 1e-9, "%v", near)
	}
	require.Equal(t, [3]float64{math.Pi / 2, 0, math.Pi}, [3]float64{Asin(1), Acos(1), Acos(-1)})
}

func TestQuarterTurnsAreExact(t *testing.T) {
	want := [][2]float64{{0, 1}, {1, 0}, {0, -1}, {-1, 0}}
	for quarter := -40; quarter <= 40; quarter++ {
		sin, cos := SincosDegrees(90 * float64(quarter))
		require.Equal(t, want[quarter&3], [2]float64{sin + 0, cos + 0}, quarter)
	}
}

func TestSpecialValues(t *testing.T) {
	zero := math.Copysign(0, -1)
	for _, y := range []float64{0, zero, 1, -1, 5} {
		for _, x := range []float64{0, zero, 1, -1, 3} {
			got, want := Atan2(y, x), math.Atan2(y, x)
			require.LessOrEqual(t, ulps(got, want), 1.0, "%v %v", y, x)
			require.Equal(t, math.Signbit(want), math.Signbit(got), "%v %v", y, x)
		}
	}
	require.Zero(t, Hypot(0, 0))
	require.Equal(t, 5.0, Hypot(-3, 4))
	require.Equal(t, 1.0, Exp(0))
	require.Zero(t, Log(1))
	require.InDelta(t, 20, Geometric(10, 40, 0.5), 1e-13)
	require.InDelta(t, 40, Geometric(10, 40, 1), 1e-13)
}

// Mean, deviation and the share within one deviation (68.27 %) of draws.
func TestNormalDraws(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	var sum, squares, within float64
	for range draws {
		v := Normal(random)
		sum += v
		squares += v * v
		if math.Abs(v) < 1 {
			within++
		}
	}
	require.InDelta(t, 0, sum/draws, 0.02)
	require.InDelta(t, 1, squares/draws, 0.03)
	require.InDelta(t, 0.6827, within/draws, 0.01)
}

// The bits of every function are those of the golden file, on every processor.
func TestBitsAreThoseOfTheGoldenFile(t *testing.T) {
	const path = "testdata/golden.csv"
	functions := []struct {
		name  string
		value func(d drawer) []float64
	}{
		{"hypot", func(d drawer) []float64 { return []float64{Hypot(d.ofAnySize(), d.ofAnySize())} }},
		{"sincos in degrees", func(d drawer) []float64 { return pair(SincosDegrees(d.between(-1000, 1000))) }},
		{"sincos", func(d drawer) []float64 { return pair(Sincos(d.between(-10, 10))) }},
		{"atan2", func(d drawer) []float64 { return []float64{Atan2(d.ofAnySize(), d.ofAnySize())} }},
		{"tan", func(d drawer) []float64 { return []float64{Tan(d.between(-1.5, 1.5))} }},
		{"asin and acos", func(d drawer) []float64 { return pair(Asin(d.between(-1, 1)), Acos(d.between(-1, 1))) }},
		{"exp", func(d drawer) []float64 { return []float64{Exp(d.between(-50, 50))} }},
		{"log", func(d drawer) []float64 { return []float64{Log(math.Abs(d.ofAnySize()))} }},
		{"geometric", func(d drawer) []float64 { return []float64{Geometric(0.001, 0.01, d.Float64())} }},
		{"normal", func(d drawer) []float64 { return []float64{Normal(d.Rand)} }},
	}
	var text strings.Builder
	for _, f := range functions {
		d, h := newDrawer(), fnv.New64a()
		for range draws {
			require.NoError(t, binary.Write(h, binary.LittleEndian, f.value(d)))
		}
		fmt.Fprintf(&text, "%s,%016x\n", f.name, h.Sum64())
	}
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(text.String()), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, string(want), text.String())
}

func pair(a, b float64) []float64 { return []float64{a, b} }
