package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/plan"
)

// The mark is of the job in its first half, and of where the pieces lie in its second.
func TestMark(t *testing.T) {
	p, f, first := keptAnew(t)
	mark := first.Lays[first.Chosen].Mark
	assert.Regexp(t, `^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$`, mark)
	again, err := f.find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	assert.Equal(t, mark, again.Lays[again.Chosen].Mark, "laid anew from the store")

	other := first.Lays[first.Chosen]
	other.Pieces = append(other.Pieces[:0:0], other.Pieces...)
	other.Pieces[0].X++
	moved := markOf(other, p.all)
	assert.Equal(t, mark[:5], moved[:5])
	assert.NotEqual(t, mark, moved)
	other.Cloth.Width++
	assert.NotEqual(t, mark[:4], markOf(other, p.all)[:4])
}
