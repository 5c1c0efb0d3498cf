package bound

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/testdata/bench"
	"ellwand/testdata/sample"
)

// jigsaw cuts a rectangle into a grid, straight or with its inner corners
// moved, so that an optimal layout is known. Pieces on the low and the high
// edge may be pinned to it, and further turns are allowed.
func jigsaw(rng *rand.Rand, width, length float64, cuts int) layout.Problem {
	p := layout.Problem{Width: width}
	columns, rows := 1+rng.IntN(cuts), 1+rng.IntN(cuts)
	xs, ys := ascending(rng, columns, length), ascending(rng, rows, width)
	wobble := []float64{0, 0.3}[rng.IntN(2)]
	at := func(i, j int) orb.Point {
		q := orb.Point{xs[i], ys[j]}
		local := rand.New(rand.NewPCG(uint64(i*100+j), uint64(length)))
		if i > 0 && i < columns {
			q[0] += wobble * (local.Float64() - 0.5) * min(xs[i+1]-xs[i], xs[i]-xs[i-1])
		}
		if j > 0 && j < rows {
			q[1] += wobble * (local.Float64() - 0.5) * min(ys[j+1]-ys[j], ys[j]-ys[j-1])
		}
		return q
	}
	for i := range columns {
		for j := range rows {
			ring := orb.Ring{at(i, j), at(i+1, j), at(i+1, j+1), at(i, j+1)}
			turns := []layout.Turn{{}}
			if rng.IntN(2) == 0 {
				turns = append(turns, layout.Turn{Degrees: 360 * rng.Float64()}, layout.Turn{Degrees: 90, Mirrored: true})
			}
			if rng.IntN(2) == 0 {
				for k := range turns {
					switch {
					case j == 0:
						turns[k].Pin = layout.PinLow
					case j == rows-1:
						turns[k].Pin = layout.PinHigh
					}
				}
			}
			p.Items = append(p.Items, layout.Item{Name: fmt.Sprint(i, j), Outline: ring, Copies: 1, Turns: turns})
		}
	}
	return p
}

func ascending(rng *rand.Rand, n int, end float64) []float64 {
	list := []float64{0}
	for range n {
		list = append(list, list[len(list)-1]+0.2+rng.Float64())
	}
	for i := range list {
		list[i] *= end / list[n]
	}
	list[n] = end
	return list
}

func TestBoundNeverAboveTheOptimumOfJigsaws(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 3))
	tight, cases := 0, sample.Of(250, 2000)
	for n := range cases {
		width, length := 50+100*rng.Float64(), 50+100*rng.Float64()
		p := jigsaw(rng, width, length, 6)
		l := layout.Layout{Length: length}
		for i := range p.Items {
			l.Placements = append(l.Placements, layout.Placement{Item: i})
		}
		require.NoError(t, verify.Layout(p, l), "case %d: the jigsaw itself", n)
		bound := Length(p)
		require.LessOrEqual(t, bound, length*(1+1e-6), "case %d", n)
		if bound > length*(1-1e-6) {
			tight++
		}
		// On any lattice on which it is laid already, the jigsaw is as long.
		require.LessOrEqual(t, Length(onLattice(p, rng)), length*(1+1e-6), "case %d, on a lattice", n)
		// With every piece grown smaller, the optimum is no longer; with a
		// gap that the shrinking leaves, neither.
		shrunk := shrink(p, 0.9)
		require.LessOrEqual(t, Length(shrunk), length*(1+1e-6), "case %d, shrunk", n)
	}
	require.Greater(t, tight, cases/3)
}

// The best layouts ever published have these densities (Gardeyn, Vanden
// Berghe, Wauters, arXiv 2509.13329, 2025, tables 2 and 3), in per cent: no
// bound may be above their lengths. 0.005 is what the figures are rounded to.
func TestBoundBelowPublishedLayouts(t *testing.T) {
	for name, density := range map[string]float64{"albano": 89.82, "shirts": 90.92, "swim": 79.83, "trousers": 92.62} {
		t.Run(name, func(t *testing.T) {
			p, area := publishedInstance(t, filepath.Join(bench.Folder(t), name+".json"))
			bound := Length(p)
			assert.LessOrEqual(t, bound, area/p.Width/(density-0.005)*100)
			assert.GreaterOrEqual(t, bound, area/p.Width*(1-1e-9))
			t.Logf("bound %.6g, %.2f %% of it area", bound, 100*area/p.Width/bound)
		})
	}
}

// publishedInstance reads an instance of the open collection.
func publishedInstance(t *testing.T, path string) (layout.Problem, float64) {
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	var file struct {
		Items []struct {
			Demand              int
			AllowedOrientations []float64
			Shape               struct{ Data orb.Ring }
		}
		Strip struct{ Height float64 }
	}
	require.NoError(t, json.Unmarshal(data, &file))
	p, area := layout.Problem{Width: file.Strip.Height}, 0.0
	for _, it := range file.Items {
		laid := layout.Item{Outline: it.Shape.Data, Copies: it.Demand}
		for _, degrees := range it.AllowedOrientations {
			laid.Turns = append(laid.Turns, layout.Turn{Degrees: degrees})
		}
		p.Items = append(p.Items, laid)
		area += float64(it.Demand) * layout.Area(layout.Corners(laid.Outline))
	}
	return p, area
}

// shrink makes every outline smaller about its first corner, and takes its
// pins away.
func shrink(p layout.Problem, by float64) layout.Problem {
	items := make([]layout.Item, len(p.Items))
	for i, it := range p.Items {
		first := it.Outline[0]
		ring := make(orb.Ring, len(it.Outline))
		for j, q := range it.Outline {
			ring[j] = orb.Point{first[0] + by*(q[0]-first[0]), first[1] + by*(q[1]-first[1])}
		}
		it.Outline, it.Turns = ring, []layout.Turn{{}}
		items[i] = it
	}
	p.Items = items
	return p
}

// Layouts with gaps: boxes in random columns, a gap between any two.
func TestBoundNeverAboveLayoutsWithGaps(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 3))
	for n := range 1000 {
		p := layout.Problem{Width: 100, Gap: 5 * rng.Float64()}
		if n%3 == 0 {
			p.Gap = 0
		}
		var l layout.Layout
		x := 0.0
		for range 1 + rng.IntN(6) {
			y, widest := 0.0, 0.0
			for {
				wide, high := 5+20*rng.Float64(), 5+60*rng.Float64()
				if rng.IntN(2) == 0 {
					high = 100 / float64(1+rng.IntN(4))
				}
				if y+high > 100 {
					break
				}
				ring := oblong(0, 0, wide, high)
				if rng.IntN(3) == 0 { // with a slot from the right
					ring = orb.Ring{
						{0, 0},
						{wide, 0},
						{wide, high * 0.4},
						{wide / 2, high * 0.4},
						{wide / 2, high * 0.43},
						{wide, high * 0.43},
						{wide, high},
						{0, high},
					}
				}
				if rng.IntN(6) == 0 { // a flaw instead of a piece
					// Pieces may touch it: no gap before or after.
					y = max(0, y-p.Gap)
					p.Zones = append(p.Zones, moveRing(oblong(0, 0, wide, high), x, y))
					y -= p.Gap
				} else {
					p.Items = append(p.Items, item("box", ring, 1))
					l.Placements = append(l.Placements, layout.Placement{Item: len(p.Items) - 1, X: x, Y: y})
				}
				y += high + p.Gap
				widest = max(widest, wide)
			}
			x += widest + p.Gap
		}
		if len(p.Items) == 0 {
			continue
		}
		l.Length = lengthOf(p, l)
		require.NoError(t, verify.Layout(p, l), "case %d", n)
		require.LessOrEqual(t, Length(p), l.Length*(1+1e-6), "case %d", n)
		p.Length = l.Length
		require.Empty(t, Misfit(p), "case %d", n)
	}
}
