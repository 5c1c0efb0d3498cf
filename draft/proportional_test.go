package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
)

// The proportional bodice is sound in every size of the women's table, with its
// bust dart in each place, with sleeve, collar, cuff and facings; and it needs
// fewer measurements.
func TestProportionalBodice(t *testing.T) {
	t.Parallel()
	for _, name := range Sizes("women") {
		for i, o := range []bodice.Options{
			{}, {Shaping: bodice.ShoulderDart}, {Shaping: bodice.ArmholeDart}, {BelowWaist: 260},
			{FrontOpening: true, BackOnFold: true, NeckWiden: 10, FrontNeckDrop: 20},
			{BackOpening: true, StraightWaist: true},
		} {
			t.Run(fmt.Sprintf("size %s variant %d", name, i), func(t *testing.T) {
				body := size(t, "women", name)
				for _, name := range []Measurement{ShoulderLength, AcrossBackWidth, AcrossFrontWidth, ScyeDepth} {
					delete(body, name)
				}
				request := blouse(body)
				o.Method = bodice.Proportional
				request.Bodice = &o
				request.Parts = append(request.Parts, part.Options{Kind: part.FlatCollar},
					part.Options{Kind: part.ArmholeFacing})
				result, err := Draft(request)
				require.NoError(t, err)
				checkSound(t, result)
				assert.InDelta(t, body[BustGirth]+120, rowNamed(t, result, "front and back").OfLength, 0.01)
				assert.NotContains(t, result.Body, AcrossBackWidth)
			})
		}
	}
}
