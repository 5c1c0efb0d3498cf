package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// half is a sound piece cut on the fold: a front skirt of 200 x 500 with a
// waist dart, notches and marks.
func half() Piece {
	line := func(x0, y0, x1, y1 float64) Path {
		return Path{Line{orb.Point{x0, y0}, orb.Point{x1, y1}}}
	}
	return Piece{
		Name: "front skirt", Garment: "skirt", Cut: 1, Fold: seams.CentreFront,
		Edges: []Edge{
			{Name: seams.Hem, Path: line(0, 0, 220, 0), Allowance: 40, Hem: true},
			{Name: seams.SideSeam, Path: line(220, 0, 200, 500), Allowance: 15},
			{Name: seams.Waist.Stretch(2), Path: line(200, 500, 120, 500), Allowance: 10},
			{Name: seams.Called("mouth"), Path: line(120, 500, 100, 500), Allowance: 10},
			{Name: seams.Waist.Stretch(1), Path: line(100, 500, 0, 500), Allowance: 10},
			{Name: seams.CentreFront, Path: line(0, 500, 0, 0)},
		},
		Grain: Grain{From: orb.Point{50, 100}, To: orb.Point{50, 400}},
		Notches: []Notch{{Edge: seams.SideSeam, At: 300, Count: 1, Match: marks.Hip},
			{Edge: seams.Hem, At: 30, Count: 1}, {Edge: seams.Waist.Stretch(1), At: 100, Count: 1}},
		Darts: []Dart{{Name: seams.Waist.Dart(0), Mouth: seams.Called("mouth"), Start: orb.Point{120, 500},
			Apex: orb.Point{110, 400}, End: orb.Point{100, 500}}},
		Marks: []Mark{{Name: marks.HipLine, Path: line(0, 300, 208, 300)},
			{Name: marks.Called("centre"), Path: line(0, 100, 0, 200)},
			{Name: marks.Called("pocket"), At: orb.Point{150, 400}}},
	}
}

func TestCheckAcceptsSoundPieces(t *testing.T) {
	assert.NoError(t, half().Check())
	assert.NoError(t, half().Mirrored().Check())
	assert.NoError(t, half().Unfolded().Check())
	assert.NoError(t, half().Map(Turn(33).Then(Move(1e4, -20))).Check())
	assert.NoError(t, Rectangle("cuff", 240, 80).Check())
	round := Piece{Name: "disc", Cut: 1, Grain: Grain{To: orb.Point{0, 9}},
		Edges: []Edge{{Name: seams.Called("rim"), Path: Path{Arc{Radius: 50, Sweep: 2 * math.Pi}}}}}
	assert.NoError(t, round.Check())
}

func TestCheckRefuses(t *testing.T) {
	cases := map[string]struct {
		change func(*Piece)
		want   string
	}{
		"rule 1, name": {func(p *Piece) { p.Name = "" }, "piece without a name: give it a name"},
		"rule 2, no edges": {func(p *Piece) { *p = Piece{Name: "x", Cut: 1, Grain: p.Grain} },
			"x: it has no edges; draw its seam line"},
		"rule 2, empty path": {func(p *Piece) { p.Edges[1].Path = nil },
			`front skirt: edge "side" has no usable line; give it a length`},
		"rule 2, not a number": {func(p *Piece) {
			p.Edges[1].Path = Path{Line{orb.Point{220, 0},
				orb.Point{math.NaN(), 500}}}
		}, `front skirt: edge "side" has no usable line; give it a length`},
		"rule 2, no radius": {func(p *Piece) { p.Edges[1].Path = Path{Arc{Radius: -5, Sweep: 1}} },
			`front skirt: edge "side" has no usable line; give it a length`},
		"rule 2, nil curve": {func(p *Piece) { p.Edges[1].Path = Path{nil} },
			`front skirt: edge "side" has no usable line; give it a length`},
		"rule 3, no name": {func(p *Piece) { p.Edges[1].Name, p.Notches = seams.None, nil },
			"front skirt: edge 2 has no name"},
		"rule 3, name twice": {func(p *Piece) { p.Edges[4].Name = seams.Waist.Stretch(2); p.Notches = nil },
			`front skirt: two edges are named "waist 2"; every edge needs a name of its own`},
		"rule 4, gap": {func(p *Piece) { p.Edges[1].Path = Path{Line{orb.Point{223, 4}, orb.Point{200, 500}}} },
			`front skirt: edge "side" begins 5 mm away from where edge "hem" ends; the edges must chain up to a closed outline`},
		"rule 4, gap at the end": {func(p *Piece) { p.Edges, p.Fold, p.Darts = p.Edges[:5], seams.None, nil },
			`front skirt: edge "hem" begins 500 mm away from where edge "waist 1" ends; the edges must chain up to a closed outline`},
		"rule 4, broken edge": {func(p *Piece) {
			p.Edges[1].Path = Path{Line{orb.Point{220, 0}, orb.Point{210, 250}},
				Line{orb.Point{212, 250}, orb.Point{200, 500}}}
		}, `front skirt: edge "side" is broken: part 2 begins 2 mm away from where part 1 ends`},
		"rule 5, bow-tie": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {100, 100}, {100, 0}, {0, 100}}, 0) },
			`test: the outline crosses or touches itself near (50, 50) mm, between edge "0" and edge "2"`},
		"rule 5, bow-tie at a corner": {func(p *Piece) {
			*p = polygon([]orb.Point{{0, 0}, {50, 50}, {100, 0}, {100, 100}, {50, 50}, {0, 100}}, 0)
		}, "test: the outline crosses or touches itself near (50, 50) mm"},
		"rule 5, spike": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {200, 0}, {100, 0}, {100, 100}}, 0) },
			`test: the outline crosses or touches itself near (200, 0) mm, between edge "0" and edge "1"`},
		"rule 5, spike where the outline begins": {func(p *Piece) {
			*p = polygon([]orb.Point{{200, 0}, {100, 0},
				{100, 100}, {0, 0}}, 0)
		},
			`test: the outline crosses or touches itself near (200, 0) mm, between edge "0" and edge "3"`},
		"rule 5, looped curve": {func(p *Piece) {
			p.Edges[1].Path = Path{Bezier{orb.Point{220, 0}, orb.Point{720, 1500}, orb.Point{720, -1000},
				orb.Point{200, 500}}}
		}, "front skirt: the outline crosses or touches itself near"},
		"rule 6, clockwise": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {0, 100}, {100, 100}, {100, 0}}, 0) },
			"test: the outline runs clockwise; list the edges counter-clockwise, or mirror the piece"},
		"rule 6, no area": {func(p *Piece) {
			*p = polygon([]orb.Point{{0, 0}, {0.5, 0}, {0.5, 0.5}, {0, 0.5}},
				0)
		}, "test: the outline encloses no area"},
		"rule 7, no grain": {func(p *Piece) { p.Grain = Grain{} },
			"front skirt: it has no grainline; draw one with its upper end where the top of the piece is"},
		"rule 7, unknown lie": {func(p *Piece) { p.Grain.Lie = 7 }, "front skirt: its grain is neither straight, " +
			"cross nor bias"},
		"rule 8, allowance": {func(p *Piece) { p.Edges[0].Allowance = -20 },
			`front skirt: the seam allowance on "hem" is -2 cm; it cannot be negative`},
		"rule 8, not a number": {func(p *Piece) { p.Edges[0].Allowance = math.Inf(1) },
			`front skirt: the seam allowance on "hem" is not a number`},
		"rule 9, count": {func(p *Piece) { p.Cut = 0 },
			"front skirt: the cut count is 0; it must be 1 or more"},
		"rule 9, odd pair": {func(p *Piece) { p.Cut, p.Pair = 3, true },
			"front skirt: the cut count is 3, but a pair needs an even one: one right and one left, or several"},
		"rule 10, no such edge": {func(p *Piece) { p.Fold = seams.Called("middle") },
			`front skirt: the fold edge "middle" is not an edge of it`},
		"rule 10, bent": {func(p *Piece) {
			p.Edges[5].Path = Path{Line{orb.Point{0, 500}, orb.Point{1, 200}}, Line{orb.Point{1, 200}, orb.Point{0, 0}}}
		}, `front skirt: the fold edge "centre front" is not straight`},
		"rule 10, has allowance": {func(p *Piece) { p.Edges[5].Allowance = 15 },
			`front skirt: the fold edge "centre front" is not cut, so it has no seam allowance; set it to 0`},
		"rule 10, across": {func(p *Piece) {
			p.Edges[4].Path = Path{Line{orb.Point{100, 500}, orb.Point{-30, 600}},
				Line{orb.Point{-30, 600}, orb.Point{0, 500}}}
		}, `front skirt: it reaches 30 mm across its fold edge "centre front"; a half must lie on one side of its fold`},
		"rule 11, no such edge": {func(p *Piece) { p.Notches[0].Edge = seams.Called("sleeve") },
			`front skirt: a notch is on the edge "sleeve", which it does not have`},
		"rule 11, off its edge": {func(p *Piece) { p.Notches[1].At = 221 },
			`front skirt: the notch at 221 mm lies off the edge "hem", which is 220 mm long`},
		"rule 11, before it": {func(p *Piece) { p.Notches[1].At = -1 },
			`front skirt: the notch at -1 mm lies off the edge "hem", which is 220 mm long`},
		"rule 11, no strokes": {func(p *Piece) { p.Notches[1].Count = 0 },
			`front skirt: the notch at 30 mm on the edge "hem" has 0 strokes; it needs 1 or 2`},
		"rule 12, no mouth": {func(p *Piece) { p.Darts[0].Mouth = seams.Waist },
			`front skirt: the mouth of the dart "waist dart" is the edge "waist", which it does not have`},
		"rule 12, legs": {func(p *Piece) { p.Darts[0].Start = orb.Point{121, 500} },
			`front skirt: the legs of the dart "waist dart" do not meet the ends of its mouth "mouth"`},
		"rule 12, apex outside": {func(p *Piece) { p.Darts[0].Apex = orb.Point{110, 600} },
			`front skirt: the dart "waist dart" reaches outside the piece at (110, 600) mm`},
		"rule 12, apex on edge": {func(p *Piece) { p.Darts[0].Apex = orb.Point{60, 500} },
			`front skirt: the apex of the dart "waist dart" must lie inside the piece`},
		"rule 12, flat dart": {func(p *Piece) { p.Darts[0].Mouth, p.Darts[0].OtherApex = seams.None, p.Darts[0].Apex },
			`front skirt: the dart "waist dart" has both its ends in one place`},
		"rule 13, mark": {func(p *Piece) { p.Marks[2].At[0] = math.Inf(-1) },
			`front skirt: the mark "pocket" has no usable place`},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := half()
			c.change(&p)
			assert.ErrorContains(t, p.Check(), c.want)
		})
	}
}

func TestCheckJoinsAllFaults(t *testing.T) {
	p := half()
	p.Cut, p.Grain, p.Edges[0].Allowance = 0, Grain{}, -1
	err := p.Check()
	for _, want := range []string{"cut count", "grainline", "seam allowance"} {
		assert.ErrorContains(t, err, want)
	}
}
