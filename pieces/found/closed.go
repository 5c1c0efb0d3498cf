package found

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// closedLine is an outline on a sheet with what it is called.
type closedLine struct {
	path  pieces.Path
	ring  orb.Ring
	slabs slabs
	box   orb.Bound
	area  float64
	group string
	name  string
	// outer is the smallest outline that holds it; -1 for none.
	outer int
}

// measure what follows from the path.
func (c *closedLine) measure() {
	c.ring = ring(c.path)
	c.box, c.area, c.slabs = c.ring.Bound(), math.Abs(geometry.Area(c.ring)), newSlabs(c.ring)
}

// holds says that every one of some points lies in the outline.
func (c closedLine) holds(points []orb.Point) bool {
	for _, p := range points {
		if !c.box.Contains(p) {
			return false
		}
	}
	const looks = 16 // enough to tell lines that do not cross [source.OwnChoice]
	for i := 0; i < len(points); i += max(1, len(points)/looks) {
		if !c.slabs.hold(points[i]) {
			return false
		}
	}
	return len(points) > 0
}

func (d *Drawing) note(kind NoteKind, count int, size float64) {
	if count > 0 {
		d.Notes = append(d.Notes, Note{Kind: kind, Count: count, Size: size})
	}
}
