package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// mitreLimit is how far a mitre may reach from its corner, in widths of the
// wider allowance, before it is cut back.
const mitreLimit = 2.0

// corner returns the points between the outer side of a strip and that of the
// next (rules 2 to 5 of CuttingOutline).
//
//	             b.seam ▲         ▲ b.rim
//	                    │ u2      │
//	a.seam ──── u1 ───▶ v ──n2──▶ foot 2
//	                    │ n1      │ back
//	a.rim  ──────────▶ foot 1 ──▶ mitre
//	                       ahead
func corner(a, b strip, tolerance float64) []orb.Point {
	v := b.seam[0]
	u1, u2 := a.end, b.begin
	n1, n2 := geometry.Right(u1), geometry.Right(u2)
	w1, w2 := a.width, b.width
	sin, cos := geometry.Cross(u1, u2), geometry.Dot(u1, u2)
	switch {
	case w1 == w2 && isSmooth(u1, u2) && sin >= 0:
		return bend(v, u1, u2, w1, tolerance, 0)
	case sin <= 0:
		return []orb.Point{v}
	}
	// The mitre is foot 1 + ahead u1 and foot 2 - back u2.
	ahead, back := (w2-float64(w1*cos))/sin, (w1-float64(w2*cos))/sin
	if ahead < 0 || back < 0 {
		return []orb.Point{stepFoot(v, n1, n2, w1, w2, cos)}
	}
	foot1, foot2 := geometry.Add(v, geometry.Times(n1, w1)), geometry.Add(v, geometry.Times(n2, w2))
	mitre := geometry.Add(foot1, geometry.Times(u1, ahead))
	reach, limit := geometry.Distance(mitre, v), mitreLimit*math.Max(w1, w2)
	if reach <= limit {
		return []orb.Point{mitre}
	}
	return []orb.Point{
		geometry.Add(foot1, geometry.Times(u1, (float64(limit*reach)-float64(w1*w1))/ahead)),
		geometry.Sub(foot2, geometry.Times(u2, (float64(limit*reach)-float64(w2*w2))/back)),
	}
}

// stepFoot is where the narrower cutting line, prolonged, runs into the square
// end of the wider allowance. The turn is less than a right angle here.
func stepFoot(v, n1, n2 orb.Point, w1, w2, cos float64) orb.Point {
	if w1 < w2 {
		return geometry.Add(v, geometry.Times(n2, w1/cos))
	}
	return geometry.Add(v, geometry.Times(n1, w2/cos))
}

// clip cuts a ring off along the line from a to b, keeping its left side. It
// reports false when the ring would then lie along the line in other than one
// stretch: something besides the fold and what adjoins it reaches across.
func clip(ring orb.Ring, a, b orb.Point) (orb.Ring, bool) {
	u := geometry.Unit(geometry.Sub(b, a))
	side := func(p orb.Point) float64 { return geometry.Cross(u, geometry.Sub(p, a)) }
	var out orb.Ring
	for i := 0; i+1 < len(ring); i++ {
		p, q := ring[i], ring[i+1]
		sp, sq := side(p), side(q)
		if sp >= -snap {
			out = append(out, p)
		}
		if sp < -snap != (sq < -snap) {
			out = append(out, geometry.Add(a,
				geometry.Times(u, geometry.Dot(geometry.Sub(geometry.Between(p, q, sp/(sp-sq)), a), u))))
		}
	}
	out = tidyRing(out)
	stretches := 0
	for i := 0; i+1 < len(out); i++ {
		if math.Abs(side(out[i])) <= 2*snap && math.Abs(side(out[i+1])) <= 2*snap {
			stretches++
		}
	}
	return out, stretches == 1
}
