package found

import "github.com/paulmach/orb"

// Holds says that a point lies in a ring or on it.
func Holds(ring orb.Ring, p orb.Point) bool { return newSlabs(ring).hold(p) }
