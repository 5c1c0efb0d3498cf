package sleeve

import (
	"math"

	"github.com/paulmach/orb/planar"

	"ellwand/pieces"
)

// MostBeside is the most that a head lies beside the armhole's own curve under the arm,
// in mm: with more, sleeve and body pull at one another there [source.OwnChoice].
const MostBeside = 3.0

// Beside is how far at most a head lies beside the front and the back armhole, inside or
// outside, underarm seam and side seam laid together, in mm: from the underarm as high as
// the style's Norm has it lie on them, or up to the notches of a gathered head.
type Beside struct{ Front, Back float64 }

// besideEvery is how far apart the places are that are measured, in mm
// [source.OwnChoice].
const besideEvery = 2

// beside is how far at most a half of a head lies beside the armhole, up to a height and
// no further along than a length. The head starts at the underarm, turned by radians.
func (a armhole) beside(half pieces.Path, turned, height, along float64) float64 {
	level := half.Map(pieces.Turn(-turned * 180 / math.Pi))
	line := a.path.Flatten(flatten)
	most := 0.0
	for at := 0.0; at <= along; at += besideEvery {
		place := level.At(at)
		if place[1] > height {
			break
		}
		most = max(most, planar.DistanceFrom(line, place))
	}
	return most
}
