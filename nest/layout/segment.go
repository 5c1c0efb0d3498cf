package layout

import (
	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// boundOf is the box of a segment.
func boundOf(a, b orb.Point) orb.Bound {
	return orb.Bound{
		Min: orb.Point{min(a[0], b[0]), min(a[1], b[1])},
		Max: orb.Point{max(a[0], b[0]), max(a[1], b[1])},
	}
}

// spread is the larger side of the box.
func spread(b orb.Bound) float64 { return max(b.Max[0]-b.Min[0], b.Max[1]-b.Min[1]) }

type segment struct{ a, b orb.Point }

func pointToSegment(q, a, b orb.Point) float64 {
	dx, dy := b[0]-a[0], b[1]-a[1]
	along := 0.0
	if square := float64(dx*dx) + float64(dy*dy); square > 0 {
		along = min(1, max(0, (float64((q[0]-a[0])*dx)+float64((q[1]-a[1])*dy))/square))
	}
	return portable.Hypot(q[0]-a[0]-float64(along*dx), q[1]-a[1]-float64(along*dy))
}
