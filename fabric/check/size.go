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
func checkSize(p lay.Plan, l lay.Laid, asked pieces.Piece, known *Lines) error {
	sizeAsked := known.size
	if asked.Fold != seams.None && !l.OnFold {
		sizeAsked = known.wholeSize
	}
	want, got := sizeAsked(asked), known.size(l.Piece)
	along, across := growth(p.Cloth, asked.Grain.Lie)
	if math.Abs(got[0]-along*want[0]) > excessAllowed || math.Abs(got[1]-across*want[1]) > excessAllowed {
		return fmt.Errorf("%s copy %d: it is not cut in the size that the shrinkage asks", l.Name, l.Copy)
	}
	return nil
}
