package plan

import (
	"cmp"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/pieces/seams"
)

// shareOut says which copies lie on the other part with the piece, of which one step goes
// there.
func (a *across) shareOut(c choice, to int) {
	leave, come := c.step, templatesFor(c.Piece, c.step)
	if to == 1 {
		leave, come = come, leave
	}
	others := alike(a.from, a.piece, c.Piece.Pair)
	a.goes = others[:min(leave-1, len(others))] // what cannot lie as it should is not in a lay
	for i, other := range a.from {
		if slices.Contains(a.goes, i) {
			continue
		}
		if i == a.piece {
			a.at = len(a.all)
			other.Bed, other.OnFold = to, to == 0 && c.Piece.Fold != seams.None
		}
		a.all, a.index = append(a.all, other), append(a.index, i)
	}
	l := a.all[a.at]
	l.ByHand = false
	for range come - 1 {
		l.Copy = freeNumber(append(slices.Clone(a.from), a.comes...), l)
		l.Mirrored = c.Piece.Pair && !l.Mirrored
		a.comes = append(a.comes, l)
	}
}

// alike are the other copies of a piece on its part, in the order in which they go with
// it: of a pair first the other side, and last what a hand has laid.
func alike(all []lay.Laid, piece int, isPair bool) []int {
	l := all[piece]
	var out []int
	for i, other := range all {
		if i != piece && isCopy(other, l) && other.Bed == l.Bed {
			out = append(out, i)
		}
	}
	rank := func(i int) int {
		rank := 0
		if isPair && all[i].Mirrored == l.Mirrored {
			rank += 2
		}
		if all[i].ByHand {
			rank++
		}
		return rank
	}
	slices.SortStableFunc(out, func(i, j int) int { return cmp.Compare(rank(i), rank(j)) })
	return out
}

// freeNumber is the first that no copy has.
func freeNumber(all []lay.Laid, l lay.Laid) int {
	number := 1
	for slices.ContainsFunc(all, func(o lay.Laid) bool { return isCopy(o, l) && o.Copy == number }) {
		number++
	}
	return number
}
