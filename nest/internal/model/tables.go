package model

import (
	"sync"

	"github.com/paulmach/orb"
)

// tables holds the no-fit regions by pair of bases and mirror image of the
// second against the first. Mirroring both, and exchanging the two, give the
// same region mirrored, so four orientations of each outline share tables.
type tables struct {
	made    sync.Map // *nofit.Table by tableKey
	waiting [64]sync.Mutex
	shared  *Shared
}

// tableKey names a table within a model.
type tableKey struct {
	first, second  int // bases
	flipsX, flipsY bool
}

// flipped mirrors a counter-clockwise outline and keeps it counter-clockwise.
func flipped(p []orb.Point, flipX, flipY float64) []orb.Point {
	out := make([]orb.Point, len(p))
	for i, q := range p {
		at := i
		if flipX*flipY < 0 {
			at = len(p) - 1 - i
		}
		out[at] = orb.Point{float64(flipX * q[0]), float64(flipY * q[1])}
	}
	return out
}
