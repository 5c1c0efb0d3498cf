package plotter

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
	"ellwand/pieces/drawing"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The marker as it is drawn, line by line, in the lays that have lines inside: whoever
// changes it sees what else moved.
func TestMarkersAreDrawn(t *testing.T) {
	stretches := longPlan(t, 6)
	stretches.Lay, stretches.Plies = lay.InStretches, lay.InStretches.Plies()
	stretches.Beds = []lay.Bed{{Length: 290, Width: 745, Plies: 2, FoldLow: true},
		{X: 290, Y: -10, Length: 290, Width: 1480, Plies: 1}}
	meeting := longPlan(t, 6)
	meeting.Lay, meeting.Plies = lay.BothSelvedgesIn, lay.BothSelvedgesIn.Plies()
	meeting.Zones = []orb.Ring{{{300, 300}, {340, 300}, {340, 360}, {300, 360}, {300, 300}}}
	meeting.Cloth.Repeat.Along = 240
	for name, plan := range map[string]lay.Plan{"stretches": stretches, "meeting": meeting} {
		t.Run(name, func(t *testing.T) {
			pages, err := Pages(plan, Options{Job: "Smocks", Paper: roll(1830)})
			require.NoError(t, err)
			require.Len(t, pages, 1)
			var drawn bytes.Buffer
			require.NoError(t, drawing.WriteSVG(&drawn, "marker", pages[0]))
			file := filepath.Join("testdata", name+".svg")
			if *update {
				require.NoError(t, os.WriteFile(file, drawn.Bytes(), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err, "run the test with -update to make the file")
			assert.Equal(t, string(want), drawn.String())
		})
	}
}
