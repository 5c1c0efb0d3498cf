package construct

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// A sentence words every length in the unit asked for: 1 in is 25.4 mm exactly
// (international yard and pound agreement, 1959).
func TestSentencesAreWordedInAUnit(t *testing.T) {
	for _, c := range []struct {
		say      Sentence
		cm, inch string
	}{
		{Say("the hem is %s round", Length(254)), "the hem is 25.4 cm round", "the hem is 10 in round"},
		{Say("2 to 4 cm of ease; %s is given", Length(38.1)), "2 to 4 cm of ease; 3.8 cm is given",
			"13/16 to 1 9/16 in of ease; 1 1/2 in is given"},
		{Say("1.5 to 3 times, 100 %% of it, size 12"), "1.5 to 3 times, 100 % of it, size 12",
			"1.5 to 3 times, 100 % of it, size 12"},
		{Say("the piece %q: %s", "strip of 5 cm", Say("%s too long", Length(25.4))),
			`the piece "strip of 5 cm": 2.5 cm too long`, `the piece "strip of 5 cm": 1 in too long`},
		{Say("1 m at most"), "1 m at most", "39 3/8 in at most"},
	} {
		assert.Equal(t, c.cm, c.say.String())
		assert.Equal(t, c.inch, c.say.In(measure.Inch))
		assert.Equal(t, c.inch, c.say.In(measure.Yard))
	}
	err := Refuse("a length of %s", "eine Länge von %s", Length(508))
	assert.EqualError(t, err, "a length of 50.8 cm")
	assert.Equal(t, "a length of 20 in", err.(Refusal).In(measure.Inch))
	both := Both("1.5 to 2 cm, here %s", "1,5 bis 2 cm, hier %s", Length(25))
	assert.Equal(t, "1,5 bis 2 cm, hier 2,5 cm", both.Said(measure.Centimetre).In(language.German))
	assert.Equal(t, "9/16 bis 13/16 in, hier 1 in", both.Said(measure.Inch).In(language.German))
}

// One of several darts is told by its number, one alone by its article.
func TestDartsAmongWords(t *testing.T) {
	assert.Equal(t, "the waist dart", dartNamed(seams.Waist.Dart(0)))
	assert.Equal(t, "waist dart 2", dartNamed(seams.Waist.Dart(2)))
}
