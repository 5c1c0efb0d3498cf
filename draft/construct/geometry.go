package construct

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Between returns the point that lies a fraction of the way from one point to
// another.
func Between(from, to orb.Point, fraction float64) orb.Point {
	return geometry.Between(from, to, fraction)
}

// Toward returns the point at a distance from one point towards another.
func Toward(from, to orb.Point, by float64) orb.Point {
	return Go(from, Direction(from, to), by)
}

// Go returns the point at a distance from another in a unit direction.
func Go(from, way orb.Point, by float64) orb.Point {
	return orb.Point{from[0] + float64(way[0]*by), from[1] + float64(way[1]*by)}
}

// Direction is the unit direction from one point to another.
func Direction(from, to orb.Point) orb.Point {
	length := Distance(from, to)
	return orb.Point{(to[0] - from[0]) / length, (to[1] - from[1]) / length}
}

// Distance between two points.
func Distance(a, b orb.Point) float64 { return geometry.Distance(a, b) }

// Square is a unit direction turned a quarter counter-clockwise.
func Square(way orb.Point) orb.Point { return geometry.Left(way) }

// Back is the opposite direction.
func Back(way orb.Point) orb.Point { return orb.Point{-way[0], -way[1]} }

// Heading is the unit direction at an angle from the right (degrees,
// counter-clockwise).
func Heading(degrees float64) orb.Point {
	sin, cos := portable.SincosDegrees(degrees)
	return orb.Point{cos, sin}
}

// Turning is the motion that turns about a centre (degrees,
// counter-clockwise).
func Turning(centre orb.Point, degrees float64) pieces.Motion {
	return pieces.Move(-centre[0], -centre[1]).Then(pieces.Turn(degrees)).Then(pieces.Move(centre[0], centre[1]))
}

// Line is a straight path.
func Line(from, to orb.Point) pieces.Path { return pieces.Path{pieces.Line{From: from, To: to}} }

// Curve is a smooth curve that leaves one point in one direction and arrives
// at another in another. The pulls are the lengths of its handles, as
// fractions of the straight distance: a third is a gentle curve, a half a
// full one. Between directions that both lie on the straight line it is that
// line.
func Curve(from, leaving orb.Point, pull float64, to, arriving orb.Point, pullTo float64) pieces.Path {
	d, way := Distance(from, to), Direction(from, to)
	if Distance(leaving, way) < 1e-9 && Distance(arriving, way) < 1e-9 {
		return Line(from, to)
	}
	return pieces.Path{pieces.Bezier{P0: from, P1: Go(from, leaving, pull*d), P2: Go(to, arriving, -pullTo*d), P3: to}}
}

// Bend is a smooth curve like Curve that bends one way only: its handles end
// before the corner at which both directions meet. The shares, from 0 to 1, say
// how near to it. Where they do not meet it is the straight line.
func Bend(from, leaving orb.Point, share float64, to, arriving orb.Point, shareTo float64) pieces.Path {
	corner, ok := Meet(from, leaving, to, arriving)
	if !ok {
		return Line(from, to)
	}
	return pieces.Path{pieces.Bezier{P0: from, P1: Between(from, corner, share), P2: Between(to, corner, shareTo),
		P3: to}}
}

// Join makes one path of several, each beginning where the one before ends.
func Join(paths ...pieces.Path) pieces.Path {
	var all pieces.Path
	for _, p := range paths {
		all = append(all, p...)
	}
	return all
}

// Meet returns where two lines cross, each given by a point and a direction,
// and whether they do.
func Meet(a, wayA, b, wayB orb.Point) (orb.Point, bool) {
	cross := geometry.Cross(wayA, wayB)
	if math.Abs(cross) < 1e-9 {
		return orb.Point{}, false
	}
	t := geometry.Cross(geometry.Sub(b, a), wayB) / cross
	return Go(a, wayA, t), true
}

// asin in degrees; outside its range the nearest value.
func asin(ratio float64) float64 {
	return portable.Asin(max(-1, min(1, ratio))) * 180 / math.Pi
}

// Angle is the angle of a direction from the right (degrees,
// counter-clockwise, from 0 up to 360).
func Angle(way orb.Point) float64 {
	return math.Mod(portable.Atan2(way[1], way[0])*180/math.Pi+360, 360)
}
