package check

import (
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{piece: checkGrain})

// checkGrain: the grainline lies as the piece asks, within the tilt; the warp is x.
func checkGrain(p lay.Plan, o openedPiece, _ pieces.Piece) error {
	along, across := math.Abs(o.grain[1][0]-o.grain[0][0]), math.Abs(o.grain[1][1]-o.grain[0][1])
	off := 0.0
	switch o.Piece.Grain.Lie {
	case pieces.StraightGrain:
		off = across
	case pieces.CrossGrain:
		off = along
	case pieces.Bias:
		off = math.Abs(along - across)
	case pieces.EitherGrain:
		off = math.Min(along, across)
	}
	allowed := p.Cloth.Tilt
	if o.Piece.Grain.Lie == pieces.Bias {
		allowed *= 2 // both the run and the rise change
	}
	if off > (allowed+0.002)*(along+across) {
		return fmt.Errorf("%s copy %d: its grainline lies wrongly on the cloth", o.Name, o.Copy)
	}
	return nil
}
