package text

import (
	"bytes"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWriter(t *testing.T) {
	var out bytes.Buffer
	n, err := fmt.Fprintf(Writer(&out), "%s\n\t2 m\n", "li\x1b[2Jnen\u202e")
	require.NoError(t, err)
	assert.Equal(t, "linen\n\t2 m\n", out.String())
	assert.Equal(t, len("li\x1b[2Jnen\u202e\n\t2 m\n"), n, "all that was given is dealt with")

	closed, err := os.Create(t.TempDir() + "/closed")
	require.NoError(t, err)
	require.NoError(t, closed.Close())
	_, err = Writer(closed).Write([]byte("linen"))
	assert.ErrorIs(t, err, os.ErrClosed)
}
