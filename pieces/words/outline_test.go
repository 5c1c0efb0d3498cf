package words

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/outline"
)

func TestInReadings(t *testing.T) {
	say := func(mm float64) string { return strconv.FormatFloat(mm, 'f', -1, 64) }
	for want, f := range map[string]outline.ReadingFault{
		"a side needs two readings or more: at its lower corner and at its upper one": {Of: outline.TooFewReadings},
		"from the lower corner, at 0, to the upper, at 200, there are 5 readings (at 0, 50, ... 150 and 200), but it " +
			"has 3": {Of: outline.SideAmiss, High: 200, Places: []float64{0, 50, 100, 150, 200}, Readings: 3},
		"there are 3 places under at, and 2 readings; there is one at each": {
			Of: outline.PlacesAmiss, Number: 3, Readings: 2},
		"the places of the readings must grow from the lower corner to the upper: at 0, 50, 40 and 100": {
			Of: outline.PlacesBackwards, Places: []float64{0, 50, 40, 100}},
		"out to the corner, 120 across, there are 2 readings (at 0 and 120), but it has 4": {
			Of: outline.AcrossAmiss, High: 120, Places: []float64{0, 120}, Readings: 4},
		"a length of 9000 has more than 2000 steps of 0.5; look at both": {
			Of: outline.TooManySteps, Length: 9000, Every: 0.5},
		"its upper corner lies at 0 and its lower one at 7 along the line; look at top and bottom": {
			Of: outline.UpsideDown, Low: 7},
	} {
		assert.Equal(t, want, InReadings(&f, say).String())
	}
}

func TestAtNode(t *testing.T) {
	assert.Equal(t, "it lies on the point before it; leave one of them out",
		AtNode(&outline.Fault{Of: outline.OnPointBefore}).String())
	assert.Equal(t, "a Bezier curve has two control points, not 3",
		AtNode(&outline.Fault{Of: outline.ControlsAmiss, Number: 3}).String())
}
