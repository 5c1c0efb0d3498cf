package fabric

import (
	"context"
	"fmt"
	"testing"
	"time"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest"
	"ellwand/pieces"
)

// curvedPieces have an edge that bulges and one that hollows, with
// allowances, so that no outline is exact: a half on the fold, a pair, and
// pieces that are their own mirror image.
func curvedPieces() []pieces.Piece {
	curved := func(name string, turn float64) pieces.Piece {
		p := pieces.Rectangle(name, 180, 320)
		p.Edges[1].Path = pieces.Path{pieces.Bezier{P0: orb.Point{180, 0}, P1: orb.Point{230, 100}, P2: orb.Point{120, 200}, P3: orb.Point{180, 320}}}
		for i := range p.Edges[:3] {
			p.Edges[i].Allowance = 15
		}
		return p.Map(motionOf(turn, false, 40, 7))
	}
	half := curved("half", 33)
	half.Fold = half.Edges[3].Name
	sleeve := curved("sleeve", 0)
	sleeve.Cut, sleeve.Pair = 2, true
	pocket := pieces.Rectangle("pocket", 120, 130)
	pocket.Cut = 4
	pocket.Edges[0].Path = pieces.Path{pieces.Bezier{P0: orb.Point{0, 0}, P1: orb.Point{20, -60}, P2: orb.Point{100, -60}, P3: orb.Point{120, 0}}}
	return []pieces.Piece{half, sleeve, pocket}
}

// TestUnfoldedLayIsALayout: the folded lay opened out passes the verifier of
// the open problem, curves and all, on every nap.
func TestUnfoldedLayIsALayout(t *testing.T) {
	for _, nap := range []Nap{EitherWay, OneWay, OneWayPerGarment} {
		for width := 560.0; width < 1500; width += 235 {
			t.Run(fmt.Sprintf("%s %g", nap, width), func(t *testing.T) {
				cloth := Cloth{Width: width, Selvedge: 10, Nap: nap}
				templates, err := templatesOf(cloth, FoldedAlong, curvedPieces())
				require.NoError(t, err)
				problem := problemOf(cloth, FoldedAlong, templates, 0)
				folded, err := solve(context.Background(), FoldedAlong, templates, problem, Options{Iterations: 2, Time: 200 * time.Millisecond}, nil)
				require.NoError(t, err)

				open, err := templatesOf(cloth, Open, curvedPieces())
				require.NoError(t, err)
				openProblem := problemOf(cloth, Open, open, 0)
				start, ok := unfolded(*folded, open, openProblem)
				require.True(t, ok)
				require.NoError(t, nest.Verify(openProblem, start))
				require.Len(t, start.Placements, 1+2+4)
			})
		}
	}
}
