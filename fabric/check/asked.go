package check

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

var _ = register(rule{whole: checkAsked})

// checkAsked: every match that was asked for, and the right and left of every pair, is
// kept on each repeat of the cloth, or said to be dropped.
func checkAsked(p lay.Plan, _ []openedPiece, asked []pieces.Piece) error {
	var faults []error
	for _, across := range []bool{false, true} {
		if period := []float64{p.Cloth.Repeat.Along, p.Cloth.Repeat.Across}; period[axisOf(across)] == 0 {
			continue
		}
		for i, piece := range asked {
			for _, name := range matchesOf(p, i, asked, across) {
				if !names(p.Matches, name, across, i) && !names(p.Dropped, name, across, i) {
					faults = append(faults, fmt.Errorf("%s: its match %q is neither kept nor said to be dropped", piece.Name, name))
				}
			}
		}
	}
	return errors.Join(faults...)
}

// matchesOf a piece: what is asked for by name, or else what joins it to another of its
// garment, or its copies to each other; and None for its right and left.
func matchesOf(p lay.Plan, i int, asked []pieces.Piece, across bool) []marks.Name {
	piece, repeat := asked[i], p.Cloth.Repeat
	isNamed := func(name marks.Name) bool { return len(repeat.Matches) == 0 || slices.Contains(repeat.Matches, name) }
	var out []marks.Name
	for _, seam := range []seams.Name{seams.SideSeam, seams.OutsideLeg, seams.InsideLeg, seams.FrontSeam, seams.BackSeam} {
		if name := marks.OfSeam(seam); joins(i, asked, seam) && isNamed(name) && !(across && isSewnToItself(i, asked, seam)) {
			out = append(out, name)
		}
	}
	if slices.Contains(repeat.SideBySide, piece.Name) && !across && isNamed(marks.SideBySide) {
		out = append(out, marks.SideBySide)
	}
	if across && piece.Cut > 1 && !piece.Pair && isNamed(marks.Alike) && isJoinedToCopies(p, i, asked) {
		out = append(out, marks.Alike)
	}
	if _, ok := pocketPlace(piece); ok && isNamed(marks.PatchPocket) && hasPocketToo(i, asked) {
		out = append(out, marks.PatchPocket)
	}
	for _, notch := range piece.Notches {
		isAsked := slices.Contains(repeat.Matches, notch.Match)
		if len(repeat.Matches) == 0 {
			isAsked = isShared(i, asked, notch.Match) && !isOnJoinedSeam(i, asked, notch.Edge)
		}
		if _, first := matchPoint(piece, notch.Match); notch.Match != marks.None && isAsked && first &&
			!slices.Contains(out, notch.Match) {
			out = append(out, notch.Match)
		}
	}
	if piece.Pair && piece.Fold == seams.None {
		out = append(out, marks.None)
	}
	return out
}

// isJoinedToCopies reports whether a piece hangs beside its copies, or is sewn to them.
func isJoinedToCopies(p lay.Plan, i int, asked []pieces.Piece) bool {
	if slices.Contains(p.Cloth.Repeat.SideBySide, asked[i].Name) {
		return true
	}
	for _, seam := range []seams.Name{seams.SideSeam, seams.OutsideLeg, seams.InsideLeg, seams.FrontSeam, seams.BackSeam} {
		if _, times := long(asked[i], seam); times > 1 && joins(i, asked, seam) {
			return true
		}
	}
	return false
}

// hasPocketToo reports whether another piece of the garment is a patch pocket, or has the
// place for one.
func hasPocketToo(i int, asked []pieces.Piece) bool {
	for k, other := range asked {
		if k == i || other.Garment != asked[i].Garment {
			continue
		}
		if _, ok := pocketPlace(other); ok {
			return true
		}
	}
	return false
}

// isShared reports whether another piece of the garment has a notch of that name, on no
// seam that is matched by its lower end.
func isShared(i int, asked []pieces.Piece, name marks.Name) bool {
	for k, other := range asked {
		if k == i || other.Garment != asked[i].Garment {
			continue
		}
		for _, notch := range other.Notches {
			if notch.Match == name && !isOnJoinedSeam(k, asked, notch.Edge) {
				return true
			}
		}
	}
	return false
}

func isOnJoinedSeam(i int, asked []pieces.Piece, edge seams.Name) bool {
	for _, seam := range marks.MatchingSeams() {
		onIt := slices.ContainsFunc(seamEdges(asked[i], seam), func(e pieces.Edge) bool { return e.Name == edge })
		if onIt && (joins(i, asked, seam) || seam.IsCentre() && asked[i].Pair) {
			return true
		}
	}
	return false
}

// joins reports whether a seam joins a piece of the shell to another of the garment that
// has it about as long, or to its own copies.
func joins(i int, asked []pieces.Piece, seam seams.Name) bool {
	own, times := long(asked[i], seam)
	if times == 0 || !asked[i].Kind.Shows() || seam.IsCentre() {
		return false
	}
	for k, other := range asked {
		if k == i || other.Garment != asked[i].Garment || !other.Kind.Shows() {
			continue
		}
		if length, has := long(other, seam); has > 0 && math.Abs(length-own) <= surelyJoined {
			return true
		}
	}
	return times > 1 && asked[i].Cut > 1
}

// surelyJoined, mm, is how far the lengths of two seams may differ that surely join: a
// little less than what the plan takes for it [source.OwnChoice].
const surelyJoined = 14.0

// isSewnToItself reports whether a piece, or one that the seam joins to it, has the seam
// on both sides, so that nothing is matched across.
func isSewnToItself(i int, asked []pieces.Piece, seam seams.Name) bool {
	for _, other := range asked {
		if other.Garment != asked[i].Garment {
			continue
		}
		if _, times := long(other, seam); times > 1 {
			return true
		}
	}
	return false
}

// long is the length of a seam of a piece, the mean of its sides, and how many it has.
func long(piece pieces.Piece, seam seams.Name) (length float64, sides int) {
	seen := map[seams.Name]bool{}
	for _, e := range seamEdges(piece, seam) {
		length += e.Path.Length()
		seen[e.Name.Seam()] = true
	}
	return length / math.Max(1, float64(len(seen))), len(seen)
}

func names(list []lay.Match, name marks.Name, across bool, piece int) bool {
	return slices.ContainsFunc(list, func(m lay.Match) bool {
		return m.Name == name && m.Across == across && slices.Contains(m.Pieces, piece)
	})
}
