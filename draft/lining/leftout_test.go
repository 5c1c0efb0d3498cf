package lining

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// A facing of 50 mm beyond an extension of 20 covers 30 mm of the front when it
// is folded back; the lining begins there.
func TestFacingIsLeftOut(t *testing.T) {
	shell := shellOf("front bodice", []pieces.Edge{
		edge(seams.Waist, orb.Point{-70, 0}, orb.Point{250, 0}),
		edge(seams.SideSeam, orb.Point{250, 0}, orb.Point{250, 400}),
		edge(seams.Neck, orb.Point{250, 400}, orb.Point{0, 400}),
		edge(seams.ExtensionNeck, orb.Point{0, 400}, orb.Point{-20, 400}),
		edge(seams.FacingNeck, orb.Point{-20, 400}, orb.Point{-70, 400}),
		edge(seams.FacingEdge, orb.Point{-70, 400}, orb.Point{-70, 0}),
	}, notch(seams.Waist, 50), notch(seams.Waist, 200), notch(seams.Neck, 240), notch(seams.Neck, 100))
	p := derive(t, shell, Options{})
	lies(t, p, seams.Neck, orb.Point{250, 400}, orb.Point{30, 400})
	lies(t, p, seams.FacingEdge, orb.Point{30, 400}, orb.Point{30, 0})
	lies(t, p, seams.Waist, orb.Point{30, 0}, orb.Point{250, 0})
	assert.Len(t, p.Edges, 4)
	assert.Equal(t, []float64{100}, notched(p, seams.Waist), "what the facing covers has no notch")
	assert.Equal(t, []float64{100}, notched(p, seams.Neck))

	shell.Edges[0] = edge(seams.SkirtHem, orb.Point{-70, 0}, orb.Point{250, 0})
	shell.Notches = nil
	p = derive(t, shell, Options{Shorter: 20})
	lies(t, p, seams.NarrowHem, orb.Point{30, 20}, orb.Point{250, 20})
	lies(t, p, seams.FacingEdge, orb.Point{30, 400}, orb.Point{30, 20})
}

// A vent of 40 mm is left out; the centre back goes straight down, with a notch
// where its seam is left open.
func TestVentIsLeftOut(t *testing.T) {
	shell := shellOf("back skirt", []pieces.Edge{
		edge(seams.SkirtHem, orb.Point{-40, 0}, orb.Point{0, 0}, orb.Point{250, 0}),
		edge(seams.SideSeam, orb.Point{250, 0}, orb.Point{250, 600}),
		edge(seams.Waist, orb.Point{250, 600}, orb.Point{0, 600}),
		edge(seams.CentreBack, orb.Point{0, 600}, orb.Point{0, 200}),
		edge(seams.VentTop, orb.Point{0, 200}, orb.Point{-40, 180}),
		edge(seams.VentEdge, orb.Point{-40, 180}, orb.Point{-40, 0}),
	}, notch(seams.SkirtHem, 100))
	p := derive(t, shell, Options{})
	lies(t, p, seams.NarrowHem, orb.Point{0, 0}, orb.Point{250, 0})
	lies(t, p, seams.CentreBack, orb.Point{0, 600}, orb.Point{0, 0})
	assert.Len(t, p.Edges, 4)
	assert.Equal(t, []float64{60}, notched(p, seams.NarrowHem))
	assert.Equal(t, []float64{400}, notched(p, seams.CentreBack))
	assert.Equal(t, marks.OpenBelow, p.Notches[1].Match)
}

// The extension of a fly is left out; the crotch seam begins at the waist, with
// a notch where it is left open above.
func TestFlyIsLeftOut(t *testing.T) {
	shell := shellOf("front trousers", []pieces.Edge{
		edge(seams.InsideLeg, orb.Point{-80, 200}, orb.Point{0, 0}),
		edge(seams.TrouserHem, orb.Point{0, 0}, orb.Point{200, 0}),
		edge(seams.OutsideLeg, orb.Point{200, 0}, orb.Point{200, 500}),
		edge(seams.Waist, orb.Point{200, 500}, orb.Point{0, 500}),
		edge(seams.FlyWaist, orb.Point{0, 500}, orb.Point{-30, 500}),
		edge(seams.FlyEdge, orb.Point{-30, 500}, orb.Point{0, 350}),
		edge(seams.Crotch, orb.Point{0, 350}, orb.Point{-80, 200}),
	}, notch(seams.Crotch, 100))
	p := derive(t, shell, Options{})
	lies(t, p, seams.Crotch, orb.Point{0, 500}, orb.Point{-80, 200})
	assert.Len(t, p.Edges, 5)
	assert.Equal(t, []float64{250, 150}, notched(p, seams.Crotch))
	assert.Equal(t, marks.OpenAbove, p.Notches[1].Match)
}

// The casing of an elastic waist, 40 mm deep, is left out: the lining ends at
// the fold line.
func TestCasingIsLeftOut(t *testing.T) {
	shell := shellOf("back trousers", []pieces.Edge{
		edge(seams.InsideLeg, orb.Point{-50, 200}, orb.Point{0, 0}),
		edge(seams.TrouserHem, orb.Point{0, 0}, orb.Point{300, 0}),
		edge(seams.OutsideLeg, orb.Point{300, 0}, orb.Point{300, 540}),
		edge(seams.CasingEdge, orb.Point{300, 540}, orb.Point{0, 540}),
		edge(seams.Crotch, orb.Point{0, 540}, orb.Point{0, 300}, orb.Point{-50, 200}),
	}, notch(seams.Crotch, 100), notch(seams.Crotch, 30), notch(seams.OutsideLeg, 200))
	shell.Marks = []pieces.Mark{
		{Name: marks.HipLine, Path: construct.Line(orb.Point{0, 300}, orb.Point{300, 300})},
		{Name: marks.CasingFold, Path: construct.Line(orb.Point{300, 500}, orb.Point{0, 500})},
	}
	p := derive(t, shell, Options{})
	lies(t, p, seams.Waist, orb.Point{300, 500}, orb.Point{0, 500})
	lies(t, p, seams.OutsideLeg, orb.Point{300, 0}, orb.Point{300, 500})
	lies(t, p, seams.Crotch, orb.Point{0, 500}, orb.Point{-50, 200})
	assert.Equal(t, []float64{60}, notched(p, seams.Crotch), "not within the casing")
	assert.Equal(t, []float64{200}, notched(p, seams.OutsideLeg))
	require.Len(t, p.Marks, 1)
	assert.Equal(t, marks.HipLine, p.Marks[0].Name)
	assert.Len(t, shell.Marks, 2, "the shell keeps its own")
}
