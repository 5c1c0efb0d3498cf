package rules

import (
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/nest/layout"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Directions of a turn along the nap, for layout.Turn.Direction
// [source.OwnChoice].
const (
	upTheLay   = 0 // "this end up" points to growing x
	downTheLay = 1 // to the cut end
)

// lies are the angles, from the warp, that a grainline may take on the cloth
// [source.CommonPractice].
var lies = map[pieces.GrainLie][]float64{
	pieces.StraightGrain: {0, 180},
	pieces.CrossGrain:    {90, 270},
	pieces.Bias:          {45, 135, 225, 315},
	pieces.EitherGrain:   {0, 90, 180, 270},
}

// GrainTolerance is how far, in degrees, a fold edge drawn along the grain
// may deviate from it: 1 mm on a metre [source.OwnChoice].
const GrainTolerance = 0.06

// turnsOf returns the turns in which the grain lies as it must and the nap
// allows, for a template laid face up or (mirrored) face down.
func turnsOf(piece pieces.Piece, nap cloth.Nap, mirrored bool) []layout.Turn {
	grain := grainAngle(piece, mirrored)
	var out []layout.Turn
	for _, lie := range lies[piece.Grain.Lie] {
		out = append(out, layout.Turn{
			Degrees:   motion.WholeTurn(lie - grain),
			Mirrored:  mirrored,
			Direction: directionOf(piece.Grain.Lie, lie, mirrored),
		})
	}
	return napAllows(out, nap)
}

// foldTurns returns the turns that bring the fold edge to a fold of the lay,
// at y = 0 with the piece above it, or at the far edge with the piece below.
// There are two: the half as drawn, and its mirror image turned end for end. Since
// the whole piece is its own mirror image about the fold, the second is the whole
// piece turned by 180 degrees: both halves of a folded cloth give the same piece,
// whichever face of the template is up.
// Turns in which the grain would lie wrongly are left out.
func foldTurns(piece pieces.Piece, nap cloth.Nap, pin layout.Pin) []layout.Turn {
	edge, _ := piece.Edge(piece.Fold)
	start, end := motion.EndsOf(edge)
	fold := motion.AngleOf(start, end)
	if pin == layout.PinHigh {
		fold += 180
	}
	candidates := []layout.Turn{
		{Degrees: motion.WholeTurn(-fold), Pin: pin},
		{Degrees: motion.WholeTurn(fold), Mirrored: true, Pin: pin},
	}
	var out []layout.Turn
	for _, turn := range candidates {
		lies := grainAngle(piece, turn.Mirrored) + turn.Degrees
		lie, ok := nearestLie(piece.Grain.Lie, lies)
		if !ok {
			continue
		}
		turn.Direction = directionOf(piece.Grain.Lie, lie, turn.Mirrored)
		out = append(out, turn)
	}
	return napAllows(out, nap)
}

// directionOf says which way the nap runs over a piece whose grainline lies
// at an angle to the warp. On the cross grain the nap crosses the piece, from
// its left or from its right; for a piece laid face down that is reversed, so
// that a pair stays a true pair with the nap on it.
func directionOf(grain pieces.GrainLie, lie float64, mirrored bool) int {
	sin, cos := portable.Sincos(geometry.Radians(lie))
	up, isAcross := cos > 0, math.Abs(sin) > 0.9
	if grain == pieces.CrossGrain || grain == pieces.EitherGrain && isAcross {
		up = (sin > 0) != mirrored
	}
	if up {
		return upTheLay
	}
	return downTheLay
}

// eitherEnd reports whether a piece that goes one way points to the one end or to
// the other, with all that do, as the search is to find out: where flaws, or the
// shape of a remnant, make the ends unlike. (Where each garment goes one way by
// itself, its group is that of the garment.)
func eitherEnd(c cloth.Cloth, b bed.Bed, piece string) bool {
	return c.NapOf(piece) == cloth.OneWay && c.Nap != cloth.OneWayPerGarment && len(c.Flaws) > 0 && !b.Shared
}

// napAllows leaves out the turns against a one-way nap. That all pieces point
// to growing x loses nothing where both ends of the cloth are alike: any other
// lay is this one turned end for end.
func napAllows(turns []layout.Turn, nap cloth.Nap) []layout.Turn {
	if nap != cloth.OneWay {
		return turns
	}
	var out []layout.Turn
	for _, turn := range turns {
		if turn.Direction == upTheLay {
			out = append(out, turn)
		}
	}
	return out
}

// pointingBack leaves out the turns in which a piece points away from the cut end.
func pointingBack(turns []layout.Turn) []layout.Turn {
	var out []layout.Turn
	for _, turn := range turns {
		if turn.Direction == downTheLay {
			out = append(out, turn)
		}
	}
	return out
}

func nearestLie(grain pieces.GrainLie, angle float64) (float64, bool) {
	for _, lie := range lies[grain] {
		if math.Abs(math.Remainder(angle-lie, 360)) <= GrainTolerance {
			return lie, true
		}
	}
	return 0, false
}

// grainAngle of the piece as drawn, or mirrored in x, in degrees.
func grainAngle(piece pieces.Piece, mirrored bool) float64 {
	angle := motion.AngleOf(piece.Grain.From, piece.Grain.To)
	if mirrored {
		return 180 - angle
	}
	return angle
}
