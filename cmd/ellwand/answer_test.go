package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/report"
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

// lengthsToBuy asks a command for the length to buy of each width, mm.
func lengthsToBuy(t *testing.T, command, path string) map[float64]float64 {
	t.Helper()
	read := func(into any, args ...string) {
		require.NoError(t, json.Unmarshal([]byte(ellwand(t, append(args, "--seed", "3", "--effort", "quick", "--json")...)),
			into))
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
	path := filepath.Join(t.TempDir(), "skirts.yaml")
	require.NoError(t, os.WriteFile(path, []byte(twoSkirts), 0o600))
	var first map[float64]float64
	for _, order := range [][]string{{"estimate", "quote", "marker", "compare"}, {"marker", "compare"},
		{"quote", "estimate"}} {
		t.Setenv("XDG_CACHE_HOME", t.TempDir())
		for _, command := range order {
			got := lengthsToBuy(t, command, path)
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
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	path := filepath.Join(t.TempDir(), "skirts.yaml")
	require.NoError(t, os.WriteFile(path, []byte(twoSkirts), 0o600))
	var quoted report.Quote
	require.NoError(t, json.Unmarshal([]byte(ellwand(t, "quote", path, "--passes", "20", "--json")), &quoted))
	var drawn report.Plans
	plan := filepath.Join(t.TempDir(), "plan.pdf")
	require.NoError(t, json.Unmarshal([]byte(ellwand(t, "marker", path, "--passes", "20", "-o", plan, "--json")), &drawn))
	assert.InDelta(t, quoted.Cloths[0].Option.BuyMM, drawn.Plans[0].BuyMM, 1e-6)
	assert.Equal(t, quoted.Cloths[0].Option.RestsOn.Lay, drawn.Plans[0].Lay)
}
