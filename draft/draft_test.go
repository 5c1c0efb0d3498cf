package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// Every size of both tables, in every fit and with either dart, is sound by
// the rules of common practice.
func TestEverySizeIsSound(t *testing.T) {
	t.Parallel()
	for _, table := range Tables() {
		for _, name := range Sizes(table) {
			for _, fit := range []bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt} {
				for _, shaping := range []bodice.Shaping{bodice.SideDart, bodice.ShoulderDart} {
					t.Run(fmt.Sprintf("%s %s fit %d dart %d", table, name, fit, shaping), func(t *testing.T) {
						request := blouse(size(t, table, name))
						request.Bodice = &bodice.Options{Fit: fit, Shaping: shaping}
						result, err := Draft(request)
						require.NoError(t, err)
						checkSound(t, result)
						assert.Empty(t, result.Warnings)
					})
				}
			}
		}
	}
}

// Size 12 of the handbook table against the rules (common practice): half
// block 46 + 5 cm; waist 76 + 3 cm; neck 38 to 39.5 cm; bicep line 29.6 + 4 cm
// or more; an armhole of about half the bust girth less 0 to 3 cm.
func TestSize12AgainstTheTable(t *testing.T) {
	result, err := Draft(blouse(size(t, "women", "12")))
	require.NoError(t, err)
	front, back := pieceNamed(t, result, "front bodice"), pieceNamed(t, result, "back bodice")
	side, _ := back.Edge(seams.SideSeam)
	frontSide, _ := front.Edge(seams.SideSeam.Stretch(1))
	assert.InDelta(t, 790, 2*(seam(front, seams.Waist)+seam(back, seams.Waist)), 0.1)
	neck := 2 * (seam(front, seams.Neck) + seam(back, seams.Neck))
	assert.True(t, neck >= 380 && neck <= 395, "neck %g", neck)
	armhole := seam(front, seams.Armhole) + seam(back, seams.Armhole)
	assert.True(t, armhole >= 430 && armhole <= 460, "armhole %g", armhole)
	// The waist on the side lies in by the same taper on both pieces, so the
	// widths at the foot and the tapers make the half block.
	taper := side.Path.End()[0] - side.Path.Start()[0]
	assert.InDelta(t, 510, side.Path.Start()[0]+frontSide.Path.Start()[0]+2*taper, 0.01)
	assert.InDelta(t, 415, seam(back, seams.CentreBack), 1e-9, "back neck point to waist")
	assert.InDelta(t, 125, seam(front, seams.Shoulder), 1e-9, "shoulder length")

	for _, f := range result.Figures {
		if f.Name == "bicep line" {
			assert.GreaterOrEqual(t, f.Value, 336.0)
		}
	}
}

// Bodies of any mix either draft soundly or are refused in a sentence that
// names a measurement.
func TestRandomBodies(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		body := Body{
			BustGirth:  rapid.Float64Range(700, 1600).Draw(t, "bust"),
			WaistGirth: rapid.Float64Range(500, 1500).Draw(t, "waist"),
		}
		request := blouse(body)
		request.Bodice = drawBodice(t)
		drawSleeve(t, &request)
		checkDraftsOrRefuses(t, request)
	})
}

// Bodies around the sizes of the handbook table, each measurement up to 15 %
// more or less on its own.
func TestBodiesAroundTheTable(t *testing.T) {
	t.Parallel()
	drafted, refused := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		body, err := Size("women", rapid.SampledFrom(Sizes("women")).Draw(t, "size"))
		require.NoError(t, err)
		for _, name := range Measurements() {
			if value, ok := body[name]; ok {
				body[name] = value * rapid.Float64Range(0.85, 1.15).Draw(t, string(name))
			}
		}
		request := blouse(body)
		request.Bodice = drawBodice(t)
		drawSleeve(t, &request)
		if checkDraftsOrRefuses(t, request) {
			drafted++
		} else {
			refused++
		}
	})
	t.Logf("%d bodies drafted, %d refused", drafted, refused)
	assert.Greater(t, drafted, refused)
}

func drawBodice(t *rapid.T) *bodice.Options {
	options := &bodice.Options{
		Fit: rapid.SampledFrom([]bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt}).Draw(t, "fit"),
		Shaping: rapid.SampledFrom([]bodice.Shaping{bodice.SideDart, bodice.ShoulderDart, bodice.ArmholeDart,
			bodice.NoDart}).Draw(t, "dart"),
		Princess: rapid.SampledFrom([]bodice.Princess{bodice.NoPrincess, bodice.NoPrincess, bodice.FromShoulder,
			bodice.FromArmhole}).Draw(t, "princess"),
		Yoke:          rapid.SampledFrom([]float64{0, 0, 80}).Draw(t, "yoke"),
		StraightWaist: rapid.Bool().Draw(t, "straight"),
		NeckWiden:     rapid.SampledFrom([]float64{0, 0, 15}).Draw(t, "wider"),
		FrontNeckDrop: rapid.SampledFrom([]float64{0, 0, 25}).Draw(t, "lower"),
		BelowWaist:    rapid.SampledFrom([]float64{0, 0, 320}).Draw(t, "below"),
	}
	if options.Princess != bodice.NoPrincess {
		options.Yoke = 0
	}
	switch rapid.SampledFrom([]string{"fold", "seam", "front", "front on the fold", "back"}).Draw(t, "centre") {
	case "fold":
		options.BackOnFold = true
	case "front":
		options.FrontOpening = true
	case "front on the fold":
		options.FrontOpening, options.BackOnFold = true, true
	case "back":
		options.BackOpening, options.Yoke = true, 0
	}
	return options
}

// drawSleeve draws a style of sleeve; a cap has no cuff.
func drawSleeve(t *rapid.T, request *Request) {
	style := rapid.SampledFrom([]sleeve.Style{sleeve.SetIn, sleeve.Shirt, sleeve.TwoPiece, sleeve.Cap}).Draw(t, "style")
	request.Sleeve = &sleeve.Options{Style: style}
	if style == sleeve.TwoPiece || style == sleeve.Cap {
		request.Parts = request.Parts[:2]
	}
}

// checkDraftsOrRefuses returns whether the request was drafted.
func checkDraftsOrRefuses(t *rapid.T, request Request) bool {
	result, err := Draft(request)
	if err != nil {
		namesMeasurement(t, err)
		return false
	}
	checkSound(t, result)
	return true
}

// The usual mixes must not be refused: any bust, with a waist between 35 cm
// less and 10 cm more.
func TestUsualBodiesAreDrafted(t *testing.T) {
	t.Parallel()
	for bust := 700.0; bust <= 1600; bust += 50 {
		for waist := max(500, bust-350); waist <= min(1500, bust+100); waist += float64(sample.Of(100, 50)) {
			result, err := Draft(blouse(Body{BustGirth: bust, WaistGirth: waist}))
			if assert.NoError(t, err) {
				checkSound(t, result)
				checkHug(t, fmt.Sprintf("bust %.0f, waist %.0f", bust, waist), result,
					pieceNamed(t, result, "sleeve"), 1./3)
				if bust <= 1400 {
					assert.NotContains(t, warnings(result), "sleeve head lies", "bust %.0f, waist %.0f", bust, waist)
				}
			}
		}
	}
}

func TestDerivedMeasurementsAreReported(t *testing.T) {
	result, err := Draft(blouse(size(t, "misses", "12")))
	require.NoError(t, err)
	assert.Len(t, result.Derived, 8)
	for _, d := range result.Derived {
		assert.Contains(t, d.Rule.String(), "women's table")
		assert.Equal(t, d.Value, result.Body[d.Measurement])
	}
	// Between bust 96 and 100 cm, at 98.4 (38 3/4 in), the table's back width
	// runs from 36.4 to 37.4 cm.
	assert.InDelta(t, 370, result.Body[AcrossBackWidth], 1)
	given, err := Draft(blouse(size(t, "women", "12")))
	require.NoError(t, err)
	assert.Empty(t, given.Derived)
}

// The armhole is lowered for a strong arm, or the draft refused.
func TestUpperArm(t *testing.T) {
	t.Parallel()
	body := size(t, "women", "12")
	body[UpperArmGirth] = 350
	result, err := Draft(blouse(body))
	require.NoError(t, err)
	checkSound(t, result)
	assert.Contains(t, warnings(result), "so that the sleeve goes round an upper arm of 35 cm")

	body[UpperArmGirth] = 590
	_, err = Draft(blouse(body))
	assert.ErrorContains(t, err, "the upper arm girth of 59 cm is too large for the armhole")
}

func TestRefusals(t *testing.T) {
	half := 12.0
	for name, c := range map[string]struct {
		change func(*Request)
		want   string
	}{
		"no bust": {func(r *Request) { delete(r.Body, BustGirth) },
			"the bust girth is missing: measure it, or name a size of a table"},
		"no waist": {func(r *Request) { delete(r.Body, WaistGirth) },
			"the waist girth is missing: measure it, or name a size of a table"},
		"waist": {func(r *Request) { r.Body[BustGirth], r.Body[WaistGirth] = 600, 1801 },
			"the waist girth of 180.1 cm is over three times the bust girth of 60 cm: measure both again"},
		"negative": {func(r *Request) { r.Body[ScyeDepth] = -10 },
			"the scye depth is -1 cm: a body measurement must be more than nothing"},
		"unit": {func(r *Request) { r.Body[ShoulderLength] = half },
			"the shoulder length is 1.2 cm; between 7 cm and 20 cm is possible: check the figure and its unit"},
		"unknown": {func(r *Request) { r.Body["bust"] = 900 }, `"bust" is no body measurement that is known here`},
		"nothing asked": {func(r *Request) { r.Bodice, r.Sleeve, r.Parts = nil, nil, nil },
			"the garment asks for no pieces"},
		"sleeve alone": {func(r *Request) { r.Bodice = nil }, "sleeve: it is drafted to the armholes of a bodice"},
		"allowance": {func(r *Request) { r.Allowances = map[seams.Name]float64{seams.WristHem: -20} },
			`allowances: the seam allowance on "wrist hem" is -2 cm; it cannot be negative`},
		"no such seam": {func(r *Request) { r.Allowances = map[seams.Name]float64{seams.Called("armpit"): 20} },
			`allowances: no seam is called "armpit"; use one of: seams, shoulder`},
		"no such piece": {func(r *Request) { r.Cloths = map[string]string{"cuffs": "lining"} },
			`a cloth is named for "cuffs", but the pieces are front bodice, back bodice, sleeve`},
		"two collars": {func(r *Request) { r.Parts = append(r.Parts, part.Options{Kind: part.Collar}) },
			`two pieces are called "collar"`},
		"no such part": {func(r *Request) { r.Parts = []part.Options{{Kind: "cape"}} },
			`there is no part "cape"; use one of: collar`},
		"deep facing": {func(r *Request) { r.Parts = []part.Options{{Kind: part.NeckFacing, Depth: 200}} },
			"more than the shoulder has room for"},
	} {
		t.Run(name, func(t *testing.T) {
			request := blouse(size(t, "women", "12"))
			c.change(&request)
			result, err := Draft(request)
			assert.ErrorContains(t, err, c.want)
			assert.Empty(t, result.Pieces)
		})
	}
}

func TestAllowances(t *testing.T) {
	request := blouse(size(t, "women", "12"))
	request.Allowances = map[seams.Name]float64{seams.Every: 12, seams.SideSeam: 25}
	request.Cloths = map[string]string{"collar": "contrast"}
	request.Size = "12"
	result, err := Draft(request)
	require.NoError(t, err)
	back, front := pieceNamed(t, result, "back bodice"), pieceNamed(t, result, "front bodice")
	want := map[seams.Name]float64{seams.Shoulder: 12, seams.SideSeam: 25, seams.Armhole: 10, seams.Neck: 10,
		seams.CentreBack: 20, seams.Waist.Stretch(1): 12, seams.Waist.Mouth(1): 12}
	for name, mm := range want {
		edge, ok := back.Edge(name)
		assert.True(t, ok, name)
		assert.Equal(t, mm, edge.Allowance, name)
	}
	for name, mm := range map[seams.Name]float64{seams.SideSeam.Mouth(0): 25, seams.SideSeam.Stretch(2): 25,
		seams.CentreFront: 0} {
		edge, _ := front.Edge(name)
		assert.Equal(t, mm, edge.Allowance, name)
	}
	assert.Equal(t, "contrast", pieceNamed(t, result, "collar").Cloth)
	assert.Equal(t, "shell", front.Cloth)
	assert.Equal(t, "blouse 12", front.Garment+" "+front.Size)
}

func TestCutCounts(t *testing.T) {
	result, err := Draft(blouse(size(t, "women", "12")))
	require.NoError(t, err)
	for name, want := range map[string]string{
		"front bodice": "1 false centre front", "back bodice": "2 true ", "sleeve": "2 true ",
		"collar": "2 false centre front", "neck facing front": "1 false centre front", "neck facing back": "2 true ",
		"cuff": "2 true ",
	} {
		p := pieceNamed(t, result, name)
		assert.Equal(t, want, fmt.Sprint(p.Cut, p.Pair, " ", p.Fold), name)
	}
}

func BenchmarkDraft(b *testing.B) {
	request := blouse(size(b, "women", "12"))
	for b.Loop() {
		result, err := Draft(request)
		if err != nil || len(result.Pieces) != 7 {
			b.Fatal("not drafted", err)
		}
	}
}
