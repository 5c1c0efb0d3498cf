package sleeve

import (
	"math"

	"github.com/paulmach/orb/planar"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// MostBeside is the most that a head lies beside the armhole's own curve under the arm,
// in mm: with more, sleeve and body pull at one another there [source.OwnChoice].
const MostBeside = 3.0

// Beside is how far at most a head lies beside the front and the back armhole, inside or
// outside, underarm seam and side seam laid together, in mm: from the underarm as high as
// the style's Norm has it lie on them, or up to the notches of a gathered head.
type Beside struct{ Front, Back float64 }

// beside is how far at most a half of a head lies beside the armhole, up to a height and
// no further along than a length. The head starts at the underarm, turned by radians.
func (a armhole) beside(half pieces.Path, turned, height, along float64) float64 {
	// above is how much higher the place beside may lie, and finely how exactly the head's
	// curve is measured, in mm [source.OwnChoice].
	const above, finely = 1.5, 0.005
	line, _, _ := a.below(float64(above * height))
	level := half.Map(pieces.Turn(-turned * 180 / math.Pi)).Flatten(finely)
	most, passed := 0.0, 0.0
	for i := 1; i < len(level) && level[i-1][1] < height; i++ {
		from, to := level[i-1], level[i]
		if passed += construct.Distance(from, to); passed > along {
			break
		}
		if to[1] > height {
			to = construct.Between(from, to, (height-from[1])/(to[1]-from[1]))
		}
		most = max(most, planar.DistanceFrom(line, to))
	}
	return most
}
