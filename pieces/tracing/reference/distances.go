package reference

import (
	"math"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/mat"

	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/camera"
)

// Distance between two pixels of the photo, mm.
type Distance struct {
	From, To orb.Point
	Length   float64
}

// What is expected of two distances [source.OwnChoice].
const (
	mostUnlike = 0.02 // by which share they may disagree
	reading    = 0.7  // pixels by which both ends are likely to be read wrong
)

// OfDistances takes the photo as square on, and its scale as the mean of two distances.
// The errors are ErrDistances and ErrNotSquareOn.
func OfDistances(width, height int, d [2]Distance) (Found, error) {
	var pixels [2]float64
	for i, one := range d {
		pixels[i] = geometry.Distance(one.From, one.To)
		if !(pixels[i] >= 2) || !(one.Length > 0) || math.IsInf(one.Length, 0) || math.IsInf(pixels[i], 0) {
			return Found{}, ErrDistances
		}
	}
	first, second := d[0].Length/pixels[0], d[1].Length/pixels[1]
	unlike := math.Abs(first-second) / math.Max(first, second)
	if unlike > mostUnlike {
		return Found{}, ErrNotSquareOn
	}
	scale := (d[0].Length + d[1].Length) / (pixels[0] + pixels[1])
	c := camera.Of(width, height)
	c.P[0], c.P[4] = c.Half*scale, -c.Half*scale
	return Found{
		Kind: Distances, Camera: c, Covariance: mat.NewSymDense(camera.Count, nil), Count: [2]int{2, 0},
		Marks:    []orb.Point{d[0].From, d[0].To, d[1].From, d[1].To},
		Relative: math.Hypot(unlike, reading*2/(pixels[0]+pixels[1])),
	}, nil
}
