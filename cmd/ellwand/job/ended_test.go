package job

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Drafting ends between two garments when it is told to, and says how far it came; one
// garment alone is always drafted.
func TestDraftingEnds(t *testing.T) {
	const text = `job: two
units: cm
wearers: [{name: Ona, size: 10, table: women}, {name: Ilo, size: 14, table: women}]
garments:
  - {name: skirt, skirt: {length: 60}}
  - {name: slip, skirt: {length: 55}, for: [Ilo]}
cloths: [{name: shell, width: 140}]
`
	ended, cancel := context.WithCancel(t.Context())
	cancel()
	file, err := Parse("two.yaml", []byte(text))
	require.NoError(t, err)
	_, err = file.Within(ended).Resolve()
	var told *Ended
	require.ErrorAs(t, err, &told)
	assert.Equal(t, Ended{File: "two.yaml", Drafted: 1, All: 3, Cause: context.Canceled}, *told)
	assert.ErrorContains(t, err, "two.yaml: you ended it before there was any answer, when 1 of 3 garments were "+
		"drafted; nothing was laid and nothing written")
	require.ErrorIs(t, err, context.Canceled)

	past, cancel := context.WithTimeout(t.Context(), 0)
	defer cancel()
	_, err = file.Within(past).Resolve()
	require.ErrorContains(t, err, "give it more time")

	whole, err := file.Resolve()
	require.NoError(t, err)
	assert.Len(t, whole.Garments, 3)
	_, err = whole.WithDerived(ended, 0.04)
	require.ErrorAs(t, err, &told)

	file.Wearers, file.Garments = file.Wearers[:1], file.Garments[:1]
	work, err := file.Within(ended).Resolve()
	require.NoError(t, err)
	assert.Len(t, work.Garments, 1)
}
