package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// Edge returns the edge of that name.
func (p Piece) Edge(name seams.Name) (Edge, bool) {
	for _, e := range p.Edges {
		if e.Name == name {
			return e, true
		}
	}
	return Edge{}, false
}

// Boundary is the line of the edges as they stand, be it the seam line or a
// cutting line that came from elsewhere: closed, counter-clockwise, its chords
// within the tolerance (mm) of the curves.
func (p Piece) Boundary(tolerance float64) orb.Ring {
	var ring orb.Ring
	for _, e := range p.Edges {
		points := e.Path.Flatten(tolerance)
		if len(points) > 0 {
			ring = append(ring, points[:len(points)-1]...)
		}
	}
	if len(ring) > 0 {
		ring = append(ring, ring[0])
	}
	return ring
}
