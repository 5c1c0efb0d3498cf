package draft

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// A head that does not lie on the armhole is said so among the warnings and on the sheet;
// a cap, which begins above, has nothing to say.
func TestHeadsBesideTheArmholeAreToldOf(t *testing.T) {
	request := blouse(Body{BustGirth: 1550, WaistGirth: 1200})
	result, err := Draft(request)
	require.NoError(t, err)
	beside := construct.Length(besideArmhole(t, result, pieceNamed(t, result, "sleeve"), 1./3)[0])
	assert.Greater(t, float64(beside), 3.0)
	assert.Contains(t, warnings(result), "the sleeve head lies up to "+beside.String()+" off the front armhole")
	assert.NotContains(t, warnings(result), "off the back armhole")
	var steps []string
	for _, sheet := range result.Sheets {
		for _, step := range sheet.Steps {
			steps = append(steps, step.Do)
		}
	}
	assert.Contains(t, strings.Join(steps, "\n"), "the head lies up to {} off it")

	request.Sleeve, request.Parts = &sleeve.Options{Style: sleeve.Cap}, nil
	result, err = Draft(request)
	require.NoError(t, err)
	assert.NotContains(t, warnings(result), "sleeve head lies")
}

// checkHug: up to a share of the armhole's depth each half of the head lies within 3 mm of
// the armhole, or a warning says how far beside it, to 0.2 mm before it is rounded.
func checkHug(t *testing.T, name string, r Result, p pieces.Piece, hug float64) {
	said := warnings(r)
	for i, beside := range besideArmhole(t, r, p, hug) {
		armhole := []string{"front armhole", "back armhole"}[i]
		var figures []string
		for _, off := range []float64{-0.2, 0, 0.2} {
			if beside+off > 3 {
				figures = append(figures, fmt.Sprintf("up to %s off the %s", construct.Length(beside+off), armhole))
			}
		}
		switch {
		case len(figures) == 0:
			assert.NotContains(t, said, "off the "+armhole, "%s: %.2f mm beside", name, beside)
		case beside > 3:
			assert.Regexp(t, figures[0]+"|"+figures[len(figures)-1], said, "%s: %.2f mm beside", name, beside)
		}
	}
}

// besideArmhole is how far at most the front and the back half of the head lie beside the
// armhole, up to a share of its depth, measured on the finished pieces.
func besideArmhole(t *testing.T, r Result, p pieces.Piece, hug float64) [2]float64 {
	head := drafttest.Path(t, p, seams.SleeveHead)
	beside, depth := [2]float64{}, hug*armholeDepth(t, r)
	halves := [2]pieces.Path{laidOut(head, true), laidOut(head.Reverse(), false)}
	for i, bodice := range []string{"front bodice", "back bodice"} {
		line := laidOut(part.Closed(pieceNamed(t, r, bodice), seams.Armhole), true).Flatten(0.05)
		for at := 0.0; at < head.Length()/2; at += 4 {
			q := halves[i].At(at)
			if q[1] > depth {
				break
			}
			beside[i] = max(beside[i], offPath(line, q))
		}
	}
	return beside
}

func offPath(line orb.LineString, p orb.Point) float64 {
	least := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		way, length := construct.Direction(a, b), construct.Distance(a, b)
		along := max(0, min(length, (p[0]-a[0])*way[0]+(p[1]-a[1])*way[1]))
		least = min(least, construct.Distance(p, construct.Go(a, way, along)))
	}
	return least
}
