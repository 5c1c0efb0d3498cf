package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
)

// TestRemnantsAreMeasuredFromTheirOwnEnds by hand: the second remnant begins
// 750 mm along the row; the near end of the grainline of a piece of 160 mm
// that lies from 850 mm on is 40 mm inside it, at 890 mm.
func TestRemnantsAreMeasuredFromTheirOwnEnds(t *testing.T) {
	plan := openPlan()
	plan.Pieces = []lay.Laid{placedPiece("front", 200, 300, 100, 50, 270), placedPiece("pocket", 120, 160, 850, 50, 270)}
	plan.Offcuts = []lay.OffcutPlace{{Name: "the long one", From: 0, To: 700}, {Name: "remnant 2", From: 750, To: 1200}}
	rows := Rows(plan, Options{})
	require.Len(t, rows, 2)
	assert.Equal(t, []string{"smock, the long one", "17.5"}, []string{rows[0][2], rows[0][6]})
	assert.Equal(t, []string{"smock, remnant 2", "14"}, []string{rows[1][2], rows[1][6]})
	text := textOf(t, written(t, plan, Options{Remnant: true}))
	for _, want := range []string{"2 remnants", "the long one", "ruler in cm from each left end",
		"the pieces end here, 41 cm"} {
		assert.Contains(t, text, want)
	}
	assert.NotContains(t, text, "end of the cloth,")
}
