package screen

import (
	"bytes"
	"os"
	"strings"
	"testing"
	"time"

	wide "github.com/jedib0t/go-pretty/v6/text"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The line is redrawn in place, is never wider than the terminal, and is gone at
// the end.
func TestProgressLeavesNothingBehind(t *testing.T) {
	for _, width := range []int{40, 80, 200} {
		var out bytes.Buffer
		p := &Progress{out: &out, width: func() int { return width }}
		p.Show("shell 140 cm, folded along the warp", "1.13 m", "0.94 m", 3*time.Second)
		p.Show("lining 140 cm, both selvedges to the middle", "0.49 m", "0.49 m", 4*time.Second)
		p.Count("laying", 0, 12, 0)
		p.Count("laying", 3, 12, time.Minute)
		p.Trying("put the waistband of the skirt of the first of two wearers on the cross grain")
		p.Done()
		assert.NotContains(t, out.String(), "\n")
		lines := strings.Split(out.String(), "\r\x1b[K")
		require.Len(t, lines, 7)
		assert.Contains(t, lines[3], "laying", "before the first search is over")
		assert.Empty(t, lines[6])
		for _, line := range lines {
			assert.Less(t, wide.StringWidth(line), width)
		}
	}
}

func TestProgressIsForTerminals(t *testing.T) {
	var out bytes.Buffer
	p := NewProgress(&out, false)
	p.Show("shell", "1 m", "1 m", time.Second)
	p.Trying("this")
	p.Done()
	assert.Empty(t, out.String())
	file, err := os.CreateTemp(t.TempDir(), "out")
	require.NoError(t, err)
	NewProgress(file, false).Done()
	info, err := file.Stat()
	require.NoError(t, err)
	assert.Zero(t, info.Size())
	assert.NoError(t, file.Close())
}
