package construct

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/measure"
)

// A limit that is stated must itself do: the least is never worded smaller than
// it is, the most never larger, in either unit (1 in is 25.4 mm exactly).
func TestLimitsAreOnTheSafeSide(t *testing.T) {
	assert.Equal(t, "ask for 26.9 cm or more", Say("ask for %s or more", AtLeast(268.1)).String())
	assert.Equal(t, "26.8 cm", AtLeast(268).String())
	assert.Equal(t, "26.8 cm", AtMost(268.9).String())
	for mm := 3.0; mm < 400; mm += 1.7 {
		for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
			least, err := measure.Parse(AtLeast(mm).In(unit), measure.Millimetre)
			assert.NoError(t, err)
			assert.GreaterOrEqual(t, float64(least), mm-1e-9)
			assert.LessOrEqual(t, float64(least), mm+1.6)
			most, err := measure.Parse(AtMost(mm).In(unit), measure.Millimetre)
			assert.NoError(t, err)
			assert.LessOrEqual(t, float64(most), mm+1e-9)
			assert.GreaterOrEqual(t, float64(most), mm-1.6)
		}
	}
}
