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

// A sew line that goes straight on has no corner for the step of the cutting line from 15 to
// 10 mm, so that the step is a part of one of the two edges; the sew line is where it is drawn.
func TestStepOnAStraightSeam(t *testing.T) {
	corners := []orb.Point{{-15, -30}, {215, -30}, {215, 100}, {210, 100}, {210, 210}, {-15, 210}}
	p := pieces.Piece{Name: "front", Cut: 1}
	for i, c := range corners {
		line := pieces.Line{From: c, To: corners[(i+1)%6]}
		p.Edges = append(p.Edges, pieces.Edge{Name: numbered(i), Path: pieces.Path{line}})
	}
	p.Grain.From, p.Grain.To = orb.Point{50, 50}, orb.Point{50, 150}
	sew := []orb.Point{{0, 0}, {200, 0}, {200, 200}, {0, 200}}
	var path pieces.Path
	for i, q := range sew {
		path = append(path, pieces.Line{From: q, To: sew[(i+1)%4]})
	}
	before := p.Boundary(0.01)
	assert.Zero(t, allowBySew(&p, path))
	assert.Equal(t, before, p.Boundary(0.01), "the cutting line is kept")
	var widths []float64
	for i, e := range p.Edges {
		widths = append(widths, e.Included)
		assert.Equal(t, numbered(i), e.Name)
	}
	assert.Equal(t, []float64{30, 15, 10, 10, 15}, widths)
	seam, err := p.AtSeam()
	require.NoError(t, err)
	require.NoError(t, p.Check())
	assert.InDelta(t, 200*200, geometry.Area(seam.Boundary(0.01)), 1e-6)
	assert.Equal(t, orb.Bound{Max: orb.Point{200, 200}}, seam.Boundary(0.01).Bound())
}

// A step lies between two edges of known allowances: beside another it would be given a
// width that nothing tells.
func TestStepsLieBetweenKnownAllowances(t *testing.T) {
	edge := func(from, to orb.Point, included float64) pieces.Edge {
		return pieces.Edge{Path: pieces.Path{pieces.Line{From: from, To: to}}, Included: included, Unknown: included == 0}
	}
	low, high := orb.Point{100, 0}, orb.Point{100, 20}
	for _, c := range []struct {
		before, after float64
		to            orb.Point
		want          int
	}{
		{10, 20, orb.Point{0, 120}, 1}, {0, 30, orb.Point{0, 120}, 0},
		{10, 5, orb.Point{150, 120}, 1}, {10, 0, orb.Point{150, 120}, 0},
	} {
		p := pieces.Piece{Edges: []pieces.Edge{edge(orb.Point{}, low, c.before), edge(low, high, 0),
			edge(high, c.to, c.after)}}
		corner, ok := seamCorner(p.Edges[0], p.Edges[2])
		require.True(t, ok)
		line := orb.Ring{corner, geometry.Add(corner, orb.Point{9, 0}), geometry.Add(corner, orb.Point{0, 9}), corner}
		assert.Len(t, stepsOf(&p, line), c.want, "%+v", c)
	}
}

// An edge not much longer than its allowance is wide has its width in its middle: near its
// ends the corners of the sew line are the nearest of it.
func TestWidthOfAShortEdge(t *testing.T) {
	corners := []orb.Point{{-15, -15}, {415, -15}, {415, 35}, {-15, 35}}
	sew := orb.Ring{{0, 0}, {400, 0}, {400, 20}, {0, 20}, {0, 0}}
	width, ok := widthTo(pieces.Path{pieces.Line{From: corners[1], To: corners[2]}}, sew)
	assert.True(t, ok)
	assert.Equal(t, 15.0, width)
	_, ok = widthTo(pieces.Path{pieces.Line{From: corners[1], To: orb.Point{430, 35}}}, sew)
	assert.False(t, ok, "it runs at a slant")
}

// Seam lines meet behind a square corner; those of edges that run on meet nowhere.
func TestSeamCorner(t *testing.T) {
	edge := func(from, to orb.Point, included float64) pieces.Edge {
		return pieces.Edge{Path: pieces.Path{pieces.Line{From: from, To: to}}, Included: included}
	}
	before := edge(orb.Point{0, 0}, orb.Point{100, 0}, 10)
	at, ok := seamCorner(before, edge(orb.Point{100, 0}, orb.Point{100, 80}, 15))
	assert.True(t, ok)
	assert.InDelta(t, 85, at[0], 1e-9)
	assert.InDelta(t, 10, at[1], 1e-9)
	_, ok = seamCorner(before, edge(orb.Point{100, 0}, orb.Point{200, 1}, 15))
	assert.False(t, ok)
}

// A stripe crosses a segment at its ends too, so that none slips through between two.
func TestCrossingAtEnds(t *testing.T) {
	for x, want := range map[float64]bool{-1: false, 0: true, 5: true, 10: true, 11: false} {
		at, ok := crossing(orb.Point{0, 0}, orb.Point{10, 0}, orb.Point{x, -5}, orb.Point{x, 5})
		assert.Equal(t, want, ok, "%v", x)
		if ok {
			assert.Equal(t, orb.Point{x, 0}, at)
		}
	}
}

// The image of a piece lies 10 mm beside a line that is 10 mm beside the piece.
func TestImageLiesBeside(t *testing.T) {
	corners := []orb.Point{{20, 0}, {100, 0}, {60, 50}}
	p := Piece{}
	for i, from := range corners {
		p.Outline = append(p.Outline, Step{Curve: pieces.Line{From: from, To: corners[(i+1)%3]}})
	}
	box := ring(pathOf(p.image().Outline)).Bound()
	assert.Equal(t, orb.Bound{Min: orb.Point{120, 0}, Max: orb.Point{200, 50}}, box)
}
