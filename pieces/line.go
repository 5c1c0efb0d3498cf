package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// Start of the line.
func (l Line) Start() orb.Point { return l.From }

// End of the line.
func (l Line) End() orb.Point { return l.To }

// At returns the point at parameter t.
func (l Line) At(t float64) orb.Point { return geometry.Between(l.From, l.To, t) }

// Tangent is the direction of the line, the same at every t. A line without
// length has the direction (0, 0).
func (l Line) Tangent(float64) orb.Point { return geometry.Unit(geometry.Sub(l.To, l.From)) }

// Length of the line in mm.
func (l Line) Length() float64 { return geometry.Distance(l.From, l.To) }

// Split cuts the line at parameter t.
func (l Line) Split(t float64) (before, after Curve) {
	middle := l.At(t)
	return Line{l.From, middle}, Line{middle, l.To}
}

// Reverse runs the other way.
func (l Line) Reverse() Curve { return Line{l.To, l.From} }

// Map moves the line.
func (l Line) Map(m Motion) Curve { return Line{m.Apply(l.From), m.Apply(l.To)} }

// Flatten returns the two ends.
func (l Line) Flatten(float64) orb.LineString { return orb.LineString{l.From, l.To} }
