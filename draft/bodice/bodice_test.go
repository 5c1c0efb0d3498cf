package bodice

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// size12 of the handbook table (Aldrich, Metric Pattern Cutting for Women's
// Wear, 6th edition; back neck to waist and scye depth from memory).
var size12 = Measures{
	Bust: 920, Waist: 760, NeckBase: 380, BackNeckPointToWaist: 415, Shoulder: 125,
	AcrossBack: 354, AcrossFront: 336, ScyeDepth: 215,
}

// The eases of each fit are common practice; so is that a shirt hangs straight.
func TestFits(t *testing.T) {
	for _, c := range []struct {
		fit         Fit
		half, waist float64
	}{
		{Close, 510, 395}, // 46 + 5, 38 + 1.5
		{Easy, 530, 400},  // 46 + 7, 38 + 2
		{Shirt, 550, 550}, // 46 + 9, straight down
	} {
		block, err := Draft(size12, Options{Fit: c.fit})
		require.NoError(t, err)
		assert.InDelta(t, c.half, block.BustWidth, 1e-9)
		assert.InDelta(t, c.waist, construct.SeamLength(block.Front, seams.Waist)+
			construct.SeamLength(block.Back, seams.Waist), 0.05)
		assert.Equal(t, c.fit != Shirt, block.Fitted)
	}
	asked, err := Draft(size12, Options{BustEase: 80, WaistEase: 25})
	require.NoError(t, err)
	assert.InDelta(t, 500, asked.BustWidth, 1e-9)
	assert.InDelta(t, 392.5, construct.SeamLength(asked.Front, seams.Waist)+
		construct.SeamLength(asked.Back, seams.Waist), 0.05)
}

// A fuller bust asks for a wider bust dart, also past the bust from which less is added.
func TestDartGrowsWithTheBust(t *testing.T) {
	last := 0.0
	for bust := 800.0; bust <= 1300; bust += 50 {
		m := size12
		m.Bust, m.Waist = bust, bust-160
		f, err := reckon(m, Options{})
		require.NoError(t, err)
		assert.Greater(t, f.bustDart, last, "bust %g", bust)
		last = f.bustDart
	}
}

// The step that sets the height of the front says where it is from: with a bust dart a
// quarter of it is added, without one the neck point lies as high as on the back.
func TestFrontSaysItsHeight(t *testing.T) {
	for shaping, want := range map[Shaping]string{
		SideDart: "and a quarter of the bust dart", NoDart: "the height of the neck point on the back",
	} {
		block, err := Draft(size12, Options{Shaping: shaping})
		require.NoError(t, err)
		var steps strings.Builder
		for _, sheet := range block.Sheets {
			for _, step := range sheet.Steps {
				steps.WriteString(step.Text(measure.Centimetre) + "\n")
			}
		}
		assert.Contains(t, steps.String(), want, shaping)
	}
}

// Size 12 has 51 - 39.5 = 11.5 cm to take in: a fifth at each side seam (2.3),
// of the other 6.9 cm 3.8 in the front dart and 3.1 in the back dart. The shares
// are our own choice; that all of it is taken in is geometry.
func TestWaistIsSharedOut(t *testing.T) {
	block, err := Draft(size12, Options{})
	require.NoError(t, err)
	side, _ := block.Back.Edge(seams.SideSeam)
	assert.InDelta(t, 23, side.Path.End()[0]-side.Path.Start()[0], 1e-9)
	require.Len(t, block.Front.Darts, 2)
	require.Len(t, block.Back.Darts, 1)
	front, back := block.Front.Darts[0], block.Back.Darts[0]
	assert.InDelta(t, 38, construct.Distance(front.Start, front.End), 1.5)
	assert.InDelta(t, 31, construct.Distance(back.Start, back.End), 1.5)
	assert.InDelta(t, 115, 2*23+construct.Distance(front.Start, front.End)+construct.Distance(back.Start, back.End), 2)
}

func TestWaistOfManyShapes(t *testing.T) {
	for name, c := range map[string]struct {
		waist       float64
		front, back int // waist darts
		flares      bool
	}{
		"usual":  {760, 1, 1, false},
		"narrow": {600, 2, 2, false},
		"nearly": {940, 0, 0, false},
		"full":   {1150, 0, 0, true},
	} {
		t.Run(name, func(t *testing.T) {
			m := size12
			m.Waist = c.waist
			block, err := Draft(m, Options{Shaping: ShoulderDart})
			require.NoError(t, err)
			assert.Len(t, block.Front.Darts, c.front+1)
			assert.Len(t, block.Back.Darts, c.back)
			side, _ := block.Back.Edge(seams.SideSeam)
			assert.Equal(t, c.flares, side.Path.Start()[0] > side.Path.End()[0])
			assert.InDelta(t, (c.waist+30)/2,
				construct.SeamLength(block.Front, seams.Waist)+construct.SeamLength(block.Back, seams.Waist), 0.05)
		})
	}
}

// Moving the bust dart from the shoulder to the side keeps every seam.
func TestDartMoves(t *testing.T) {
	side, err := Draft(size12, Options{Shaping: SideDart})
	require.NoError(t, err)
	shoulder, err := Draft(size12, Options{Shaping: ShoulderDart})
	require.NoError(t, err)
	for _, seam := range []seams.Name{seams.Waist, seams.SideSeam, seams.Armhole, seams.Shoulder, seams.Neck,
		seams.CentreFront} {
		assert.InDelta(t, construct.SeamLength(shoulder.Front, seam), construct.SeamLength(side.Front, seam), 1e-6,
			seam)
	}
	assert.Equal(t, seams.SideSeam.Dart(0), side.Front.Darts[1].Name)
	assert.Equal(t, seams.Shoulder.Dart(0), shoulder.Front.Darts[1].Name)
}

func TestRefusals(t *testing.T) {
	drafttest.Refuses(t, Draft, size12, Options{}, map[string]func(*Measures, *Options){
		"the waist girth of 145 cm with 3 cm of ease is too large for the bust girth of 92 cm": func(m *Measures,
			_ *Options) {
			m.Waist = 1450
		},
		"the waist girth of 35 cm is too small for the bust girth of 92 cm": func(m *Measures,
			_ *Options) {
			m.Waist = 350
		},
		"the scye depth of 38 cm is too much for a back neck point to waist of 41.5 cm": func(m *Measures,
			_ *Options) {
			m.ScyeDepth = 380
		},
		"the across back width of 48 cm reaches past the end of a shoulder length of 12.5 cm": func(m *Measures,
			_ *Options) {
			m.AcrossBack, m.Bust = 480, 1100
		},
		"the shoulder length of 20 cm reaches far past an across back width of 35.4 cm": func(m *Measures,
			_ *Options) {
			m.Shoulder = 200
		},
		"leave only 4.6 cm for the armhole on a bust girth of 92 cm": func(m *Measures, _ *Options) {
			m.AcrossBack,
				m.AcrossFront = 440, 420
		},
		"the bust ease is -2 cm; it cannot be negative": func(_ *Measures, o *Options) { o.BustEase = -20 },
		"there must be 5 cm of side seam left":          func(_ *Measures, o *Options) { o.ArmholeDrop = 160 },
	})
}

func BenchmarkDraft(b *testing.B) {
	for b.Loop() {
		block, err := Draft(size12, Options{})
		if err != nil || len(block.Front.Edges) != 10 {
			b.Fatal(err, len(block.Front.Edges))
		}
	}
}
