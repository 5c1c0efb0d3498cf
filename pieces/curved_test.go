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

// bodice is a half front: a straight waist and side, a hollow armhole, a
// slanted shoulder and a hollow neck, with usual allowances (domain: seams 15,
// armhole and neck 10, hem 30).
func bodice() Piece {
	line := func(x0, y0, x1, y1 float64) Path {
		return Path{Line{orb.Point{x0, y0}, orb.Point{x1, y1}}}
	}
	return Piece{Name: "front", Cut: 1, Fold: seams.CentreFront,
		Grain: Grain{From: orb.Point{30, 60}, To: orb.Point{30, 330}}, Edges: []Edge{
			{Name: seams.Waist, Path: line(0, 0, 240, 0), Allowance: 30, Hem: true},
			{Name: seams.SideSeam, Path: line(240, 0, 250, 220), Allowance: 15},
			{Name: seams.Armhole, Path: Path{Bezier{orb.Point{250, 220}, orb.Point{180, 220}, orb.Point{170, 280},
				orb.Point{190, 400}}}, Allowance: 10},
			{Name: seams.Shoulder, Path: line(190, 400, 70, 440), Allowance: 15},
			{Name: seams.Neck, Path: Path{Arc{Centre: orb.Point{0, 440}, Radius: 70, Sweep: -math.Pi / 2}},
				Allowance: 10},
			{Name: seams.CentreFront, Path: line(0, 370, 0, 0)},
		}}
}

// Steiner's formula: the parallel of a convex outline of area A and girth L at
// distance w encloses A + L w + pi w^2, its corners rounded; the outline here
// has none. Two half circles of radius r joined by straight lines of length s.
func TestCuttingOutlineOfAStadium(t *testing.T) {
	stadium(t, 60, 150, 15)
	stadium(t, 5, 150, 40)
}

func stadium(t *testing.T, r, s, w float64) {
	p := Piece{Name: "stadium", Cut: 1, Grain: Grain{To: orb.Point{0, 9}}, Edges: []Edge{
		{Name: seams.Bottom, Path: Path{Line{orb.Point{0, -r}, orb.Point{s, -r}}}, Allowance: w},
		{Name: seams.Right, Path: Path{Arc{orb.Point{s, 0}, r, -math.Pi / 2, math.Pi}}, Allowance: w},
		{Name: seams.Top, Path: Path{Line{orb.Point{s, r}, orb.Point{0, r}}}, Allowance: w},
		{Name: seams.Left, Path: Path{Arc{orb.Point{0, 0}, r, math.Pi / 2, math.Pi}}, Allowance: w},
	}}
	require.NoError(t, p.Check())
	for _, tolerance := range []float64{0.5, 0.1, 0.01} {
		ring := cut(t, p, tolerance)
		girth := 2*s + 2*math.Pi*r
		assert.InDelta(t, math.Pi*r*r+2*r*s+girth*w+math.Pi*w*w, geometry.Area(ring), tolerance*(girth+2*math.Pi*w))
		for _, q := range ring {
			centre := orb.Point{math.Max(0, math.Min(s, q[0])), 0}
			assert.InDelta(t, r+w, geometry.Distance(centre, q), tolerance, "each point at its distance")
		}
	}
}

// Hollow curves: the cutting line of a circular hollow of radius R is a circle
// of radius R - w, whichever width and however fine.
func TestCuttingOutlineOfAHollow(t *testing.T) {
	for _, w := range []float64{5, 10, 30} {
		p := polygon([]orb.Point{{0, 0}, {300, 0}, {300, 200}, {0, 200}}, 10)
		// A half circle of radius 60 bitten out of the top.
		p.Edges[2].Path = Path{Line{orb.Point{300, 200}, orb.Point{210, 200}}}
		p.Edges[2].Name = seams.Called("top right")
		bite := Edge{Name: seams.Called("bite"), Path: Path{Arc{orb.Point{150, 200}, 60, 0, -math.Pi}}, Allowance: w}
		rest := Edge{Name: seams.Called("top left"), Path: Path{Line{orb.Point{90, 200}, orb.Point{0, 200}}},
			Allowance: 10}
		p.Edges = append(p.Edges[:3], bite, rest, p.Edges[3])
		require.NoError(t, p.Check())
		ring := cut(t, p, 0.1)
		onCircle := 0
		for _, q := range ring {
			if d := geometry.Distance(q, orb.Point{150, 200}); q[1] < 200 && d < 70 {
				assert.InDelta(t, 60-w, d, 0.1)
				onCircle++
			}
		}
		assert.Greater(t, onCircle, 8)
	}
	// Wider than the radius, the allowance fills the hollow from all sides.
	p := polygon([]orb.Point{{0, 0}, {300, 0}, {300, 200}, {0, 200}}, 80)
	p.Edges[2].Path = Path{
		Line{orb.Point{300, 200}, orb.Point{210, 200}}, Arc{orb.Point{150, 200}, 60, 0,
			-math.Pi}, Line{orb.Point{90, 200}, orb.Point{0, 200}},
	}
	require.NoError(t, p.Check())
	ring := cut(t, p, 0.1)
	low, high := span(ring, 279.9)
	assert.InDelta(t, -80, low, 1e-6)
	assert.InDelta(t, 380, high, 1e-6)
	assert.InDelta(t, 460*360, geometry.Area(ring), 80*80*2, "closed but for a dip above the hollow")
	assertFullAllowance(t, p, ring, 0.1)
}

// isNear reports whether a point lies in a ring or within the tolerance of it.
func isNear(ring orb.Ring, q orb.Point, tolerance float64) bool {
	if geometry.Inside(ring, q) || isOn(ring, q) {
		return true
	}
	for i := 0; i+1 < len(ring); i++ {
		if geometry.SegmentDistance(q, ring[i], ring[i+1]) <= tolerance {
			return true
		}
	}
	return false
}

// assertFullAllowance walks along every edge and requires that the outline
// lies no nearer than the allowance, square to the seam line.
func assertFullAllowance(t require.TestingT, p Piece, ring orb.Ring, tolerance float64) {
	for _, e := range p.Edges {
		if e.Allowance == 0 {
			continue
		}
		length := e.Path.Length()
		for i := range 41 {
			at := length * float64(i) / 40
			q := geometry.Add(e.Path.At(at), geometry.Times(geometry.Right(e.Path.Tangent(at)), e.Allowance))
			assert.True(t, isNear(ring, q, tolerance), "%s, edge %s at %v: %v is not inside", p.Name, e.Name, at, q)
		}
	}
}

// A hook-shaped hollow of 5 mm radius with an allowance of 40: the allowances
// of its chords fan out beyond it, and no gap may stay between them.
func TestCuttingOutlineOfAHook(t *testing.T) {
	p := polygon([]orb.Point{{-1, -37}, {24, -20}, {387, 100}, {-100, 200}}, 40, 0, 0, 0)
	p.Edges[0].Path = Path{Bezier{orb.Point{-1, -37}, orb.Point{5.63, -30.63}, orb.Point{-12.4, 17.4},
		orb.Point{24, -20}}}
	require.NoError(t, p.Check())
	assertFullAllowance(t, p, cut(t, p, 0.1), 0.2)
}

func TestCuttingOutlineOfABodice(t *testing.T) {
	p := bodice()
	require.NoError(t, p.Check())
	ring := cut(t, p, 0.1)
	assertFullAllowance(t, p, ring, 0.1)
	_, _, _, meets := selfIntersection(ring)
	assert.False(t, meets)
	// The neck is a circle of 60 mm about (0, 440), square to the fold.
	assertHas(t, ring, orb.Point{0, 380})
	// Waist and side: the side leaves the hem by (10, 220) and lies 15 further
	// out; mirrored, it leans the same way below the hem line.
	out := 15 * math.Hypot(10, 220) / 220
	assertHas(t, ring, orb.Point{240 + out, 0}, orb.Point{240 + 30*10.0/220 + out, -30})
	// The mitre of side and armhole, from the exact tangents (10, 220) and
	// (-1, 0): y = 230, on the side's line.
	assertHas(t, ring, orb.Point{240 + out + 230*10.0/220, 230})
}

// Random outlines with a curve on every side, none hollower than its allowance:
// each keeps its full allowance, is simple and counter-clockwise.
func TestCuttingOutlineOfRandomCurves(t *testing.T) {
	checked := 0
	rapid.Check(t, func(t *rapid.T) {
		wide := rapid.SampledFrom([]float64{6, 15, 40}).Draw(t, "wide")
		p := polygon(drawPolygon(t), rapid.SampledFrom([]float64{0, 6, 15}).Draw(t, "other"), wide)
		bulge := rapid.Float64Range(-0.15, 0.15)
		for i, e := range p.Edges {
			a, b := e.Path.Start(), e.Path.End()
			length := geometry.Distance(a, b)
			if length < 4*wide {
				continue
			}
			n := geometry.Times(geometry.Right(geometry.Unit(geometry.Sub(b, a))), length)
			p.Edges[i].Path = Path{Bezier{a, geometry.Add(geometry.Between(a, b, 0.3),
				geometry.Times(n, bulge.Draw(t, "bulge"))),
				geometry.Add(geometry.Between(a, b, 0.7), geometry.Times(n, bulge.Draw(t, "bulge"))), b}}
		}
		if p.Check() != nil {
			t.Skip("not a simple outline")
		}
		checked++
		ring, err := p.CuttingOutline(0.1)
		require.NoError(t, err)
		assert.Greater(t, geometry.Area(ring), 0.0)
		assertFullAllowance(t, p, ring, 0.1)
		at, _, _, meets := selfIntersection(ring)
		assert.False(t, meets, "touches itself at %v", at)
	})
	assert.Greater(t, checked, 20)
}

func BenchmarkCuttingOutline(b *testing.B) {
	for name, p := range map[string]Piece{"piece=bodice": bodice(), "piece=skirt": half(),
		"piece=rectangle": Rectangle("cuff", 240, 80)} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if ring, err := p.CuttingOutline(0.1); err != nil || len(ring) < 5 {
					b.Fatal(err, len(ring))
				}
			}
		})
	}
	b.Run("piece=bodice fine", func(b *testing.B) {
		p := bodice()
		for b.Loop() {
			if ring, err := p.CuttingOutline(0.01); err != nil || len(ring) < 50 {
				b.Fatal(err, len(ring))
			}
		}
	})
}

func BenchmarkCheck(b *testing.B) {
	p := bodice()
	for b.Loop() {
		if err := p.Check(); err != nil {
			b.Fatal(err)
		}
	}
}
