package answers

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/report"
	"ellwand/testdata/program"
)

// Two skirts on two offers: laying them well takes a search.
const twoSkirts = `job: Two skirts
units: cm
currency: EUR
wearers:
  - {name: Ada, size: 12, table: women}
  - {name: Bea, size: 16, table: women}
garments:
  - name: skirt
    skirt: {shape: a-line, length: 60, back: seam}
    parts: [{kind: waistband}]
cloths:
  - name: shell
    nap: one way
    offers:
      - {name: Wide, width: 150, price: 21.50, step: 1}
      - {name: Narrow, width: 115, price: 17.90, step: 1}
`

// document reads what a command prints as JSON, with a folder for what it keeps.
func document(t *testing.T, kept string, into any, args ...string) {
	t.Helper()
	ended := program.Run(t, kept, append(args, "--json")...)
	require.Zero(t, ended.Status, ended.Said)
	require.NoError(t, json.Unmarshal([]byte(ended.Out), into))
}

// lengthsToBuy asks a command for the length to buy of each width, mm.
func lengthsToBuy(t *testing.T, kept, command, path string) map[float64]float64 {
	t.Helper()
	read := func(into any, args ...string) {
		document(t, kept, into, append(args, "--seed", "3", "--effort", "quick")...)
	}
	out := map[float64]float64{}
	switch command {
	case "estimate":
		var told report.Estimate
		read(&told, "estimate", path)
		for _, cloth := range told.Cloths {
			out[cloth.WidthMM] = cloth.BuyMM
		}
	case "quote":
		var told report.Quote
		read(&told, "quote", path)
		out[told.Cloths[0].Option.WidthMM] = told.Cloths[0].Option.BuyMM
	case "compare":
		var told report.Comparison
		read(&told, "compare", path)
		for _, option := range told.Cloths[0].Options {
			out[option.WidthMM] = option.BuyMM
		}
	case "marker":
		for width, offer := range map[float64]string{1500: "Wide", 1150: "Narrow"} {
			var told report.Plans
			read(&told, "marker", path, "--offer", offer, "-o", filepath.Join(t.TempDir(), "plan.pdf"))
			out[width] = told.Plans[0].BuyMM
		}
	}
	return out
}

// The same job gives the same length from every command, whichever comes first.
func TestEveryCommandGivesOneAnswer(t *testing.T) {
	t.Parallel()
	path := filepath.Join(t.TempDir(), "skirts.yaml")
	require.NoError(t, os.WriteFile(path, []byte(twoSkirts), 0o600))
	var first map[float64]float64
	for _, order := range [][]string{{"estimate", "quote", "marker", "compare"}, {"marker", "compare"},
		{"quote", "estimate"}} {
		kept := t.TempDir()
		for _, command := range order {
			got := lengthsToBuy(t, kept, command, path)
			if first == nil {
				first = got
				require.Len(t, first, 2)
			}
			for width, buy := range got {
				assert.InDelta(t, first[width], buy, 1e-6, "%s, %.0f mm, in the order %v", command, width, order)
			}
		}
	}
}

// Without options the plan is that of the cloth that was quoted.
func TestMarkerDrawsWhatWasQuoted(t *testing.T) {
	t.Parallel()
	kept := t.TempDir()
	path := filepath.Join(t.TempDir(), "skirts.yaml")
	require.NoError(t, os.WriteFile(path, []byte(twoSkirts), 0o600))
	var quoted report.Quote
	document(t, kept, &quoted, "quote", path, "--passes", "20")
	var drawn report.Plans
	plan := filepath.Join(t.TempDir(), "plan.pdf")
	document(t, kept, &drawn, "marker", path, "--passes", "20", "-o", plan)
	assert.InDelta(t, quoted.Cloths[0].Option.BuyMM, drawn.Plans[0].BuyMM, 1e-6)
	assert.Equal(t, quoted.Cloths[0].Option.RestsOn.Lay, drawn.Plans[0].Lay)
}
