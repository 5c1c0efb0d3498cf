package fabric_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/pieces"
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
		p = rectangle("rectangle", w, h, 2*rapid.IntRange(1, 2).Draw(t, "pairs"))
		p.Grain.Lie = lie
	case 1: // a pair
		p = pair(polygon("pair", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.7, h}, orb.Point{w * 0.1, h * 0.8}))
		p.Grain.Lie = lie
	case 2: // on the fold, straight grain
		p = polygon("half", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.8, h}, orb.Point{0, h * 0.7})
		p.Fold, p.Cut = "d", rapid.IntRange(1, 2).Draw(t, "cut")
	case 3: // on the fold, which lies across the grain
		p = polygon("half", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.8, h}, orb.Point{w * 0.1, h * 0.7})
		p.Fold, p.Grain.Lie = "a", pieces.CrossGrain
	default: // a pair with a hollow
		p = pair(polygon("hollow", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.4, h * 0.3}, orb.Point{w * 0.5, h}, orb.Point{0, h}))
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
		c := cloth.Cloth{Width: rapid.Float64Range(640, 1500).Draw(t, "width"), Selvedge: 10, Step: 100,
			Nap: cloth.Nap(rapid.IntRange(0, 2).Draw(t, "nap"))}
		got, err := fabric.Require(context.Background(), c, all, fabric.Options{Iterations: 3, Seed: 7, Lays: twoLays})
		if err != nil {
			t.Fatal(err)
		}
		for _, plan := range got.Lays {
			if !plan.Possible() {
				t.Fatalf("%s: %s", plan.Lay, plan.Impossible)
			}
			if err := plan.Check(all); err != nil {
				t.Fatal(err)
			}
			if plan.Length < plan.Bound-1e-6 || plan.Density > 1+1e-9 {
				t.Fatalf("length %g, bound %g, efficiency %g", plan.Length, plan.Bound, plan.Density)
			}
			apart(t, plan)
		}
		if open, folded := got.Lays[0], got.Lays[1]; open.Length > folded.Length+1e-6 {
			t.Fatalf("the open lay takes %g, the folded one %g", open.Length, folded.Length)
		}
	})
}

// apart asks simplefeatures for the common area of every two outlines.
func apart(t *rapid.T, plan fabric.LayPlan) {
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
func geometryOf(l fabric.Laid) geom.Geometry {
	var flat []float64
	for _, p := range l.Outline {
		flat = append(flat, p[0], p[1])
	}
	ring := geom.NewLineString(geom.NewSequence(flat, geom.DimXY))
	return geom.NewPolygon([]geom.LineString{ring}).AsGeometry()
}
