package check

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{whole: checkNap})

// checkNap: the nap runs the same way over all pieces, or over all of a garment, and
// the pieces that must go one way do.
func checkNap(p lay.Plan, opened []openedPiece, _ []pieces.Piece) error {
	naps := map[string]int{}
	var faults []error
	for _, o := range opened {
		faults = append(faults, checkWay(p, o, naps))
	}
	return errors.Join(faults...)
}

// liesAcross says that a grainline that lies so is on the cross grain.
func liesAcross(piece pieces.Piece, grain [2]orb.Point) bool {
	return piece.Grain.Lie == pieces.CrossGrain || piece.Grain.Lie == pieces.EitherGrain &&
		math.Abs(grain[1][1]-grain[0][1]) > math.Abs(grain[1][0]-grain[0][0])
}

// wayOf a piece is 1 when it points up the cloth and -1 when it points back; on the
// cross grain when the nap comes from its left or from its right.
func wayOf(o openedPiece) int {
	rise := o.grain[1][0] - o.grain[0][0]
	if liesAcross(o.Piece, o.grain) {
		rise = o.grain[1][1] - o.grain[0][1]
		if o.faceDown {
			rise = -rise
		}
	}
	if rise < 0 {
		return -1
	}
	return 1
}

// checkWay of one piece; naps holds the way of each garment met so far.
func checkWay(p lay.Plan, o openedPiece, naps map[string]int) error {
	group := ""
	switch {
	case p.Cloth.Nap == cloth.OneWay:
	case slices.Contains(p.Cloth.OneWayPieces, o.Name):
		group = "pieces that go one way"
	case p.Cloth.Nap == cloth.OneWayPerGarment:
		group = "garment " + o.Garment
	default:
		return nil
	}
	way := wayOf(o)
	if naps[group] == -way {
		return fmt.Errorf("%s copy %d: it lies against the nap", o.Name, o.Copy)
	}
	naps[group] = way
	return nil
}
