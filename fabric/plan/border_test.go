package plan_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// A border by hand: on cloth 1000 mm wide the hem of a panel 300 mm long lies 60 mm
// from the edge of the selvedge, so that the panel reaches from 60 to 360 mm, or
// from 640 to 940 mm at the far one.
func TestBorder(t *testing.T) {
	panel := fabrictest.Rectangle("panel", 200, 300, 2)
	panel.Edges[0].Name = seams.Hem
	pocket := fabrictest.Rectangle("pocket", 80, 90, 2)
	for side, want := range map[cloth.Side][2]float64{cloth.Near: {60, 360}, cloth.Far: {640, 940}} {
		c := cloth.Cloth{Width: 1000, Selvedge: 10, Border: cloth.Border{Selvedge: side, Line: 60, Pieces: []string{"panel"}}}
		all := []pieces.Piece{panel, pocket}
		for _, kind := range []lay.Kind{lay.Open, lay.FoldedAcross} {
			p := inLay(t, c, kind, all...)
			require.True(t, p.Possible(), words.WhyNot(p))
			for _, l := range p.Pieces {
				if box := l.Outline.Bound(); l.Name == "panel" {
					assert.InDelta(t, want[0], box.Min[1]+10, 1e-6)
					assert.InDelta(t, want[1], box.Max[1]+10, 1e-6)
				}
			}
			require.NoError(t, check.Plan(p, all))
			p.Cloth.Border.Line += 1.1
			assert.ErrorContains(t, check.Plan(p, all), "its hem lies 1.1 mm off the line of the border")
			p.Cloth.Border = cloth.Border{Selvedge: 1 - side, Line: 940, Pieces: []string{"panel"}}
			assert.ErrorContains(t, check.Plan(p, all), "on the wrong side of the line")
		}
		folded := fabrictest.Brief
		folded.Lays = []lay.Kind{lay.FoldedAlong}
		_, err := plan.Require(t.Context(), c, all, folded)
		assert.ErrorContains(t, words.Refused(c, err), "the border runs along one selvedge")
	}
}

// A piece that lies along the cloth is refused on a border.
func TestBorderLiesAcross(t *testing.T) {
	band := fabrictest.Rectangle("band", 300, 300, 1)
	band.Edges[0].Name = seams.Hem
	c := cloth.Cloth{Width: 1000, Selvedge: 10}
	p := inLay(t, c, lay.Open, band)
	p.Cloth.Border = cloth.Border{Line: p.Pieces[0].Outline.Bound().Min[1] + 10, Pieces: []string{"band"}}
	assert.Error(t, check.Plan(p, []pieces.Piece{band}))
}

func TestBorderIsRefused(t *testing.T) {
	panel := fabrictest.Rectangle("panel", 200, 300, 1)
	panel.Edges[0].Name = seams.Hem
	curved, slanted, hemless := panel, panel, panel
	curved.Edges = append([]pieces.Edge(nil), panel.Edges...)
	curved.Edges[0].Path = pieces.Path{pieces.Bezier{P0: orb.Point{0, 0}, P1: orb.Point{60, -20},
		P2: orb.Point{140, -20}, P3: orb.Point{200, 0}}}
	slanted.Grain.To[0] += 100 * math.Tan(math.Pi/36)
	hemless.Edges = append([]pieces.Edge(nil), panel.Edges...)
	hemless.Edges[0].Name = seams.Bottom
	c := cloth.Cloth{Width: 1000, Selvedge: 10, Border: cloth.Border{Line: 60, Pieces: []string{"panel"}}}
	for want, piece := range map[string]pieces.Piece{
		"its hem is curved":                                curved,
		"its hem is not square to its grainline":           slanted,
		`it is to lie on the border and has no edge "hem"`: hemless,
	} {
		_, err := plan.Require(t.Context(), c, []pieces.Piece{piece}, fabrictest.Brief)
		assert.ErrorContains(t, words.Refused(c, err), want)
	}
	c.Nap = cloth.OneWay
	pair := fabrictest.Pair(panel)
	pair.Cut = 2
	_, err := plan.Require(t.Context(), c, []pieces.Piece{pair}, fabrictest.Brief)
	assert.ErrorContains(t, words.Refused(c, err), "the nap would run the wrong way")
}
