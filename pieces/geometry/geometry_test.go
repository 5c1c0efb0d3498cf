package geometry

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestPoints(t *testing.T) {
	a, b := orb.Point{3, 4}, orb.Point{-1, 2}
	assert.Equal(t, orb.Point{2, 6}, Add(a, b))
	assert.Equal(t, orb.Point{4, 2}, Sub(a, b))
	assert.Equal(t, orb.Point{6, 8}, Times(a, 2))
	assert.Equal(t, 5.0, Dot(a, b))
	assert.Equal(t, 10.0, Cross(a, b), "b lies to the left")
	assert.Equal(t, -10.0, Cross(b, a))
	assert.Equal(t, 5.0, Norm(a))
	assert.InDelta(t, math.Sqrt(20), Distance(a, b), 1e-12)
	assert.Equal(t, orb.Point{0.6, 0.8}, Unit(a))
	assert.Equal(t, orb.Point{}, Unit(orb.Point{}))
	assert.Equal(t, orb.Point{-4, 3}, Left(a))
	assert.Equal(t, orb.Point{4, -3}, Right(a))
	assert.Equal(t, orb.Point{1, 3}, Between(a, b, 0.5))
	assert.Equal(t, orb.Point{2, 3.5}, Between(a, b, 0.25))
}

func TestDistances(t *testing.T) {
	a, b := orb.Point{0, 0}, orb.Point{10, 0}
	for _, c := range []struct {
		p             orb.Point
		segment, line float64
	}{
		{orb.Point{5, 2}, 2, 2},
		{orb.Point{13, -4}, 5, 4},
		{orb.Point{-3, 4}, 5, 4},
		{orb.Point{10, 0}, 0, 0},
	} {
		assert.InDelta(t, c.segment, SegmentDistance(c.p, a, b), 1e-12, "%v", c.p)
		assert.InDelta(t, c.line, LineDistance(c.p, a, b), 1e-12, "%v", c.p)
		assert.InDelta(t, c.line, LineDistance(c.p, b, a), 1e-12, "%v", c.p)
		assert.Equal(t, Distance(c.p, a), SegmentDistance(c.p, a, a))
		assert.Equal(t, Distance(c.p, a), LineDistance(c.p, a, a))
	}
}

func TestIsOn(t *testing.T) {
	line := []orb.Point{{0, 0}, {10, 0}, {10, 10}}
	assert.True(t, IsOn(line, orb.Point{5, 2}, 2), "the tolerance counts")
	assert.False(t, IsOn(line, orb.Point{5, 2}, 1.99))
	assert.True(t, IsOn(line, orb.Point{10, 5}, 0))
	assert.False(t, IsOn(line, orb.Point{0, 5}, 4), "the line is not closed")
}

func TestMoved(t *testing.T) {
	line := []orb.Point{{1, 2}, {3, 4}}
	assert.Equal(t, []orb.Point{{2, 0}, {4, 2}}, Moved(line, orb.Point{1, -2}))
	assert.Equal(t, []orb.Point{{1, 2}, {3, 4}}, line, "the given one stays")
	assert.Equal(t, line, Moved(line, orb.Point{}))
}

// TestInside against the library, which counts the rim as inside, away from it.
func TestInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := rapid.Custom(func(t *rapid.T) float64 { return float64(rapid.IntRange(-20, 20).Draw(t, "n")) })
		point := rapid.Custom(func(t *rapid.T) orb.Point { return orb.Point{number.Draw(t, "x"), number.Draw(t, "y")} })
		ring := orb.Ring(rapid.SliceOfN(point, 3, 9).Draw(t, "ring"))
		ring = append(ring, ring[0])
		p := Add(point.Draw(t, "p"), orb.Point{0.31, 0.17})
		if IsOn(ring, p, 1e-9) {
			return
		}
		assert.Equal(t, planar.RingContains(ring, p), Inside(ring, p))
		assert.Equal(t, planar.DistanceFrom(orb.LineString(ring), p) <= 2, IsOn(ring, p, 2))
		assert.InDelta(t, signedArea(ring), Area(ring), 1e-9)
	})
}

// signedArea by the shoelace formula, term by term.
func signedArea(ring orb.Ring) float64 {
	sum := 0.0
	for i := 1; i < len(ring); i++ {
		sum += ring[i-1][0]*ring[i][1] - ring[i][0]*ring[i-1][1]
	}
	return sum / 2
}

func TestBoxes(t *testing.T) {
	box := Box(orb.Point{5, 5}, orb.Point{3, 1})
	assert.Equal(t, orb.Bound{Min: orb.Point{2, 4}, Max: orb.Point{8, 6}}, box)
	assert.Equal(t, 12.0, Area(Corners(box)), "counter-clockwise")
	assert.Equal(t, orb.Ring{{2, 4}, {8, 4}, {8, 6}, {2, 6}, {2, 4}}, Corners(box))
	assert.Equal(t, orb.Bound{Min: orb.Point{4, 5}, Max: orb.Point{8, 6}},
		Common(box, orb.Bound{Min: orb.Point{4, 5}, Max: orb.Point{9, 9}}))
	assert.Equal(t, orb.Bound{Min: orb.Point{2, 4}, Max: orb.Point{3, 4.5}},
		Common(box, orb.Bound{Max: orb.Point{3, 4.5}}))
	assert.True(t, Holds(box, box))
	assert.False(t, Holds(box, box.Pad(0.1)))
	assert.False(t, Holds(box, orb.Bound{Min: orb.Point{3, 5}, Max: orb.Point{8.5, 5.5}}))
	for _, c := range []struct {
		a, b    orb.Point
		crosses bool
	}{
		{orb.Point{0, 5}, orb.Point{10, 5}, true},
		{orb.Point{0, 3.9}, orb.Point{10, 3.9}, false}, // level, just outside
		{orb.Point{2, 0}, orb.Point{2, 4}, true},       // ends on the corner
		{orb.Point{1.9, 0}, orb.Point{1.9, 9}, false},
		{orb.Point{0, 5}, orb.Point{1.5, 5}, false}, // ends before it
		{orb.Point{5, 5}, orb.Point{6, 5}, true},    // wholly inside
		{orb.Point{0, 5}, orb.Point{3, 8}, false},   // passes the corner
	} {
		assert.Equal(t, c.crosses, Crosses([]orb.Point{c.a, c.b}, box), "%v %v", c.a, c.b)
		assert.Equal(t, c.crosses, Crosses([]orb.Point{c.b, c.a}, box), "%v %v", c.b, c.a)
	}
	assert.False(t, Crosses([]orb.Point{{5, 5}}, box), "a point is no line")
	from, to := Within(orb.Point{0, 5}, orb.Point{10, 5}, box)
	assert.InDelta(t, 0.2, from, 1e-12)
	assert.InDelta(t, 0.8, to, 1e-12)
}

// What the middle and the corners of rings are, by hand.
func TestRings(t *testing.T) {
	l := orb.Ring{{0, 0}, {4, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 6}, {0, 6}, {0, 3}, {0, 0}}
	assert.Equal(t, []orb.Point{{4, 0}, {4, 2}, {2, 2}, {2, 6}, {0, 6}, {0, 0}}, Distinct(l))
	assert.Equal(t, l, Closed(l[:len(l)-1]))
	assert.Equal(t, l, Closed(l))
	// 8 mm2 about (2, 1) and 8 about (1, 4).
	assert.Equal(t, orb.Point{1.5, 2.5}, Centroid(l))
	assert.Equal(t, 16.0, Area(l))
	assert.Equal(t, orb.Ring{{1, 2}, {5, 2}, {5, 9}, {1, 9}, {1, 2}}, Rectangle(1, 2, 5, 9))
	assert.Equal(t, orb.Point{4, 1}, Nearest(l, orb.Point{7, 1}))
	assert.InDelta(t, math.Pi/2, Radians(90), 1e-15)
}

// At the height of corners, by hand: a square on its corner.
func TestInsideAtTheHeightOfCorners(t *testing.T) {
	ring := []orb.Point{{0, 0}, {10, 10}, {0, 20}, {-10, 10}, {0, 0}}
	for _, p := range []orb.Point{{0, 10}, {-9, 10}, {9, 10}} {
		assert.True(t, Inside(ring, p), "%v", p)
	}
	for _, p := range []orb.Point{{-11, 10}, {11, 10}, {-5, 0}, {5, 0}, {-5, 20}, {5, 20}} {
		assert.False(t, Inside(ring, p), "%v", p)
	}
}
