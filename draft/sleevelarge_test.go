package draft

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// larger is the largest size of a table with girths and widths so many times as
// large, and lengths by half of that.
func larger(t *testing.T, table string, times float64) Body {
	sizes := Sizes(table)
	body := size(t, table, sizes[len(sizes)-1])
	for name, value := range body {
		switch name {
		case OutsideLegLength, BodyRise, WaistToHip:
		case ShoulderToWrist, BackNeckPointToWaist, ShoulderLength, ScyeDepth, Height:
			body[name] = value * (1 + times) / 2
		default:
			body[name] = value * times
		}
	}
	return body
}

// An armhole of 57 cm and more is followed under the arm as closely as any, and its
// sleeve has all that another must have.
func TestHeadsLieOnLargeArmholes(t *testing.T) {
	t.Parallel()
	large := 0
	for _, table := range []string{"women", "men"} {
		for _, times := range []float64{1, 1.04, 1.08} {
			for _, k := range kinds {
				result, err := Draft(withSleeve(table, larger(t, table, times), k.fit, k.style))
				require.NoError(t, err)
				f := figuresOf(result)
				if f["front armhole"]+f["back armhole"] > 570 {
					large++
				}
				checkSleeve(t, fmt.Sprintf("%s %g %s", table, times, k.name), result, k)
			}
		}
	}
	assert.Greater(t, large, 20, "of armholes beyond 57 cm")
}

// The armholes of the proportional draft, which are wide and low on a large bust, are
// followed too, or it is refused.
func TestHeadsLieOnProportionalArmholes(t *testing.T) {
	for _, bust := range []float64{1150, 1200, 1255} {
		body := larger(t, "women", bust/1220)
		for _, name := range []Measurement{ShoulderLength, AcrossBackWidth, AcrossFrontWidth, ScyeDepth} {
			delete(body, name)
		}
		request := withSleeve("women", body, 0, sleeve.SetIn)
		request.Bodice = &bodice.Options{Method: bodice.Proportional}
		result, err := Draft(request)
		if err != nil {
			namesMeasurement(t, err)
			continue
		}
		checkHead(t, fmt.Sprint("bust ", bust), result, pieceNamed(t, result, "sleeve"), kinds[0].hug)
	}
}

// A sleeve wider than the arm bears is warned of only where the head is as high as it
// can be and the armhole as high as in a close fit.
func TestWideSleevesAreThoseThatCannotBeNarrower(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(21, 4))
	wide := 0
	for range sample.Of(25, 600) {
		table := Tables()[random.IntN(len(Tables()))]
		sizes := Sizes(table)
		body := size(t, table, sizes[random.IntN(len(sizes))])
		body[UpperArmGirth] *= 0.7 + 0.2*random.Float64()
		k := kinds[random.IntN(len(kinds))]
		result, err := Draft(withSleeve(table, body, k.fit, k.style))
		if err != nil {
			namesMeasurement(t, err)
			continue
		}
		if !strings.Contains(warnings(result), "narrower ones") {
			continue
		}
		wide++
		name := fmt.Sprintf("%s %s, arm of %.0f", table, k.name, body[UpperArmGirth])
		depth := armholeDepth(t, result)
		assert.Greater(t, figuresOf(result)["sleeve head height"], 0.83*depth, "%s: no higher head can be drawn, or suits",
			name)
		if k.fit != bodice.Close {
			assert.Contains(t, warnings(result), "higher than the fit has it", name)
		}
	}
	assert.Greater(t, wide, 3)
}

// armholeDepth is the mean depth of both halves of the armhole, from the shoulder to the
// underarm.
func armholeDepth(t *testing.T, r Result) float64 {
	depth := 0.0
	for _, name := range []string{"front bodice", "back bodice"} {
		depth += laidOut(part.Closed(pieceNamed(t, r, name), seams.Armhole), true).End()[1] / 2
	}
	return depth
}
