package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
)

// parabola is y = x^2 / 4 from x = -2 to 2 as a cubic (degree raised from the
// quadratic with control points (-2, 1), (0, -1), (2, 1)).
var parabola = Bezier{orb.Point{-2, 1}, orb.Point{-2.0 / 3, -1.0 / 3}, orb.Point{2.0 / 3, -1.0 / 3}, orb.Point{2, 1}}

// cusp is x = y^(3/2)-like: B(t) = (s^3, s^2) with s = 2 t - 1, the
// semicubical parabola, which stands still at t = 1/2.
var cusp = Bezier{orb.Point{-1, 1}, orb.Point{1, -1.0 / 3}, orb.Point{-1, -1.0 / 3}, orb.Point{1, 1}}

func curvesByName() map[string]Curve {
	return map[string]Curve{
		"line":          Line{orb.Point{10, 20}, orb.Point{40, 60}},
		"arc":           Arc{orb.Point{5, 5}, 100, 0.3, 1.9},
		"clockwise arc": Arc{orb.Point{5, 5}, 100, 0.3, -4},
		"armhole":       Bezier{orb.Point{250, 220}, orb.Point{180, 220}, orb.Point{170, 280}, orb.Point{190, 400}},
		"loop":          Bezier{orb.Point{0, 0}, orb.Point{300, 100}, orb.Point{-200, 100}, orb.Point{100, 0}},
		"parabola":      parabola,
		"cusp": Bezier{geometry.Times(cusp.P0, 100), geometry.Times(cusp.P1, 100),
			geometry.Times(cusp.P2, 100), geometry.Times(cusp.P3, 100)},
		"end at rest": Bezier{orb.Point{0, 0}, orb.Point{0, 0}, orb.Point{100, 50}, orb.Point{100, 50}},
		"straight":    Bezier{orb.Point{0, 0}, orb.Point{10, 0}, orb.Point{90, 0}, orb.Point{100, 0}},
		"back and on": Bezier{orb.Point{0, 0}, orb.Point{150, 0}, orb.Point{-50, 0}, orb.Point{100, 0}},
	}
}

// Lengths against closed forms.
func TestCurveLengths(t *testing.T) {
	assert.Equal(t, 50.0, Line{orb.Point{10, 20}, orb.Point{40, 60}}.Length())
	assert.InDelta(t, 2*math.Pi*50, Arc{Radius: 50, Sweep: -2 * math.Pi}.Length(), 1e-9, "circumference")
	// Arc length of y = x^2/4 from the vertex to x: x/2 sqrt(1+x^2/4) + asinh(x/2).
	want := 2 * (math.Sqrt(2) + math.Asinh(1))
	assert.InDelta(t, want, parabola.Length(), 1e-9, "parabola")
	assert.InDelta(t, want*1000, parabola.Map(Scale(1000)).Length(), 1e-6, "parabola of 4 m")
	// Neile: x = s^3, y = s^2 from 0 to 1 is (13 sqrt 13 - 8) / 27 long.
	assert.InDelta(t, 200*(13*math.Sqrt(13)-8)/27, cusp.Map(Scale(100)).Length(), 1e-6, "semicubical parabola")
	// Quarter circle of radius 100 by a cubic with k = 4/3 (sqrt 2 - 1): the
	// well-known approximation is 2.7e-4 off at most in radius.
	k := 400.0 / 3 * (math.Sqrt2 - 1)
	quarter := Bezier{orb.Point{100, 0}, orb.Point{100, k}, orb.Point{k, 100}, orb.Point{0, 100}}
	assert.InDelta(t, 50*math.Pi, quarter.Length(), 0.05)
}

// This curve all but turns on the spot, so that two quadratures can agree on a
// wrong length there. The right one is the sum of 16-point Gauss rules over
// 262,144 parts, which has converged to 1e-9.
func TestBezierLengthAtASharpTurn(t *testing.T) {
	b := Bezier{orb.Point{0.19270624484488508, 0}, orb.Point{0, 0}, orb.Point{451.875, 0.10835792474086237},
		orb.Point{0, -0.00011101611966779501}}
	assert.InDelta(t, 401.48837129086, b.Length(), 1e-6)
}

// gonum's quadrature with many points agrees on random curves; on those that
// nearly turn on the spot it is itself only good to 1e-5.
func TestBezierLengthAgainstGonum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawBezier(t)
		want := 0.0
		const parts = 2048
		for i := range parts {
			want += quad.Fixed(b.speed, float64(i)/parts, float64(i+1)/parts, 12, quad.Legendre{}, 0)
		}
		assert.InDelta(t, want, b.Length(), 1e-5)
	})
}

func drawBezier(t *rapid.T) Bezier {
	number := rapid.Float64Range(-500, 500)
	point := func(name string) orb.Point {
		return orb.Point{number.Draw(t, name+"x"), number.Draw(t, name+"y")}
	}
	return Bezier{point("p0"), point("p1"), point("p2"), point("p3")}
}

func TestCurvesKeepTheirPromises(t *testing.T) {
	turnAndMirror := MirrorX().Then(Turn(30)).Then(Scale(2)).Then(Move(7, -3))
	for name, c := range curvesByName() {
		t.Run(name, func(t *testing.T) {
			assert.Equal(t, c.Start(), c.At(0))
			assert.Equal(t, c.End(), c.At(1))
			back, image := c.Reverse(), c.Map(turnAndMirror)
			assert.InDelta(t, c.Length(), back.Length(), 1e-6)
			assert.InDelta(t, 2*c.Length(), image.Length(), 1e-6)
			for _, at := range []float64{0, 0.1, 0.37, 0.5, 0.9, 1} {
				p := c.At(at)
				before, after := c.Split(at)
				near(t, p, before.End(), "split")
				near(t, p, after.Start(), "split")
				assert.InDelta(t, c.Length(), before.Length()+after.Length(), 2e-6)
				near(t, p, back.At(1-at), "reverse")
				near(t, turnAndMirror.Apply(p), image.At(at), "map")
				assert.InDelta(t, 1, geometry.Norm(c.Tangent(at)), 1e-9, "a direction at %v", at)
			}
			// Tangents against differences.
			for _, at := range []float64{0.1, 0.37, 0.9} {
				const h = 1e-6
				difference := geometry.Unit(geometry.Sub(c.At(at+h), c.At(at-h)))
				near2(t, difference, c.Tangent(at), 1e-4)
			}
		})
	}
}

func near(t *testing.T, want, got orb.Point, words string) {
	t.Helper()
	assert.InDelta(t, 0, geometry.Distance(want, got), 1e-9, "%s: want %v, got %v", words, want, got)
}

func near2(t *testing.T, want, got orb.Point, tolerance float64) {
	t.Helper()
	assert.InDelta(t, 0, geometry.Distance(want, got), tolerance, "want %v, got %v", want, got)
}

func TestTangentWhereTheCurveStandsStill(t *testing.T) {
	resting := Bezier{orb.Point{0, 0}, orb.Point{0, 0}, orb.Point{3, 4}, orb.Point{3, 4}}
	near(t, orb.Point{0.6, 0.8}, resting.Tangent(0), "start")
	near(t, orb.Point{0.6, 0.8}, resting.Tangent(1), "end")
	assert.Equal(t, orb.Point{}, Bezier{}.Tangent(0.5), "a point has no direction")
	near(t, orb.Point{0, 1}, cusp.Tangent(0.5), "a cusp sets off again upward")
}

// Flattening: chords stay within the tolerance of the curve, and the curve of
// the chords, whatever the tolerance.
func TestFlattenKeepsItsTolerance(t *testing.T) {
	for name, c := range curvesByName() {
		for _, tolerance := range []float64{5, 0.5, 0.05, 0.001} {
			assertWithin(t, c, c.Flatten(tolerance), tolerance, name)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		tolerance := rapid.Float64Range(0.01, 3).Draw(t, "tolerance")
		b := drawBezier(t)
		assertWithin(t, b, b.Flatten(tolerance), tolerance, "random")
	})
}

func assertWithin(t require.TestingT, c Curve, chords orb.LineString, tolerance float64, name string) {
	require.Equal(t, c.Start(), chords[0])
	require.Equal(t, c.End(), chords[len(chords)-1])
	const samples = 1000
	worst := 0.0
	for i := range samples + 1 {
		p, least := c.At(float64(i)/samples), math.Inf(1)
		for k := 0; k+1 < len(chords); k++ {
			least = math.Min(least, geometry.SegmentDistance(p, chords[k], chords[k+1]))
		}
		worst = math.Max(worst, least)
	}
	assert.LessOrEqual(t, worst, tolerance+1e-9, "%s at %v: %d chords", name, tolerance, len(chords)-1)
}

func TestFlattenIsFrugal(t *testing.T) {
	armhole := curvesByName()["armhole"]
	assert.LessOrEqual(t, len(armhole.Flatten(0.1)), 33)
	// A chord of a circle of radius r with sagitta s spans 2 acos(1 - s/r).
	circle := Arc{Radius: 100, Sweep: 2 * math.Pi}
	assert.Len(t, circle.Flatten(0.1), int(math.Ceil(math.Pi/math.Acos(1-0.001)))+1)
	assert.Len(t, Arc{Radius: 0.01, Sweep: 2 * math.Pi}.Flatten(1), 5, "never less than four chords a circle")
	for _, odd := range []float64{0, -1, math.NaN()} {
		assert.NotEmpty(t, armhole.Flatten(odd), "an unusable tolerance counts as the finest")
	}
}

func BenchmarkBezierLength(b *testing.B) {
	c := curvesByName()["armhole"]
	for b.Loop() {
		if l := c.Length(); l < 190 || l > 250 {
			b.Fatal(l)
		}
	}
}
