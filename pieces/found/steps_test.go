package found

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// A neck of 10 mm meets a shoulder of 15 mm at a blunt corner: the cutting line steps there,
// and the seam has its corner behind the step.
func TestStepBetweenAllowances(t *testing.T) {
	sew := []orb.Point{{0, 0}, {200, 0}, {170, 150}, {0, 200}}
	widths := []float64{15, 15, 10, 15}
	cutLine := func(k int) (a, b orb.Point) {
		from, to := sew[k], sew[(k+1)%len(sew)]
		out := geometry.Times(geometry.Left(geometry.Unit(geometry.Sub(to, from))), -widths[k])
		return geometry.Add(from, out), geometry.Add(to, out)
	}
	var corners []orb.Point
	for k := range sew {
		a, b := cutLine(k)
		if k == 2 { // drawn square to the shoulder, not on to where both meet
			corners = append(corners, a)
		} else {
			c, d := cutLine((k + 3) % 4)
			u, v := geometry.Sub(d, c), geometry.Sub(b, a)
			corners = append(corners, geometry.Add(c, geometry.Times(u, geometry.Cross(geometry.Sub(a, c), v)/geometry.Cross(u,
				v))))
		}
		if k == 1 {
			corners = append(corners, b)
		}
	}
	p := pieces.Piece{Name: "back", Cut: 1}
	for i, c := range corners {
		p.Edges = append(p.Edges, pieces.Edge{Name: seams.Called([]string{"hem", "side", "step", "neck", "centre"}[i]),
			Path: pieces.Path{pieces.Line{From: c, To: corners[(i+1)%len(corners)]}}})
	}
	p.Grain.From, p.Grain.To = orb.Point{50, 50}, orb.Point{50, 150}
	var path pieces.Path
	for i, q := range sew {
		path = append(path, pieces.Line{From: q, To: sew[(i+1)%len(sew)]})
	}
	assert.Zero(t, allowBySew(&p, path))
	for _, e := range p.Edges {
		assert.Greater(t, e.Included, 0.0, e.Name.String())
	}
	seam, err := p.AtSeam()
	require.NoError(t, err)
	step, ok := seam.Edge(seams.Called("step"))
	require.True(t, ok)
	assert.Less(t, step.Path.Length(), 0.5)
	assert.InDelta(t, 0, geometry.Distance(step.Path.Start(), sew[2]), 0.3)
}
