package found

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

const (
	// MostSteps of an outline, and mostChords of it as it is checked [source.OwnChoice].
	MostSteps  = 5000
	mostChords = 20_000 // [source.OwnChoice]
)

// TooLong is the refusal of an outline of more points than can be handled.
type TooLong struct{}

// Error says so.
func (*TooLong) Error() string {
	return fmt.Sprintf("the outline has more than %d points; write it with fewer", MostSteps)
}

// farthest, mm, that a pattern reaches from the origin of its drawing [source.OwnChoice].
const farthest = 1e6

// within says that a curve lies where patterns do.
func within(c pieces.Curve) bool {
	points := []orb.Point{c.Start(), c.End()}
	switch c := c.(type) {
	case pieces.Bezier:
		points = append(points, c.P1, c.P2)
	case pieces.Arc:
		points = append(points, geometry.Add(c.Centre, orb.Point{c.Radius, 0}),
			geometry.Sub(c.Centre, orb.Point{c.Radius, 0}))
	}
	for _, p := range points {
		if !(math.Abs(p[0]) <= farthest && math.Abs(p[1]) <= farthest) {
			return false
		}
	}
	return true
}

// TooLarge is the refusal of an outline that is far larger than any pattern.
type TooLarge struct{}

// Error says so.
func (*TooLarge) Error() string {
	return "the outline reaches farther than a kilometre: no pattern does; is its unit of length right?"
}

// bounded refuses an outline of too many points, or too large.
func bounded(steps []Step) error {
	if len(steps) > MostSteps {
		return &TooLong{}
	}
	count := 0
	for _, s := range steps {
		if !within(s.Curve) {
			return &TooLarge{}
		}
		if count += len(s.Flatten(Flattening / 2)); count > mostChords {
			return &TooLong{}
		}
	}
	return nil
}
