package marker

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/drawing"
)

// The plan as it is drawn, line by line: whoever changes it sees what else moved.
func TestPlansAreDrawn(t *testing.T) {
	for name, plan := range map[string]lay.Plan{"open": openPlan(), "folded": foldedPlan()} {
		t.Run(name, func(t *testing.T) {
			for i, page := range pagesOf(plan, Options{}) {
				var drawn bytes.Buffer
				require.NoError(t, drawing.WriteSVG(&drawn, "plan", page))
				golden(t, filepath.Join("testdata", fmt.Sprintf("%s_page%d.svg", name, i+1)), drawn.String())
			}
		})
	}
}

// The lay of every other kind, of remnants and of a cloth with flaws and a pattern, as the
// first page shows it, and all pages of the one that is folded in two ways.
func TestEveryLayIsDrawn(t *testing.T) {
	plans := map[string]lay.Plan{}
	for kind, plan := range everyLay(t) {
		plans[strings.NewReplacer(" ", "_", ",", "").Replace(kind.String())] = plan
	}
	remnants := openPlan()
	remnants.Pieces = []lay.Laid{placedPiece("front", 200, 300, 100, 50, 270), placedPiece("pocket", 120, 160, 850, 50, 0)}
	remnants.Offcuts = []lay.OffcutPlace{{Name: "the long one", From: 0, To: 700},
		{Name: "remnant 2", From: 750, To: 1200}}
	plans["remnants"] = remnants
	checked := foldedPlan()
	checked.Cloth.Repeat = cloth.Repeat{Along: 120, Across: 90, CentreLine: 25}
	checked.Beds = []lay.Bed{{Length: checked.Length, Width: checked.Width, Plies: 2, FoldLow: true,
		OnCloth: bed.Of(checked.Cloth, checked.Lay).OnCloth(checked.Cloth, checked.Length)}}
	checked.Zones = []orb.Ring{{{500, 300}, {540, 300}, {540, 360}, {500, 360}, {500, 300}}}
	plans["checked"] = checked
	for name, plan := range plans {
		t.Run(name, func(t *testing.T) {
			pages := pagesOf(plan, Options{Inches: name == "checked"})
			if plan.Lay != lay.InStretches {
				pages = pages[:1]
			}
			for i, page := range pages {
				var drawn bytes.Buffer
				require.NoError(t, drawing.WriteSVG(&drawn, "plan", page))
				golden(t, filepath.Join("testdata", fmt.Sprintf("%s_page%d.svg", name, i+1)), drawn.String())
			}
		})
	}
}
