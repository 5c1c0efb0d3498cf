package plan_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// bagInTwo are two pairs that lie double, and one of them lies single, a single piece and
// one for the fold, far apart from each other.
func bagInTwo(kind lay.Kind) ([]pieces.Piece, lay.Plan) {
	pair := func(name string, cut int) pieces.Piece {
		p := fabrictest.Pair(fabrictest.Rectangle(name, 200, 150, cut))
		p.Cut = cut
		return p
	}
	all := []pieces.Piece{pair("double", 2), pair("more", 4), pair("single", 2), fabrictest.Rectangle("flap", 200, 100, 1),
		fabrictest.Half("half", 100, 200, 1)}
	out := lay.Plan{Lay: kind}
	put := func(name string, number, part int, x float64, down bool) {
		l := lay.Laid{Name: name, Copy: number, Bed: part, X: x, Y: 300, Mirrored: down, Turn: 270}
		switch {
		case part == 1 && down:
			l.Y = 600
		case part == 1:
			l.Y = 750
		}
		out.Pieces = append(out.Pieces, l)
	}
	behind := 1500.0
	if kind == lay.SelvedgeIn {
		out.FoldedIn, behind = 500, 0
	}
	put("double", 1, 0, 10, false)
	put("more", 1, 0, 410, false)
	put("more", 2, 0, 810, false)
	put("single", 1, 1, behind+10, false)
	put("single", 2, 1, behind+810, true)
	put("flap", 1, 1, behind+1210, false)
	put("half", 1, 1, behind+1610, false)
	return all, out
}

// laidAsSaid is a bench with the pieces of a plan, drawn.
func laidAsSaid(t *testing.T, all []pieces.Piece, as lay.Plan) (lay.Plan, *plan.Bench) {
	t.Helper()
	bench, err := plan.NewBench(cottonInTwo, all, as, nil)
	require.NoError(t, err)
	out, proven := bench.Plan(as.Pieces)
	require.True(t, proven, "%s: %v", as.Lay, out.Pieces)
	return out, bench
}

func numbered(t *testing.T, p []lay.Laid, name string, number int) int {
	t.Helper()
	i := slices.IndexFunc(p, func(l lay.Laid) bool { return l.Name == name && l.Copy == number })
	require.GreaterOrEqual(t, i, 0, "%s %d", name, number)
	return i
}

// A piece goes onto the other part with as many copies as are cut at once there.
func TestPieceGoesOntoTheOtherPart(t *testing.T) {
	for _, kind := range inTwo {
		for _, tt := range []struct {
			name                string
			number              int
			comes, goes, copies int
			on                  int
		}{
			{"double", 1, 1, 0, 2, 1},
			{"more", 2, 1, 0, 3, 1},
			{"single", 1, 0, 1, 1, 0},
			{"single", 2, 0, 1, 1, 0},
			{"half", 1, 0, 0, 1, 0},
		} {
			all, said := bagInTwo(kind)
			was, bench := laidAsSaid(t, all, said)
			i := numbered(t, was.Pieces, tt.name, tt.number)
			held := was.Pieces[i]
			held.Bed = tt.on
			held.X, held.Y = 600, 300
			if tt.on == 1 {
				held.X, held.Y = was.Length+300, 900
			}
			assert.Equal(t, tt.on, bench.PartAt(was.Pieces, i, held), "%s: %s", kind, tt.name)
			found, err := bench.Look(was.Pieces, i, held, true)
			require.NoError(t, err)
			require.True(t, found.Free, "%s: %s %v", kind, tt.name, found.Broken)
			assert.Equal(t, [3]int{tt.on, tt.comes, tt.goes}, [3]int{found.Bed, found.Comes, found.Goes},
				"%s: %s", kind, tt.name)
			assert.Len(t, bench.Goes(was.Pieces, i), tt.goes)

			over, lying, err := bench.Across(was.Pieces, i, found.Laid)
			require.NoError(t, err)
			moved, proven := over.Plan(lying)
			require.True(t, proven, "%s: %s", kind, tt.name)
			assert.InDelta(t, found.Taken, moved.Taken, 0.02, "%s: %s: as it is said in the hand", kind, tt.name)
			copies := 0
			for _, l := range moved.Pieces {
				if l.Name == tt.name {
					copies++
				}
			}
			assert.Equal(t, tt.copies, copies, "%s: %s", kind, tt.name)
		}
	}
}

// What the cloth forbids on the other part is said.
func TestWhyAPieceDoesNotGoOntoTheOtherPart(t *testing.T) {
	for _, kind := range inTwo {
		all, said := bagInTwo(kind)
		was, bench := laidAsSaid(t, all, said)
		refused := func(was lay.Plan, bench *plan.Bench, name string, part int) lay.Obstacle {
			i := numbered(t, was.Pieces, name, 1)
			held := was.Pieces[i]
			held.Bed = part
			found, err := bench.Look(was.Pieces, i, held, true)
			require.NoError(t, err)
			assert.False(t, found.Free)
			assert.Equal(t, 1-part, found.Bed)
			require.NotEmpty(t, found.Broken)
			assert.Equal(t, plan.OtherPart, found.Broken[0].Rule)
			_, _, err = bench.Across(was.Pieces, i, held)
			assert.Equal(t, err, found.Broken[0].Why)
			return lay.Reasons(err)[0].Of
		}
		assert.Equal(t, lay.OddCount, refused(was, bench, "flap", 0), "%s", kind)

		few := lay.Plan{Lay: kind, FoldedIn: said.FoldedIn, Pieces: slices.DeleteFunc(slices.Clone(said.Pieces),
			func(l lay.Laid) bool { return l.Name != "double" && l.Name != "flap" })}
		was, bench = laidAsSaid(t, []pieces.Piece{all[0], all[3]}, few)
		assert.Equal(t, lay.LastOnPart, refused(was, bench, "double", 1), "%s", kind)
	}
}
