package reference

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/raster"
)

// seenBy the camera: light lines 10 mm apart on a dark ground, 1 mm wide.
func seenBy(c camera.Camera, width, height int) *raster.Grey {
	random := rand.New(rand.NewPCG(5, 6))
	out := raster.New(width, height)
	for y := range height {
		for x := range width {
			p := c.ToPlane(orb.Point{float64(x), float64(y)})
			scale := c.Scale(orb.Point{float64(x), float64(y)})
			light := 0.0
			for _, at := range p {
				off := (math.Abs(at-10*math.Round(at/10)) - 0.5) / scale
				light = math.Max(light, 0.5-math.Max(-0.5, math.Min(0.5, off)))
			}
			out.Values[y*width+x] = float32(60 + 90*light + random.NormFloat64()*2)
		}
	}
	return out
}

// tilted by 25 degrees, with a lens that bows.
func tilted(t *testing.T) camera.Camera {
	c := camera.Of(600, 450)
	sin, cos := math.Sincos(25 * math.Pi / 180)
	var pixels, plane []orb.Point
	for _, p := range []orb.Point{{-150, -100}, {150, -100}, {150, 100}, {-150, 100}} {
		depth := 600 + p[1]*sin
		pixels = append(pixels, orb.Point{300 + 900*p[0]/depth, 225 - 900*p[1]*cos/depth})
		plane = append(plane, p)
	}
	c, err := c.Perspective(pixels, plane)
	require.NoError(t, err)
	c.P[8] = 0.05
	return c
}

func TestSquares(t *testing.T) {
	c := tilted(t)
	got, err := OfSquares(seenBy(c, 600, 450), 10)
	require.NoError(t, err)
	// Distances on the plane are those of the camera, wherever the lattice begins.
	a, b := orb.Point{60, 50}, orb.Point{540, 400}
	p, q, r, s := c.ToPlane(a), c.ToPlane(b), got.Camera.ToPlane(a), got.Camera.ToPlane(b)
	assert.InDelta(t, math.Hypot(p[0]-q[0], p[1]-q[1]), math.Hypot(r[0]-s[0], r[1]-s[1]), 0.5)
	assert.Less(t, got.Sigma, 0.3)
}

func TestNoSquares(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 8))
	g := raster.New(400, 300)
	for i := range g.Values {
		g.Values[i] = float32(100 + random.NormFloat64()*20)
	}
	_, err := OfSquares(g, 10)
	assert.ErrorIs(t, err, ErrNoSquares)
	_, err = OfSquares(raster.New(120, 110), 10)
	assert.ErrorIs(t, err, ErrNoSquares)
}

// Columns seen by chance between true ones are left out.
func TestHalved(t *testing.T) {
	l := lattice{}
	for column := range 20 {
		for row := range 10 {
			if column%2 == 0 || row == 0 {
				l[[2]int{column, row}] = orb.Point{float64(column), float64(row)}
			}
		}
	}
	got := l.halved()
	assert.Len(t, got, 100)
	assert.Equal(t, orb.Point{18, 9}, got[[2]int{9, 9}])
}

func TestDistances(t *testing.T) {
	d := [2]Distance{{orb.Point{0, 0}, orb.Point{100, 0}, 200}, {orb.Point{0, 0}, orb.Point{0, 50}, 101}}
	got, err := OfDistances(400, 300, d)
	require.NoError(t, err)
	assert.InDelta(t, 301./150, got.Camera.Scale(orb.Point{200, 150}), 1e-9)
	d[1].Length = 104
	_, err = OfDistances(400, 300, d)
	assert.ErrorIs(t, err, ErrNotSquareOn)
	d[1].Length = math.NaN()
	_, err = OfDistances(400, 300, d)
	assert.ErrorIs(t, err, ErrDistances)
}
