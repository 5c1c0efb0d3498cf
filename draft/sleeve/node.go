package sleeve

import (
	"math"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/integrate/quad"

	"ellwand/nest/portable"
	"ellwand/pieces"
)

// node is a place on the head: where it lies, which way the head runs there
// (radians from the right, counter-clockwise), and how it bends there: one over
// its radius in mm, positive in the hollow under the arm.
type node struct {
	at            orb.Point
	heading, bend float64
}

func (n node) way() orb.Point { return orb.Point{portable.Cos(n.heading), portable.Sin(n.heading)} }

// gaussPoints is the order of the quadrature: on a stretch that turns by less
// than a right angle it is right to far below a micrometre
// [source.Geometry].
const gaussPoints = 12

// gaussAt and gaussWeight are the places and the weights of the quadrature
// [source.Geometry].
var gaussAt, gaussWeight = func() (at, weight [gaussPoints]float64) {
	quad.Legendre{}.FixedLocations(at[:], weight[:], 0, 1)
	return at, weight
}()

// after is the node that a stretch of a length leads to along which the bend
// changes evenly to another: an arc of a clothoid.
func (n node) after(length, bend float64) node {
	end := node{n.at, n.heading + length*(n.bend+bend)/2, bend}
	for i, at := range gaussAt {
		s := at * length
		sin, cos := portable.Sincos(n.heading + float64(s*n.bend) + s*at*(bend-n.bend)/2)
		end.at[0] += float64(length * gaussWeight[i] * cos)
		end.at[1] += float64(length * gaussWeight[i] * sin)
	}
	return end
}

func cross(a, b orb.Point) float64 { return float64(a[0]*b[1]) - float64(a[1]*b[0]) }

// endOf is the node at the end of a path.
func endOf(path pieces.Path) node {
	last := path[len(path)-1]
	way := last.Tangent(1)
	n := node{at: last.End(), heading: portable.Atan2(way[1], way[0])}
	switch c := last.(type) {
	case pieces.Arc:
		n.bend = math.Copysign(1/c.Radius, c.Sweep)
	case pieces.Bezier:
		u := orb.Point{c.P2[0] - c.P1[0], c.P2[1] - c.P1[1]}
		v := orb.Point{c.P3[0] - c.P2[0], c.P3[1] - c.P2[1]}
		length := portable.Hypot(v[0], v[1])
		n.bend = 2 * cross(u, v) / (3 * length * length * length)
	}
	return n
}
