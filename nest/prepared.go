package nest

import (
	"github.com/paulmach/orb"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/outline"
	"ellwand/nest/layout"
)

// prepared is a problem turned into a model, and the way back.
type prepared struct {
	problem layout.Problem
	model   *model.Model
	// scale is the width that tolerances are shares of.
	scale float64
	// locked placements of the start, which are fixed shapes in the model.
	locked []layout.Placement
	// sheetX and sheetY move each sheet to its place on the strip of the model.
	sheetX, sheetY []float64
}

func (q *prepared) addObstacle(ring orb.Ring) {
	base, centre := q.model.AddBase(outline.Clean(ring), true)
	shape := q.model.AddShape(shapeOf(&q.model.Bases[base], base, centre, 1, 1))
	q.model.Fixed = append(q.model.Fixed, model.Spot{Shape: shape, X: centre[0], Y: centre[1]})
}

// shapeOf is the base mirrored by flipX and flipY; centre is where the base's
// bounding box lay.
func shapeOf(base *model.Base, index int, centre orb.Point, flipX, flipY float64) model.Shape {
	_, hi := outline.Bounds(base.Points)
	return model.Shape{
		Base: index, FlipX: flipX, FlipY: flipY, HalfX: hi[0], HalfY: hi[1],
		CentreX: float64(flipX * centre[0]), CentreY: float64(flipY * centre[1]),
	}
}

// simplifyShare is how far outlines may grow to lose vertices, as a share of the strip
// width: 0.07 mm on cloth of 1.40 m.
const simplifyShare = 5e-5

// ringOf an item as the search has it, turned.
func (q *prepared) ringOf(item layout.Item, angle float64) orb.Ring {
	return outline.Simplify(outline.Clean(layout.Turned(item.Outline, angle, false)), simplifyShare*q.scale)
}
