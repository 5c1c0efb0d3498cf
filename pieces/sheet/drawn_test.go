package sheet

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The first sheets of a print, line by line: whoever changes them sees what else moved.
func TestSheetsAreDrawn(t *testing.T) {
	pages, err := testLayout(t, paper.A4).Pages()
	require.NoError(t, err)
	for i, page := range pages[:4] {
		var drawn bytes.Buffer
		require.NoError(t, drawing.WriteSVG(&drawn, "sheet", page))
		golden := fmt.Sprintf("testdata/page%d.svg", i+1)
		if *update {
			require.NoError(t, os.MkdirAll("testdata", 0o755))
			require.NoError(t, os.WriteFile(golden, drawn.Bytes(), 0o644))
		}
		want, err := os.ReadFile(golden)
		require.NoError(t, err)
		assert.Equal(t, string(want), drawn.String())
	}
}
