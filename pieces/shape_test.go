package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

func TestSeamOutlineOfKnownAreas(t *testing.T) {
	disc := Piece{Edges: []Edge{{Name: seams.Called("rim"), Path: Path{Arc{Radius: 100, Sweep: 2 * math.Pi}}}}}
	ring := disc.SeamOutline(0.001)
	assert.Equal(t, ring[0], ring[len(ring)-1])
	// Chords lie at most 0.001 mm inside: the area is that much short at most.
	assert.InDelta(t, math.Pi*100*100, geometry.Area(ring), 2*math.Pi*100*0.001)
	assert.Equal(t, 240.0*80, geometry.Area(Rectangle("cuff", 240, 80).SeamOutline(0.1)))
	assert.Equal(t, orb.Ring{{0, 0}, {240, 0}, {240, 80}, {0, 80}, {0, 0}}, Rectangle("cuff", 240, 80).SeamOutline(0.1))
	assert.Empty(t, Piece{}.SeamOutline(0.1))
}

func TestRectangle(t *testing.T) {
	p := Rectangle("cuff", 240, 80)
	assert.Equal(t, 1, p.Cut)
	assert.Equal(t, StraightGrain, p.Grain.Lie)
	assert.Equal(t, orb.Point{0, 1}, geometry.Unit(geometry.Sub(p.Grain.To, p.Grain.From)), "grain along the height")
	right, ok := p.Edge(seams.Right)
	require.True(t, ok)
	assert.Equal(t, 80.0, right.Path.Length())
	_, ok = p.Edge(seams.Hem)
	assert.False(t, ok)
}

func TestMirrored(t *testing.T) {
	p := half()
	m := p.Mirrored()
	assert.Greater(t, geometry.Area(m.SeamOutline(0.1)), 0.0, "still counter-clockwise")
	assert.InDelta(t, geometry.Area(p.SeamOutline(0.1)), geometry.Area(m.SeamOutline(0.1)), 1e-6)
	for i, n := range p.Notches {
		before, _ := p.Edge(n.Edge)
		after, _ := m.Edge(m.Notches[i].Edge)
		near(t, MirrorX().Apply(before.Path.At(n.At)), after.Path.At(m.Notches[i].At), "notches stay in place")
	}
	mouth, _ := m.Edge(seams.Called("mouth"))
	assert.Equal(t, mouth.Path.Start(), m.Darts[0].Start, "the dart's legs follow its mouth")
	assert.Equal(t, orb.Point{-150, 400}, m.Marks[2].At)
	assert.Equal(t, orb.Point{-50, 400}, m.Grain.To)
	again := m.Mirrored()
	assert.InDeltaSlice(t, flat(p.SeamOutline(0.1)), flat(again.SeamOutline(0.1)), 1e-9, "twice is as before")
	assert.Equal(t, half(), p, "the piece itself is not edited")
}

func flat(ring orb.Ring) (out []float64) {
	for _, p := range ring {
		out = append(out, p[0], p[1])
	}
	return out
}

func TestMapScalesAllowancesAndNotches(t *testing.T) {
	p := half().Map(Scale(0.5))
	assert.NoError(t, p.Check())
	assert.Equal(t, 20.0, p.Edges[0].Allowance)
	assert.Equal(t, 150.0, p.Notches[0].At)
}

func TestUnfolded(t *testing.T) {
	p := half()
	whole := p.Unfolded()
	require.NoError(t, whole.Check())
	assert.Empty(t, whole.Fold)
	assert.InDelta(t, 2*geometry.Area(p.SeamOutline(0.1)), geometry.Area(whole.SeamOutline(0.1)), 1e-6)
	var names []seams.Name
	for _, e := range whole.Edges {
		names = append(names, e.Name)
	}
	assert.Equal(t, []seams.Name{seams.Hem, seams.SideSeam, seams.Waist.Stretch(2), seams.Called("mouth"),
		seams.Waist.Stretch(1), seams.Called("mouth mirrored"), seams.Waist.Stretch(2).Mirrored(),
		seams.SideSeam.Mirrored()}, names)
	hem, _ := whole.Edge(seams.Hem)
	assert.Equal(t, 440.0, hem.Path.Length(), "runs on over the fold")
	assert.True(t, hem.Hem)
	assert.Equal(t, 40.0, hem.Allowance)
	assert.Equal(t, p.Grain, whole.Grain)

	var places []orb.Point
	for _, n := range whole.Notches {
		e, ok := whole.Edge(n.Edge)
		require.True(t, ok)
		places = append(places, e.Path.At(n.At))
	}
	side, _ := p.Edge(seams.SideSeam)
	hip := side.Path.At(300)
	// The notch of the waist lies on the fold: it is its own image.
	want := []orb.Point{hip, {-hip[0], hip[1]}, {30, 0}, {-30, 0}, {0, 500}}
	require.Len(t, places, len(want))
	for i := range want {
		near(t, want[i], places[i], "notch")
	}
	assert.Equal(t, marks.Hip, whole.Notches[1].Match)

	require.Len(t, whole.Darts, 2)
	assert.Equal(t, Dart{Name: seams.Waist.Dart(0).Mirrored(), Mouth: seams.Called("mouth mirrored"),
		Start: orb.Point{-100, 500}, Apex: orb.Point{-110, 400}, End: orb.Point{-120, 500}}, whole.Darts[1])
	require.Len(t, whole.Marks, 5, "the line on the fold is there once")
	assert.Equal(t, marks.Called("pocket mirrored"), whole.Marks[4].Name)
	assert.Equal(t, orb.Point{-150, 400}, whole.Marks[4].At)
	assert.Equal(t, half(), p, "the half itself is not edited")
}

func TestUnfoldedWhereTheFoldIsAnywhere(t *testing.T) {
	p := half().Map(Turn(40).Then(Move(300, 20)))
	whole := p.Unfolded()
	require.NoError(t, whole.Check())
	assert.InDelta(t, 2*geometry.Area(p.SeamOutline(0.1)), geometry.Area(whole.SeamOutline(0.1)), 1e-6)
}

func TestUnfoldedHalfDisc(t *testing.T) {
	p := Piece{Name: "yoke", Cut: 1, Fold: seams.Called("fold"), Grain: Grain{To: orb.Point{0, 50}}, Edges: []Edge{
		{Name: seams.Called("rim"), Path: Path{Arc{Radius: 100, Begin: -math.Pi / 2, Sweep: math.Pi}}, Allowance: 10},
		{Name: seams.Called("fold"), Path: Path{Line{orb.Point{0, 100}, orb.Point{0, -100}}}},
	}, Notches: []Notch{{Edge: seams.Called("rim"), At: 40, Count: 1}}}
	require.NoError(t, p.Check())
	whole := p.Unfolded()
	require.NoError(t, whole.Check())
	require.Len(t, whole.Edges, 1)
	assert.InDelta(t, 2*math.Pi*100, whole.Edges[0].Path.Length(), 1e-9)
	require.Len(t, whole.Notches, 2)
	near(t, MirrorX().Apply(whole.Edges[0].Path.At(whole.Notches[0].At)), whole.Edges[0].Path.At(whole.Notches[1].At),
		"notch")
	assert.InDelta(t, math.Pi*110*110, geometry.Area(cut(t, whole, 0.01)), 2*math.Pi*110*0.01)
}

func TestUnfoldedDartOnTheFold(t *testing.T) {
	p := half()
	p.Edges[3], p.Edges[4] = Edge{Name: seams.Waist.Stretch(1),
		Path: Path{Line{orb.Point{120, 500}, orb.Point{15, 500}}}},
		Edge{Name: seams.Called("mouth"), Path: Path{Line{orb.Point{15, 500}, orb.Point{0, 500}}}}
	p.Notches = nil
	p.Darts = []Dart{
		{Name: seams.Centre.Dart(0), Mouth: seams.Called("mouth"), Start: orb.Point{15, 500}, Apex: orb.Point{0, 420},
			End: orb.Point{0, 500}},
		{Name: seams.Called("tuck"), Start: orb.Point{8, 300}, Apex: orb.Point{0, 380}, End: orb.Point{0, 300},
			OtherApex: orb.Point{0, 200}},
	}
	require.NoError(t, p.Check())
	whole := p.Unfolded()
	require.NoError(t, whole.Check())
	assert.Equal(t, []Dart{
		{Name: seams.Centre.Dart(0), Mouth: seams.Called("mouth"), Start: orb.Point{15, 500}, Apex: orb.Point{0, 420},
			End: orb.Point{-15, 500}},
		{Name: seams.Called("tuck"), Start: orb.Point{8, 300}, Apex: orb.Point{0, 380}, End: orb.Point{-8, 300},
			OtherApex: orb.Point{0, 200}},
	}, whole.Darts)
}

func TestUnfoldedLeavesOtherPieces(t *testing.T) {
	p := Rectangle("cuff", 240, 80)
	assert.Equal(t, p, p.Unfolded())
}
