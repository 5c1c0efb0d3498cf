package pieces

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// hemReach bounds how far, in hem depths, the mirrored end of a hem may lean
// sideways; beyond it the corner is made like any other.
const hemReach = 2.0

// hemCorner makes the corner between a hem and its neighbour, in either
// order, by rule 6 of CuttingOutline: it trims both outer sides and inserts
// the mirror image of the neighbour's. It reports false, and changes nothing,
// where that cannot be done.
func hemCorner(a, b *strip) bool {
	v := b.seam[0]
	if b.hem {
		frame := hemFrame{v, geometry.Times(b.begin, -1), geometry.Times(geometry.Right(b.begin), -1), b.width}
		hem, side, ok := frame.join(b.rim, reversed(a.rim), geometry.Times(a.end, -1))
		if ok {
			b.rim, a.rim = hem, reversed(side)
		}
		return ok
	}
	frame := hemFrame{v, a.end, geometry.Times(geometry.Right(a.end), -1), a.width}
	hem, side, ok := frame.join(reversed(a.rim), b.rim, b.begin)
	if ok {
		a.rim, b.rim = reversed(hem), side
	}
	return ok
}

// hemFrame holds the directions at the end of a hem: along the hem line away
// from the hem, and up into the piece.
type hemFrame struct {
	origin, along, up orb.Point
	depth             float64
}

// join takes the outer sides of the hem and of the neighbour, both running
// away from the corner, and the direction in which the neighbour sets off. It returns the hem's beginning with the
// mirror image
// of the neighbour, and the neighbour's beginning on the hem line, where the
// two meet.
func (f hemFrame) join(hem, side []orb.Point, direction orb.Point) (newHem, newSide []orb.Point, ok bool) {
	newSide, ok = f.fromHemLine(side, direction)
	if !ok {
		return nil, nil, false
	}
	image, ok := f.image(newSide)
	if !ok {
		return nil, nil, false
	}
	// Where the mirror image ends outside the hem, the hem runs on to it.
	first := hem[0]
	outside := geometry.Dot(geometry.Sub(image[len(image)-1], f.origin), f.along) -
		geometry.Dot(geometry.Sub(first, f.origin), f.along)
	if outside >= -snap {
		return append(image, hem[1:]...), newSide, true
	}
	// Otherwise the two are trimmed where they cross.
	end := len(image) - 1
	image = append(image, geometry.Add(image[end], geometry.Sub(image[end], image[end-1])))
	for i := 0; i+1 < len(image); i++ {
		for j := 0; j+1 < len(hem); j++ {
			if p, meets := crossing(image[i], image[i+1], hem[j], hem[j+1]); meets {
				return append(append(image[:i+1:i+1], p), hem[j+1:]...), newSide, true
			}
		}
	}
	return nil, nil, false
}

// fromHemLine lets the neighbour's outer side begin on the hem line: trimmed
// where it crosses it, or prolonged back to it.
func (f hemFrame) fromHemLine(side []orb.Point, direction orb.Point) ([]orb.Point, bool) {
	if f.height(side[0]) >= 0 {
		start, ok := f.atHeight(geometry.Add(side[0], direction), side[0], 0)
		if !ok || geometry.Distance(start, f.origin) > hemReach*(f.depth+geometry.Distance(side[0], f.origin)) {
			return nil, false
		}
		return append([]orb.Point{start}, side...), true
	}
	for i := 0; i+1 < len(side); i++ {
		if f.height(side[i+1]) >= 0 {
			start, _ := f.atHeight(side[i], side[i+1], 0)
			return append([]orb.Point{start}, side[i+1:]...), true
		}
	}
	return nil, false
}

// image is the mirror image about the hem line of a line that begins on it,
// down to the depth of the hem. A line that ends before is prolonged; one that
// does not rise steadily, or leans too far, has none.
func (f hemFrame) image(side []orb.Point) ([]orb.Point, bool) {
	mirror := MirrorAbout(f.origin, geometry.Add(f.origin, f.along))
	out := []orb.Point{side[0]}
	for i := 0; i+1 < len(side); i++ {
		rise := f.height(side[i+1]) - f.height(side[i])
		if geometry.Distance(side[i], side[i+1]) < snap {
			continue
		}
		if rise <= 0 {
			return nil, false
		}
		if f.height(side[i+1]) >= f.depth || i+2 == len(side) {
			top, _ := f.atHeight(side[i], side[i+1], f.depth)
			out = append(out, mirror.Apply(top))
			lean := math.Abs(geometry.Dot(geometry.Sub(top, side[0]), f.along))
			return out, lean <= hemReach*f.depth
		}
		out = append(out, mirror.Apply(side[i+1]))
	}
	return nil, false
}

// height above the hem line, mm.
func (f hemFrame) height(p orb.Point) float64 { return geometry.Dot(geometry.Sub(p, f.origin), f.up) }

// atHeight is the point at that height on the line through p and q.
func (f hemFrame) atHeight(p, q orb.Point, height float64) (orb.Point, bool) {
	hp, hq := f.height(p), f.height(q)
	if math.Abs(hq-hp) < straight*geometry.Distance(p, q) {
		return orb.Point{}, false
	}
	return geometry.Between(p, q, (height-hp)/(hq-hp)), true
}

func reversed(points []orb.Point) []orb.Point {
	out := slices.Clone(points)
	slices.Reverse(out)
	return out
}
