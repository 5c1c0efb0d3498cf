package limit

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/language"
	"ellwand/pieces/language/spoken"
)

// Every limit is in the table with its sentence.
func TestEveryLimitHasASentence(t *testing.T) {
	for l := range Limit(len(table)) {
		assert.Positive(t, l.Most(), "%d", l)
		spoken.Both(t, strconv.Itoa(int(l)), l.Sentence())
		assert.NoError(t, l.Check(language.Name("it"), l.Most()))
		assert.ErrorContains(t, l.Check(language.Name("it"), l.Most()+1), "it "+l.Sentence().String())
	}
}

func TestNoLayIsBoundBelow10000(t *testing.T) {
	assert.GreaterOrEqual(t, PiecesOfLay.Most(), 10_000)
}
