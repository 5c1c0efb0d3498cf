package app

import (
	"errors"

	"github.com/paulmach/orb"

	"ellwand/pieces/found"
)

// FaultPlace is where an outline is at fault, mm, if it has a place.
func FaultPlace(err error) (orb.Point, bool) {
	var crossing *found.Crossing
	var gap *found.Gap
	switch {
	case errors.As(err, &crossing):
		return crossing.At, true
	case errors.As(err, &gap):
		return gap.At, true
	}
	return orb.Point{}, false
}
