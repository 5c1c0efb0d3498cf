package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// polygon is a test piece with straight edges named "0", "1", ... and those
// allowances.
func polygon(corners []orb.Point, allowances ...float64) Piece {
	p := Piece{Name: "test", Cut: 1, Grain: Grain{To: orb.Point{0, 100}}}
	for i, c := range corners {
		p.Edges = append(p.Edges, Edge{
			Name:      seams.Called(string(rune('0' + i))),
			Path:      Path{Line{c, corners[(i+1)%len(corners)]}},
			Allowance: allowances[i%len(allowances)],
		})
	}
	return p
}

// assertRing compares rings that may begin anywhere.
func assertRing(t *testing.T, want []orb.Point, got orb.Ring, tolerance float64) {
	t.Helper()
	require.Len(t, got, len(want)+1, "points: %v", got)
	require.Equal(t, got[0], got[len(got)-1], "the ring is closed")
	for shift := range want {
		far := 0.0
		for i, w := range want {
			far = math.Max(far, geometry.Distance(w, got[(i+shift)%len(want)]))
		}
		if far <= tolerance {
			return
		}
	}
	assert.Failf(t, "rings differ", "want %v\ngot  %v", want, got)
}

func cut(t *testing.T, p Piece, tolerance float64) orb.Ring {
	t.Helper()
	ring, err := p.CuttingOutline(tolerance)
	require.NoError(t, err)
	return ring
}

func TestCuttingOutlineOfAnLShape(t *testing.T) {
	// Six widths, by hand:
	//
	//	 40├──4──┐           5 left, 1 up at the top left, and so on: every
	//	   5     3           cutting line is its seam line moved out by its
	//	 20│     └──2──┐     width, and they meet at every corner.
	//	   │           1
	//	  0└─────0─────┘
	//	   0    20    60
	corners := []orb.Point{{0, 0}, {60, 0}, {60, 20}, {20, 20}, {20, 40}, {0, 40}}
	p := polygon(corners, 10, 15, 6, 8, 12, 20)
	want := []orb.Point{{-20, -10}, {75, -10}, {75, 26}, {28, 26}, {28, 52}, {-20, 52}}
	assertRing(t, want, cut(t, p, 0.1), 1e-9)
}

func TestCuttingOutlineCorners(t *testing.T) {
	root3 := math.Sqrt(3)
	square := []orb.Point{{0, 0}, {100, 0}, {100, 100}, {0, 100}}
	cases := map[string]struct {
		corners    []orb.Point
		allowances []float64
		want       []orb.Point
	}{
		"no allowance": {square, []float64{0}, square},
		"one edge only, its ends square": {
			square, []float64{10, 0, 0, 0},
			[]orb.Point{{0, 100}, {0, -10}, {100, -10}, {100, 100}},
		},
		"a corner of 60 degrees has the longest whole mitre, twice the width": {
			[]orb.Point{{0, 0}, {100, 0}, {50, 50 * root3}}, []float64{10},
			[]orb.Point{{-10 * root3, -10}, {100 + 10*root3, -10}, {50, 50*root3 + 20}},
		},
		// Sides 3, 4, 5. At (0, 0) the mitre is at (-30, -10), 31.6 off; it is
		// cut back to 20 along 3 x + y = -20 sqrt 10, which meets y = -10 at
		// x = -(20 sqrt 10 - 10) / 3. At (400, 300) it is 22.4 off, at (10,
		// 20) from the corner; the cut x + 2 y = 20 sqrt 5 meets x = 10 at y =
		// (20 sqrt 5 - 10) / 2. The other points mirror these in the bisectors.
		"sharp mitres are cut back square": {
			[]orb.Point{{0, 0}, {400, 0}, {400, 300}}, []float64{10},
			[]orb.Point{
				{-(20*math.Sqrt(10) - 10) / 3, -10}, {410, -10},
				{410, 300 + (20*math.Sqrt(5)-10)/2},
				MirrorAbout(orb.Point{400, 300},
					orb.Point{401, 302}).Apply(orb.Point{410, 300 + (20*math.Sqrt(5)-10)/2}),
				MirrorAbout(orb.Point{}, orb.Point{3, 1}).Apply(orb.Point{-(20*math.Sqrt(10) - 10) / 3, -10}),
			},
		},
		// A turn of atan(3/4): the wide allowance (20) ends square to its own
		// edge, along (0, -1) from (100, 0); the narrow one (4) comes up to it.
		"a wide and a narrow allowance at a slight turn: square step": {
			[]orb.Point{{0, 0}, {100, 0}, {180, 60}, {0, 60}}, []float64{20, 4, 0, 0},
			[]orb.Point{
				{0, 60}, {0, -20}, {100, -20}, {100, -5},
				// Foot of the narrow allowance at (180, 60): 4 along (0.6, -0.8).
				// Its neighbour has none and turns by more than a right
				// angle, so its line runs on to meet it: 4 / 0.6 beyond.
				{180 + 4/0.6, 60},
			},
		},
		"an inward corner stops both lines where they meet": {
			[]orb.Point{{0, 0}, {100, 0}, {100, 100}, {50, 50}, {0, 100}}, []float64{0, 0, 10, 10, 0},
			[]orb.Point{
				{0, 0}, {100, 0}, {100, 100 + 10*math.Sqrt2}, {50, 50 + 10*math.Sqrt2}, {0, 100 + 10*math.Sqrt2},
			},
		},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := polygon(c.corners, c.allowances...)
			require.NoError(t, p.Check())
			assertRing(t, c.want, cut(t, p, 0.1), 1e-9)
		})
	}
}
