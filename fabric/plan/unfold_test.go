package plan

import (
	"context"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// curvedPieces have an edge that bulges and one that hollows, with
// allowances, so that no outline is exact: a half on the fold, a pair, and
// pieces that are their own mirror image.
func curvedPieces() []pieces.Piece {
	curved := func(name string, turn float64) pieces.Piece {
		p := pieces.Rectangle(name, 180, 320)
		p.Edges[1].Path = pieces.Path{pieces.Bezier{P0: orb.Point{180, 0}, P1: orb.Point{230, 100}, P2: orb.Point{120, 200},
			P3: orb.Point{180, 320}}}
		for i := range p.Edges[:3] {
			p.Edges[i].Allowance = 15
		}
		return p.Map(motion.MotionOf(turn, false, 40, 7))
	}
	half := curved("half", 33)
	half.Fold = half.Edges[3].Name
	sleeve := curved("sleeve", 0)
	sleeve.Cut, sleeve.Pair = 2, true
	pocket := pieces.Rectangle("pocket", 120, 130)
	pocket.Cut = 4
	pocket.Edges[0].Path = pieces.Path{pieces.Bezier{P0: orb.Point{0, 0}, P1: orb.Point{20, -60},
		P2: orb.Point{100, -60}, P3: orb.Point{120, 0}}}
	return []pieces.Piece{half, sleeve, pocket}
}

// TestUnfoldedLayIsALayout: every lay opened out passes the verifier of the
// open problem, curves and all, on every nap that it allows.
func TestUnfoldedLayIsALayout(t *testing.T) {
	for _, nap := range []cloth.Nap{cloth.EitherWay, cloth.OneWay, cloth.OneWayPerGarment} {
		for width := 860.0; width < 1500; width += 235 {
			c := cloth.Cloth{Width: width, Selvedge: 10, Nap: nap}
			wanted, err := rules.DemandsOf(curvedPieces())
			require.NoError(t, err)
			openBed := bed.Of(c, lay.Open)
			open, err := rules.TemplatesOf(c, openBed, wanted)
			require.NoError(t, err)
			openProblem, err := rules.ProblemOf(c, openBed, open)
			require.NoError(t, err)
			for _, kind := range lay.Kinds()[1:] {
				t.Run(fmt.Sprintf("%s %g %s", nap, width, kind), func(t *testing.T) {
					table := &Planner{Ctx: context.Background(), Cloth: c, Asked: curvedPieces(), Wanted: wanted,
						Options: Options{Passes: 2}}
					found, why, err := table.SolveLay(kind)
					require.NoError(t, err)
					if found == nil {
						t.Skip(why)
					}
					start, ok := unfolded(c, found.Beds, openBed, open, openProblem)
					require.True(t, ok)
					require.NoError(t, verify.Layout(openProblem, start))
					require.Len(t, start.Placements, 1+2+4)
					require.LessOrEqual(t, start.Length, found.Taken+1e-6)
				})
			}
		}
	}
}
