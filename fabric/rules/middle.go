package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// middleOf a whole piece, along and across its grainline.
func middleOf(piece pieces.Piece) orb.Point {
	if piece.Fold != seams.None {
		piece = piece.Unfolded()
	}
	ux, uy := piece.Grain.To[0]-piece.Grain.From[0], piece.Grain.To[1]-piece.Grain.From[1]
	length := portable.Hypot(ux, uy)
	ux, uy = ux/length, uy/length
	low, high := orb.Point{math.Inf(1), math.Inf(1)}, orb.Point{math.Inf(-1), math.Inf(-1)}
	for _, q := range piece.SeamOutline(fineTolerance) {
		for i, v := range []float64{float64(ux*q[0]) + float64(uy*q[1]), float64(-uy*q[0]) + float64(ux*q[1])} {
			low[i], high[i] = math.Min(low[i], v), math.Max(high[i], v)
		}
	}
	along, across := (low[0]+high[0])/2, (low[1]+high[1])/2
	return orb.Point{float64(along*ux) - float64(across*uy), float64(along*uy) + float64(across*ux)}
}
