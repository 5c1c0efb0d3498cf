package skirt

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// half is the front or the back of a darted skirt, half of it drawn.
type half struct {
	role   role.Role
	centre seams.Name
	width  float64 // on the hip line
	darts  []dart
}

// side is the side seam from the hem up to the waist.
func (f figures) side(width, taper float64) pieces.Path {
	foot, hip, up := f.belowHip(width)
	return construct.Join(construct.Line(foot, hip), sideSeam(hip, up, taper, f.WaistToHip+raise(taper)))
}

func (f figures) waistSeam(h half, side pieces.Path) ([]pieces.Edge, []pieces.Dart) {
	darts := make([]construct.DartAt, len(h.darts))
	for i, d := range h.darts {
		darts[len(darts)-1-i] = construct.DartAt{Share: 1 - d.share, Width: d.width, Length: d.length}
	}
	up := side[len(side)-1].Tangent(1)
	return construct.DartedSeam(seams.Waist, side.End(), construct.Square(up), orb.Point{0, 0}, orb.Point{-1, 0}, darts)
}
