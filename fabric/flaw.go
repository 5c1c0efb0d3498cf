package fabric

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
)

// Flaw is a place on the cloth that may not be used: a hole, a stain, a faded
// edge, a shaded band.
type Flaw struct {
	Name string // "stain", for messages and the plan
	// Outline as measured on the cloth lying open, right side up: x along
	// the warp from the cut end, y across from the outer edge of the selvedge
	// nearest to the cutter. A simple ring.
	Outline orb.Ring
}

// RoundFlaw is a flaw within a circle: its outline is the polygon of 32 sides
// about the circle.
func RoundFlaw(name string, centre orb.Point, radius float64) Flaw {
	const sides = 32
	out := radius / math.Cos(math.Pi/sides)
	var ring orb.Ring
	for i := range sides {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / sides)
		ring = append(ring, orb.Point{centre[0] + out*cos, centre[1] + out*sin})
	}
	return Flaw{Name: name, Outline: closed(ring)}
}

// BandFlaw is a flaw that runs the whole length of the cloth, such as a faded
// edge, from one distance across to the other.
func BandFlaw(name string, from, to float64) Flaw {
	return Flaw{Name: name, Outline: rectangleRing(-endless, from, endless, to)}
}

// BarFlaw is a flaw that runs across the whole cloth, such as a shaded band,
// from one distance along the warp to the other.
func BarFlaw(name string, from, to float64) Flaw {
	return Flaw{Name: name, Outline: rectangleRing(from, -endless, to, endless)}
}

// endless, mm: longer than any cloth. What is measured from it is cut off at
// the lay.
const endless = 1e7

func rectangleRing(x0, y0, x1, y1 float64) orb.Ring {
	return orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}
}

func (f Flaw) String() string {
	if f.Name == "" {
		return "a flaw"
	}
	return "the flaw " + f.Name
}

// check refuses an outline that encloses nothing or crosses itself.
func (f Flaw) check() error {
	for _, p := range f.Outline {
		if math.IsNaN(p[0]+p[1]) || math.IsInf(p[0]+p[1], 0) {
			return fmt.Errorf("%s has a corner that is not a number", f)
		}
	}
	if len(distinct(f.Outline)) < 3 || areaOf(closed(f.Outline)) == 0 {
		return fmt.Errorf("%s encloses nothing; give three corners or more, or a circle with a radius", f)
	}
	if err := polygonOf(f.Outline).Validate(); err != nil {
		return fmt.Errorf("%s has an outline that crosses itself; draw it as one simple loop", f)
	}
	return nil
}

// polygonOf a ring, for the operations that need another library.
func polygonOf(ring orb.Ring) geom.Geometry {
	var flat []float64
	for _, p := range closed(ring) {
		flat = append(flat, p[0], p[1])
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))}).AsGeometry()
}

// leastFlaw, mm2: a zone smaller than this is rounding.
const leastFlaw = 1e-3

// clipped returns the parts of a ring that lie in a rectangle.
func clipped(ring orb.Ring, x0, y0, x1, y1 float64) ([]orb.Ring, error) {
	b := ring.Bound()
	if b.Min[0] >= x1 || b.Max[0] <= x0 || b.Min[1] >= y1 || b.Max[1] <= y0 {
		return nil, nil
	}
	common, err := geom.Intersection(polygonOf(ring), polygonOf(rectangleRing(x0, y0, x1, y1)))
	if err != nil {
		return nil, errors.New("the outline of a flaw cannot be used; check that it does not cross itself")
	}
	return outerRings(common), nil
}

// outerRings of the polygons in a geometry, without those of no size.
func outerRings(g geom.Geometry) []orb.Ring {
	var out []orb.Ring
	for _, part := range g.Dump() {
		polygon, ok := part.AsPolygon()
		if !ok || polygon.IsEmpty() || polygon.Area() < leastFlaw {
			continue
		}
		seq := polygon.ExteriorRing().Coordinates()
		var ring orb.Ring
		for i := range seq.Length() {
			ring = append(ring, orb.Point{seq.GetXY(i).X, seq.GetXY(i).Y})
		}
		out = append(out, closed(distinct(ring)))
	}
	return out
}
