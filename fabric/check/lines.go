package check

import (
	"math"
	"runtime"
	"sync"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Lines remembers what proofs derive from the line of a piece, whatever the cloth and the
// lay: once for all copies and all pieces that are equal, since a lay of 50 garments has
// hundreds, and once for all lays of them. The zero value knows nothing.
type Lines struct {
	mutex  sync.Mutex
	cut    pieces.PerLine[orb.Ring]
	sizes  pieces.PerLine[[2]float64]
	wholes pieces.PerLine[[2]float64]
}

// Learn derives the cutting lines of pieces before there is anything to prove, on all
// processors: of 500 different blouses it takes seconds, which nobody should wait for
// when a search has been ended.
func (s *Lines) Learn(all []pieces.Piece) {
	var first pieces.PerLine[int]
	var different []pieces.Piece
	for i, piece := range all {
		if at, _ := first.Of(piece, func(pieces.Piece) (int, error) { return i, nil }); at == i {
			different = append(different, piece)
		}
	}
	drawn, failed := make([]orb.Ring, len(different)), make([]error, len(different))
	var group sync.WaitGroup
	workers := min(runtime.GOMAXPROCS(0), len(different))
	for w := range workers {
		group.Go(func() {
			for i := w; i < len(different); i += workers {
				drawn[i], failed[i] = different[i].CuttingOutline(fineTolerance)
			}
		})
	}
	group.Wait()
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for i, piece := range different {
		_, _ = s.cut.Of(piece, func(pieces.Piece) (orb.Ring, error) { return drawn[i], failed[i] }) // the proof says it
	}
}

// cutLine is the cutting line of a piece as it is drawn.
func (s *Lines) cutLine(p pieces.Piece) (orb.Ring, error) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.cut.Of(p, func(p pieces.Piece) (orb.Ring, error) { return p.CuttingOutline(fineTolerance) })
}

// size of a piece along and across its grainline.
func (s *Lines) size(p pieces.Piece) [2]float64 {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	size, _ := s.sizes.Of(p, func(p pieces.Piece) ([2]float64, error) { return grainExtent(p), nil })
	return size
}

// wholeSize is that of a piece cut on the fold, laid whole.
func (s *Lines) wholeSize(p pieces.Piece) [2]float64 {
	s.mutex.Lock()
	defer s.mutex.Unlock()
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
