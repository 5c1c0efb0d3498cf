package part

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

func measures(t *testing.T, o bodice.Options) Measures {
	block, err := bodice.Draft(bodice.Measures{
		Bust: 920, Waist: 760, NeckBase: 380, BackNeckPointToWaist: 415, Shoulder: 125,
		AcrossBack: 354, AcrossFront: 336, ScyeDepth: 215,
	}, o)
	require.NoError(t, err)
	return Measures{
		Front: &block.Front, Back: &block.Back, Waist: 760, Wrist: 165,
		FrontWaist: construct.SeamLength(block.Front, seams.Waist),
		BackWaist:  construct.SeamLength(block.Back, seams.Waist),
	}
}

// drafted is Draft without its sheets.
func drafted(m Measures, o Options) ([]pieces.Piece, error) {
	block, err := Draft(m, o)
	return block.Pieces, err
}

// A facing matches the neck that it faces and is about as deep everywhere.
func TestNeckFacing(t *testing.T) {
	for _, shaping := range []bodice.Shaping{bodice.SideDart, bodice.ShoulderDart} {
		m := measures(t, bodice.Options{Shaping: shaping})
		for _, depth := range []float64{30, 50} {
			facings, err := drafted(m, Options{Kind: NeckFacing, Depth: depth})
			require.NoError(t, err)
			require.Len(t, facings, 2)
			for i, of := range []*pieces.Piece{m.Front, m.Back} {
				require.NoError(t, facings[i].Check())
				assert.InDelta(t, construct.SeamLength(*of, seams.Neck), construct.SeamLength(facings[i], seams.Neck),
					1e-9)
				assert.InDelta(t, depth, construct.SeamLength(facings[i], seams.Shoulder), 1e-6)
				outer, _ := facings[i].Edge(seams.FacingEdge)
				neck, _ := facings[i].Edge(seams.Neck)
				for _, p := range outer.Path.Flatten(0.1) {
					nearest := math.Inf(1)
					for _, q := range neck.Path.Flatten(0.1) {
						nearest = min(nearest, construct.Distance(p, q))
					}
					assert.InDelta(t, depth, nearest, 0.25*depth, facings[i].Name)
				}
			}
		}
	}
}

func TestCollarFitsTheNeck(t *testing.T) {
	for fold, o := range map[seams.Name]bodice.Options{seams.CentreFront: {}, seams.CentreBack: {BackOnFold: true}} {
		m := measures(t, o)
		made, err := drafted(m, Options{Kind: Collar})
		require.NoError(t, err)
		require.NoError(t, made[0].Check())
		assert.Equal(t, fold, made[0].Fold, "it opens where the bodice does")
		assert.Equal(t, 2, made[0].Cut)
		assert.InDelta(t, construct.SeamLength(*m.Front, seams.Neck)+construct.SeamLength(*m.Back, seams.Neck),
			construct.SeamLength(made[0], seams.Neck), 1e-9)
	}
}

// Widths by hand: wrist 16.5 + ease 2 + overlap 2; waist 76 + ease 1.5 +
// overlap 3 (common practice).
func TestBands(t *testing.T) {
	m := Measures{Waist: 760, Wrist: 165}
	cuffs, err := drafted(m, Options{Kind: Cuff})
	require.NoError(t, err)
	assert.InDelta(t, 205, construct.SeamLength(cuffs[0], seams.Bottom), 1e-9)
	assert.InDelta(t, 120, construct.SeamLength(cuffs[0], seams.Left), 1e-9, "folded double")
	bands, err := drafted(m, Options{Kind: Waistband, Name: "belt", Depth: 40})
	require.NoError(t, err)
	assert.Equal(t, "belt", bands[0].Name)
	assert.InDelta(t, 805, construct.SeamLength(bands[0], seams.Bottom), 1e-9)
	assert.InDelta(t, 80, construct.SeamLength(bands[0], seams.Right), 1e-9)
}

// The round of a cuff's corners is 15 mm, and no more than half of a narrow one's depth.
func TestRoundOfButtonedCuffs(t *testing.T) {
	for depth, round := range map[float64]float64{60: 15, 20: 10} {
		cuffs, err := drafted(Measures{Wrist: 165}, Options{Kind: ButtonedCuff, Depth: depth})
		require.NoError(t, err)
		require.NoError(t, cuffs[0].Check())
		assert.InDelta(t, depth-round, construct.SeamLength(cuffs[0], seams.ButtonCuffEdge), 1e-9)
	}
}

// Gathered in, a skirt is twice its waist seam: between the 1.5 and the 3 times
// that are usual (common practice).
func TestGatheredSkirt(t *testing.T) {
	// Without a bodice a quarter of the waist and 1.5 cm, twice as full.
	panels, err := drafted(Measures{Waist: 760}, Options{Kind: GatheredSkirt, Depth: 600})
	require.NoError(t, err)
	for _, p := range panels {
		require.NoError(t, p.Check())
		assert.InDelta(t, 387.5, construct.SeamLength(p, seams.Waist), 1e-9)
		assert.InDelta(t, 600, construct.SeamLength(p, seams.SideSeam), 1e-9)
		hem, _ := p.Edge(seams.SkirtHem)
		assert.True(t, hem.Hem)
	}
	assert.Equal(t, seams.CentreFront, panels[0].Fold)
	assert.Equal(t, seams.CentreBack, panels[1].Fold)

	seamed, err := drafted(measures(t, bodice.Options{}), Options{Kind: GatheredSkirt, Depth: 600})
	require.NoError(t, err)
	assert.True(t, seamed[1].Pair, "the back opens as the bodice does")
}

func TestRefusals(t *testing.T) {
	for want, o := range map[string]Options{
		"cuff: the wrist girth is missing: measure it, or give the cuff's length":               {Kind: Cuff},
		"waistband: the waist girth is missing: measure it, or give the waistband's length":     {Kind: Waistband},
		"collar: there is no neck to fit it to: draft a bodice, or give the collar's length":    {Kind: Collar},
		"neck facing: there is no neck to face: draft a bodice":                                 {Kind: NeckFacing},
		"gathered skirt: the length is missing: give its depth, from the upper edge to the hem": {Kind: GatheredSkirt},
		"tie: the width is missing: give its length along the upper edge": {Kind: StraightPanel,
			Name: "tie", Depth: 50},
		"cuff: the depth is -1 cm; it cannot be negative": {Kind: Cuff, Depth: -10},
		"gathered skirt: a fullness of 9 cannot be gathered; 1.5 to 3 is usual": {Kind: GatheredSkirt, Depth: 600,
			Fullness: 9},
	} {
		_, err := drafted(Measures{}, o)
		assert.EqualError(t, err, want)
	}
}
