package trial

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/report"
	"ellwand/draft"
	"ellwand/testdata/program"
)

// Ten bodies laid together never take more than ten laid singly, however short
// the search.
func TestTenBodiesTogether(t *testing.T) {
	var wearers []string
	for _, size := range draft.Sizes("women") {
		wearers = append(wearers, fmt.Sprintf("  - {name: singer %s, size: %s, table: women}\n", size, size))
	}
	require.Len(t, wearers, 10)
	path := filepath.Join(t.TempDir(), "choir.yaml")
	require.NoError(t, os.WriteFile(path, []byte(`job: choir
units: cm
currency: EUR
wearers:
`+strings.Join(wearers, "")+`garments:
  - name: skirt
    skirt: {shape: a-line}
    parts: [{kind: waistband}]
cloths:
  - {name: shell, widths: [115, 150], nap: one way, price: 18.5}
`), 0o600))
	var told report.Quote
	require.NoError(t, json.Unmarshal([]byte(program.Output(t, "quote", path, "--passes", "5", "--json")), &told))
	require.Len(t, told.Cloths, 1)
	shell := told.Cloths[0]
	assert.LessOrEqual(t, shell.Option.BuyMM, shell.OneByOneMM)
	assert.GreaterOrEqual(t, shell.SavedMM, 0.0)
	assert.InDelta(t, shell.OneByOneMM-shell.SavedMM, shell.Option.BuyMM, 1e-3)
	assert.LessOrEqual(t, shell.Option.RestsOn.BoundMM, shell.Option.RestsOn.TakenMM)
}
