package lining

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// shellOf is a piece of straight edges, each from its place to the next.
func shellOf(name string, edges []pieces.Edge, notches ...pieces.Notch) pieces.Piece {
	return pieces.Piece{
		Name: name, Cut: 2, Pair: true, Edges: edges, Notches: notches,
		Grain: pieces.Grain{From: orb.Point{100, 100}, To: orb.Point{100, 300}},
	}
}

func edge(name seams.Name, places ...orb.Point) pieces.Edge {
	var path pieces.Path
	for i := 1; i < len(places); i++ {
		path = append(path, pieces.Line{From: places[i-1], To: places[i]})
	}
	return pieces.Edge{Name: name, Path: path, Hem: name == seams.SkirtHem}
}

func notch(edge seams.Name, at float64) pieces.Notch {
	return pieces.Notch{Edge: edge, At: at, Count: 1}
}

// backSkirt is 250 mm wide and 600 long; its centre back lies at x = 0.
func backSkirt() pieces.Piece {
	shell := shellOf("back skirt", []pieces.Edge{
		edge(seams.SkirtHem, orb.Point{0, 0}, orb.Point{250, 0}),
		edge(seams.SideSeam, orb.Point{250, 0}, orb.Point{250, 600}),
		edge(seams.Waist, orb.Point{250, 600}, orb.Point{0, 600}),
		edge(seams.CentreBack, orb.Point{0, 600}, orb.Point{0, 0}),
	}, notch(seams.SkirtHem, 30), notch(seams.SideSeam, 100), notch(seams.CentreBack, 570),
		notch(seams.CentreBack, 590))
	shell.Marks = []pieces.Mark{
		{Name: marks.HipLine, Path: construct.Line(orb.Point{0, 400}, orb.Point{250, 400})},
		{Name: marks.Called("fold of the hem"), Path: construct.Line(orb.Point{0, 10}, orb.Point{250, 10})},
	}
	return shell
}

func derive(t *testing.T, shell pieces.Piece, o Options) pieces.Piece {
	t.Helper()
	got, err := Of(shell, o)
	require.NoError(t, err)
	require.NoError(t, got.Piece.Check())
	assert.Equal(t, shell.Name+" lining", got.Piece.Name)
	assert.Equal(t, pieces.Lining, got.Piece.Kind)
	assert.Equal(t, "lining to shell", got.Pairing.Seam)
	assert.InDelta(t, got.Pairing.Other, got.Pairing.Length, 1e-9, "what was changed on purpose is left out")
	return got.Piece
}

// lies checks an edge from its first place to its last, all reckoned by hand.
func lies(t *testing.T, p pieces.Piece, name seams.Name, from, to orb.Point) {
	t.Helper()
	e, ok := p.Edge(name)
	require.True(t, ok, "no edge %s", name)
	for axis := range 2 {
		assert.InDelta(t, from[axis], e.Path.Start()[axis], 1e-6, "%s begins at %v", name, e.Path.Start())
		assert.InDelta(t, to[axis], e.Path.End()[axis], 1e-6, "%s ends at %v", name, e.Path.End())
	}
}

// notched lists where the notches of an edge lie.
func notched(p pieces.Piece, edge seams.Name) (out []float64) {
	for _, n := range p.Notches {
		if n.Edge == edge {
			out = append(out, math.Round(n.At*1e6)/1e6)
		}
	}
	return out
}

// A lining 20 mm shorter: the edges beside the hem lose 20 mm, notches stay at
// their places on the body, and what lies below the new hem is gone.
func TestShorter(t *testing.T) {
	p := derive(t, backSkirt(), Options{Shorter: 20})
	lies(t, p, seams.NarrowHem, orb.Point{0, 20}, orb.Point{250, 20})
	lies(t, p, seams.SideSeam, orb.Point{250, 20}, orb.Point{250, 600})
	lies(t, p, seams.CentreBack, orb.Point{0, 600}, orb.Point{0, 20})
	assert.Equal(t, []float64{30}, notched(p, seams.NarrowHem))
	assert.Equal(t, []float64{80}, notched(p, seams.SideSeam))
	assert.Equal(t, []float64{570}, notched(p, seams.CentreBack))
	require.Len(t, p.Marks, 1)
	assert.Equal(t, marks.HipLine, p.Marks[0].Name)

	p = derive(t, backSkirt(), Options{})
	lies(t, p, seams.NarrowHem, orb.Point{0, 0}, orb.Point{250, 0})
	assert.Equal(t, []float64{570, 590}, notched(p, seams.CentreBack))
	assert.Equal(t, seams.SkirtHem, backSkirt().Edges[0].Name)
}

// The shell is left as it is.
func TestShellIsKept(t *testing.T) {
	shell := backSkirt()
	derive(t, shell, Options{Shorter: 20, BackPleat: 20})
	assert.Equal(t, backSkirt(), shell)
}

// A curved hem is drawn 20 mm within the old one everywhere.
func TestCurvedHemGoesUpEverywhere(t *testing.T) {
	shell := backSkirt()
	flare := construct.Curve(orb.Point{0, 0}, orb.Point{1, 0}, 1.0/3, orb.Point{250, 60}, orb.Point{0.8, 0.6}, 1.0/3)
	shell.Edges[0].Path = flare
	shell.Edges[1] = edge(seams.SideSeam, orb.Point{250, 60}, orb.Point{100, 600})
	shell.Edges[2] = edge(seams.Waist, orb.Point{100, 600}, orb.Point{0, 600})
	shell.Notches, shell.Marks = nil, nil
	p := derive(t, shell, Options{Shorter: 20})
	hem, ok := p.Edge(seams.NarrowHem)
	require.True(t, ok)
	old := flare.Flatten(0.01)
	for _, at := range hem.Path.Flatten(0.5) {
		near := math.Inf(1)
		for _, o := range old {
			near = math.Min(near, construct.Distance(at, o))
		}
		assert.InDelta(t, 20, near, 1.5)
		assert.Greater(t, at[1], 0.0, "above the old hem")
	}
}

// A pleat of 20 mm lies on each half beyond the centre back.
func TestBackPleat(t *testing.T) {
	p := derive(t, backSkirt(), Options{BackPleat: 20})
	lies(t, p, seams.CentreBack, orb.Point{-20, 600}, orb.Point{-20, 0})
	lies(t, p, seams.Waist, orb.Point{250, 600}, orb.Point{-20, 600})
	lies(t, p, seams.NarrowHem, orb.Point{-20, 0}, orb.Point{250, 0})
	assert.Equal(t, []float64{50}, notched(p, seams.NarrowHem))
	assert.Equal(t, []float64{100}, notched(p, seams.SideSeam))

	front := backSkirt()
	front.Edges[3].Name, front.Notches = seams.CentreFront, nil
	p = derive(t, front, Options{BackPleat: 20})
	lies(t, p, seams.Waist, orb.Point{250, 600}, orb.Point{0, 600})

	// Slanted by 1 in 250 an edge still meets it squarely, by 1 in 50 not.
	for slant, refused := range map[float64]bool{1: false, 5: true} {
		for _, which := range []string{"waist", "skirt hem"} {
			shell := backSkirt()
			if which == "waist" {
				shell.Edges[1].Path = construct.Line(orb.Point{250, 0}, orb.Point{250, 600 + slant})
				shell.Edges[2].Path = construct.Line(orb.Point{250, 600 + slant}, orb.Point{0, 600})
			} else {
				shell.Edges[0].Path = construct.Line(orb.Point{0, 0}, orb.Point{250, slant})
				shell.Edges[1].Path = construct.Line(orb.Point{250, slant}, orb.Point{250, 600})
			}
			_, err := Of(shell, Options{BackPleat: 20})
			if !refused {
				assert.NoError(t, err, "%s %g", which, slant)
				continue
			}
			assert.ErrorContains(t, err, "back skirt lining: its edges do not meet the centre back squarely", "%s %g",
				which, slant)
		}
	}
}

func TestRefusals(t *testing.T) {
	for want, o := range map[string]Options{
		"lining: it is -0.1 cm shorter than the shell; that cannot " +
			"be negative": {Shorter: -1},
		"lining: a back pleat of -0.1 cm cannot be; ask for 1 " +
			"cm to 10 cm": {BackPleat: -1},
		"lining: a back pleat of 10.1 cm cannot be": {BackPleat: 101},
		"back skirt lining: 59.1 cm shorter is more than its shortest edge beside the hem, 60 cm, " +
			"has room for": {Shorter: 591},
		"back skirt lining: 70 cm shorter is more than its shortest edge beside the hem, 60 cm, " +
			"has room for": {Shorter: 700},
	} {
		_, err := Of(backSkirt(), o)
		assert.ErrorContains(t, err, want)
	}
	for _, o := range []Options{{Shorter: 590}, {BackPleat: 100}} {
		_, err := Of(backSkirt(), o)
		assert.NoError(t, err, "%+v", o)
	}
}

// The steps say what is changed, and nothing else.
func TestSteps(t *testing.T) {
	steps := func(shell pieces.Piece, o Options) int {
		got, err := Of(shell, o)
		require.NoError(t, err)
		return len(got.Sheet.Steps)
	}
	bare := backSkirt()
	bare.Edges[0].Hem = false
	assert.Equal(t, 1, steps(bare, Options{}), "trace")
	assert.Equal(t, 2, steps(backSkirt(), Options{}), "trace, hem")
	assert.Equal(t, 3, steps(backSkirt(), Options{Shorter: 20, BackPleat: 20}), "trace, pleat, hem")
}

// An interfacing ends at the seam line, or its allowances are narrower, never
// below none; an odd one of a pair is no pair.
func TestInterface(t *testing.T) {
	shell := backSkirt()
	shell.Edges[0].Allowance, shell.Edges[1].Allowance = 15, 3
	got, sheet, err := Interface(shell, Interfacing{})
	require.NoError(t, err)
	assert.Equal(t, "back skirt interfacing", got.Name)
	assert.Equal(t, pieces.Interfacing, got.Kind)
	assert.Zero(t, got.Edges[0].Allowance)
	assert.Equal(t, "2 true", cutOf(got))
	assert.Len(t, sheet.Steps, 1)
	assert.InDelta(t, 15, shell.Edges[0].Allowance, 0, "the shell keeps its own")

	four, none := 4.0, 0.0
	got, _, err = Interface(shell, Interfacing{Reduce: &four, Cut: 1})
	require.NoError(t, err)
	assert.InDelta(t, 11, got.Edges[0].Allowance, 1e-9)
	assert.Zero(t, got.Edges[1].Allowance)
	assert.Equal(t, "1 false", cutOf(got))
	got, _, err = Interface(shell, Interfacing{Reduce: &none, Cut: 4})
	require.NoError(t, err)
	assert.InDelta(t, 15, got.Edges[0].Allowance, 1e-9)
	assert.Equal(t, "4 true", cutOf(got))

	less := -1.0
	_, _, err = Interface(shell, Interfacing{Reduce: &less})
	assert.ErrorContains(t, err, "interfacing: each allowance is reduced by -0.1 cm; that cannot be negative")
}

func cutOf(p pieces.Piece) string { return fmt.Sprint(p.Cut, p.Pair) }
