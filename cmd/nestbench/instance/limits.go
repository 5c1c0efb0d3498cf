package instance

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
)

// What can be told apart from nothing on a strip, by our own choice: the
// search and its proof reckon to ten-millionths of its width.
const (
	// leastShare of the width is the least mean width of an outline.
	leastShare = 1e-5
	// mostShare of the width is the farthest that an outline reaches from its origin.
	mostShare = 1e5
	// leastStrip and mostStrip bound the width itself, in whatever unit.
	leastStrip = 1e-6
	mostStrip  = 1e9
)

// checkStrip refuses a width that cannot be reckoned with.
func checkStrip(width float64) error {
	switch {
	case !(width > 0):
		return fmt.Errorf("the strip has no width; Strip.Height must be above 0")
	case width < leastStrip || width > mostStrip:
		return fmt.Errorf("the strip is %g wide; Strip.Height must be from %g to %g", width, leastStrip, mostStrip)
	}
	return nil
}

// checkOutline refuses an outline that cannot be laid on a strip of a width:
// without corners, with too many, out of all proportion, or with no area to speak
// of.
func checkOutline(ring orb.Ring, width float64) error {
	if len(ring) < 3 {
		return fmt.Errorf("its outline has %d points; it needs 3 or more", len(ring))
	}
	if err := limit.Vertices.Check(language.Name("its outline"), len(ring)); err != nil {
		return err
	}
	for _, p := range ring {
		if reach := math.Max(math.Abs(p[0]), math.Abs(p[1])); !(reach <= mostShare*width) {
			return fmt.Errorf("its outline has a point at %g, out of all proportion to a strip %g wide", reach, width)
		}
	}
	box := ring.Bound()
	longest := math.Max(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1])
	if area := math.Abs(planar.Area(closed(ring))); !(area > longest*leastShare*width) {
		return fmt.Errorf("its outline is a sliver without width; remove it")
	}
	return nil
}

// checkCounts refuses more of an item than can be laid.
func checkCounts(item fileItem) error {
	if item.Demand < 1 {
		return fmt.Errorf("its Demand is %d; it must be 1 or more", item.Demand)
	}
	if err := limit.Demand.Check(language.Name("Demand"), item.Demand); err != nil {
		return err
	}
	if err := limit.Orientations.Check(language.Name("AllowedOrientations"),
		len(item.AllowedOrientations)); err != nil {
		return err
	}
	for _, degrees := range item.AllowedOrientations {
		if !(math.Abs(degrees) <= mostDegrees) {
			return fmt.Errorf("an orientation of %g degrees is none; give it from 0 to 360", degrees)
		}
	}
	return nil
}

// mostDegrees of an orientation; collections count from 0 to 360.
const mostDegrees = 3600

// closed is the ring with its first point at its end too.
func closed(ring orb.Ring) orb.Ring {
	if ring[0] == ring[len(ring)-1] {
		return ring
	}
	return append(ring[:len(ring):len(ring)], ring[0])
}
