package rules

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// matchTolerance is how far two points that match may lie apart, mm
// [source.OwnChoice].
const matchTolerance = 1.0

// PointNamed finds what matches by that name on a piece: the first such notch, on the
// seam line; the lower end of a seam; the lower edge of what hangs side by side; or
// where the upper left corner of a patch pocket lies, on it and below it.
func PointNamed(piece pieces.Piece, name marks.Name) (orb.Point, bool) {
	piece = piece.Seam()
	switch {
	case name.Seam() != seams.None:
		return lowestEnd(piece, func(e pieces.Edge) bool { return isOfSeam(e, name.Seam()) })
	case name == marks.SideBySide:
		return lowestEnd(piece, func(pieces.Edge) bool { return true })
	case name == marks.PatchPocket:
		return pocketCorner(piece)
	case name == marks.Alike:
		return middleOf(piece), true
	}
	for _, notch := range piece.Notches {
		if edge, ok := piece.Edge(notch.Edge); ok && notch.Match == name {
			return edge.Path.At(notch.At), true
		}
	}
	return orb.Point{}, false
}

// isOfSeam reports whether an edge is a stretch of a seam. A side is a side, be it left
// or right; the other seams are told apart by theirs.
func isOfSeam(e pieces.Edge, seam seams.Name) bool {
	if seam == seams.CentreFront && e.Name.Seam() == seams.FrontEdge {
		return true // the edge of an opening, beyond the centre
	}
	return !e.Name.IsMouth() && (e.Name.Seam() == seam || seam == seams.SideSeam && e.Name.Role() == seam)
}

// lowestEnd is the lowest end, along the grainline, of some edges of a piece.
func lowestEnd(piece pieces.Piece, of func(pieces.Edge) bool) (lowest orb.Point, found bool) {
	ux, uy := piece.Grain.To[0]-piece.Grain.From[0], piece.Grain.To[1]-piece.Grain.From[1]
	least := 0.0
	for _, e := range piece.Edges {
		for _, q := range []orb.Point{e.Path.Start(), e.Path.End()} {
			height := float64(ux*q[0]) + float64(uy*q[1])
			if of(e) && (!found || height < least) {
				lowest, least, found = q, height, true
			}
		}
	}
	return lowest, found
}

// pocketCorner is the upper left corner of a patch pocket, on the pocket or where it
// lies on another piece.
func pocketCorner(piece pieces.Piece) (orb.Point, bool) {
	for _, mark := range piece.Marks {
		if mark.Name == marks.PatchPocket && len(mark.Path) > 0 {
			return mark.Path.Start(), true
		}
	}
	for _, e := range piece.Edges {
		if e.Name.Seam() == seams.PocketHem {
			return e.Path.End(), true
		}
	}
	return orb.Point{}, false
}
