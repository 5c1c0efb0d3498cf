package plan_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// drawPiece makes a random piece of one of the kinds that a lay must deal
// with.
func drawPiece(t *rapid.T, i int) pieces.Piece {
	size := rapid.Float64Range(30, 200)
	w, h := size.Draw(t, "width"), size.Draw(t, "height")
	kind := rapid.IntRange(0, 4).Draw(t, "kind")
	lie := pieces.GrainLie(rapid.IntRange(0, 2).Draw(t, "lie"))
	var p pieces.Piece
	switch kind {
	case 0: // its own mirror image
		p = fabrictest.Rectangle("rectangle", w, h, 2*rapid.IntRange(1, 2).Draw(t, "pairs"))
		p.Grain.Lie = lie
	case 1: // a pair
		p = fabrictest.Pair(fabrictest.Polygon("pair", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.7, h},
			orb.Point{w * 0.1, h * 0.8}))
		p.Grain.Lie = lie
	case 2: // on the fold, straight grain
		p = fabrictest.Polygon("half", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.8, h}, orb.Point{0, h * 0.7})
		p.Fold, p.Cut = seams.Called("d"), rapid.IntRange(1, 2).Draw(t, "cut")
	case 3: // on the fold, which lies across the grain
		p = fabrictest.Polygon("half", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.8, h}, orb.Point{w * 0.1, h * 0.7})
		p.Fold, p.Grain.Lie = seams.Called("a"), pieces.CrossGrain
	default: // a pair with a hollow
		p = fabrictest.Pair(fabrictest.Polygon("hollow", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.4, h * 0.3},
			orb.Point{w * 0.5, h}, orb.Point{0, h}))
	}
	p.Name = fmt.Sprintf("%s %d", p.Name, i)
	p.Garment = rapid.SampledFrom([]string{"blouse", "skirt"}).Draw(t, "garment")
	return p
}

// TestEveryLayKeepsTheRules makes random jobs, lays them on all naps and both
// lays, and looks for overlaps with another library.
func TestEveryLayKeepsTheRules(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var all []pieces.Piece
		for i := range rapid.IntRange(1, 5).Draw(t, "pieces") {
			all = append(all, drawPiece(t, i))
		}
		c := cloth.Cloth{Width: rapid.Float64Range(640, 1500).Draw(t, "width"), Selvedge: 10, PurchaseStep: 100,
			Nap: cloth.Nap(rapid.IntRange(0, 2).Draw(t, "nap"))}
		got, err := plan.Require(context.Background(), c, all, plan.Options{Passes: 3, Seed: 7, Lays: fabrictest.TwoLays})
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range got.Lays {
			if !p.Possible() {
				t.Fatalf("%s: %s", p.Lay, words.WhyNot(p))
			}
			if err := check.Plan(p, all); err != nil {
				t.Fatal(err)
			}
			if p.Length < p.Bound-1e-6 || p.Density > 1+1e-9 {
				t.Fatalf("length %g, bound %g, efficiency %g", p.Length, p.Bound, p.Density)
			}
			apart(t, p)
		}
		if open, folded := got.Lays[0], got.Lays[1]; open.Length > folded.Length+1e-6 {
			t.Fatalf("the open lay takes %g, the folded one %g", open.Length, folded.Length)
		}
	})
}

// apart asks simplefeatures for the common area of every two outlines.
func apart(t *rapid.T, plan lay.Plan) {
	shapes := make([]geom.Geometry, len(plan.Pieces))
	for i, l := range plan.Pieces {
		shapes[i] = geometryOf(l)
	}
	for i := range shapes {
		for j := range i {
			common, err := geom.Intersection(shapes[i], shapes[j])
			if err != nil {
				t.Fatal(err)
			}
			if common.Area() > 1e-6*min(shapes[i].Area(), shapes[j].Area()) {
				t.Fatalf("%s and %s overlap by %g mm2", plan.Pieces[i].Name, plan.Pieces[j].Name, common.Area())
			}
		}
	}
}

// geometryOf the outline of a piece as it lies, for simplefeatures.
func geometryOf(l lay.Laid) geom.Geometry {
	var flat []float64
	for _, p := range l.Outline {
		flat = append(flat, p[0], p[1])
	}
	ring := geom.NewLineString(geom.NewSequence(flat, geom.DimXY))
	return geom.NewPolygon([]geom.LineString{ring}).AsGeometry()
}
