package steps

import (
	"bytes"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/skirt"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// The pages of a skirt in two sizes, line by line: whoever changes them sees what else
// moved.
func TestPagesAreDrawn(t *testing.T) {
	nest := nestOf(t, measure.Centimetre, draft.Request{Skirt: &skirt.Options{Shape: skirt.ALine}}, "12", "16")
	for name, pages := range map[string][]drawing.Page{
		"sizes": nest.pages(paper.A4), "sheet": nest.Documents[0].pages(paper.A4),
	} {
		for i, page := range pages {
			var drawn bytes.Buffer
			require.NoError(t, drawing.WriteSVG(&drawn, name, page))
			golden := fmt.Sprintf("testdata/%s_page%d.svg", name, i+1)
			if *update {
				require.NoError(t, os.WriteFile(golden, drawn.Bytes(), 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			assert.Equal(t, string(want), drawn.String())
		}
	}
}
