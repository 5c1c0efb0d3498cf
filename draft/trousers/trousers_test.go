package trousers

import (
	"math"
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// size12 of the handbook table (Aldrich, Metric Pattern Cutting for Women's
// Wear; waist to hip, body rise and waist to floor from memory).
var size12 = Measures{Waist: 760, Hip: 1000, WaistToHip: 209, BodyRise: 283, OutsideLeg: 1050}

func drafted(t *testing.T, o Options) Block {
	return drafttest.Drafted(t, Draft, size12, o)
}

// Aldrich, Metric Pattern Cutting, the classic tailored trouser block, from
// memory [source.AldrichFromMemory]: crotch line at the body rise; front hip line a quarter hip and 2 cm,
// back a quarter and 3 cm; front fork a sixteenth of the hip and 0.5 cm beyond
// the front line, back fork half as much again and 0.5 cm, dropped by 0.5 cm;
// the crease a twelfth of the hip and 1.5 cm from the front line; knee at half
// the inside leg less 5 cm; a bottom width of 22 cm: each side of the crease
// half of it less 0.5 cm, at the knee 1.3 cm more, the back 1 cm more each.
// Every point within 5 mm.
func TestHandbookTrousers(t *testing.T) {
	block := drafted(t, Options{HipEase: 100, HemWidth: 440, Opening: SideZip, Length: 1050})
	front, back := block.Pieces[0], block.Pieces[1]
	const near = 5.01
	hipLine := func(p pieces.Piece) pieces.Path { return p.Marks[0].Path }
	assert.InDelta(t, 250+20, hipLine(front).Length(), near)
	assert.InDelta(t, 250+30, hipLine(back).Length(), near)
	centre := hipLine(front).Start()[0]
	assert.InDelta(t, 1000./12+15, -centre, near, "from the front line to the crease")

	frontInside, backInside := drafttest.Path(t, front, seams.InsideLeg), drafttest.Path(t, back, seams.InsideLeg)
	fork, backFork := frontInside.Start(), backInside.Start()
	assert.InDelta(t, -283, fork[1], near, "body rise")
	assert.InDelta(t, 1000./16+5, centre-fork[0], near, "front fork")
	assert.InDelta(t, (1000./16+5)/2+5, fork[0]-backFork[0], near, "back fork beyond the front's")
	assert.InDelta(t, -5, backFork[1]-fork[1], near, "drop of the back fork")

	knee := -283 - (767./2 - 50)
	for _, c := range []struct {
		path      pieces.Path
		hem, knee float64
	}{{frontInside, 110 - 5, 110 - 5 + 13}, {backInside, 110 - 5 + 10, 110 - 5 + 13 + 10}} {
		last := c.path[len(c.path)-1]
		assert.InDelta(t, -c.hem, last.End()[0], near, "hem")
		assert.InDelta(t, -c.knee, last.Start()[0], near, "knee")
		assert.InDelta(t, knee, last.Start()[1], near, "height of the knee")
	}
}

// Seams meeting at a point join to a smooth line [source.CommonPractice]: under the
// legs, at the hem and at the waist the angles of front and back make 180
// degrees, at the centre they are square.
func TestSeamsJoinSmoothly(t *testing.T) {
	for _, o := range []Options{{}, {Length: 450}, {Length: 345}, {HemWidth: 700}, {HemWidth: 320},
		{Length: 780, Opening: SideZip}} {
		block := drafted(t, o)
		front, back := block.Pieces[0], block.Pieces[1]
		for _, name := range []seams.Name{seams.Crotch, seams.InsideLeg, seams.TrouserHem, seams.OutsideLeg} {
			assert.InDelta(t, 180, drafttest.Corner(t, front, name)+drafttest.Corner(t, back, name), 0.01,
				"%v after %s", o, name)
		}
		assert.InDelta(t, 90, drafttest.Corner(t, back, back.Edges[len(back.Edges)-3].Name), 0.01,
			"waist at the centre back")
		if o.Opening == SideZip {
			assert.InDelta(t, 90, drafttest.Corner(t, front, front.Edges[len(front.Edges)-3].Name), 0.01,
				"waist at the centre front")
		}
	}
}

// The crotch seam bends one way only and without a corner.
func TestCrotchIsSmooth(t *testing.T) {
	block := drafted(t, Options{Opening: SideZip})
	for _, p := range block.Pieces[:2] {
		path := drafttest.Path(t, p, seams.Crotch)
		before := path.Tangent(0)
		for at := 1.0; at <= path.Length(); at++ {
			now := path.Tangent(at)
			turn := math.Atan2(before[0]*now[1]-before[1]*now[0], before[0]*now[0]+before[1]*now[1]) * 180 / math.Pi
			assert.LessOrEqual(t, turn, 1e-6, "%s turns back at %g", p.Name, at)
			assert.Greater(t, turn, -4.0, "%s has a corner at %g", p.Name, at)
			before = now
		}
	}
}

// The legs match for every length, the front inside leg 0 to 6 mm shorter
// [source.CommonPractice].
func TestLegsMatch(t *testing.T) {
	for length := 340.0; length <= 1060; length += 20 {
		block := drafted(t, Options{Length: length})
		front, back := block.Pieces[0], block.Pieces[1]
		for _, p := range []pieces.Piece{front, back} {
			require.NoError(t, p.Check(), "%g", length)
		}
		assert.InDelta(t, drafttest.Path(t, back, seams.OutsideLeg).Length(),
			drafttest.Path(t, front, seams.OutsideLeg).Length(), 0.1, "%g", length)
		shorter := drafttest.Path(t, back, seams.InsideLeg).Length() -
			drafttest.Path(t, front, seams.InsideLeg).Length()
		assert.True(t, shorter >= 0 && shorter <= 6, "%g: %g", length, shorter)
		for _, match := range []marks.Name{marks.Hip, marks.OutsideKnee, marks.InsideKnee} {
			// From the hem up, or from the fork down.
			assert.InDelta(t, fromHem(t, front, match), fromHem(t, back, match), 0.1, "%g: %s", length, match)
		}
	}
}

func fromHem(t *testing.T, p pieces.Piece, match marks.Name) float64 {
	for _, n := range p.Notches {
		if n.Match == match && n.Edge == seams.InsideLeg {
			return drafttest.Path(t, p, n.Edge).Length() - n.At
		}
		if n.Match == match {
			return n.At
		}
	}
	return 0
}

// The fly extension folded back along the centre front lies under the waist
// [source.Geometry]; it is 4 cm wide, where 3.5 to 4.5 are usual
// [source.CommonPractice].
func TestFlyFoldsUnderTheWaist(t *testing.T) {
	front := drafted(t, Options{}).Pieces[0]
	top := drafttest.Path(t, front, seams.FlyWaist)
	assert.InDelta(t, 40, top.Length(), 1e-3)
	fold := front.Marks[len(front.Marks)-1]
	require.Equal(t, marks.CentreFront, fold.Name)
	line := pieces.MirrorAbout(fold.Path.Start(), fold.Path.End())
	var waist pieces.Path
	for _, e := range front.Edges {
		if e.Name.Seam() == seams.Waist && !e.Name.IsMouth() {
			waist = e.Path
		}
	}
	folded := line.Apply(top.End())
	assert.InDelta(t, 0, construct.Distance(folded, waist.At(waist.Length()-40)), 1e-3)
}

// A hand goes into a side pocket of 16 cm, where 15 to 17 are usual
// [source.CommonPractice]; a patch pocket is a seventh of the hips wide
// [source.OwnChoice]; that bag and leg lie on each other follows [source.Geometry].
func TestPockets(t *testing.T) {
	block := drafted(t, Options{Pocket: SidePocket})
	require.Len(t, block.Pieces, 3)
	bag := block.Pieces[2]
	require.NoError(t, bag.Check())
	assert.Equal(t, 4, bag.Cut)
	assert.True(t, bag.Pair)
	assert.InDelta(t, 160, notchesApart(bag, seams.PocketSide), 1e-6)
	assert.InDelta(t, 160, notchesApart(block.Pieces[1], seams.OutsideLeg), 1e-6)
	// A bag whose side is the trousers' own seam lies on it without a gap.
	side, leg := drafttest.Path(t, bag, seams.PocketSide), drafttest.Path(t, block.Pieces[0], seams.OutsideLeg)
	assert.InDelta(t, 0, construct.Distance(side.End(), leg.At(leg.Length()-10)), 1e-3)

	block = drafted(t, Options{Pocket: PatchPocket})
	pocket := block.Pieces[2]
	require.NoError(t, pocket.Check())
	// A seventh of 100 cm.
	assert.InDelta(t, 142.9, drafttest.Path(t, pocket, seams.PocketHem).Length(), 0.1)
	mark := block.Pieces[1].Marks[len(block.Pieces[1].Marks)-1]
	assert.InDelta(t, 142.9, mark.Path.Length(), 0.1)
}

// An elastic waist is 2 cm longer than the hips or more [source.CommonPractice], has
// no darts, and its casing, as deep as the elastic is wide and 5 mm, folds down
// along the waist onto the seams beside it.
func TestElasticWaist(t *testing.T) {
	for _, o := range []Options{{Opening: ElasticWaist}, {Opening: ElasticWaist, Elastic: 60, HipEase: 60, Length: 450},
		{Opening: ElasticWaist, WaistEase: 400}} {
		block := drafted(t, o)
		depth := 30.0
		if o.Elastic > 0 {
			depth = o.Elastic + 5
		}
		assert.GreaterOrEqual(t, block.Waist, size12.Hip+20-0.1)
		// A twentieth shorter than the waist, and 2 cm to join (common practice).
		assert.InDelta(t, 742, block.Elastic, 1e-9)
		for _, p := range block.Pieces {
			require.NoError(t, p.Check())
			assert.Empty(t, p.Darts)
			mark := p.Marks[len(p.Marks)-1]
			require.Equal(t, marks.CasingFold, mark.Name)
			outside, crotch := drafttest.Path(t, p, seams.OutsideLeg), drafttest.Path(t, p, seams.Crotch)
			side, centre := mark.Path.Start(), mark.Path.End()
			fold := pieces.MirrorAbout(side, construct.Go(side, mark.Path.Tangent(0), 1))
			assert.InDelta(t, 0, construct.Distance(fold.Apply(outside.End()), outside.At(outside.Length()-2*depth)),
				0.01, p.Name)
			fold = pieces.MirrorAbout(centre, construct.Go(centre, mark.Path.Tangent(mark.Path.Length()), 1))
			assert.InDelta(t, 0, construct.Distance(fold.Apply(crotch.Start()), crotch.At(2*depth)), 0.01, p.Name)
		}
	}
}

func TestEaseAsAskedFor(t *testing.T) {
	block := drafted(t, Options{WaistEase: 30, HipEase: 100, HemWidth: 500})
	assert.InDelta(t, 790, block.Waist, 0.1)
	assert.InDelta(t, 1100, block.Hip, 0.1)
	assert.InDelta(t, 500, block.Hem, 1)
}

func TestRefusals(t *testing.T) {
	drafttest.Refuses(t, Draft, size12, Options{}, map[string]func(*Measures, *Options){
		"the waist girth of 50 cm is too small for the hip girth of 140 cm": func(m *Measures,
			_ *Options) {
			m.Waist, m.Hip = 500, 1400
		},
		"the body rise of 22 cm does not reach far enough below the waist to hip of 20.9 cm": func(m *Measures,
			_ *Options) {
			m.BodyRise = 220
		},
		"leaves too short a leg in an outside leg length of 80 cm": func(m *Measures,
			_ *Options) {
			m.OutsideLeg = 800
		},
		"a length of 30 cm leaves no leg below a body rise of 28.3 cm; ask for 33.8 cm or more": func(_ *Measures,
			o *Options) {
			o.Length = 300
		},
		"a length of 140 cm reaches past the floor": func(_ *Measures, o *Options) { o.Length = 1400 },
		"no foot goes through a hem width of 20 cm": func(_ *Measures, o *Options) { o.HemWidth = 200 },
		"more than a leg can flare to":              func(_ *Measures, o *Options) { o.HemWidth = 1500 },
		"a waist ease of 20 cm draws a waist of 96 cm on a waist girth of 76 cm, which does not pass over a hip " +
			"girth of 100 cm without an opening; ask for 26 cm or more": func(_ *Measures, o *Options) {
			o.Opening, o.WaistEase = ElasticWaist, 200
		},
		"a hip ease of 3 cm draws a waist of 100.1 cm, which does not pass over a hip girth of 100 cm without an " +
			"opening; ask for 5 cm or more": func(_ *Measures, o *Options) {
			o.Opening, o.HipEase = ElasticWaist, 30
		},
		"an elastic 10 cm wide cannot be; ask for 0.6 cm to 8 cm": func(_ *Measures, o *Options) {
			o.Opening,
				o.Elastic = ElasticWaist, 100
		},
		"the hip ease is -2 cm; it cannot be negative": func(_ *Measures, o *Options) { o.HipEase = -20 },
	})
}

func TestSheetsAreWhole(t *testing.T) {
	for _, o := range []Options{{}, {Length: 400}, {Pocket: SidePocket}, {Pocket: PatchPocket},
		{Opening: ElasticWaist}} {
		block := drafted(t, o)
		assert.Len(t, block.Sheets, len(block.Pieces))
		drafttest.SheetsAreWhole(t, block.Sheets)
		if o.Opening == ElasticWaist {
			continue // its casing is drawn on above
		}
		top := drafttest.Path(t, block.Pieces[1], seams.Crotch).Start()
		assert.True(t, slices.ContainsFunc(block.Sheets[1].Points, func(p construct.Point) bool {
			return construct.Distance(p.At, top) < 1e-6
		}), "the steps of the back come to the upper end of its crotch seam")
		for i, leg := range []seams.Name{seams.InsideLeg, seams.OutsideLeg, seams.InsideLeg, seams.OutsideLeg} {
			path := drafttest.Path(t, block.Pieces[i/2], leg)
			ends := []orb.Point{path.Start()}
			for _, curve := range path {
				ends = append(ends, curve.At(1))
			}
			for _, end := range ends {
				assert.True(t, slices.ContainsFunc(block.Sheets[i/2].Points, func(p construct.Point) bool {
					return construct.Distance(p.At, end) < 1e-6
				}), "the steps come to the ends and the joins of the %s, to %.1f", leg, end)
			}
		}
	}
}

func BenchmarkDraft(b *testing.B) {
	for b.Loop() {
		block, err := Draft(size12, Options{Pocket: SidePocket})
		if err != nil || len(block.Pieces) != 3 {
			b.Fatal(err)
		}
	}
}
