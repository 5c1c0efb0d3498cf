package construct

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// A waist from (200, 0) to the left with one dart 30 mm wide and 100 mm long at
// its middle: the legs end at 115 and 85, the point lies 100 below, on the left
// of the way, where the piece is.
func TestDartedSeam(t *testing.T) {
	left := orb.Point{-1, 0}
	edges, darts := DartedSeam(seams.Waist, orb.Point{200, 0}, left, orb.Point{0, 0}, left,
		[]DartAt{{Share: 0.5, Width: 30, Length: 100}})
	require.Len(t, darts, 1)
	d := darts[0]
	assert.Equal(t, pieces.Dart{Name: seams.Waist.Dart(1), Mouth: seams.Waist.Mouth(1), Start: orb.Point{115, 0},
		Apex: orb.Point{100, -100}, End: orb.Point{85, 0}}, d)
	var names []seams.Name
	for i, e := range edges {
		names = append(names, e.Name)
		if i > 0 {
			assert.InDelta(t, 0, Distance(edges[i-1].Path.End(), e.Path.Start()), 1e-9)
		}
	}
	assert.Equal(t, []seams.Name{seams.Waist.Stretch(1), seams.Waist.Mouth(1), seams.Waist.Stretch(2)}, names)
	// Square to both legs.
	arriving, leaving := edges[0].Path[0].Tangent(1), edges[2].Path[0].Tangent(0)
	for _, pair := range [][2]orb.Point{{arriving, Direction(d.Apex, d.Start)}, {leaving, Direction(d.Apex, d.End)}} {
		assert.InDelta(t, 0, pair[0][0]*pair[1][0]+pair[0][1]*pair[1][1], 1e-9)
	}
	// Pressed towards the end of the seam, the dart's peak points out of the
	// piece.
	assert.Greater(t, edges[1].Path[0].End()[1], 0.0)
	assert.InDelta(t, 170, EdgesLength(edges, seams.Waist), 1)
	plain, none := DartedSeam(seams.Waist, orb.Point{200, 0}, left, orb.Point{0, 0}, left, nil)
	assert.Empty(t, none)
	assert.InDelta(t, 200, EdgesLength(plain, seams.Waist), 1e-9)
}

func TestStretch(t *testing.T) {
	path := Join(Line(orb.Point{0, 0}, orb.Point{100, 0}),
		pieces.Path{pieces.Arc{Centre: orb.Point{100, 50}, Radius: 50, Begin: -math.Pi / 2, Sweep: math.Pi / 2}})
	for _, c := range []struct{ from, to float64 }{{0, 100}, {20, 60}, {90, 130}, {110, 150}, {0, path.Length()}} {
		part := Stretch(path, c.from, c.to)
		assert.InDelta(t, c.to-c.from, part.Length(), 1e-4)
		assert.InDelta(t, 0, Distance(path.At(c.from), part.Start()), 1e-4)
		assert.InDelta(t, 0, Distance(path.At(c.to), part.End()), 1e-4)
	}
}

// A bend of 0.5523 between square directions is a quarter circle within 3 parts
// in 10000 (geometry).
func TestBend(t *testing.T) {
	path := Bend(orb.Point{0, -100}, orb.Point{1, 0}, 0.5523, orb.Point{100, 0}, orb.Point{0, 1}, 0.5523)
	for _, p := range path.Flatten(0.001) {
		assert.InDelta(t, 100, math.Hypot(p[0], p[1]), 0.03)
	}
	straight := Bend(orb.Point{0, 0}, orb.Point{1, 0}, 0.5, orb.Point{9, 0}, orb.Point{1, 0}, 0.5)
	assert.InDelta(t, 9, straight.Length(), 1e-9)
}
