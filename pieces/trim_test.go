package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

func included(p Piece, widths ...float64) Piece {
	for i := range p.Edges {
		p.Edges[i].Included = widths[i%len(widths)]
	}
	return p
}

// A rectangle whose cutting line includes another width on each side.
func TestAtSeamOfARectangle(t *testing.T) {
	p := included(Rectangle("panel", 200, 300), 40, 15, 10, 0)
	p.Notches = []Notch{{Edge: seams.Right, At: 120, Count: 1}}
	seam, err := p.AtSeam()
	require.NoError(t, err)
	assertSame(t, orb.Ring{{0, 40}, {185, 40}, {185, 290}, {0, 290}, {0, 40}}, seam.Boundary(0.1))
	assert.InDelta(t, 80, seam.Notches[0].At, 1e-9)
	assert.Equal(t, []float64{40, 15, 10, 0}, []float64{seam.Edges[0].Allowance, seam.Edges[1].Allowance,
		seam.Edges[2].Allowance, seam.Edges[3].Allowance})
	require.NoError(t, seam.Check())
	cut, err := seam.CuttingOutline(0.1)
	require.NoError(t, err)
	assert.InDelta(t, 200*300, geometry.Area(cut), 1e-6, "the seam's allowances lead back to the cutting line")
	assertSame(t, seam.Boundary(0.1), p.SeamOutline(0.1))
	kept, err := p.CuttingOutline(0.1)
	require.NoError(t, err)
	assert.InDelta(t, 200*300, geometry.Area(kept), 1e-6)
	assert.Equal(t, 40., p.Edges[0].Included, "the piece that was given stays")
}

func assertSame(t *testing.T, want, got orb.Ring) {
	t.Helper()
	require.Len(t, got, len(want))
	for i, q := range want {
		assert.InDelta(t, 0, geometry.Distance(q, got[i]), 1e-9, "%v for %v", got[i], q)
	}
}

// Of what is not known nothing is derived.
func TestAtSeamLeavesTheUnknown(t *testing.T) {
	p := Rectangle("panel", 200, 300)
	p.Edges[1].Unknown, p.Edges[3].Included = true, 15
	seam, err := p.AtSeam()
	require.NoError(t, err)
	box := seam.Boundary(0.1).Bound()
	assert.InDelta(t, 15, box.Min[0], 1e-9)
	assert.InDelta(t, 200, box.Max[0], 1e-9)
	assert.True(t, seam.Edges[1].Unknown)
}

func TestTrimmedToNothing(t *testing.T) {
	_, err := included(Rectangle("strap", 20, 300), 0, 12, 0, 12).AtSeam()
	assertRefused(t, Fault{Of: NothingInside, Piece: "strap", Edge: seams.Bottom}, err)
	_, ok := Piece{Name: "speck", Edges: Rectangle("speck", 3, 3).Edges, Accuracy: 2}.AtLeast()
	assert.False(t, ok)
}

// Seam lines of curved pieces, led out by their allowances and in again.
func TestTrimmedKeepsItsDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(from, to float64, name string) float64 { return rapid.Float64Range(from, to).Draw(t, name) }
		p := curvedPiece(number(200, 600, "width"), number(200, 700, "height"), number(-30, 60, "bulge"),
			number(-60, 60, "hollow"))
		require.NoError(t, p.Check())
		width := number(2, 20, "allowance")
		for i := range p.Edges {
			p.Edges[i].Included = width
		}
		seam, err := p.AtSeam()
		require.NoError(t, err)
		require.NoError(t, seam.Check())
		line := p.Boundary(0.005)
		for _, q := range seam.Boundary(0.01) {
			assert.True(t, geometry.Inside(line, q))
			off := math.Inf(1)
			for i := 1; i < len(line); i++ {
				off = math.Min(off, geometry.SegmentDistance(q, line[i-1], line[i]))
			}
			assert.GreaterOrEqual(t, off, width-0.03)
		}
	})
}

// curvedPiece is a half with a bulging side and a hollow top, the fold on the left.
func curvedPiece(width, height, bulge, hollow float64) Piece {
	corners := []orb.Point{{0, 0}, {width, 0}, {width, height}, {0, height}}
	p := Rectangle("curved", width, height)
	p.Edges[1].Path = Path{Bezier{corners[1], orb.Point{width + bulge, height / 3},
		orb.Point{width + bulge, 2 * height / 3}, corners[2]}}
	p.Edges[2].Path = Path{Bezier{corners[2], orb.Point{2 * width / 3, height - hollow},
		orb.Point{width / 3, height - hollow}, corners[3]}}
	return p
}

func TestAccuracy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(from, to float64, name string) float64 { return rapid.Float64Range(from, to).Draw(t, name) }
		p := curvedPiece(number(200, 600, "width"), number(200, 700, "height"), number(-30, 60, "bulge"),
			number(-60, 60, "hollow"))
		p.Fold, p.Accuracy = seams.Left, number(0.5, 3, "accuracy")
		for i := range p.Edges[:3] {
			p.Edges[i].Allowance = rapid.SampledFrom([]float64{0, 1, 10, 20}).Draw(t, "allowance")
		}
		least, ok := p.AtLeast()
		require.True(t, ok)
		small, err := least.CuttingOutline(0.01)
		require.NoError(t, err)
		given, err := p.CuttingOutline(0.001)
		require.NoError(t, err)
		large, err := p.AtMost().CuttingOutline(0.01)
		require.NoError(t, err)
		for _, q := range small {
			assert.True(t, geometry.Inside(given, q) || geometry.IsOn(given, q, 1e-6), "%v", q)
			assert.True(t, q[0] < 1e-6 || farFrom(given, q) > p.Accuracy-0.001, "%v lies %v inside", q,
				farFrom(given, q))
		}
		for _, q := range given {
			assert.True(t, geometry.Inside(large, q) || geometry.IsOn(large, q, 1e-6), "%v", q)
		}
	})
}

// farFrom a line, but for the stretch of it on the fold.
func farFrom(line orb.Ring, q orb.Point) float64 {
	off := math.Inf(1)
	for i := 1; i < len(line); i++ {
		if line[i-1][0] > 1e-6 || line[i][0] > 1e-6 {
			off = math.Min(off, geometry.SegmentDistance(q, line[i-1], line[i]))
		}
	}
	return off
}

// A line of many bends tighter than its allowance is trimmed in few passes.
func BenchmarkAtSeam(b *testing.B) {
	p := Piece{Name: "star", Cut: 1}
	var path Path
	const n = 2000
	at := func(i int) orb.Point {
		sin, cos := math.Sincos(2 * math.Pi * float64(i%n) / n)
		reach := 500 + 8*math.Cos(100*2*math.Pi*float64(i%n)/n)
		return orb.Point{reach * cos, reach * sin}
	}
	for i := range n {
		path = append(path, Line{at(i), at(i + 1)})
	}
	p.Edges = []Edge{{Name: seams.Edge, Path: path, Included: 15}}
	for b.Loop() {
		seam, err := p.AtSeam()
		require.NoError(b, err)
		box := seam.Boundary(1).Bound()
		require.InDelta(b, 980, box.Max[0]-box.Min[0], 20)
	}
}
