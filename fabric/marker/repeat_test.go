package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// TestLinesAcross by hand: selvedge 10 mm, cloth 1020 mm wide, a line of the
// repeat 60 mm from the edge of the cloth and every 80 mm. Where the cloth is
// double the upper ply is seen, which has them mirrored about its fold.
func TestLinesAcross(t *testing.T) {
	for _, c := range []struct {
		lay      lay.Kind
		width    float64
		foldedIn float64
		first    []float64 // of every band
	}{
		{lay.Open, 1000, 0, []float64{50}},
		{lay.FoldedAcross, 1000, 0, []float64{50}},
		{lay.CutAcross, 1000, 0, []float64{-10}},      // the far edge, at 1020 mm, lies nearest
		{lay.FoldedAlong, 500, 0, []float64{50}},      // 460 mm, 50 mm before the fold at 510
		{lay.SelvedgeIn, 710, 300, []float64{0, 320}}, // 300 mm is the fold; single, 620 mm
		{lay.BothSelvedgesIn, 510, 0, []float64{35, 255}},
	} {
		t.Run(c.lay.String(), func(t *testing.T) {
			plan := openPlan()
			plan.Cloth.Repeat = cloth.Repeat{Across: 80, CentreLine: 60}
			plan.Lay, plan.Plies, plan.Width, plan.FoldedIn = c.lay, c.lay.Plies(), c.width, c.foldedIn
			first := bed.Of(plan.Cloth, c.lay)
			if c.lay == lay.SelvedgeIn {
				first, _ = bed.FoldedIn(plan.Cloth, c.foldedIn)
			}
			plan.Beds = []lay.Bed{{Length: plan.Length, Width: c.width, Plies: plan.Plies,
				OnCloth: first.OnCloth(plan.Cloth, plan.Length)}}
			if c.lay == lay.SelvedgeIn {
				_, single := bed.FoldedIn(plan.Cloth, c.foldedIn)
				plan.Beds = append(plan.Beds, lay.Bed{Y: c.foldedIn, Length: plan.Length, Plies: 1,
					OnCloth: single.OnCloth(plan.Cloth, plan.Length)})
			}
			all := bands(plan)
			require.Len(t, all, len(c.first))
			for i, want := range c.first {
				lines := all[i].linesAcross(plan)
				require.NotEmpty(t, lines)
				assert.InDelta(t, want, lines[0], 1e-9)
			}
		})
	}
}

func TestRepeatIsInTheLegend(t *testing.T) {
	assert.Contains(t, textOf(t, written(t, withRepeat(), Options{})), "repeat")
}

func withRepeat() lay.Plan {
	plan := openPlan()
	plan.Cloth.Repeat.Along = 120
	return plan
}
