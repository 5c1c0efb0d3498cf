package pieces

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
)

// The oracle makes the cutting outline in another way, from simplefeatures
// (checked against GEOS): the union of the piece, a strip along every edge and
// a kite at every outward corner, its holes filled.

func polygonOf(t require.TestingT, corners ...orb.Point) geom.Geometry {
	flat := make([]float64, 0, 2*len(corners)+2)
	for _, p := range append(corners, corners[0]) {
		flat = append(flat, p[0], p[1])
	}
	ring := geom.NewLineString(geom.NewSequence(flat, geom.DimXY))
	poly := geom.NewPolygon([]geom.LineString{ring})
	require.NoError(t, poly.Validate(), "the oracle's own polygon")
	return poly.AsGeometry()
}

// unionOutline is the oracle's outline of a piece whose edges are single
// lines without hems.
func unionOutline(t require.TestingT, corners []orb.Point, widths []float64) geom.Geometry {
	parts := []geom.Geometry{polygonOf(t, corners...)}
	n := len(corners)
	normal := func(i int) orb.Point {
		return geometry.Right(geometry.Unit(geometry.Sub(corners[(i+1)%n], corners[i%n])))
	}
	for i, w := range widths {
		a, b := corners[i], corners[(i+1)%n]
		if w > 0 {
			out := geometry.Times(normal(i), w)
			parts = append(parts, polygonOf(t, a, geometry.Add(a, out), geometry.Add(b, out), b))
		}
		if kite := kiteOf(b, normal(i), normal(i+1), w, widths[(i+1)%n]); kite != nil {
			parts = append(parts, polygonOf(t, kite...))
		}
	}
	union, err := geom.UnionMany(parts)
	require.NoError(t, err)
	require.True(t, union.IsPolygon(), "one outline: %s", union.Type())
	return geom.NewPolygon([]geom.LineString{union.MustAsPolygon().ExteriorRing()}).AsGeometry()
}

// kiteOf fills an outward corner at v, by intersecting half planes: the side
// of each cutting line that holds v, cut back at twice the wider width, or the
// triangle up to the square end of the wider strip.
func kiteOf(v, n1, n2 orb.Point, w1, w2 float64) []orb.Point {
	sin := geometry.Cross(n1, n2)
	if sin <= 1e-9 || w1 == 0 && w2 == 0 {
		return nil
	}
	foot1, foot2 := geometry.Times(n1, w1), geometry.Times(n2, w2)
	// Solve m.n1 = w1, m.n2 = w2.
	m := orb.Point{(w1*n2[1] - w2*n1[1]) / sin, (w2*n1[0] - w1*n2[0]) / sin}
	if geometry.Dot(m, orb.Point{-n1[1], n1[0]}) < 0 { // falls back behind foot 1
		return distinctOf(v, geometry.Times(n1, w2/geometry.Dot(n1, n2)), foot2)
	}
	if geometry.Dot(m, orb.Point{n2[1], -n2[0]}) < 0 {
		return distinctOf(v, foot1, geometry.Times(n2, w1/geometry.Dot(n1, n2)))
	}
	limit := 2 * math.Max(w1, w2)
	if geometry.Norm(m) <= limit {
		return distinctOf(v, foot1, m, foot2)
	}
	e := geometry.Unit(m)
	cutAt := func(foot orb.Point) orb.Point {
		along := geometry.Sub(m, foot)
		return geometry.Add(foot, geometry.Times(along, (limit-geometry.Dot(foot, e))/geometry.Dot(along, e)))
	}
	return distinctOf(v, foot1, cutAt(foot1), cutAt(foot2), foot2)
}

// distinctOf drops the points of a kite, given from v, that coincide; nil when
// no area is left.
func distinctOf(v orb.Point, rest ...orb.Point) []orb.Point {
	out := []orb.Point{v}
	for _, p := range rest {
		q := geometry.Add(v, p)
		if geometry.Distance(q, out[len(out)-1]) > 1e-6 && geometry.Distance(q, v) > 1e-6 {
			out = append(out, q)
		}
	}
	if len(out) < 3 || math.Abs(geometry.Area(append(orb.Ring(out), v))) < 1e-6 {
		return nil
	}
	return out
}

func geometryOf(t require.TestingT, ring orb.Ring) geom.Geometry {
	return polygonOf(t, ring[:len(ring)-1]...)
}

// difference is the area in which two shapes differ, mm2.
func difference(t require.TestingT, a, b geom.Geometry) float64 {
	d, err := geom.SymmetricDifference(a, b)
	require.NoError(t, err)
	return d.Area()
}

// drawPolygon draws a simple polygon by sorting points round a centre: often
// with sharp corners and tight hollows.
func drawPolygon(t *rapid.T) []orb.Point {
	n := rapid.IntRange(3, 9).Draw(t, "corners")
	out := make([]orb.Point, n)
	for i := range out {
		angle := 2 * math.Pi * (float64(i) + rapid.Float64Range(0.1, 0.9).Draw(t, fmt.Sprint("angle ", i))) / float64(n)
		radius := float64(rapid.IntRange(30, 400).Draw(t, fmt.Sprint("radius ", i)))
		out[i] = orb.Point{math.Round(radius * math.Cos(angle)), math.Round(radius * math.Sin(angle))}
	}
	return out
}

// A union of strips and kites gives the same outline, on random polygons with
// random widths; and the outline is simple.
func TestCuttingOutlineAgainstUnion(t *testing.T) {
	checked := 0
	rapid.Check(t, func(t *rapid.T) {
		corners := drawPolygon(t)
		widths := make([]float64, len(corners))
		for i := range widths {
			widths[i] = rapid.SampledFrom([]float64{0, 6, 10, 15, 40}).Draw(t, fmt.Sprint("width ", i))
		}
		p := polygon(corners, widths...)
		if p.Check() != nil {
			t.Skip("not a simple outline")
		}
		checked++
		ring, err := p.CuttingOutline(0.1)
		require.NoError(t, err)
		got, want := geometryOf(t, ring), unionOutline(t, corners, widths)
		assert.Greater(t, geometry.Area(ring), 0.0, "counter-clockwise")
		assert.LessOrEqual(t, difference(t, got, want), 0.001, "mm2 apart\ngot  %s\nwant %s", got.AsText(),
			want.AsText())
	})
	assert.Greater(t, checked, 50, "random polygons that were checked")
}

// Any outline that two edges make at a slot of any width is right too, also
// where the allowances just touch.
func TestCuttingOutlineOfSlots(t *testing.T) {
	for _, slot := range []float64{1, 10, 19.999, 20, 20.001, 25, 60} {
		corners := []orb.Point{{0, 0}, {200, 0}, {200, 100}, {100 + slot/2, 100}, {100 + slot/2, 40},
			{100 - slot/2, 40}, {100 - slot/2, 100}, {0, 100}}
		p := polygon(corners, 10)
		require.NoError(t, p.Check())
		got := cut(t, p, 0.1)
		want := unionOutline(t, corners, []float64{10, 10, 10, 10, 10, 10, 10, 10})
		assert.LessOrEqual(t, difference(t, geometryOf(t, got), want), 0.001, "slot %v", slot)
		if slot <= 20 {
			assertRing(t, []orb.Point{{-10, -10}, {210, -10}, {210, 110}, {-10, 110}}, got, 1e-6)
		}
	}
	// A keyhole: narrow at its mouth, wide within. The gap inside is closed
	// off, so it is not cut out.
	keyhole := []orb.Point{{0, 0}, {200, 0}, {200, 150}, {105, 150}, {105, 100}, {140, 100}, {140, 40}, {60, 40},
		{60, 100}, {95, 100}, {95, 150}, {0, 150}}
	assertRing(t, []orb.Point{{-10, -10}, {210, -10}, {210, 160}, {-10, 160}}, cut(t, polygon(keyhole, 10), 0.1), 1e-6)
}
