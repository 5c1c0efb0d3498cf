package puzzle

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/outline"
	"ellwand/nest/portable"
)

// shape is an outline about its first corner, the leftmost and of those the lowest.
type shape struct {
	points []orb.Point // from the first corner, which is (0, 0)
	first  orb.Point   // where that corner was
	box    orb.Bound
	area   float64
	// atFirst is what it covers around its first corner, sharpest the least that it
	// covers around any.
	atFirst  sector
	sharpest float64
	// slack of the direction of each side, from the point of the same index.
	slack    []float64
	modelled int // index in the model, or -1
}

// mostSlack is the most, in units of a diamond angle, by which the direction of a short
// side may be off: some three degrees.
const mostSlack = 0.05

func newShape(points []orb.Point, tolerance float64) shape {
	from := 0
	for i, p := range points {
		if p[0] < points[from][0] {
			from = i
		}
	}
	edge := points[from][0] + tolerance
	for i, p := range points {
		if p[0] <= edge && p[1] < points[from][1] {
			from = i
		}
	}
	s := shape{first: points[from], area: outline.SignedArea(points), modelled: -1, sharpest: full}
	for i := range points {
		p := points[(from+i)%len(points)]
		s.points = append(s.points, orb.Point{p[0] - s.first[0], p[1] - s.first[1]})
	}
	s.box = orb.MultiPoint(s.points).Bound()
	for i, p := range s.points {
		q := s.points[(i+1)%len(s.points)]
		s.slack = append(s.slack, math.Min(mostSlack, 2*tolerance/portable.Hypot(q[0]-p[0], q[1]-p[1])))
	}
	for i := range s.points {
		s.sharpest = math.Min(s.sharpest, s.corner(i).span)
	}
	s.atFirst = s.corner(0)
	return s
}

// corner is what the shape covers around its corner i.
func (s *shape) corner(i int) sector {
	n := len(s.points)
	before, p, after := s.points[(i+n-1)%n], s.points[i], s.points[(i+1)%n]
	from := diamond(after[0]-p[0], after[1]-p[1])
	return sector{
		from: from, span: turn(from, diamond(before[0]-p[0], before[1]-p[1])),
		slackFrom: s.slack[i], slackTo: s.slack[(i+n-1)%n],
	}
}

// around is what the shape covers around a point on its contour, measured from its first
// corner; false when the point is not on it.
func (s *shape) around(q orb.Point, tolerance float64) (sector, bool) {
	if !s.box.Pad(tolerance).Contains(q) {
		return sector{}, false
	}
	for i, p := range s.points {
		if math.Abs(p[0]-q[0]) <= tolerance && math.Abs(p[1]-q[1]) <= tolerance {
			return s.corner(i), true
		}
	}
	for i, p := range s.points {
		o := s.points[(i+1)%len(s.points)]
		dx, dy := o[0]-p[0], o[1]-p[1]
		square := float64(dx*dx) + float64(dy*dy)
		along := float64((q[0]-p[0])*dx) + float64((q[1]-p[1])*dy)
		if along < 0 || along > square {
			continue
		}
		if off := float64((q[0]-p[0])*dy) - float64((q[1]-p[1])*dx); off*off <= tolerance*tolerance*square {
			return sector{from: diamond(dx, dy), span: full / 2, slackFrom: s.slack[i], slackTo: s.slack[i]}, true
		}
	}
	return sector{}, false
}

// middle of the box when the first corner lies there.
func (s *shape) middle(at orb.Point) orb.Point {
	c := s.box.Center()
	return orb.Point{at[0] + c[0], at[1] + c[1]}
}

func moved(b orb.Bound, by orb.Point) orb.Bound {
	return orb.Bound{
		Min: orb.Point{b.Min[0] + by[0], b.Min[1] + by[1]},
		Max: orb.Point{b.Max[0] + by[0], b.Max[1] + by[1]},
	}
}
