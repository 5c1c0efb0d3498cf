package rules

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// mirrorAlike finds a line about which the piece is its own mirror image, so
// that two plies, right sides together, give two of it and not a pair. A
// rectangle is such a piece. The outline, the notches, darts and marks must
// all agree. On a cloth with a nap the image must also point the same way,
// which leaves the line along the grain (on the cross grain, the line across
// it).
func mirrorAlike(piece pieces.Piece, outline orb.Ring, nap cloth.Nap) (pieces.Motion, bool) {
	along := grainAngle(piece, false)
	axes := []float64{along, along + 90}
	if piece.Grain.Lie == pieces.CrossGrain {
		axes[0], axes[1] = axes[1], axes[0]
	}
	least := 1
	switch {
	case nap == cloth.EitherWay:
	case piece.Grain.Lie == pieces.EitherGrain:
		least = 2 // whichever way it lies
	default:
		axes = axes[:1]
	}
	var found []pieces.Motion
	for _, axis := range axes {
		image := motion.Reflection(geometry.Centroid(outline), motion.WholeTurn(axis))
		if piece.IsSameUnder(image, outline) {
			found = append(found, image)
		}
	}
	if len(found) < least {
		return pieces.Motion{}, false
	}
	return found[0], true
}

// evened makes an outline that is nearly its own mirror image exactly so: the
// half on one side of the line is kept and mirrored. An outline that crosses
// the line more than twice stays as it is.
func evened(outline orb.Ring, image pieces.Motion) orb.Ring {
	ring := geometry.Distinct(outline)
	n, entry, entries, exits := len(ring), 0, 0, 0
	for i := range ring {
		before, now := side(image, ring[i]), side(image, ring[(i+1)%n])
		if before <= 0 && now > 0 {
			entry = i
			entries++
		}
		if before >= 0 && now < 0 {
			exits++
		}
	}
	if entries != 1 || exits != 1 {
		return outline
	}
	half := []orb.Point{crossing(image, ring[entry], ring[(entry+1)%n])}
	for i := entry + 1; ; i++ {
		p := ring[i%n]
		if side(image, p) <= 0 {
			half = append(half, crossing(image, ring[(i-1)%n], p))
			return doubled(half, image)
		}
		half = append(half, p)
	}
}

// crossing of the segment from p to q with the mirror line.
func crossing(image pieces.Motion, p, q orb.Point) orb.Point {
	a, b := side(image, p), side(image, q)
	t := a / (a - b)
	return orb.Point{p[0] + float64(t*(q[0]-p[0])), p[1] + float64(t*(q[1]-p[1]))}
}

// side of the mirror line on which a point lies, as a distance with a sign.
func side(image pieces.Motion, p orb.Point) float64 {
	q := image.Apply(p)
	dx, dy := p[0]-q[0], p[1]-q[1]
	// The normal of the line at angle a is (-sin a, cos a), and the motion
	// holds cos 2a and sin 2a.
	axis := portable.Atan2(image.C, image.A) / 2
	return (float64(-portable.Sin(axis)*dx) + float64(portable.Cos(axis)*dy)) / 2
}

// doubled joins a half outline, whose ends lie on the mirror line, to its
// image.
func doubled(half []orb.Point, image pieces.Motion) orb.Ring {
	out := append([]orb.Point(nil), half...)
	for i := len(half) - 1; i >= 0; i-- {
		out = append(out, image.Apply(half[i]))
	}
	return geometry.Closed(geometry.Distinct(geometry.Closed(out)))
}
