package camera

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// slanting camera with a lens that bows.
func slanting() Camera {
	c := Of(1600, 1200)
	c.P = [Count]float64{600, 40, 500, 30, -620, 400, 0.15, -0.2, 0.05, 0.01, -0.005, 0.001, -0.002}
	return c
}

func TestToPictureIsTheInverse(t *testing.T) {
	c := slanting()
	for x := 50.0; x < 1600; x += 150 {
		for y := 50.0; y < 1200; y += 150 {
			at, ok := c.ToPicture(c.ToPlane(orb.Point{x, y}), orb.Point{800, 600})
			require.True(t, ok)
			assert.InDelta(t, x, at[0], 1e-4)
			assert.InDelta(t, y, at[1], 1e-4)
		}
	}
}

func TestPerspectiveThroughFourPlaces(t *testing.T) {
	c := slanting()
	pixels := []orb.Point{{100, 100}, {1500, 150}, {1450, 1100}, {200, 1000}}
	var plane []orb.Point
	for _, p := range pixels {
		plane = append(plane, c.ToPlane(p))
	}
	fitted := c
	for i := range 8 {
		fitted.P[i] = float64(i)
	}
	fitted, err := fitted.Perspective(pixels, plane)
	require.NoError(t, err)
	assert.InDelta(t, c.ToPlane(orb.Point{700, 500})[0], fitted.ToPlane(orb.Point{700, 500})[0], 1e-6)
	_, err = fitted.Perspective(pixels, []orb.Point{{1, 1}, {1, 1}, {1, 1}, {1, 1}})
	assert.ErrorIs(t, err, ErrUnsolvable)
}

// A line through noisy places: its parameters within what the covariance says, and a
// place far off changes nothing.
func TestSolve(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	var xs, ys []float64
	for i := range 200 {
		x := float64(i) / 20
		xs, ys = append(xs, x), append(ys, 3+0.5*x+random.NormFloat64()*0.1)
	}
	ys[7] += 50
	problem := Problem{Count: len(xs), Steps: []float64{1e-6, 1e-6}, Prior: []float64{0, 0},
		Residuals: func(p, into []float64) {
			for i, x := range xs {
				into[i] = p[0] + p[1]*x - ys[i]
			}
		}}
	fit, err := problem.Solve([]float64{0, 0})
	require.NoError(t, err)
	for i, want := range []float64{3, 0.5} {
		assert.InDelta(t, want, fit.Parameters[i], 4*math.Sqrt(fit.Covariance.At(i, i)))
	}
	assert.InDelta(t, 0.1, fit.Sigma, 0.02)
}
