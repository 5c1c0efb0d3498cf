package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// hemTolerance, mm, of a hem on the line of the border: as of points that match
// [source.OwnChoice].
const hemTolerance = 1.0

var _ = register(rule{asked: onBorder, piece: checkBorder})

// onBorder lays a piece asked on the cross grain when it is one of the border.
func onBorder(c cloth.Cloth, piece pieces.Piece) pieces.Piece {
	if c.Border.Has(piece.Name) {
		piece.Grain.Lie = pieces.CrossGrain
	}
	return piece
}

// checkBorder: on the open cloth every point of the hem lies on the line
// of the border, the grainline across the cloth, and the piece inwards.
func checkBorder(p lay.Plan, o openedPiece, asked pieces.Piece) error {
	border := p.Cloth.Border
	if !border.Has(asked.Name) {
		return nil
	}
	inwards, line := 1.0, border.Line
	if border.Selvedge == cloth.Far {
		inwards, line = -1, widthLaid(p.Cloth)-border.Line
	}
	found := false
	for _, edge := range asked.Edges {
		isHem := edge.Name == border.Hem
		if border.Hem == seams.None {
			isHem = edge.Hem || edge.Name.Seam() == seams.Hem
		}
		if !isHem {
			continue
		}
		found = true
		for _, q := range edge.Path.Flatten(seamTolerance) {
			at := o.over.place(motion(o.Laid).Apply(grown(p.Cloth, asked, q)))
			if away := math.Abs(at[1] - line); away > hemTolerance {
				return fmt.Errorf("%s copy %d: its hem lies %.1f mm off the line of the border", o.Name, o.Copy, away)
			}
		}
	}
	if rise := math.Abs(o.grain[1][0] - o.grain[0][0]); !found || rise > 0.02*math.Abs(o.grain[1][1]-o.grain[0][1]) {
		return fmt.Errorf("%s copy %d: it does not lie across the cloth with its hem on the border", o.Name, o.Copy)
	}
	if inwards*(middleAcross(o.outline)-line) <= 0 {
		return fmt.Errorf("%s copy %d: it lies on the wrong side of the line of the border", o.Name, o.Copy)
	}
	return nil
}

// middleAcross of an outline.
func middleAcross(outline orb.Ring) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range outline {
		low, high = math.Min(low, q[1]), math.Max(high, q[1])
	}
	return (low + high) / 2
}
