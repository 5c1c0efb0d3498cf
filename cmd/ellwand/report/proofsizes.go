package report

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/pieces"
)

// extentTolerance, mm, of a cutting outline that is measured again, and finely how closely
// its curves are followed for it [source.OwnChoice].
const (
	extentTolerance = 0.3
	finely          = 0.05
)

// Proven reads the size of every piece again as it is shown, and holds it against the
// piece as it was drafted in that size.
func (s Sizes) Proven(works []*job.Work) error {
	var faults []error
	for i, work := range works {
		for g, made := range work.Garments {
			for _, piece := range made.Pieces {
				said := s.Sizes[i].Garments[g].Extent(work, Piece{Name: piece.Name, Cloth: piece.Cloth})
				if err := extentReadAgain(said, work, piece); err != nil {
					faults = append(faults, fmt.Errorf("the size of the %s in size %s is wrong and is not shown: %w", piece.Name,
						work.Size, err))
				}
			}
		}
	}
	return errors.Join(faults...)
}

func extentReadAgain(said string, work *job.Work, piece pieces.Piece) error {
	outline, err := piece.CuttingOutline(finely)
	if err != nil {
		return err
	}
	low, high := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, corner := range outline {
		for axis := range 2 {
			low[axis], high[axis] = math.Min(low[axis], corner[axis]), math.Max(high[axis], corner[axis])
		}
	}
	width, height, _ := strings.Cut(said, " x ")
	step := work.Unit.System().Step() + 2*extentTolerance
	return errors.Join(check.Shown(width, high[0]-low[0], step), check.Shown(height, high[1]-low[1], step))
}
