package draft

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// skirtOf asks for a skirt with a waistband.
func skirtOf(body Body, options skirt.Options, band part.Kind) Request {
	return Request{Garment: "skirt", Cloth: "shell", Body: body, Skirt: &options, Parts: []part.Options{{Kind: band}}}
}

// checkTrue checks pieces and truing of a garment of any kind.
func checkTrue(t require.TestingT, r Result) {
	for _, p := range r.Pieces {
		require.NoError(t, p.Check(), p.Name)
		checkDarts(t, p)
		checkFold(t, p)
		_, err := p.CuttingOutline(0.1)
		require.NoError(t, err, p.Name)
	}
	for _, row := range r.Truing.Rows {
		assert.True(t, row.InRange, "%s: %s %.1f, %s %.1f: %s", row.Seam, row.Of, row.OfLength, row.Against,
			row.AgainstLength, row.Verdict)
	}
}

// checkFold: the outline leaves a fold or a centre line at a right angle, and
// runs on smoothly across closed waist darts.
func checkFold(t require.TestingT, p pieces.Piece) {
	for i, e := range p.Edges {
		if e.Name == p.Fold && p.Fold != seams.None {
			before := p.Edges[(i+len(p.Edges)-1)%len(p.Edges)].Name
			assert.InDelta(t, 90, corner(t, p, before), 0.01, "%s: %s", p.Name, before)
			assert.InDelta(t, 90, corner(t, p, e.Name), 0.01, "%s: after %s", p.Name, e.Name)
		}
	}
	for _, d := range p.Darts {
		if d.Name.Seam() == seams.Waist {
			assert.InDelta(t, 180, besideDart(p, d), 0.01, "%s: the seam across the closed %s", p.Name, d.Name)
		}
	}
}

// checkSkirtJoins: waist and hem run on smoothly over the seams, and the
// notches on both sides of a seam meet.
func checkSkirtJoins(t require.TestingT, r Result) {
	left, right := r.Pieces[0], r.Pieces[0]
	leftSeam, rightSeam := seams.LeftSide, seams.RightSide
	switch left.Name {
	case "front skirt":
		right, leftSeam, rightSeam = r.Pieces[1], seams.SideSeam, seams.SideSeam
		for _, seam := range []seams.Name{seams.SkirtHem, seams.SideSeam} {
			assert.InDelta(t, 180, corner(t, left, seam)+corner(t, right, seam), 0.01, "after %s", seam)
		}
	case "gore":
		assert.InDelta(t, 180, corner(t, left, seams.RightSide)+corner(t, left, seams.Waist), 0.01,
			"waist of the gores")
		assert.InDelta(t, 180, corner(t, left, seams.SkirtHem)+corner(t, left, seams.LeftSide), 0.01,
			"hem of the gores")
	default:
		return
	}
	assert.Equal(t, fromWaist(left, leftSeam), fromWaist(right, rightSeam), "notches")
}

// fromWaist are the distances of a seam's notches from the waist, in mm.
func fromWaist(p pieces.Piece, seam seams.Name) map[marks.Name]float64 {
	at := map[marks.Name]float64{}
	for _, n := range p.Notches {
		if n.Edge != seam {
			continue
		}
		at[n.Match] = math.Round(n.At)
		if seam != seams.LeftSide {
			e, _ := p.Edge(seam)
			at[n.Match] = math.Round(e.Path.Length() - n.At)
		}
	}
	return at
}

func TestEverySizeOfSkirtIsSound(t *testing.T) {
	t.Parallel()
	for _, table := range Tables() {
		for _, name := range sample.Spread(Sizes(table)) {
			for shape := skirt.Straight; shape <= skirt.BoxPleated; shape++ {
				for _, band := range []part.Kind{part.Waistband, part.ShapedWaistband} {
					for _, intoHem := range []bool{false, true} {
						if intoHem && shape != skirt.ALine {
							continue
						}
						t.Run(fmt.Sprintf("%s %s shape %d %s %t", table, name, shape, band, intoHem),
							func(t *testing.T) {
								result, err := Draft(skirtOf(size(t, table, name),
									skirt.Options{Shape: shape, DartsIntoHem: intoHem}, band))
								require.NoError(t, err)
								checkTrue(t, result)
								checkSkirtJoins(t, result)
							})
					}
				}
			}
		}
	}
}

// lowerBodies are bodies of any mix: waist 50 to 150, hip 75 to 165 cm.
func lowerBodies(t *rapid.T) Body {
	body := Body{
		WaistGirth: rapid.Float64Range(500, 1500).Draw(t, "waist"),
		HipGirth:   rapid.Float64Range(750, 1650).Draw(t, "hip"),
	}
	if rapid.Bool().Draw(t, "measured") {
		body[WaistToHip] = rapid.Float64Range(165, 250).Draw(t, "waist to hip")
		body[BodyRise] = rapid.Float64Range(230, 350).Draw(t, "body rise")
		body[OutsideLegLength] = rapid.Float64Range(880, 1200).Draw(t, "outside leg")
	}
	return body
}

func TestRandomBodiesInSkirts(t *testing.T) {
	t.Parallel()
	drafted, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		options := skirt.Options{
			Shape: rapid.Custom(func(t *rapid.T) skirt.Shape {
				return skirt.Shape(rapid.IntRange(0, int(skirt.BoxPleated)).Draw(t, "shape"))
			}).Draw(t, "shape"),
			Length:   rapid.Float64Range(400, 1100).Draw(t, "length"),
			Gores:    rapid.SampledFrom([]int{4, 6, 8}).Draw(t, "gores"),
			Fullness: rapid.Float64Range(1.5, 2).Draw(t, "fullness"),
		}
		options.BackOnFold = rapid.Bool().Draw(t, "fold")
		if options.Shape == skirt.Straight && !options.BackOnFold {
			options.Vent = rapid.Bool().Draw(t, "vent")
		}
		if options.Shape == skirt.ALine {
			options.DartsIntoHem = rapid.Bool().Draw(t, "darts into the hem")
			options.Flare = rapid.SampledFrom([]float64{0, 0, 20}).Draw(t, "flare")
		}
		band := rapid.SampledFrom([]part.Kind{part.Waistband, part.ShapedWaistband}).Draw(t, "band")
		all++
		if trueOrRefused(t, skirtOf(lowerBodies(t), options, band)) {
			drafted++
		}
	})
	t.Logf("%d of %d bodies drafted", drafted, all)
	assert.Greater(t, drafted, all/2)
}

// trueOrRefused returns whether the request was drafted.
func trueOrRefused(t *rapid.T, request Request) bool {
	result, err := Draft(request)
	if err == nil {
		checkTrue(t, result)
		if request.Skirt != nil {
			checkSkirtJoins(t, result)
		}
		return true
	}
	namesMeasurement(t, err)
	return false
}

// The usual mixes must not be refused: a hip from 10 cm less than the waist to
// 40 cm more.
func TestUsualBodiesGetASkirt(t *testing.T) {
	t.Parallel()
	step := float64(sample.Of(100, 50))
	for waist := 500.0; waist <= 1500; waist += step {
		for hip := max(750, waist-100); hip <= min(1650, waist+400); hip += step {
			for _, shape := range []skirt.Shape{skirt.Straight, skirt.ALine, skirt.Gored, skirt.HalfCircle,
				skirt.Tiered, skirt.KnifePleated} {
				_, err := Draft(skirtOf(Body{WaistGirth: waist, HipGirth: hip},
					skirt.Options{Shape: shape, Length: 650}, part.Waistband))
				assert.NoError(t, err, "%g %g %d", waist, hip, shape)
			}
			result, err := Draft(skirtOf(Body{WaistGirth: waist, HipGirth: hip},
				skirt.Options{Shape: skirt.ALine, DartsIntoHem: true}, part.Waistband))
			if assert.NoError(t, err, "%g %g", waist, hip) {
				checkTrue(t, result)
				checkSkirtJoins(t, result)
			}
		}
	}
}

// A dress: the skirt is drafted to the waist seam of the bodice, and the side
// seams meet.
func TestDressJoinsAtTheWaist(t *testing.T) {
	t.Parallel()
	for _, name := range sample.Spread(Sizes("women")) {
		for _, options := range []skirt.Options{{}, {Shape: skirt.ALine}, {Shape: skirt.HalfCircle},
			{Shape: skirt.ALine, DartsIntoHem: true}} {
			request := skirtOf(size(t, "women", name), options, part.Waistband)
			request.Bodice, request.Parts = &bodice.Options{}, nil
			result, err := Draft(request)
			require.NoError(t, err)
			checkSound(t, result)
			assert.InDelta(t, 0, rowNamed(t, result, "skirt waist seam").Difference, 0.1)
			if options.Shape != skirt.HalfCircle {
				assert.InDelta(t, 0, rowNamed(t, result, "front skirt").Difference, 0.1, name)
			}
		}
	}
}

func rowNamed(t *testing.T, r Result, of string) Row {
	for _, row := range r.Truing.Rows {
		if row.Of == of {
			return row
		}
	}
	require.Fail(t, "no row of "+of)
	return Row{}
}

// A shaped waistband lies below the natural waist: half the way to the hip the
// girth is halfway between the two (common practice).
func TestShapedWaistbandLowersTheWaist(t *testing.T) {
	body := Body{WaistGirth: 760, HipGirth: 1000, WaistToHip: 200}
	request := skirtOf(body, skirt.Options{}, part.ShapedWaistband)
	request.Parts[0].Depth = 50
	result, err := Draft(request)
	require.NoError(t, err)
	checkTrue(t, result)
	band := pieceNamed(t, result, "shaped waistband")
	assert.InDelta(t, 760+60+15+30, seam(band, seams.Bottom), 0.1, "a quarter of 24 cm lower down")
	assert.InDelta(t, 760+15+30, seam(band, seams.Top), 0.1)
	assert.InDelta(t, 50, seam(band, seams.End), 1e-6)
}

func TestDerivedHip(t *testing.T) {
	// Bust 98.4 cm lies between sizes 14 and 16, hips 104 and 108.
	result, err := Draft(skirtOf(size(t, "misses", "12"), skirt.Options{}, part.Waistband))
	require.NoError(t, err)
	assert.InDelta(t, 1064, result.Body[HipGirth], 1)
	// A waist fuller than the bust: size 24 has 106 and 132 cm.
	result, err = Draft(skirtOf(Body{BustGirth: 960, WaistGirth: 1060}, skirt.Options{}, part.Waistband))
	require.NoError(t, err)
	assert.InDelta(t, 1320, result.Body[HipGirth], 1)
	result, err = Draft(skirtOf(Body{WaistGirth: 760}, skirt.Options{}, part.Waistband))
	require.NoError(t, err)
	assert.InDelta(t, 1000, result.Body[HipGirth], 1)
	_, err = Draft(skirtOf(Body{HipGirth: 1000}, skirt.Options{}, part.Waistband))
	assert.ErrorContains(t, err, "the waist girth is missing")
}
