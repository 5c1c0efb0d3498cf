package check

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// shapes remembers what the proof of one lay derives from the line of a piece: once for
// all copies and all pieces that are equal, since a lay of 50 garments has hundreds.
type shapes struct {
	cut    pieces.PerLine[orb.Ring]
	sizes  pieces.PerLine[[2]float64]
	wholes pieces.PerLine[[2]float64]
}

// cutLine is the cutting line of a piece as it is drawn.
func (s *shapes) cutLine(p pieces.Piece) (orb.Ring, error) {
	return s.cut.Of(p, func(p pieces.Piece) (orb.Ring, error) { return p.CuttingOutline(fineTolerance) })
}

// size of a piece along and across its grainline.
func (s *shapes) size(p pieces.Piece) [2]float64 {
	size, _ := s.sizes.Of(p, func(p pieces.Piece) ([2]float64, error) { return grainExtent(p), nil })
	return size
}

// wholeSize is that of a piece cut on the fold, laid whole.
func (s *shapes) wholeSize(p pieces.Piece) [2]float64 {
	size, _ := s.wholes.Of(p, func(p pieces.Piece) ([2]float64, error) { return grainExtent(p.Unfolded()), nil })
	return size
}

// grainExtent is the size of the line of the edges, along and across the grainline.
func grainExtent(p pieces.Piece) [2]float64 {
	ux, uy := p.Grain.To[0]-p.Grain.From[0], p.Grain.To[1]-p.Grain.From[1]
	length := math.Hypot(ux, uy)
	ux, uy = ux/length, uy/length
	low, high := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, q := range p.Boundary(seamTolerance / 10) {
		for i, v := range []float64{ux*q[0] + uy*q[1], -uy*q[0] + ux*q[1]} {
			low[i], high[i] = math.Min(low[i], v), math.Max(high[i], v)
		}
	}
	return [2]float64{high[0] - low[0], high[1] - low[1]}
}
