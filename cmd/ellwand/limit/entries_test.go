package limit

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

func TestEntries(t *testing.T) {
	entries := []string{"usual"}
	list := EntriesOf(&entries, Sizes)
	require.NoError(t, list.Set("10,12"))
	require.NoError(t, list.Set(`"Crepe, dyed"`))
	assert.Equal(t, []string{"10", "12", "Crepe, dyed"}, entries)
	assert.Equal(t, "10,12,Crepe, dyed", list.String())
	assert.ErrorContains(t, list.Set(strings.Repeat("1,", 50)), "it has more than 50 entries")
	assert.ErrorContains(t, list.Set(""), "name at least one")
	assert.ErrorContains(t, list.Set(`1"2`), "a quotation mark stands at the wrong place")
}

func FuzzEntries(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add("10,12")
	f.Add(`"a,b`)
	f.Fuzz(func(t *testing.T, text string) {
		var entries []string
		if err := EntriesOf(&entries, Sizes).Set(text); err != nil {
			assert.NotContains(t, err.Error(), "column")
			return
		}
		assert.NotEmpty(t, entries)
		assert.LessOrEqual(t, len(entries), Sizes.Most())
	})
}
