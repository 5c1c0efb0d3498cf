package marker

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces/geometry"
	"ellwand/pieces/paper"
)

// labelsOf finds the labels of a plan that fits on one page.
func labelsOf(plan lay.Plan) ([]label, []shownPiece) {
	s := newSheets(plan, Options{})
	low, high := Edges(plan)
	paging := pagingFor(paper.A4, high-low, purchase.OnTable(plan))
	s.denominator = paging.denominator
	s.Add(paging.Paper)
	v := view{to: purchase.OnTable(plan), scale: 1 / s.denominator, low: low, high: high, left: 20,
		bottom: paging.Height - 40, page: 1, pages: 1}
	var shown []shownPiece
	for i, l := range plan.Pieces {
		shown = append(shown, s.shown(v, i, l))
	}
	return s.labels(v, shown), shown
}

// TestLabelsStayApart: no label overlaps another, and every label lies in its
// own piece or, with a line to it, on free ground.
func TestLabelsStayApart(t *testing.T) {
	for name, plan := range map[string]lay.Plan{
		"open": openPlan(), "folded": foldedPlan(), "patches": longPlan(t, 100), "solved": required(t), "tiny": tinyPlan(),
	} {
		t.Run(name, func(t *testing.T) {
			labelsStayApart(t, plan)
		})
	}
}

func labelsStayApart(t *testing.T, plan lay.Plan) {
	t.Helper()
	labels, shown := labelsOf(plan)
	assert.Len(t, labels, len(plan.Pieces), "one label a piece")
	for i, l := range labels {
		for _, other := range labels[:i] {
			assert.False(t, touches(l.box, other.box), "%d and %d overlap", l.number, other.number)
		}
		for _, piece := range shown {
			inside := geometry.Inside(piece.outline, l.box.Center()) && !geometry.Crosses(piece.outline, l.box)
			if piece.number == l.number {
				assert.Equal(t, l.leader == nil, inside, "label %d", l.number)
				continue
			}
			assert.False(t, inside || geometry.Crosses(piece.outline, l.box), "label %d lies on piece %d", l.number,
				piece.number)
		}
		for _, other := range labels {
			if l.leader != nil && other.number != l.number {
				assert.False(t, geometry.Crosses([]orb.Point{l.box.Center(), *l.leader}, other.box), "the line of %d crosses %d",
					l.number, other.number)
			}
		}
	}
}

// TestLabelsStayApartOnRandomLays has pieces from 25 mm to half a metre in
// random rows, some of them too small for a number.
func TestLabelsStayApartOnRandomLays(t *testing.T) {
	for seed := range uint64(25) {
		t.Run(fmt.Sprint("seed ", seed), func(t *testing.T) { labelsStayApart(t, randomPlan(seed)) })
	}
}

// randomPlan lays random rectangles in columns, each a little apart.
func randomPlan(seed uint64) lay.Plan {
	r := rand.New(rand.NewPCG(seed, 3))
	plan := openPlan()
	plan.Pieces, plan.Length = nil, 0
	for x := 0.0; x < 1500; {
		widest := 0.0
		for y := 0.0; y < 1000; {
			width, height := 12+400*math.Pow(r.Float64(), 3), 12+300*math.Pow(r.Float64(), 3)
			if y+width > 1000 {
				break
			}
			name := []string{"tab", "front bodice", "a pocket with a long name"}[r.IntN(3)]
			plan.Pieces = append(plan.Pieces, placedPiece(name, width, height, x, y, []float64{270, 90}[r.IntN(2)]))
			widest, y = max(widest, height), y+width+12*r.Float64()
		}
		x += widest + 8*r.Float64()
		plan.Length = x
	}
	plan.Buy = plan.Length
	return plan
}

// tinyPlan has pieces too small for any label.
func tinyPlan() lay.Plan {
	plan := openPlan()
	for i := range 6 {
		plan.Pieces = append(plan.Pieces, placedPiece("tab", 6, 10, 1100+float64(i%2)*15, 30+float64(i/2)*40, 270))
	}
	return plan
}

func touches(a, b orb.Bound) bool {
	return a.Min[0] < b.Max[0] && b.Min[0] < a.Max[0] && a.Min[1] < b.Max[1] && b.Min[1] < a.Max[1]
}

// TestNumbersKeepOffArrows: of pieces too small for a number beside their
// arrow, the number stands outside where there is free ground nearby.
func TestNumbersKeepOffArrows(t *testing.T) {
	labels, shown := labelsOf(tinyPlan())
	outside := 0
	for _, l := range labels {
		for _, piece := range shown {
			if piece.number == l.number {
				assert.False(t, geometry.Crosses(piece.arrow[:], l.box), "%d", l.number)
			}
		}
		if l.leader != nil {
			outside++
		}
	}
	assert.Positive(t, outside)
}
