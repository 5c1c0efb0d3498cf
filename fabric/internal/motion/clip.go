package motion

import (
	"errors"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"

	"ellwand/pieces/geometry"
)

// Polygon a ring, for the operations that need another library.
func Polygon(ring orb.Ring) geom.Geometry {
	var flat []float64
	for _, p := range geometry.Closed(ring) {
		flat = append(flat, p[0], p[1])
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))}).AsGeometry()
}

// leastArea, mm2: a zone smaller than this is rounding [source.OwnChoice].
const leastArea = 1e-3

// Clipped returns the parts of a ring that lie in a rectangle.
func Clipped(ring orb.Ring, x0, y0, x1, y1 float64) ([]orb.Ring, error) {
	b := ring.Bound()
	if b.Min[0] >= x1 || b.Max[0] <= x0 || b.Min[1] >= y1 || b.Max[1] <= y0 {
		return nil, nil
	}
	common, err := geom.Intersection(Polygon(ring), Polygon(geometry.Rectangle(x0, y0, x1, y1)))
	if err != nil {
		return nil, errors.New("the outline of a flaw cannot be used; check that it does not cross itself")
	}
	return OuterRings(common), nil
}

// OuterRings of the polygons in a geometry, without those of no size.
func OuterRings(g geom.Geometry) []orb.Ring {
	var out []orb.Ring
	for _, part := range g.Dump() {
		polygon, ok := part.AsPolygon()
		if !ok || polygon.IsEmpty() || polygon.Area() < leastArea {
			continue
		}
		seq := polygon.ExteriorRing().Coordinates()
		var ring orb.Ring
		for i := range seq.Length() {
			ring = append(ring, orb.Point{seq.GetXY(i).X, seq.GetXY(i).Y})
		}
		out = append(out, geometry.Closed(geometry.Distinct(ring)))
	}
	return out
}

// Common returns what two rings have in common; nothing where they only touch.
func Common(a, b orb.Ring) []orb.Ring {
	if !a.Bound().Intersects(b.Bound()) {
		return nil
	}
	common, err := geom.Intersection(Polygon(a), Polygon(b))
	if err != nil {
		return nil
	}
	return OuterRings(common)
}
