package check

import (
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

var _ = register(rule{laid: checkSize})

// checkSize: pieces are enlarged when the cloth is washed after cutting, by the size
// of the line of their edges along and across the grain.
func checkSize(p lay.Plan, l lay.Laid, asked pieces.Piece) error {
	if asked.Fold != seams.None && !l.OnFold {
		asked = asked.Unfolded()
	}
	along, across := growth(p.Cloth, asked.Grain.Lie)
	wantAlong, wantAcross := grainExtent(asked)
	gotAlong, gotAcross := grainExtent(l.Piece)
	if math.Abs(gotAlong-along*wantAlong) > excessAllowed || math.Abs(gotAcross-across*wantAcross) > excessAllowed {
		return fmt.Errorf("%s copy %d: it is not cut in the size that the shrinkage asks", l.Name, l.Copy)
	}
	return nil
}

// grainExtent is the size of the line of the edges along and across the grainline.
func grainExtent(p pieces.Piece) (along, across float64) {
	ux, uy := p.Grain.To[0]-p.Grain.From[0], p.Grain.To[1]-p.Grain.From[1]
	length := math.Hypot(ux, uy)
	ux, uy = ux/length, uy/length
	low, high := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, q := range p.Boundary(seamTolerance / 10) {
		for i, v := range []float64{ux*q[0] + uy*q[1], -uy*q[0] + ux*q[1]} {
			low[i], high[i] = math.Min(low[i], v), math.Max(high[i], v)
		}
	}
	return high[0] - low[0], high[1] - low[1]
}
