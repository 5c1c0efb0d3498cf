package steps

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/skirt"
	"ellwand/pieces/measure"
)

// The sheets of every garment are right in both systems; a length that is
// not that between its points is refused.
func TestWrongStepsAreRefused(t *testing.T) {
	for name, garment := range everything(t) {
		for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
			require.NoError(t, Proven(Document{Unit: unit, Garments: []Garment{garment}}), name)
		}
	}
	c := content{sheet: construct.Sheet{Points: []construct.Point{{Number: 1}, {Number: 2, At: orb.Point{30, 40}}}}}
	for text, want := range map[string]bool{
		"square across from 1 to the right by 3 cm and up by 4 cm to 2":   true,
		"square across from 1 to the right by 3 cm and up by 5 cm to 2":   false,
		"square up from 1 by 4 cm to 2: the length":                       true,
		"square up from 1 by 4.1 cm to 2: the length":                     false,
		"square across from 1 to the right by 3.2 cm to 2":                false,
		"from 1 draw a line of 5 cm to 2: the shoulder":                   true,
		"from 1 draw a line of 4.8 cm to 2: the shoulder":                 false,
		"from 1 draw a line of 5.1 cm that is level with 2 at its end, 2": false,
		"on the line 1-2, 4 cm from 1, mark 2":                            false,
		"at the middle of 1-2 square out by 2.5 cm to 2":                  true,
		"at the middle of 1-2 square out by 2 cm to 2":                    false,
		"swing 1 about 2 clockwise by 5.2 cm to 2":                        false,
		"side 1-2, 5 cm straight: 1 cm, 2 cm, 1 cm inward":                true,
		"side 1-2, 4.5 cm straight: 1 cm, 2 cm, 1 cm inward":              false,
		"square up from 1 by 4 cm to 3":                                   false,
	} {
		assert.Equal(t, want, c.readAgain(text, measure.Centimetre) == nil, text)
	}
}

// The tables of several sizes are right in both systems; a place or a seam that is not
// that of its size is refused.
func TestWrongTablesOfSizesAreRefused(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		require.NoError(t, NestProven(nestOf(t, unit, draft.Request{Skirt: &skirt.Options{}}, "8", "12", "16")))
		require.NoError(t, NestProven(nestOf(t, unit, draft.Request{Bodice: &bodice.Options{}}, "10", "14")))
	}
	nest := nestOf(t, measure.Centimetre, draft.Request{Skirt: &skirt.Options{}}, "8", "12")
	p := nest.pieces(0)[0]
	rows, seams := p.places(measure.Centimetre), p.seamTable()
	require.NoError(t, p.placeReadAgain(rows[0], 2, measure.Centimetre))
	require.Error(t, p.placeReadAgain(rows[1], 2, measure.Centimetre), "another point")
	rows[0].figures[1] = rows[0].figures[0]
	require.Error(t, p.placeReadAgain(rows[0], 2, measure.Centimetre), "another size")
	for i := range seams {
		require.NoError(t, p.seamReadAgain(seams[i], i, measure.Centimetre))
		figures := seams[i].figures
		seams[i].figures = []string{figures[0], "7 cm"}
		require.Error(t, p.seamReadAgain(seams[i], i, measure.Centimetre))
		seams[i].figures = []string{figures[0], ""}
		require.Error(t, p.seamReadAgain(seams[i], i, measure.Centimetre), "not said")
	}
}
