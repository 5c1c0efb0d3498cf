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

// sides is a piece 400 high with a straight hem on the bottom, from x = 0 to
// width, and straight sides that move outward by flare on their way down.
func sides(width, flare, hem, allowance float64) Piece {
	p := polygon([]orb.Point{{0, 0}, {width, 0}, {width - flare, 400}, {flare, 400}}, hem, allowance, 0, allowance)
	p.Edges[0].Hem = true
	return p
}

// Common practice: a hem allowance mirrors the piece above the hem line, so a
// taper of a in 400 goes on outward below it by a * 30 / 400, and a flare
// goes back inward.
func TestHemMirrorsThePieceAboveIt(t *testing.T) {
	const width = 260
	for _, flare := range []float64{-40, 40, 80} {
		in := flare * 30 / 400
		assertRing(t, []orb.Point{
			{in, -30}, {width - in, -30}, {width, 0}, {width - flare, 400}, {flare, 400}, {0, 0},
		}, cut(t, sides(width, flare, 30, 0), 0.1), 1e-9)

		// With side allowances of 15, measured square to the side, the whole
		// side lies 15 sqrt(400^2 + flare^2) / 400 further out.
		out := 15 * math.Hypot(400, flare) / 400
		assertHas(t, cut(t, sides(width, flare, 30, 15), 0.1),
			orb.Point{in - out, -30}, orb.Point{width - in + out, -30}, orb.Point{-out, 0}, orb.Point{width + out, 0})
	}
	assertRing(t, []orb.Point{{0, -30}, {width, -30}, {width, 400}, {0, 400}}, cut(t, sides(width, 0, 30, 0), 0.1),
		1e-9)
	assertRing(t, []orb.Point{{-15, -30}, {width + 15, -30}, {width + 15, 400}, {-15, 400}},
		cut(t, sides(width, 0, 30, 15), 0.1), 1e-9)
}

func assertHas(t *testing.T, ring orb.Ring, points ...orb.Point) {
	t.Helper()
	for _, p := range points {
		least := math.Inf(1)
		for _, q := range ring {
			least = math.Min(least, geometry.Distance(p, q))
		}
		assert.Less(t, least, 1e-9, "%v should be a corner of %v", p, ring)
	}
}

// span is the width of a ring at the height y: the least and largest x.
func span(ring orb.Ring, y float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for i := 0; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		if (a[1] > y) != (b[1] > y) {
			x := a[0] + (b[0]-a[0])*(y-a[1])/(b[1]-a[1])
			low, high = math.Min(low, x), math.Max(high, x)
		}
	}
	return low, high
}

// The mirror image itself: at every depth below the hem line the outline is as
// wide as at that height above it, with curved sides of any lean.
func TestHemFoldsUpFlush(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lean := func(name string) float64 { return rapid.Float64Range(-60, 60).Draw(t, name) }
		p := sides(200, 0, rapid.Float64Range(5, 60).Draw(t, "hem"),
			rapid.SampledFrom([]float64{0, 10, 25}).Draw(t, "allowance"))
		p.Edges[1].Path = Path{Bezier{orb.Point{200, 0}, orb.Point{200 + lean("a"), 100},
			orb.Point{200 + lean("b"), 250}, orb.Point{200, 400}}}
		p.Edges[3].Path = Path{Bezier{orb.Point{0, 400}, orb.Point{lean("c"), 250}, orb.Point{lean("d"), 100},
			orb.Point{0, 0}}}
		require.NoError(t, p.Check())
		ring, err := p.CuttingOutline(0.1)
		require.NoError(t, err)
		depth := p.Edges[0].Allowance
		assert.InDelta(t, -depth, ring.Bound().Min[1], 1e-9)
		for _, share := range []float64{0.05, 0.3, 0.6, 0.95} {
			lowUp, highUp := span(ring, share*depth)
			lowDown, highDown := span(ring, -share*depth)
			assert.InDelta(t, lowUp, lowDown, 0.2, "left, at %v of the depth", share)
			assert.InDelta(t, highUp, highDown, 0.2, "right, at %v of the depth", share)
		}
		_, _, _, meets := selfIntersection(ring)
		assert.False(t, meets, "the outline is simple")
	})
}

func TestHemAtOtherCorners(t *testing.T) {
	t.Run("between two hems the corner is mitred", func(t *testing.T) {
		p := polygon([]orb.Point{{0, 0}, {200, 0}, {200, 300}, {0, 300}}, 30)
		for i := range p.Edges {
			p.Edges[i].Hem = true
		}
		assertRing(t, []orb.Point{{-30, -30}, {230, -30}, {230, 330}, {-30, 330}}, cut(t, p, 0.1), 1e-9)
	})
	t.Run("a side that leaves the hem too flat is mitred", func(t *testing.T) {
		// The sides rise 1 in 10: 30 up is 300 along, over twice the depth.
		p := polygon([]orb.Point{{0, 0}, {100, 0}, {1100, 100}, {-1000, 100}}, 30, 0, 0, 0)
		p.Edges[0].Hem = true
		ordinary := p
		ordinary.Edges = append([]Edge(nil), p.Edges...)
		ordinary.Edges[0].Hem = false
		assert.Equal(t, cut(t, ordinary, 0.1), cut(t, p, 0.1))
	})
	t.Run("a hem too narrow for its depth ends in a point", func(t *testing.T) {
		// Sides at 45 degrees: mirrored, they meet 50 below a hem of 100.
		p := polygon([]orb.Point{{0, 0}, {100, 0}, {60, 40}, {40, 40}}, 80, 0, 0, 0)
		p.Edges[0].Hem = true
		assertHas(t, cut(t, p, 0.1), orb.Point{50, -50})
		assert.InDelta(t, -50, cut(t, p, 0.1).Bound().Min[1], 1e-9)
	})
	t.Run("at the fold it ends on the fold line", func(t *testing.T) {
		// half(): hem 40 along y = 0; side from (220, 0) to (200, 500), so it
		// goes 1.6 inward over the depth; allowance 15 square to it.
		out := 15 * math.Hypot(20, 500) / 500
		assertRing(t, []orb.Point{
			{0, -40}, {220 - 1.6 + out, -40}, {220 + out, 0},
			// The side's line x = 220 + out - y / 25 at y = 510.
			{220 + out - 510.0/25, 510}, {0, 510},
		}, cut(t, half(), 0.1), 1e-9)
	})
	t.Run("of a curved hem the mirror is the tangent", func(t *testing.T) {
		// A quarter of a circle skirt: radii 100 and 700, hem 20.
		p := Piece{Name: "quarter", Cut: 1, Grain: Grain{From: orb.Point{200, 200}, To: orb.Point{300, 300}},
			Edges: []Edge{
				{Name: seams.Hem, Path: Path{Arc{Radius: 700, Sweep: math.Pi / 2}}, Allowance: 20, Hem: true},
				{Name: seams.SideSeam.Stretch(1), Path: Path{Line{orb.Point{0, 700}, orb.Point{0, 100}}},
					Allowance: 15},
				{Name: seams.Waist, Path: Path{Arc{Radius: 100, Begin: math.Pi / 2, Sweep: -math.Pi / 2}},
					Allowance: 10},
				{Name: seams.SideSeam.Stretch(2), Path: Path{Line{orb.Point{100, 0}, orb.Point{700, 0}}},
					Allowance: 15},
			}}
		require.NoError(t, p.Check())
		got := cut(t, p, 0.1)
		assertHas(t, got, orb.Point{720, -15}, orb.Point{-15, 720})
		for _, q := range got {
			if q[0] > 0 && q[1] > 0 && geometry.Norm(q) > 300 {
				assert.InDelta(t, 720, geometry.Norm(q), 0.1)
			}
		}
		// Waist 10 mm inside a circle of 100, seen from its other side.
		assertHas(t, got, orb.Point{90, -15}, orb.Point{-15, 90})
	})
}
