package measure

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/language/spoken"
)

// Every defect is found in a text, and has its sentence.
func TestEveryDefectIsFound(t *testing.T) {
	texts := map[Defect]string{
		TooLong: "1.00000000000000000000000000000000000000000000 cm", Missing: " ", NoUnit: "3 ell", NoNumber: "cm",
		NotANumber: "1.2.3 cm", IsRange: "58-60 in", Grouped: "1,234", DividesByZero: "1/0", NotBelowOne: "1 9/8",
		FeetNotWhole: `1.5' 3"`, InchesPastFoot: `5'12"`, Longest: "100000001 m",
	}
	for of, text := range texts {
		_, err := Parse(text, Centimetre)
		var fault *Fault
		if assert.True(t, errors.As(err, &fault), text) {
			assert.Equal(t, of, fault.Of, text)
			spoken.Both(t, text, fault.Said())
		}
	}
	_, err := ParseUnit("ell")
	assert.Equal(t, &Fault{Of: NotOneUnit, Part: "ell"}, err)
	assert.Len(t, sentences, len(texts)+1)
}
