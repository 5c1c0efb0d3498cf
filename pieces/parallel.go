package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// strip is the allowance along one smooth stretch of an edge.
type strip struct {
	seam       []orb.Point // flattened, no point twice
	begin, end orb.Point   // the true directions of travel at its two ends
	width      float64
	hem        bool
	fold       bool
	// rim is the outer side, from square to the start of the seam to square
	// to its end, unless a corner has trimmed it.
	rim []orb.Point
	// joined says that the corner at the end of the seam is already made.
	joined bool
}

// isSmooth reports whether two directions differ by less than half a degree:
// what is drawn as one smooth line, whatever the last digit.
func isSmooth(u1, u2 orb.Point) bool {
	return geometry.Dot(u1, u2) > 0 && math.Abs(geometry.Cross(u1, u2)) < 0.5*math.Pi/180
}

// parallel is the line at the width to the right of the seam, as a wheel of
// that radius rolling along it would draw it: within the tolerance outside
// that line. It begins and ends square to the true directions of the seam.
func (s strip) parallel(tolerance float64) []orb.Point {
	if s.width == 0 {
		return s.seam
	}
	seam, last := s.seam, len(s.seam)-1
	out := []orb.Point{geometry.Add(seam[0], geometry.Times(geometry.Right(s.begin), s.width))}
	out = append(out, bend(seam[0], s.begin, chord(seam, 0), s.width, tolerance,
		geometry.Distance(seam[0], seam[1]))...)
	for i := 1; i < last; i++ {
		out = append(out, joint(seam, i, s.width, tolerance)...)
	}
	out = append(out, bend(seam[last], chord(seam, last-1), s.end, s.width, tolerance,
		geometry.Distance(seam[last-1], seam[last]))...)
	return append(out, geometry.Add(seam[last], geometry.Times(geometry.Right(s.end), s.width)))
}

// bend fills the turn between the end of a curve and its first or last chord
// of that length: the outside of an outward turn, and the wedge of an inward
// one where the width is more than the radius of the curve, which is the length
// over twice the turn. A turn below 0.0001 rad leaves out no more than 5e-9 of
// the width.
func bend(v, u1, u2 orb.Point, width, tolerance, length float64) []orb.Point {
	turn := portable.Atan2(geometry.Cross(u1, u2), geometry.Dot(u1, u2))
	switch {
	case turn > 1e-4:
		return fan(v, geometry.Right(u1), turn, width, tolerance)
	case turn < -1e-4 && length < -2*turn*width:
		return wedge(v, u1, u2, turn, width, tolerance)
	}
	return nil
}

// wedge goes from the foot of one chord to that of the next at a hollow point
// v, round all that lies between them.
func wedge(v, u1, u2 orb.Point, turn, width, tolerance float64) []orb.Point {
	foot1, foot2 := geometry.Add(v, geometry.Times(geometry.Right(u1), width)), geometry.Add(v,
		geometry.Times(geometry.Right(u2), width))
	out := append([]orb.Point{foot1, v, foot2, foot1}, fan(v, geometry.Right(u1), turn, width, tolerance)...)
	return append(out, foot2)
}

// chord is the direction of the i-th chord.
func chord(seam []orb.Point, i int) orb.Point { return geometry.Unit(geometry.Sub(seam[i+1], seam[i])) }

// joint joins the parallels of the two chords that meet at point i.
func joint(seam []orb.Point, i int, width, tolerance float64) []orb.Point {
	v, u1, u2 := seam[i], chord(seam, i-1), chord(seam, i)
	turn := portable.Atan2(geometry.Cross(u1, u2), geometry.Dot(u1, u2))
	if turn >= 0 {
		return fan(v, geometry.Right(u1), turn, width, tolerance)
	}
	// In a hollow the two parallels cross, when the chords are long enough.
	back := width * portable.Tan(-turn/2)
	if spare(seam, i-1, width) > 0 && spare(seam, i, width) > 0 {
		return []orb.Point{geometry.Add(v, geometry.Add(geometry.Times(geometry.Right(u1), width),
			geometry.Times(u1, -back)))}
	}
	// Otherwise the allowances of short chords fan out beyond the hollow: the
	// wedge between each two is filled by going round it.
	return wedge(v, u1, u2, turn, width, tolerance)
}

// spare is what is left of the parallel of chord i when the hollow joints at
// its two ends have each taken their share.
func spare(seam []orb.Point, i int, width float64) float64 {
	left := geometry.Distance(seam[i], seam[i+1])
	u := chord(seam, i)
	if i > 0 {
		left -= hollowShare(chord(seam, i-1), u, width)
	}
	if i+2 < len(seam) {
		left -= hollowShare(u, chord(seam, i+1), width)
	}
	return left
}

func hollowShare(u1, u2 orb.Point, width float64) float64 {
	turn := portable.Atan2(geometry.Cross(u1, u2), geometry.Dot(u1, u2))
	if turn >= 0 {
		return 0
	}
	return float64(width * portable.Tan(-turn/2))
}

// fan is the outside of a circle round v from the direction n1 through the
// turn, either way: as few tangents as keep their corners within the tolerance.
func fan(v, n1 orb.Point, turn, width, tolerance float64) []orb.Point {
	most := 2 * portable.Acos(width/(width+tolerance))
	n := int(math.Ceil(math.Abs(turn)/most - 1e-9))
	n = max(n, 1)
	step := turn / float64(n)
	reach := width / portable.Cos(step/2)
	out := make([]orb.Point, n)
	for k := range out {
		sin, cos := portable.Sincos((float64(k) + 0.5) * step)
		turned := orb.Point{float64(n1[0]*cos) - float64(n1[1]*sin), float64(n1[0]*sin) + float64(n1[1]*cos)}
		out[k] = geometry.Add(v, geometry.Times(turned, reach))
	}
	return out
}
