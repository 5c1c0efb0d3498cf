package sheet

import (
	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
)

// around is the outer ring of the union of rings, or their convex hull where
// the union falls apart or cannot be formed.
func around(rings []orb.Ring) orb.Ring {
	shapes := make([]geom.Geometry, len(rings))
	for i, ring := range rings {
		shapes[i] = polygonOf(ring).AsGeometry()
	}
	if whole, err := geom.UnionMany(shapes); err == nil {
		if polygon, ok := whole.AsPolygon(); ok {
			return ringOf(polygon.ExteriorRing().Coordinates())
		}
	}
	hull, ok := geom.NewGeometryCollection(shapes).ConvexHull().AsPolygon()
	if !ok {
		return rings[len(rings)-1]
	}
	return ringOf(hull.ExteriorRing().Coordinates())
}

func polygonOf(ring orb.Ring) geom.Polygon {
	var flat []float64
	for _, p := range ring {
		flat = append(flat, p[0], p[1])
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))})
}

func ringOf(points geom.Sequence) orb.Ring {
	out := make(orb.Ring, points.Length())
	for i := range out {
		p := points.GetXY(i)
		out[i] = orb.Point{p.X, p.Y}
	}
	return out
}
