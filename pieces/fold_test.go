package pieces

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// foldPiece has its fold on x = 0 from (0, height) down to (0, 0) and further
// corners right of it, in order.
func foldPiece(height float64, corners []orb.Point, widths ...float64) Piece {
	all := append([]orb.Point{{0, 0}}, corners...)
	all = append(all, orb.Point{0, height})
	p := polygon(all, widths...)
	fold := &p.Edges[len(p.Edges)-1]
	fold.Name, fold.Allowance, p.Fold = seams.Called("fold"), 0, seams.Called("fold")
	return p
}

func TestCuttingOutlineAtTheFold(t *testing.T) {
	cases := map[string]struct {
		corners []orb.Point
		want    []orb.Point
	}{
		"square to the fold": {
			[]orb.Point{{100, 0}, {100, 200}},
			[]orb.Point{{0, -10}, {110, -10}, {110, 210}, {0, 210}},
		},
		// The neighbours lean 5 in 12: their allowances of 10 reach 10 * 13/12 =
		// 65/6 along the fold line, and at x = 130 another 130 * 5/12 = 325/6.
		"pointed, cut off at the fold line": {
			[]orb.Point{{120, -50}, {120, 250}},
			[]orb.Point{{0, -65.0 / 6}, {130, -65}, {130, 265}, {0, 200 + 65.0/6}},
		},
		"hollow, prolonged to the fold line": {
			[]orb.Point{{120, 50}, {120, 150}},
			[]orb.Point{{0, -65.0 / 6}, {130, 260.0 / 6}, {130, 200 - 260.0/6}, {0, 200 + 65.0/6}},
		},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := foldPiece(200, c.corners, 10)
			require.NoError(t, p.Check())
			assertRing(t, c.want, cut(t, p, 0.1), 1e-9)
			turned := p.Map(Turn(37).Then(Move(5e3, -800)))
			assert.InDelta(t, geometry.Area(append(orb.Ring(c.want), c.want[0])), geometry.Area(cut(t, turned, 0.1)),
				1e-3, "wherever it lies")
		})
	}
}

// A half and its mirror image make the outline of the whole.
func TestHalvesMakeTheWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 5).Draw(t, "corners")
		var corners []orb.Point
		for i := range n {
			angle := math.Pi * (float64(i) + rapid.Float64Range(0.15, 0.85).Draw(t,
				fmt.Sprint("angle ", i))) / float64(n)
			radius := rapid.Float64Range(80, 400).Draw(t, fmt.Sprint("radius ", i))
			corners = append(corners, orb.Point{radius * math.Sin(angle), 200 - radius*math.Cos(angle)})
		}
		width := rapid.SampledFrom([]float64{5, 10, 15})
		var widths []float64
		for i := range n + 2 {
			widths = append(widths, width.Draw(t, fmt.Sprint("width ", i)))
		}
		p := foldPiece(400, corners, widths...)
		if p.Check() != nil {
			t.Skip("not a simple half")
		}
		half, err := p.CuttingOutline(0.1)
		require.NoError(t, err)
		whole, err := p.Unfolded().CuttingOutline(0.1)
		require.NoError(t, err)
		assert.InDelta(t, geometry.Area(whole), 2*geometry.Area(half), 1e-3)
		for _, q := range half {
			assert.GreaterOrEqual(t, q[0], -1e-6, "nothing lies across the fold")
		}
	})
}

// An allowance that reaches across the fold line away from the fold would lie
// on the other half: here a tongue that comes back to 4 mm from the line above
// the fold edge, with an allowance of 10.
func TestAllowanceAcrossTheFoldLineIsRefused(t *testing.T) {
	p := foldPiece(100, []orb.Point{{200, 0}, {200, 300}, {4, 300}, {4, 200}, {100, 200}, {100, 100}}, 10)
	require.NoError(t, p.Check())
	_, err := p.CuttingOutline(0.1)
	assertRefused(t, Fault{Of: AllowanceAcrossFold, Piece: "test"}, err)
}

func TestCuttingOutlineRefuses(t *testing.T) {
	_, err := Piece{Name: "nothing"}.CuttingOutline(0.1)
	assertRefused(t, Fault{Of: NothingToCut, Piece: "nothing"}, err)
	for bad, defect := range map[float64]Defect{
		-20: AllowanceNegative, math.NaN(): AllowanceNoNumber, math.Inf(1): AllowanceNoNumber,
	} {
		p := Rectangle("cuff", 240, 80)
		p.Edges[0].Allowance = bad
		_, err := p.CuttingOutline(0.1)
		assert.ErrorContains(t, err, "cuff: "+string(defect))
	}
}
