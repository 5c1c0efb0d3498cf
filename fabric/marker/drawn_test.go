package marker

import (
	"bytes"
	"fmt"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
	"ellwand/pieces/drawing"
)

// The plan as it is drawn, line by line: whoever changes it sees what else moved.
func TestPlansAreDrawn(t *testing.T) {
	for name, plan := range map[string]lay.Plan{"open": openPlan(), "folded": foldedPlan()} {
		t.Run(name, func(t *testing.T) {
			for i, page := range pagesOf(plan, Options{}) {
				var drawn bytes.Buffer
				require.NoError(t, drawing.WriteSVG(&drawn, "plan", page))
				golden(t, filepath.Join("testdata", fmt.Sprintf("%s_page%d.svg", name, i+1)), drawn.String())
			}
		})
	}
}
