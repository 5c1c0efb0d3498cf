package nest

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"

	"ellwand/nest/internal/outline"
)

// addSheets lays the sheets one after the other on one strip, and makes
// obstacles of everything that is not sheet: what their outlines leave of
// their bounding boxes, their holes, and a bar between two sheets.
func (q *prepared) addSheets() error {
	if len(q.problem.Sheets) == 0 {
		return nil
	}
	m := q.model
	lowest, highest, longest := math.Inf(1), math.Inf(-1), 0.0
	for _, sheet := range q.problem.Sheets {
		lo, hi := outline.Bounds(sheet[0])
		lowest, highest = math.Min(lowest, lo[1]), math.Max(highest, hi[1])
		longest = math.Max(longest, hi[0]-lo[0])
	}
	m.Width = highest - lowest
	m.LowY, m.HighY = -lowest, m.Width
	bar := float64(0.05 * longest)
	x := 0.0
	for k, sheet := range q.problem.Sheets {
		if k > 0 {
			q.addObstacle(boxRing(x, 0, x+bar, m.Width))
			x += bar
		}
		lo, hi := outline.Bounds(sheet[0])
		q.sheetX = append(q.sheetX, x-lo[0])
		q.sheetY = append(q.sheetY, -lowest)
		if err := q.addOutside(sheet, lowest, x-lo[0]); err != nil {
			return fmt.Errorf("sheet %d: %w", k+1, err)
		}
		x += hi[0] - lo[0]
	}
	m.Length = x
	return nil
}

func boxRing(x0, y0, x1, y1 float64) orb.Ring {
	return orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}
}

// addOutside makes obstacles of what lies in the sheet's length of strip,
// which begins at dx, but not on the sheet.
func (q *prepared) addOutside(sheet orb.Polygon, lowest, dx float64) error {
	lo, hi := outline.Bounds(sheet[0])
	box := boxRing(lo[0], lowest, hi[0], lowest+q.model.Width)
	rest, err := geom.Difference(asPolygon(box), asPolygon(sheet[0]))
	if err != nil {
		return fmt.Errorf("the outline of the sheet cannot be used; check that it does not cross itself")
	}
	for _, ring := range exteriors(rest) {
		q.addObstacle(moved(ring, dx, -lowest))
	}
	for _, hole := range sheet[1:] {
		q.addObstacle(moved(hole, dx, -lowest))
	}
	return nil
}

func moved(ring orb.Ring, dx, dy float64) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, p := range ring {
		out[i] = orb.Point{p[0] + dx, p[1] + dy}
	}
	return out
}

func asPolygon(ring orb.Ring) geom.Geometry {
	var flat []float64
	for _, p := range ring {
		flat = append(flat, p[0], p[1])
	}
	if ring[0] != ring[len(ring)-1] {
		flat = append(flat, ring[0][0], ring[0][1])
	}
	line := geom.NewLineString(geom.NewSequence(flat, geom.DimXY))
	return geom.NewPolygon([]geom.LineString{line}).AsGeometry()
}

// exteriors returns the outer rings of the polygons in a geometry. What a
// sheet leaves of its length of strip has no holes, since the sheet is in one
// piece and reaches both ends.
func exteriors(g geom.Geometry) []orb.Ring {
	var out []orb.Ring
	for _, part := range g.Dump() {
		polygon, ok := part.AsPolygon()
		if !ok || polygon.IsEmpty() {
			continue
		}
		seq := polygon.ExteriorRing().Coordinates()
		ring := make(orb.Ring, seq.Length())
		for i := range ring {
			xy := seq.GetXY(i)
			ring[i] = orb.Point{xy.X, xy.Y}
		}
		out = append(out, ring)
	}
	return out
}
