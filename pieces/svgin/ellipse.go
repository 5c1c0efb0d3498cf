package svgin

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// ellipticArc goes to a point by an arc of an ellipse with these half axes, turned by
// so many degrees: of the four that lead there the large or the small one, with
// growing angles or falling ones. From its ends to its centre by [source.SVG],
// appendix B.2; half axes that are too short are stretched.
func ellipticArc(chain *linework.Chain, rx, ry, degrees float64, large, sweep bool, to orb.Point) {
	from := chain.At()
	rx, ry = math.Abs(rx), math.Abs(ry)
	if from == to {
		return
	}
	if rx == 0 || ry == 0 {
		chain.LineTo(to)
		return
	}
	// In a frame where the ellipse is a unit circle, the ends lie a chord apart.
	stretch := pieces.Motion{A: rx, D: ry}.Then(pieces.Turn(degrees))
	back := pieces.Turn(-degrees).Then(pieces.Motion{A: 1 / rx, D: 1 / ry})
	a, b := back.Apply(from), back.Apply(to)
	half := geometry.Times(geometry.Sub(b, a), 0.5)
	h := geometry.Norm(half)
	grow := math.Max(1, h)
	rise := math.Sqrt(math.Max(0, grow*grow-h*h)) / h // of the centre over the chord, in half chords
	if large == sweep {
		rise = -rise
	}
	centre := geometry.Add(geometry.Between(a, b, 0.5), geometry.Times(orb.Point{-half[1], half[0]}, rise))
	begin := math.Atan2(a[1]-centre[1], a[0]-centre[0])
	turn := math.Atan2(b[1]-centre[1], b[0]-centre[0]) - begin
	switch {
	case sweep && turn <= 0:
		turn += 2 * math.Pi
	case !sweep && turn >= 0:
		turn -= 2 * math.Pi
	}
	middle := stretch.Apply(centre)
	if math.Abs(rx-ry) <= 1e-12*rx {
		chain.ArcTo(pieces.Arc{Centre: middle, Radius: rx * grow, Begin: begin + degrees*math.Pi/180, Sweep: turn})
		return
	}
	chain.EllipseTo(pieces.Scale(grow).Then(pieces.Motion{A: stretch.A, B: stretch.B, C: stretch.C, D: stretch.D,
		E: middle[0], F: middle[1]}), begin, turn)
}
