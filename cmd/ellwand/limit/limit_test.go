package limit

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Every limit is in the table with its sentence.
func TestEveryLimitHasASentence(t *testing.T) {
	for l := range Limit(len(table)) {
		assert.Positive(t, l.Most(), "%d", l)
		assert.NotEmpty(t, l.Sentence(), "%d", l)
		assert.NotContains(t, l.Sentence(), "%!", "%d", l)
		assert.NoError(t, l.Check("it", l.Most()))
		assert.ErrorContains(t, l.Check("it", l.Most()+1), "it "+l.Sentence())
	}
}

func TestNoLayIsBoundBelow10000(t *testing.T) {
	assert.GreaterOrEqual(t, PiecesOfLay.Most(), 10_000)
}
