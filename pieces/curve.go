package pieces

import "github.com/paulmach/orb"

// Curve is one smooth stretch of an edge: a Line, an Arc or a Bezier. Its
// parameter t runs from 0 at the start to 1 at the end.
type Curve interface {
	Start() orb.Point
	End() orb.Point
	// At returns the point at parameter t.
	At(t float64) orb.Point
	// Tangent returns the unit direction of travel at parameter t.
	Tangent(t float64) orb.Point
	// Length in mm, within 1e-6.
	Length() float64
	// Split cuts the curve at parameter t.
	Split(t float64) (before, after Curve)
	// Reverse runs the other way.
	Reverse() Curve
	// Map moves the curve by a rigid motion, a mirror image or a scaling.
	Map(m Motion) Curve
	// Flatten returns points from start to end whose chords stay within
	// the tolerance (mm) of the curve.
	Flatten(tolerance float64) orb.LineString
}

// Path is a chain of curves, each beginning where the one before ends.
type Path []Curve

// Line is a straight stretch.
type Line struct{ From, To orb.Point }

// Arc is a stretch of a circle from the angle Begin by Sweep (radians,
// counter-clockwise; a negative sweep runs clockwise).
type Arc struct {
	Centre       orb.Point
	Radius       float64
	Begin, Sweep float64
}

// Bezier is a cubic from P0 to P3 with the control points P1 and P2.
type Bezier struct{ P0, P1, P2, P3 orb.Point }

// Motion is the affine map (x, y) to (A x + B y + E, C x + D y + F). It must
// keep angles: a turn, a mirror image, a move, or an even scaling.
type Motion struct{ A, B, C, D, E, F float64 }
