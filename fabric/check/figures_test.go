package check_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Each figure of a good lay is refused when it alone is wrong.
func TestWrongFiguresAreRefused(t *testing.T) {
	panel := fabrictest.Rectangle("panel", 200, 300, 2)
	bought := cloth.Cloth{Width: 1000, Selvedge: 10, PurchaseStep: 100, Straighten: 30, Minimum: 500,
		HandLaying: cloth.Addition{Share: 0.02, Length: 3}, Safety: cloth.Addition{Share: 0.05, Length: 10},
		Shrinkage: cloth.Shrinkage{Warp: 0.04, Weft: 0.02}}
	striped := cloth.Cloth{Width: 1000, Selvedge: 10, Repeat: cloth.Repeat{Along: 80, Across: 50}}
	half := fabrictest.Half("front", 150, 300, 1)
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		kind  lay.Kind
		all   []pieces.Piece
		spoil func(*lay.Plan)
		want  string
	}{
		{"need", bought, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Need-- }, "and it says"},
		{"hand laying, the share", bought, lay.Open, []pieces.Piece{panel},
			func(p *lay.Plan) { p.Cloth.HandLaying.Share = 0 }, "and it says"},
		{"hand laying, the length", bought, lay.Open, []pieces.Piece{panel},
			func(p *lay.Plan) { p.Cloth.HandLaying.Length-- }, "and it says"},
		{"straightening", bought, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Cloth.Straighten = 0 },
			"and it says"},
		{"less than needed", bought, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Buy -= 100 }, "less than"},
		{"less than the minimum", bought, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Cloth.Minimum = 2000 },
			"less than"},
		{"a step too much", bought, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Buy += 100 }, "more than a step"},
		{"no whole step", bought, lay.Open, []pieces.Piece{panel},
			func(p *lay.Plan) { p.Cloth.PurchaseStep = 70; p.Buy += 1 },
			"steps of"},
		{"more than needed", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Buy++ }, "more than"},
		{"remnant", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.There = p.Taken / 2 },
			"of cloth that is there"},
		{"efficiency", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Density += 0.01 }, "the efficiency"},
		{"efficiency of halves", striped, lay.FoldedAlong, []pieces.Piece{half}, func(p *lay.Plan) { p.Density /= 2 },
			"the efficiency"},
		{"bound", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Bound = p.Length + 1 }, "its bound"},
		{"plies", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Plies = 2 }, "there are 1"},
		{"plies of a part", striped, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) { part(p).Plies = 1 },
			"the 2 plies"},
		{"fold of a part", striped, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) { part(p).FoldLow = false },
			"the folds"},
		{"ply on the cloth", striped, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) {
			part(p).OnCloth = slices.Clone(part(p).OnCloth)
			part(p).OnCloth[1].ToCloth.F += 2
		}, "its ply does not lie"},
		{"end of a part", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { part(p).Length += 20 },
			"the parts of the lay end"},
		{"taken", bought, lay.FoldedAcross, []pieces.Piece{panel}, func(p *lay.Plan) { p.Taken -= 1 },
			"of cloth, and it says"},
		{"width", striped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Width += 5 }, "mm wide, and it says"},
		{"cuts", striped, lay.CutAcross, []pieces.Piece{panel},
			func(p *lay.Plan) { p.Cloth.Repeat = cloth.Repeat{}; p.Cuts-- }, "cuts, and it says"},
		{"a match forgotten", striped, lay.Open, fabrictest.Skirt(), func(p *lay.Plan) { p.Matches = p.Matches[1:] },
			"neither kept nor said to be dropped"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := laid(t, c.cloth, c.kind, c.all...)
			c.spoil(&p)
			assert.ErrorContains(t, check.Plan(p, c.all), c.want)
		})
	}
}

// part is the first part of a plan, to be spoiled.
func part(p *lay.Plan) *lay.Bed {
	p.Beds = slices.Clone(p.Beds)
	return &p.Beds[0]
}
