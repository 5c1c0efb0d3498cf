package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/paper"
)

// The same pieces on the same paper are printed from the store the second time; on other
// paper, or with another effort, they are packed anew.
func TestPrintingFromTheStore(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	drafted, err := ReadSizes(t.Context(), writtenJob(t, settledJob), nil)
	require.NoError(t, err)
	pack := func(name string, passes int) Printed {
		sheets, err := paper.Parse(name, drafted.First().Unit)
		require.NoError(t, err)
		printing, err := PreparePrinting(drafted, "", sheets, name)
		require.NoError(t, err)
		printed, err := printing.Pack(t.Context(), Search{Passes: passes, Seed: 1, Workers: 1})
		require.NoError(t, err)
		return printed
	}
	first := pack("a4", 2)
	assert.NotZero(t, first.Ended.Work.Due)
	again := pack("a4", 2)
	assert.Zero(t, again.Ended.Work.Due)
	assert.Equal(t, first.Sheets, again.Sheets)
	assert.Equal(t, first.Pages, again.Pages)
	assert.NotZero(t, pack("letter", 2).Ended.Work.Due)
	assert.NotZero(t, pack("a4", 3).Ended.Work.Due)
}
