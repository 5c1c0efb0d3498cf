package outline

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// A semicircle by its rise: the length of the arc is known.
func TestArcByItsRise(t *testing.T) {
	edges, reversed, err := Edges([]Node{{At: orb.Point{0, 0}, Edge: seams.Bottom, Rise: 50},
		{At: orb.Point{100, 0}, Edge: seams.Top}})
	require.NoError(t, err)
	assert.False(t, reversed)
	assert.InDelta(t, 50*math.Pi, edges[0].Path.Length(), 1e-9)
	assert.InDelta(t, -50, edges[0].Path.At(25 * math.Pi)[1], 1e-9)
	assert.InDelta(t, 50, RiseOf(edges[0].Path[0].(pieces.Arc)), 1e-9)
}

func TestArcsKeepTheirRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := orb.Point{rapid.Float64Range(-500, 500).Draw(t, "x"), 0}, orb.Point{600,
			rapid.Float64Range(-500, 500).Draw(t, "y")}
		rise := rapid.Float64Range(0.01, 400).Draw(t, "rise") * float64(rapid.SampledFrom([]int{1, -1}).Draw(t, "side"))
		got := Arc(a, b, rise)
		assert.InDelta(t, 0, geometry.Distance(got.Start(), a), 1e-6)
		assert.InDelta(t, 0, geometry.Distance(got.End(), b), 1e-6)
		assert.InDelta(t, rise, RiseOf(got), 1e-6)
		middle := geometry.Sub(got.At(0.5), geometry.Between(a, b, 0.5))
		assert.InDelta(t, rise, geometry.Dot(middle, geometry.Right(geometry.Unit(geometry.Sub(b, a)))), 1e-6)
	})
}

// Points every 5 cm on a circle give the circle to a tenth of a mm.
func TestThroughFollowsACircle(t *testing.T) {
	const radius = 250
	var points []orb.Point
	for i := range 9 {
		sin, cos := math.Sincos(float64(i) * 0.2)
		points = append(points, orb.Point{radius * cos, radius * sin})
	}
	for _, q := range Through(points).Flatten(0.01) {
		assert.InDelta(t, radius, math.Hypot(q[0], q[1]), 0.1)
	}
}

func TestClockwiseIsReversed(t *testing.T) {
	edges, reversed, err := Edges([]Node{{At: orb.Point{0, 0}, Edge: seams.Left},
		{At: orb.Point{0, 10}, Edge: seams.Top}, {At: orb.Point{10, 0}, Edge: seams.Bottom}})
	require.NoError(t, err)
	assert.True(t, reversed)
	assert.Equal(t, []seams.Name{seams.Bottom, seams.Top, seams.Left},
		[]seams.Name{edges[0].Name, edges[1].Name, edges[2].Name})
	assert.Positive(t, geometry.Area(pieces.Piece{Edges: edges}.Boundary(1)))
}

// An edge goes on round a bend of the same name, also where the list begins in it.
func TestBendInAnEdge(t *testing.T) {
	edges, _, err := Edges([]Node{{At: orb.Point{0, 0}, Edge: seams.Hem}, {At: orb.Point{10, 0}, Edge: seams.SideSeam},
		{At: orb.Point{10, 10}, Edge: seams.Hem}, {At: orb.Point{0, 10}, Edge: seams.Hem}})
	require.NoError(t, err)
	require.Len(t, edges, 2)
	assert.InDelta(t, 30, edges[0].Path.Length()+edges[1].Path.Length()-10, 1e-9)
}

// Readings of a piece that is known: half of an ellipse on the fold, cut off at the
// top and the bottom.
func TestReadingsFollowTheShape(t *testing.T) {
	across := func(y float64) float64 { return 200 * math.Sqrt(1-(y-300)*(y-300)/(400*400)) }
	o := Offsets{Length: 600, Every: 50, OnFold: true}
	for y := 0.; y <= 600; y += 50 {
		o.Right = append(o.Right, across(y))
	}
	nodes, err := o.Nodes()
	require.NoError(t, err)
	edges, reversed, err := Edges(nodes)
	require.NoError(t, err)
	assert.False(t, reversed)
	for _, q := range edges[1].Path.Flatten(0.01) {
		assert.InDelta(t, across(q[1]), q[0], 0.2, "at %v", q[1])
	}
}

// A curved edge leaves the fold square, as its mirror image goes on from it.
func TestReadingsLeaveTheFoldSquare(t *testing.T) {
	o := Offsets{Length: 600, Every: 60, OnFold: true, Top: []float64{0, 1, 4, 12},
		Bottom: []float64{0, -2, -6, -13, -20, -22}}
	o.Right = []float64{290, 288, 280, 270, 260, 250, 240, 230, 220, 210, 200, 190, 178}
	nodes, err := o.Nodes()
	require.NoError(t, err)
	edges, _, err := Edges(nodes)
	require.NoError(t, err)
	bottom, top := edges[0].Path, edges[2].Path
	assert.InDelta(t, 0, bottom.Tangent(0)[1], 1e-3)
	assert.InDelta(t, 0, top.Tangent(top.Length())[1], 1e-3)
	assert.Equal(t, orb.Point{290, -22}, bottom.End())
	assert.Equal(t, orb.Point{178, 612}, top.Start())
	assert.Equal(t, orb.Point{0, 600}, top.End())
}

// Both sides measured alike give a piece that is its own mirror image.
func TestReadingsOfBothSides(t *testing.T) {
	o := Offsets{Length: 200, Every: 50, Right: []float64{100, 110, 115, 110, 90},
		Left: []float64{100, 110, 115, 110, 90},
		Top:  []float64{10, 6, 0}, TopLeft: []float64{10, 6, 0}}
	nodes, err := o.Nodes()
	require.NoError(t, err)
	edges, _, err := Edges(nodes)
	require.NoError(t, err)
	ring := pieces.Piece{Edges: edges}.Boundary(0.1)
	box := ring.Bound()
	assert.InDelta(t, 0, box.Min[0]+box.Max[0], 1e-9)
	assert.InDelta(t, 10, edges[2].Path.At(edges[2].Path.Length() / 2)[1]-200, 1e-6)
}

// A step that lies near a corner is read or left out, as its maker pleases.
func TestReadingsNearACorner(t *testing.T) {
	for _, right := range [][]float64{{200, 190, 180, 172, 170}, {200, 190, 180, 170}} {
		o := Offsets{Length: 160, Every: 50, Right: right}
		nodes, err := o.Nodes()
		require.NoError(t, err)
		edges, _, err := Edges(nodes)
		require.NoError(t, err)
		assert.Equal(t, orb.Point{170, 160}, edges[1].Path.End())
	}
}

func TestReadingsRefused(t *testing.T) {
	tests := map[string]struct {
		o    Offsets
		want ReadingFault
	}{
		"none":    {Offsets{Every: 50}, ReadingFault{Of: TooFewReadings, List: OfRight}},
		"no step": {Offsets{Right: []float64{1, 2}}, ReadingFault{Of: NoSteps}},
		"both": {Offsets{Every: 50, At: []float64{0, 50}, Right: []float64{1, 2}},
			ReadingFault{Of: StepsAndPlaces}},
		"too few": {Offsets{Length: 200, Every: 50, Right: []float64{10, 10, 10}},
			ReadingFault{Of: SideAmiss, List: OfRight, High: 200, Places: []float64{0, 50, 100, 150, 200}, Readings: 3}},
		"places": {Offsets{At: []float64{0, 50, 100}, Right: []float64{10, 10}},
			ReadingFault{Of: PlacesAmiss, List: OfRight, Number: 3, Readings: 2}},
		"places back": {Offsets{At: []float64{0, 50, 40, 100}, Right: []float64{10, 10, 10, 10}},
			ReadingFault{Of: PlacesBackwards, List: OfRight, Places: []float64{0, 50, 40, 100}}},
		"a wide top": {Offsets{Length: 100, Every: 50, Right: []float64{10, 10, 120}, Top: []float64{0, 0}},
			ReadingFault{Of: AcrossAmiss, List: OfTop, High: 120, Places: []float64{0, 50, 100, 120}, Readings: 2}},
		"a top without steps": {Offsets{At: []float64{0, 100}, Right: []float64{10, 10}, Top: []float64{0, 0, 0}},
			ReadingFault{Of: AcrossNoSteps, List: OfTop}},
		"a bottom without steps": {Offsets{At: []float64{0, 100}, Right: []float64{10, 10}, Bottom: []float64{0, 0, 0}},
			ReadingFault{Of: AcrossNoSteps, List: OfBottom}},
		"endless steps": {Offsets{Length: 1e11, Every: 0.001, Right: []float64{10, 10}},
			ReadingFault{Of: TooManySteps, Length: 1e11, Every: 0.001}},
		"upside down": {Offsets{Length: 100, Every: 50, Right: []float64{10, 10}, Top: []float64{0, -100}},
			ReadingFault{Of: UpsideDown, List: OfRight}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := tt.o.Nodes()
			assert.Equal(t, &tt.want, err)
		})
	}
}
