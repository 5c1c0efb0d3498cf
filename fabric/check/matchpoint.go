package check

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// This file finds the points that match on a piece, apart from what plans.

// matchPoint is what matches by that name: a notch on the seam line, the lower end of a
// seam, the lower edge of what hangs side by side, or the upper left corner of a patch
// pocket.
func matchPoint(piece pieces.Piece, name marks.Name) (orb.Point, bool) {
	piece = piece.Seam()
	switch {
	case name.Seam() != seams.None:
		var ends []orb.Point
		for _, e := range seamEdges(piece, name.Seam()) {
			ends = append(ends, e.Path.Start(), e.Path.End())
		}
		return lowestOf(piece, ends)
	case name == marks.SideBySide:
		var ends []orb.Point
		for _, e := range piece.Edges {
			ends = append(ends, e.Path.Start())
		}
		return lowestOf(piece, ends)
	case name == marks.PatchPocket:
		return pocketPlace(piece)
	case name == marks.Alike:
		return middleOfWhole(piece), true
	}
	for _, notch := range piece.Notches {
		edge, ok := piece.Edge(notch.Edge)
		if ok && notch.Match == name {
			return edge.Path.At(notch.At), true
		}
	}
	return orb.Point{}, false
}

// seamEdges are the edges of a piece that lie on a seam, the mouths of darts left out.
func seamEdges(piece pieces.Piece, seam seams.Name) []pieces.Edge {
	var out []pieces.Edge
	for _, e := range piece.Edges {
		own := e.Name.Seam()
		isSide := seam == seams.SideSeam && own.Role() == seams.SideSeam
		isFront := seam == seams.CentreFront && own == seams.FrontEdge
		if !e.Name.IsMouth() && (own == seam || isSide || isFront) {
			out = append(out, e)
		}
	}
	return out
}

// lowestOf some points by the grainline of a piece, the first of those as low.
func lowestOf(piece pieces.Piece, points []orb.Point) (orb.Point, bool) {
	up := angle(piece.Grain.From, piece.Grain.To)
	upright := pieces.Turn(90 - up)
	lowest, least := orb.Point{}, math.Inf(1)
	for _, q := range points {
		if height := upright.Apply(q)[1]; height < least-1e-9 {
			lowest, least = q, height
		}
	}
	return lowest, len(points) > 0
}

// middleOfWhole is the middle of a piece, opened at its fold, along and across its grainline.
func middleOfWhole(piece pieces.Piece) orb.Point {
	if piece.Fold != seams.None {
		piece = piece.Unfolded()
	}
	turn := 90 - angle(piece.Grain.From, piece.Grain.To)
	box := orb.Bound{Min: orb.Point{math.Inf(1), math.Inf(1)}, Max: orb.Point{math.Inf(-1), math.Inf(-1)}}
	for _, q := range piece.SeamOutline(middleTolerance) {
		box = box.Extend(pieces.Turn(turn).Apply(q))
	}
	return pieces.Turn(-turn).Apply(box.Center())
}

// middleTolerance, mm, of a curved seam line [source.OwnChoice].
const middleTolerance = 0.05

func pocketPlace(piece pieces.Piece) (orb.Point, bool) {
	for _, mark := range piece.Marks {
		if mark.Name == marks.PatchPocket && mark.Path != nil {
			return mark.Path.Start(), true
		}
	}
	if hems := seamEdges(piece, seams.PocketHem); len(hems) > 0 {
		return hems[0].Path.End(), true
	}
	return orb.Point{}, false
}
