package check

import (
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{piece: checkFace})

// checkFace: what comes out face down is the left of a pair or its own mirror image,
// unless both sides of the cloth look alike.
func checkFace(p lay.Plan, o openedPiece, asked pieces.Piece) error {
	if !o.faceDown || o.OnFold || asked.Pair || p.Cloth.Alike {
		return nil
	}
	nap := p.Cloth.Nap
	if slices.Contains(p.Cloth.OneWayPieces, o.Name) {
		nap = cloth.OneWay
	}
	if !turnsIntoItsImage(o.Laid, nap) {
		return fmt.Errorf("%s copy %d: the upper ply gives a mirror image, and the piece is no pair", o.Name, o.Copy)
	}
	return nil
}

// turnsIntoItsImage tries whether the image in the other ply (y becomes -y)
// is the same piece, turned by quarter turns to where its grain may lie; with
// a nap, only by a turn that keeps the nap.
func turnsIntoItsImage(l lay.Laid, nap cloth.Nap) bool {
	outline := untilted(l)
	centre := outline.Bound().Center()
	step := 2
	if l.Piece.Grain.Lie == pieces.Bias {
		step = 1
	}
	for quarters := 0; quarters < 4; quarters += step {
		if nap != cloth.EitherWay && !keepsNap(l, quarters) {
			continue
		}
		same := true
		for _, p := range outline {
			x, y := quarterTurned(p[0]-centre[0], centre[1]-p[1], quarters)
			q := orb.Point{centre[0] + x, centre[1] + y}
			same = same && off(outline, q) < 2*alikeTolerance
		}
		if same {
			return true
		}
	}
	return false
}

// untilted is the outline turned back by what its grainline deviates from
// where it should lie, which the two plies do in opposite ways.
func untilted(l lay.Laid) orb.Ring {
	lie := 0.0
	if l.Piece.Grain.Lie == pieces.Bias {
		lie = 45
	}
	off := math.Remainder(angle(l.Grain[0], l.Grain[1])-lie, 90)
	return moved(pieces.Turn(-off), l.Outline)
}

// keepsNap reports whether the nap runs the same way over the piece and over
// its image, which is the piece turned back by the quarter turns.
func keepsNap(l lay.Laid, quarters int) bool {
	x, y := l.Grain[1][0]-l.Grain[0][0], l.Grain[1][1]-l.Grain[0][1]
	turnedX, turnedY := quarterTurned(x, y, 4-quarters)
	if liesAcross(l.Piece, l.Grain) {
		return y*turnedY > 0
	}
	return x*turnedX > 0
}

func quarterTurned(x, y float64, quarters int) (float64, float64) {
	for range quarters {
		x, y = -y, x
	}
	return x, y
}
