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
		want   Fault
	}{
		"rule 1, name": {func(p *Piece) { p.Name = "" }, Fault{Of: NoName}},
		"rule 2, no edges": {func(p *Piece) { *p = Piece{Name: "x", Cut: 1, Grain: p.Grain} },
			Fault{Of: NoEdges, Piece: "x"}},
		"rule 2, empty path": {func(p *Piece) { p.Edges[1].Path = nil },
			Fault{Of: NoLine, Edge: seams.SideSeam, Piece: "front skirt"}},
		"rule 2, not a number": {func(p *Piece) {
			p.Edges[1].Path = Path{Line{orb.Point{220, 0}, orb.Point{math.NaN(), 500}}}
		}, Fault{Of: NoLine, Edge: seams.SideSeam, Piece: "front skirt"}},
		"rule 2, no radius": {func(p *Piece) { p.Edges[1].Path = Path{Arc{Radius: -5, Sweep: 1}} },
			Fault{Of: NoLine, Edge: seams.SideSeam, Piece: "front skirt"}},
		"rule 2, nil curve": {func(p *Piece) { p.Edges[1].Path = Path{nil} },
			Fault{Of: NoLine, Edge: seams.SideSeam, Piece: "front skirt"}},
		"rule 3, no name": {func(p *Piece) { p.Edges[1].Name, p.Notches = seams.None, nil },
			Fault{Of: EdgeUnnamed, Number: 2, Piece: "front skirt"}},
		"rule 3, name twice": {func(p *Piece) { p.Edges[4].Name = seams.Waist.Stretch(2); p.Notches = nil },
			Fault{Of: EdgeNamedTwice, Edge: seams.Waist.Stretch(2), Piece: "front skirt"}},
		"rule 4, gap": {func(p *Piece) { p.Edges[1].Path = Path{Line{orb.Point{223, 4}, orb.Point{200, 500}}} },
			Fault{Of: NotChained, Edge: seams.SideSeam, Other: seams.Hem, Length: 5, Piece: "front skirt"}},
		"rule 4, gap at the end": {func(p *Piece) { p.Edges, p.Fold, p.Darts = p.Edges[:5], seams.None, nil },
			Fault{Of: NotChained, Edge: seams.Hem, Other: seams.Waist.Stretch(1), Length: 500, Piece: "front skirt"}},
		"rule 4, broken edge": {func(p *Piece) {
			p.Edges[1].Path = Path{Line{orb.Point{220, 0}, orb.Point{210, 250}},
				Line{orb.Point{212, 250}, orb.Point{200, 500}}}
		}, Fault{Of: Broken, Edge: seams.SideSeam, Number: 2, Length: 2, Piece: "front skirt"}},
		"rule 5, bow-tie": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {100, 100}, {100, 0}, {0, 100}}, 0) },
			Fault{Of: Crossed, At: orb.Point{50, 50}, Edge: seams.Called("0"), Other: seams.Called("2"), Piece: "test"}},
		"rule 5, bow-tie at a corner": {func(p *Piece) {
			*p = polygon([]orb.Point{{0, 0}, {50, 50}, {100, 0}, {100, 100}, {50, 50}, {0, 100}}, 0)
		}, Fault{Of: Crossed, At: orb.Point{50, 50}, Piece: "test"}},
		"rule 5, spike": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {200, 0}, {100, 0}, {100, 100}}, 0) },
			Fault{Of: Crossed, At: orb.Point{200, 0}, Edge: seams.Called("0"), Other: seams.Called("1"), Piece: "test"}},
		"rule 5, spike where the outline begins": {func(p *Piece) {
			*p = polygon([]orb.Point{{200, 0}, {100, 0}, {100, 100}, {0, 0}}, 0)
		}, Fault{Of: Crossed, At: orb.Point{200, 0}, Edge: seams.Called("0"), Other: seams.Called("3"), Piece: "test"}},
		"rule 5, looped curve": {func(p *Piece) {
			p.Edges[1].Path = Path{Bezier{orb.Point{220, 0}, orb.Point{720, 1500}, orb.Point{720, -1000},
				orb.Point{200, 500}}}
		}, Fault{Of: Crossed, Piece: "front skirt"}},
		"rule 6, clockwise": {func(p *Piece) { *p = polygon([]orb.Point{{0, 0}, {0, 100}, {100, 100}, {100, 0}}, 0) },
			Fault{Of: Clockwise, Piece: "test"}},
		"rule 6, no area": {func(p *Piece) {
			*p = polygon([]orb.Point{{0, 0}, {0.5, 0}, {0.5, 0.5}, {0, 0.5}}, 0)
		}, Fault{Of: NoArea, Piece: "test"}},
		"rule 7, no grain": {func(p *Piece) { p.Grain = Grain{} },
			Fault{Of: NoGrain, Piece: "front skirt"}},
		"rule 7, unknown lie": {func(p *Piece) { p.Grain.Lie = 7 }, Fault{Of: UnknownGrain, Piece: "front skirt"}},
		"rule 8, allowance": {func(p *Piece) { p.Edges[0].Allowance = -20 },
			Fault{Of: AllowanceNegative, Edge: seams.Hem, Length: -20, Piece: "front skirt"}},
		"rule 8, not a number": {func(p *Piece) { p.Edges[0].Allowance = math.Inf(1) },
			Fault{Of: AllowanceNoNumber, Edge: seams.Hem, Piece: "front skirt"}},
		"rule 9, count": {func(p *Piece) { p.Cut = 0 },
			Fault{Of: CutNone, Piece: "front skirt"}},
		"rule 9, odd pair": {func(p *Piece) { p.Cut, p.Pair = 3, true },
			Fault{Of: PairUneven, Number: 3, Piece: "front skirt"}},
		"rule 10, no such edge": {func(p *Piece) { p.Fold = seams.Called("middle") },
			Fault{Of: FoldNoEdge, Edge: seams.Called("middle"), Piece: "front skirt"}},
		"rule 10, bent": {func(p *Piece) {
			p.Edges[5].Path = Path{Line{orb.Point{0, 500}, orb.Point{1, 200}}, Line{orb.Point{1, 200}, orb.Point{0, 0}}}
		}, Fault{Of: FoldBent, Edge: seams.CentreFront, Piece: "front skirt"}},
		"rule 10, has allowance": {func(p *Piece) { p.Edges[5].Allowance = 15 },
			Fault{Of: FoldAllowance, Edge: seams.CentreFront, Piece: "front skirt"}},
		"rule 10, across": {func(p *Piece) {
			p.Edges[4].Path = Path{Line{orb.Point{100, 500}, orb.Point{-30, 600}},
				Line{orb.Point{-30, 600}, orb.Point{0, 500}}}
		}, Fault{Of: AcrossFold, Edge: seams.CentreFront, Length: 30, Piece: "front skirt"}},
		"rule 11, no such edge": {func(p *Piece) { p.Notches[0].Edge = seams.Called("sleeve") },
			Fault{Of: NotchNoEdge, Edge: seams.Called("sleeve"), Piece: "front skirt"}},
		"rule 11, off its edge": {func(p *Piece) { p.Notches[1].At = 221 },
			Fault{Of: NotchOffEdge, Edge: seams.Hem, Length: 221, Whole: 220, Piece: "front skirt"}},
		"rule 11, before it": {func(p *Piece) { p.Notches[1].At = -1 },
			Fault{Of: NotchOffEdge, Edge: seams.Hem, Length: -1, Whole: 220, Piece: "front skirt"}},
		"rule 11, no strokes": {func(p *Piece) { p.Notches[1].Count = 0 },
			Fault{Of: NotchNoStrokes, Edge: seams.Hem, Length: 30, Piece: "front skirt"}},
		"rule 12, no mouth": {func(p *Piece) { p.Darts[0].Mouth = seams.Waist },
			Fault{Of: DartNoMouth, Dart: seams.Waist.Dart(0), Edge: seams.Waist, Piece: "front skirt"}},
		"rule 12, legs": {func(p *Piece) { p.Darts[0].Start = orb.Point{121, 500} },
			Fault{Of: DartLegsApart, Dart: seams.Waist.Dart(0), Edge: seams.Called("mouth"), Piece: "front skirt"}},
		"rule 12, apex outside": {func(p *Piece) { p.Darts[0].Apex = orb.Point{110, 600} },
			Fault{Of: DartOutside, Dart: seams.Waist.Dart(0), At: orb.Point{110, 600}, Piece: "front skirt"}},
		"rule 12, apex on edge": {func(p *Piece) { p.Darts[0].Apex = orb.Point{60, 500} },
			Fault{Of: DartApexOnEdge, Dart: seams.Waist.Dart(0), Piece: "front skirt"}},
		"rule 12, flat dart": {func(p *Piece) { p.Darts[0].Mouth, p.Darts[0].OtherApex = seams.None, p.Darts[0].Apex },
			Fault{Of: DartFlat, Dart: seams.Waist.Dart(0), Piece: "front skirt"}},
		"rule 13, mark": {func(p *Piece) { p.Marks[2].At[0] = math.Inf(-1) },
			Fault{Of: MarkNowhere, Mark: marks.Called("pocket"), Piece: "front skirt"}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := half()
			c.change(&p)
			assertRefused(t, c.want, p.Check())
		})
	}
}

func TestCheckJoinsAllFaults(t *testing.T) {
	p := half()
	p.Cut, p.Grain, p.Edges[0].Allowance = 0, Grain{}, -1
	err := p.Check()
	for _, want := range []Fault{
		{Of: CutNone}, {Of: NoGrain}, {Of: AllowanceNegative, Edge: seams.Hem, Length: -1},
	} {
		want.Piece = p.Name
		assertRefused(t, want, err)
	}
}

// assertRefused asserts that a fault is among those of an error. What lies where a
// curve crosses itself is not known beforehand.
func assertRefused(t *testing.T, want Fault, err error) {
	t.Helper()
	for _, f := range faultsOf(err) {
		f.Length, f.Whole = math.Round(f.Length*1000)/1000, math.Round(f.Whole*1000)/1000
		f.At = orb.Point{math.Round(f.At[0]*1000) / 1000, math.Round(f.At[1]*1000) / 1000}
		if want.Of == Crossed && want.Edge == seams.None {
			f.Edge, f.Other = seams.None, seams.None
			if want.At == (orb.Point{}) {
				f.At = want.At
			}
		}
		if f == want {
			return
		}
	}
	t.Errorf("%#v is not among %#v", want, faultsOf(err))
}

// faultsOf an error, of all that are joined in it.
func faultsOf(err error) []Fault {
	if f, ok := err.(Fault); ok {
		return []Fault{f}
	}
	var out []Fault
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		for _, one := range joined.Unwrap() {
			out = append(out, faultsOf(one)...)
		}
	}
	return out
}
