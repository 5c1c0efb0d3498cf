package skirt

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// size12 of the handbook table (Aldrich, Metric Pattern Cutting for Women's
// Wear; waist to hip from memory).
var size12 = Measures{Waist: 760, Hip: 1000, WaistToHip: 209}

func drafted(t *testing.T, o Options) Block {
	return drafttest.Drafted(t, Draft, size12, o)
}

// Aldrich, Metric Pattern Cutting, the tailored skirt block, from memory
// [source.AldrichFromMemory]: half
// the hip and 1.5 cm across the hip line; the side at the waist 1.25 cm up;
// the back waist a quarter waist and 4.25 cm with two darts of 2 cm, 14 and
// 12.5 cm long, at its thirds; the front waist a quarter waist and 2.25 cm
// with a dart of 2 cm, 10 cm long. That is 3 cm of ease at the hip and 1 cm at
// the waist. Every point within 5 mm.
func TestHandbookSkirt(t *testing.T) {
	block := drafted(t, Options{HipEase: 30, WaistEase: 10, Length: 580})
	front, back := block.Pieces[0], block.Pieces[1]
	const near = 5
	frontSide, backSide := drafttest.Path(t, front, seams.SideSeam), drafttest.Path(t, back, seams.SideSeam)
	hipFront, hipBack := frontSide[0].End(), backSide[0].End()
	assert.InDelta(t, 500+15, hipFront[0]+hipBack[0], 0.01, "half the hip and 1.5 cm")
	assert.InDelta(t, 250+15, hipBack[0], near, "the back: a quarter hip and 1.5 cm")
	assert.InDelta(t, -209, hipBack[1], 0.01, "waist to hip")
	assert.InDelta(t, -580, backSide.Start()[1], 0.01, "length")

	for name, c := range map[string]struct{ got, want orb.Point }{
		"back waist at the side":  {backSide.End(), orb.Point{190 + 42.5, 12.5}},
		"front waist at the side": {frontSide.End(), orb.Point{190 + 22.5, 12.5}},
	} {
		assert.InDelta(t, c.want[0], c.got[0], near, name)
		assert.InDelta(t, c.want[1], c.got[1], near, name)
	}
	require.Len(t, back.Darts, 2)
	require.Len(t, front.Darts, 1)
	line := construct.Distance(orb.Point{}, backSide.End())
	// The dart nearer the centre back comes last in the seam.
	for i, want := range []struct{ length, at float64 }{{125, line * 2 / 3}, {140, line / 3}} {
		d := back.Darts[i]
		middle := construct.Between(d.Start, d.End, 0.5)
		assert.InDelta(t, 20, construct.Distance(d.Start, d.End), near, "width of a back dart")
		assert.InDelta(t, want.length, construct.Distance(middle, d.Apex), near, "length of a back dart")
		assert.InDelta(t, want.at, construct.Distance(orb.Point{}, middle), near, "place of a back dart")
	}
	d := front.Darts[0]
	assert.InDelta(t, 20, construct.Distance(d.Start, d.End), near, "width of the front dart")
	assert.InDelta(t, 100, construct.Distance(construct.Between(d.Start, d.End, 0.5), d.Apex), near,
		"length of the front dart")
	assert.InDelta(t, 770, block.Waist, 0.1, "waist and 1 cm")
}

// The radii of circle skirts are geometry: waist seam over 2 pi, 1.5 pi, pi
// and half pi [source.Geometry]. Waist 76 and ease 1.5 cm make a seam of 775 mm.
func TestCirclesAgainstGeometry(t *testing.T) {
	for shape, c := range map[Shape]struct {
		radius float64
		part   float64
	}{
		FullCircle:         {775 / (2 * math.Pi), 1},
		ThreeQuarterCircle: {775 / (1.5 * math.Pi), 0.75},
		HalfCircle:         {775 / math.Pi, 0.5},
		QuarterCircle:      {775 / (0.5 * math.Pi), 0.25},
	} {
		for _, width := range []float64{0, 900} {
			block := drafted(t, Options{Shape: shape, Length: 650, PanelWidth: width})
			piece := block.Pieces[0].Unfolded()
			assert.InDelta(t, 775, block.Waist, 0.1)
			assert.InDelta(t, c.part*2*math.Pi*(c.radius+650), block.Hem, 0.1)
			total := 0.0
			for _, p := range drafttest.Path(t, piece, seams.Waist).Flatten(0.01) {
				assert.InDelta(t, c.radius, math.Hypot(p[0], p[1]), 0.1)
			}
			for _, p := range drafttest.Path(t, piece, seams.NarrowHem).Flatten(0.01) {
				assert.InDelta(t, c.radius+650, math.Hypot(p[0], p[1]), 0.1)
			}
			// The area of the ring, by the polygon of the outline.
			total = area(piece.SeamOutline(0.001)) * float64(piece.Cut)
			want := c.part * math.Pi * ((c.radius+650)*(c.radius+650) - c.radius*c.radius)
			assert.InEpsilon(t, want, total, 1e-4)
			if width > 0 {
				box := piece.SeamOutline(0.1).Bound()
				assert.LessOrEqual(t, box.Max[0]-box.Min[0], width+0.1)
			}
		}
	}
}

func area(ring orb.Ring) float64 {
	sum := 0.0
	for i := 0; i+1 < len(ring); i++ {
		sum += ring[i][0]*ring[i+1][1] - ring[i+1][0]*ring[i][1]
	}
	return sum / 2
}

// Closing a dart into the hem turns the side about its point: the hem grows by
// the arc of that angle, lies as deep below the waist everywhere, and both side
// seams lean alike [source.Geometry].
func TestDartsIntoTheHem(t *testing.T) {
	for _, length := range []float64{450, 600, 900} {
		block := drafted(t, Options{Shape: ALine, DartsIntoHem: true, Length: length})
		straight := drafted(t, Options{Length: length})
		front, back := block.Pieces[0], block.Pieces[1]
		lean := drafttest.Path(t, front, seams.SideSeam).Tangent(0)
		assert.InDelta(t, 0, construct.Distance(lean, drafttest.Path(t, back, seams.SideSeam).Tangent(0)), 1e-9,
			"both sides lean alike")
		turn := math.Atan2(-lean[0], lean[1])
		// Points of the darts: 0.485 and 0.68 of the waist to hip down.
		for i, depth := range []float64{frontLength * 209, backFirst * 209} {
			piece := block.Pieces[i]
			assert.Empty(t, piece.Darts)
			assert.InDelta(t, drafttest.Path(t, straight.Pieces[i], seams.SideSeam).Length(),
				drafttest.Path(t, piece, seams.SideSeam).Length(), 4)
			hem, was := drafttest.Path(t, piece, seams.SkirtHem), drafttest.Path(t, straight.Pieces[i], seams.SkirtHem)
			assert.InDelta(t, was.Length()+turn*(length-depth), hem.Length(), 6, piece.Name)
			middle := drafttest.Path(t, piece, seams.SkirtHem).At(hem.Length() / 2)
			// The darts lie about the middle of either piece.
			apex := orb.Point{0.56 * drafttest.Path(t, straight.Pieces[i], seams.Waist.Stretch(1)).Start()[0], -depth}
			assert.InDelta(t, length-depth, construct.Distance(apex, middle), 8, piece.Name)
		}
	}
	_, err := Draft(size12, Options{DartsIntoHem: true})
	assert.ErrorContains(t, err, "only in an a-line skirt are the darts closed into the hem")
	_, err = Draft(Measures{Waist: 500, Hip: 1400, WaistToHip: 209}, Options{Shape: ALine, DartsIntoHem: true})
	assert.ErrorContains(t, err, "the waist girth of 50 cm is too small for the hip girth of 140 cm")
	block, err := Draft(Measures{Waist: 990, Hip: 1000, WaistToHip: 209}, Options{Shape: ALine, DartsIntoHem: true})
	require.NoError(t, err)
	require.Len(t, block.Warnings, 1)
	assert.Contains(t, block.Warnings[0].String(), "there are no darts to close into the hem: give a flare")
}

// The waists of all gores make the waist, and their hip lines the hip with its
// ease [source.Geometry]; a flare of a ninth is ours [source.OwnChoice].
func TestGoresMakeTheWaist(t *testing.T) {
	for _, gores := range []int{4, 6, 8} {
		block := drafted(t, Options{Shape: Gored, Gores: gores, Length: 700})
		gore := block.Pieces[0]
		require.NoError(t, gore.Check())
		assert.Equal(t, gores, gore.Cut)
		assert.InDelta(t, 775, float64(gores)*drafttest.Path(t, gore, seams.Waist).Length(), 0.1)
		hip := drafttest.Path(t, gore, seams.RightSide)[0].End()
		assert.GreaterOrEqual(t, 2*hip[0]*float64(gores), 1040-0.01)
		// A flare of a ninth of 700 - 209 = 491 mm is 54.6 mm a seam.
		foot := drafttest.Path(t, gore, seams.RightSide).Start()
		assert.InDelta(t, 54.6, foot[0]-hip[0], 1)
	}
	_, err := Draft(size12, Options{Shape: Gored, Gores: 5})
	assert.EqualError(t, err, "skirt: 5 gores; ask for 4, 6 or 8")
}

// Each tier is gathered from 1.5 to 3 times the one above
// [source.CommonPractice];
// the cloth of all panels together is the waist times the factor, tier by tier.
func TestGatherFactors(t *testing.T) {
	block := drafted(t, Options{Shape: Tiered, Tiers: 3, Fullness: 1.6, Length: 720})
	require.Len(t, block.Pieces, 3)
	above := 775.0
	for i, tier := range block.Pieces {
		width := drafttest.Path(t, tier, seams.UpperEdge).Length()
		assert.InDelta(t, 1.6*above, width*float64(tier.Cut), 0.01)
		assert.LessOrEqual(t, width, 1000.0)
		assert.InDelta(t, 240, drafttest.Path(t, tier, seams.LeftSide).Length(), 1e-9)
		_, hem := tier.Edge(seams.SkirtHem)
		assert.Equal(t, i == 2, hem)
		above *= 1.6
	}
}

// Pleats take three times the finished length [source.CommonPractice]; folded, the
// marks bring the upper edge to the waist.
func TestPleatFactors(t *testing.T) {
	for _, shape := range []Shape{KnifePleated, BoxPleated} {
		block := drafted(t, Options{Shape: shape})
		panel := block.Pieces[0]
		cloth := float64(panel.Cut) * drafttest.Path(t, panel, seams.SkirtHem).Length()
		assert.InDelta(t, 3*1040, cloth, 0.01)
		// Between the two lines of a pair is what shows; it makes the hip line
		// at the hem and the waist at the upper edge.
		low, high := 0.0, 0.0
		for i := 0; i+1 < len(panel.Marks); i += 2 {
			low += panel.Marks[i+1].Path.Start()[0] - panel.Marks[i].Path.Start()[0]
			high += panel.Marks[i+1].Path.End()[0] - panel.Marks[i].Path.End()[0]
		}
		assert.InDelta(t, 1040, low*float64(panel.Cut), 0.01)
		assert.InDelta(t, 775, high*float64(panel.Cut), 0.01)
		assert.InDelta(t, 775, block.Waist, 0.01)
	}
}

// A vent is 4 cm wide [source.CommonPractice]; that it is a quarter of the length
// high is ours [source.OwnChoice].
func TestVent(t *testing.T) {
	block := drafted(t, Options{Vent: true, Length: 700})
	back := block.Pieces[1]
	require.NoError(t, back.Check())
	assert.InDelta(t, 40, -drafttest.Path(t, back, seams.VentEdge).Start()[0], 1e-9)
	// A quarter of 70 cm.
	assert.InDelta(t, 175, drafttest.Path(t, back, seams.VentTop).Start()[1]+700, 1e-9)
	assert.True(t, back.Pair)
}

func TestWaistOfManyShapes(t *testing.T) {
	for name, c := range map[string]struct {
		waist       float64
		front, back int
	}{
		"usual": {760, 1, 2}, "narrow": {620, 2, 2}, "nearly": {970, 0, 0}, "little": {930, 0, 1}, "full": {1150, 0, 0},
	} {
		m := size12
		m.Waist = c.waist
		block, err := Draft(m, Options{})
		require.NoError(t, err, name)
		assert.Len(t, block.Pieces[0].Darts, c.front, name)
		assert.Len(t, block.Pieces[1].Darts, c.back, name)
		assert.InDelta(t, c.waist+15, block.Waist, 0.1, name)
	}
}

func TestRefusals(t *testing.T) {
	drafttest.Refuses(t, Draft, size12, Options{}, map[string]func(*Measures, *Options){
		"the waist girth of 50 cm is too small for the hip girth of 150 cm": func(m *Measures,
			_ *Options) {
			m.Waist, m.Hip = 500, 1500
		},
		"a length of 20 cm ends above or at the hip (waist to hip 20.9 cm); ask for 26.9 cm or more": func(_ *Measures,
			o *Options) {
			o.Length = 200
		},
		"the waist ease is -1 cm; it cannot be negative": func(_ *Measures,
			o *Options) {
			o.WaistEase = -10
		},
		"a flare of 30 cm is too much for a length of 60 cm": func(_ *Measures, o *Options) {
			o.Shape,
				o.Flare = ALine, 300
		},
		"the hip girth of 150 cm does not go into a quarter circle skirt": func(m *Measures, o *Options) {
			o.Shape,
				m.Hip = QuarterCircle, 1500
		},
		"in 4 gores; ask for 6 gores": func(m *Measures, o *Options) {
			o.Shape, o.Gores, m.Hip = Gored, 4,
				1600
		},
		"only a straight skirt has a vent": func(_ *Measures, o *Options) { o.Shape, o.Vent = ALine, true },
		"a vent needs a centre back seam":  func(_ *Measures, o *Options) { o.Vent, o.BackOnFold = true, true },
		"20 tiers; ask for 1 to 8":         func(_ *Measures, o *Options) { o.Shape, o.Tiers = Tiered, 20 },
		"tier 3 would take": func(_ *Measures, o *Options) {
			o.Shape, o.Tiers, o.Fullness = Tiered, 6,
				3
		},
		"a fullness of 9 cannot be gathered":  func(_ *Measures, o *Options) { o.Shape, o.Fullness = Tiered, 9 },
		"2 pleats; ask for 4 to 200":          func(_ *Measures, o *Options) { o.Shape, o.Pleats = KnifePleated, 2 },
		"the pleats would lie":                func(m *Measures, o *Options) { o.Shape, m.Hip = BoxPleated, 2000 },
		"a panel width of 5 cm is too narrow": func(_ *Measures, o *Options) { o.PanelWidth = 50 },
	})
}

// The steps end where the piece does: the lengths written are those drawn.
func TestSheetsAreWhole(t *testing.T) {
	for shape := Straight; shape <= BoxPleated; shape++ {
		block := drafted(t, Options{Shape: shape})
		drafttest.SheetsAreWhole(t, block.Sheets)
	}
}

func BenchmarkDraft(b *testing.B) {
	for b.Loop() {
		block, err := Draft(size12, Options{})
		if err != nil || len(block.Pieces) != 2 {
			b.Fatal(err)
		}
	}
}

// Closing a dart opens the cut below it in proportion, by similar triangles: 2 cm between
// legs of 10.05 cm are 9.95 cm at 50 cm from the point.
func TestClosedDartOpensTheCut(t *testing.T) {
	o := outline{cut: &pieces.Dart{Start: orb.Point{-10, 0}, Apex: orb.Point{0, -100}, End: orb.Point{10, 0}}}
	assert.InDelta(t, 20/math.Hypot(10, 100)*500, math.Abs(o.opens(600)), 1e-9)
}
