package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// labelled is the seam outline with, for each of its segments, the name of
// the edge it belongs to.
func (p Piece) labelled() (orb.Ring, []seams.Name) {
	var ring orb.Ring
	var names []seams.Name
	for _, e := range p.Edges {
		points := apart(e.Path.Flatten(checkTolerance))
		for _, q := range points[:len(points)-1] {
			ring, names = append(ring, q), append(names, e.Name)
		}
	}
	return append(ring, ring[0]), names
}

// selfIntersection finds two segments of a closed ring that cross or touch apart
// from their common corner, or run back on each other.
func selfIntersection(ring orb.Ring) (at orb.Point, a, b int, found bool) {
	n := len(ring) - 1
	boxes := make([]box, n)
	for i := range boxes {
		boxes[i] = boxOf(ring[i], ring[i+1])
	}
	eachNearPair(boxes, snap, func(i, j int) {
		if found {
			return
		}
		i, j = min(i, j), max(i, j)
		switch {
		case j == i+1:
			found = runsBack(ring[i], ring[i+1], ring[j+1])
			at = ring[j]
		case i == 0 && j == n-1:
			found = runsBack(ring[j], ring[0], ring[1])
			at = ring[0]
		default:
			at, found = touching(ring[i], ring[i+1], ring[j], ring[j+1])
		}
		a, b = i, j
	})
	return at, a, b, found
}
