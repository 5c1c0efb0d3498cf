package plan

import (
	"math"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/portable"
)

// HandLays are the lays of a cloth in its width that a hand has laid pieces in, each as a
// plan of these pieces alone; those of wanted lays, or of all where none are named.
func HandLays(c cloth.Cloth, wanted []lay.Kind) []lay.Plan {
	var out []lay.Plan
	for _, one := range c.InItsWidth().ByHand {
		p := lay.Plan{Cloth: c, Lay: lay.Kind(one.Lay), FoldedIn: one.FoldedIn}
		if len(wanted) > 0 && !slices.Contains(wanted, p.Lay) {
			continue
		}
		for _, piece := range one.Pieces {
			p.Pieces = append(p.Pieces, lay.Laid{
				Name: piece.Name, Garment: piece.Garment, Size: piece.Size, Copy: piece.Copy, Turn: piece.Turn,
				X: piece.At[0], Y: piece.At[1], Mirrored: piece.FaceDown, OnFold: piece.OnFold, Bed: partOf(piece),
			})
		}
		out = append(out, p)
	}
	return out
}

// partOf the lay that a piece lies on: in one of two parts the folded one is the first.
func partOf(piece cloth.HandPiece) int {
	if piece.OnOpen {
		return 1
	}
	return 0
}

// sameSpot is how far a piece may lie from where it was laid by hand, for the digits that
// are kept of it, mm [source.OwnChoice].
const sameSpot = 0.02

// markByHand marks the pieces of a plan that lie where a hand has laid them, gives each
// the number that it was laid by, and notes it.
func markByHand(p *lay.Plan) {
	var names []string
	for _, hand := range HandLays(p.Cloth, []lay.Kind{p.Lay}) {
		for _, piece := range hand.Pieces {
			at := slices.IndexFunc(p.Pieces, func(l lay.Laid) bool { return !l.ByHand && liesAs(l, piece) })
			if at < 0 {
				continue
			}
			p.Pieces[at].ByHand = true
			renumber(p.Pieces, at, piece.Copy)
			if !slices.Contains(names, piece.Name) {
				names = append(names, piece.Name)
			}
		}
	}
	if len(names) > 0 {
		p.Notes = append(p.Notes, lay.Note{Of: lay.LaidByHand, Pieces: names})
	}
}

func liesAs(l, hand lay.Laid) bool {
	return isCopy(l, hand) && l.Mirrored == hand.Mirrored &&
		portable.Hypot(l.X-hand.X, l.Y-hand.Y) <= sameSpot && math.Abs(math.Remainder(l.Turn-hand.Turn, 360)) <= sameSpot
}

// renumber gives a piece a number by which a hand has laid it, and the copy that has that
// number the piece's.
func renumber(all []lay.Laid, at, number int) {
	if number == 0 {
		return
	}
	one := &all[at]
	for i := range all {
		if isCopy(all[i], *one) && all[i].Copy == number {
			all[i].Copy = one.Copy
		}
	}
	one.Copy = number
}

// isCopy says that two are of one piece.
func isCopy(a, b lay.Laid) bool {
	return a.Name == b.Name && a.Garment == b.Garment && a.Size == b.Size
}
