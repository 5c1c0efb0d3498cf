package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft/part"
	"ellwand/draft/trousers"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

func trousersOf(body Body, options trousers.Options, band part.Kind) Request {
	request := Request{Garment: "trousers", Cloth: "shell", Body: body, Trousers: &options,
		Parts: []part.Options{{Kind: band}}}
	if options.Opening == trousers.ElasticWaist {
		request.Parts = nil
	}
	return request
}

func TestEverySizeOfTrousersIsSound(t *testing.T) {
	t.Parallel()
	for _, table := range grown {
		for _, name := range sample.Spread(Sizes(table)) {
			for _, length := range []float64{0, 480, 800} {
				for _, c := range []struct {
					band    part.Kind
					opening trousers.Opening
				}{{part.Waistband, trousers.Fly}, {part.ShapedWaistband, trousers.Fly}, {"", trousers.ElasticWaist}} {
					t.Run(fmt.Sprintf("%s %s %g %s", table, name, length, c.band), func(t *testing.T) {
						result, err := Draft(trousersOf(size(t, table, name),
							trousers.Options{Length: length, Pocket: trousers.SidePocket, Opening: c.opening}, c.band))
						require.NoError(t, err)
						checkTrue(t, result)
						checkFork(t, result)
					})
				}
			}
		}
	}
}

// checkFork: front and back run on smoothly where their seams meet.
func checkFork(t require.TestingT, r Result) {
	front, back := pieceNamed(t, r, "front trousers"), pieceNamed(t, r, "back trousers")
	for _, name := range []seams.Name{seams.Crotch, seams.InsideLeg, seams.TrouserHem, seams.OutsideLeg} {
		assert.InDelta(t, 180, corner(t, front, name)+corner(t, back, name), 0.01, "after %s", name)
	}
}

func TestRandomBodiesInTrousers(t *testing.T) {
	t.Parallel()
	drafted, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		options := trousers.Options{
			Length:  rapid.SampledFrom([]float64{0, 420, 500, 600, 750, 900}).Draw(t, "length"),
			Opening: trousers.Opening(rapid.IntRange(0, int(trousers.ElasticWaist)).Draw(t, "opening")),
			Pocket:  trousers.Pocket(rapid.IntRange(0, 2).Draw(t, "pocket")),
		}
		if rapid.Bool().Draw(t, "wide") {
			options.HemWidth = rapid.Float64Range(320, 800).Draw(t, "hem")
		}
		band := rapid.SampledFrom([]part.Kind{part.Waistband, part.ShapedWaistband}).Draw(t, "band")
		all++
		if trueOrRefused(t, trousersOf(lowerBodies(t), options, band)) {
			drafted++
		}
	})
	t.Logf("%d of %d bodies drafted", drafted, all)
	assert.Greater(t, drafted, all/3)
}

func TestUsualBodiesGetTrousers(t *testing.T) {
	t.Parallel()
	step := float64(sample.Of(100, 50))
	for waist := 500.0; waist <= 1500; waist += step {
		for hip := max(750, waist-100); hip <= min(1650, waist+350); hip += step {
			for _, opening := range []trousers.Opening{trousers.Fly, trousers.ElasticWaist} {
				result, err := Draft(trousersOf(Body{WaistGirth: waist, HipGirth: hip},
					trousers.Options{Opening: opening}, part.Waistband))
				if assert.NoError(t, err, "%g %g", waist, hip) {
					checkTrue(t, result)
					checkFork(t, result)
				}
			}
		}
	}
}

func TestDerivedLegs(t *testing.T) {
	body := Body{WaistGirth: 760, HipGirth: 1000, BodyRise: 283, InsideLegLength: 760}
	result, err := Draft(trousersOf(body, trousers.Options{}, part.Waistband))
	require.NoError(t, err)
	assert.InDelta(t, 1043, result.Body[OutsideLegLength], 1e-9)
	result, err = Draft(trousersOf(size(t, "women", "12"), trousers.Options{}, part.Waistband))
	require.NoError(t, err)
	assert.Empty(t, result.Derived)
}
