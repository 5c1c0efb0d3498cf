package draft

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
)

// Where an ease of the bicep line is asked for, the truing takes no more than it for
// sound; otherwise more does no harm.
func TestBicepLineIsHeldAgainstTheEaseAskedFor(t *testing.T) {
	body := size(t, "women", "12")
	most := func(ease float64) float64 {
		result, err := Draft(Request{Garment: "blouse", Body: body, Table: "women",
			Bodice: &bodice.Options{Fit: bodice.Easy}, Sleeve: &sleeve.Options{BicepEase: ease}})
		require.NoError(t, err)
		at := slices.IndexFunc(result.Truing.Rows, func(r Row) bool { return r.Seam == "bicep line" })
		require.GreaterOrEqual(t, at, 0)
		assert.True(t, result.Truing.Rows[at].InRange)
		return result.Truing.Rows[at].Most
	}
	assert.InDelta(t, 70, most(70), 20)
	assert.Greater(t, most(0), 1000.0)
}
