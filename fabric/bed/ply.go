package bed

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Ply of the cloth where y of the bed lies between low and high: motion brings
// the bed to the open cloth, in the frame of the open lay.
type Ply struct {
	Motion    pieces.Motion
	Low, High float64
}

// PliesOn gives the lower ply of a bed of that length, and then the upper
// ones.
func (b Bed) PliesOn(c cloth.Cloth, length float64) []Ply {
	w, u := b.Width, b.Before
	lower := Ply{pieces.Motion{A: 1, D: 1, E: u, F: b.V}, 0, w}
	mirrored := func(v, low, high float64) Ply {
		return Ply{pieces.Motion{A: 1, D: -1, E: u, F: v}, low, high}
	}
	switch b.Kind {
	case lay.FoldedAlong:
		return []Ply{lower, mirrored(b.V, 0, w)}
	case lay.BothSelvedgesIn:
		return []Ply{lower, mirrored(b.V, 0, w/2), mirrored(b.V+2*w, w/2, w)}
	case lay.FoldedAcross:
		lower.Motion.E = length + c.Gap
		return []Ply{lower, {pieces.Motion{A: -1, D: 1, E: length}, 0, w}}
	case lay.CutAcross:
		upper := mirrored(w, 0, w)
		upper.Motion.E = SecondLength(c, length)
		return []Ply{lower, upper}
	}
	return []Ply{lower}
}

// OnCloth gives the plies of a bed of that length in the frame of the lay.
func (b Bed) OnCloth(c cloth.Cloth, length float64) []lay.Ply {
	var out []lay.Ply
	toBed := pieces.Move(-b.At[0], -b.At[1])
	for i, p := range b.PliesOn(c, length) {
		toCloth := toBed.Then(p.Motion).Then(pieces.Move(0, c.Selvedge))
		out = append(out, lay.Ply{Upper: i > 0, Low: b.At[1] + p.Low, High: b.At[1] + p.High, ToCloth: toCloth})
	}
	return out
}

// PliesAt are the plies that lie one on the other at a place across of a part,
// the lower first.
func PliesAt(part lay.Bed, y float64) []lay.Ply {
	var out []lay.Ply
	for _, ply := range part.OnCloth {
		if y >= ply.Low && y <= ply.High && len(out) < 2 {
			out = append(out, ply)
		}
	}
	return out
}

// SeenAcross is where a place of the lay, so far across in that part, lies on
// the open cloth, in the ply that is seen from above: mm across from the outer
// edge of the selvedge nearest to the cutter.
func SeenAcross(p lay.Plan, part int, y float64) float64 {
	plies := PliesAt(p.Beds[part], y)
	return plies[len(plies)-1].ToCloth.Apply(orb.Point{0, y})[1]
}
