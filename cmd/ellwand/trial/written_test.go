package trial

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/check"
	"ellwand/testdata/program"
	"ellwand/testdata/sample"
)

// The layouts that a command writes are found right by the outside checker.
func TestWrittenLayoutsOutside(t *testing.T) {
	folder := t.TempDir()
	program.Output(t, "estimate", "../../../testdata/blouse.yaml", "--passes", "5", "--layout", folder,
		"--widths", "90cm,150cm")
	files, err := filepath.Glob(filepath.Join(folder, "*.json"))
	require.NoError(t, err)
	assert.GreaterOrEqual(t, len(files), 2*2, "at least the open lay of two cloths in two widths")
	check.Lays(t, files...)
}

// A job of 60 pieces, and in the long run of 500, is answered, and its layout
// is whole.
func TestManyPieces(t *testing.T) {
	t.Parallel()
	robes := sample.Of(6, 50)
	folder := t.TempDir()
	path := filepath.Join(folder, "choir.yaml")
	require.NoError(t, os.WriteFile(path, []byte(`job: choir robes
units: cm
size: 14
table: women
garments:
  - name: robe
    quantity: `+fmt.Sprint(robes)+`
    bodice: {back: seam}
    sleeve: {}
    parts: [{kind: cuff}]
    pieces: [{name: pocket, width: 15, height: 16, cut: 3}]
cloths: [{name: shell, width: 150, nap: one way per garment}]
`), 0o600))
	layouts := filepath.Join(folder, "layouts")
	program.Output(t, "estimate", path, "--passes", "1", "--layout", layouts)
	// On two plies one template yields two pieces, so the open lay is counted.
	text, err := os.ReadFile(filepath.Join(layouts, "shell-1500mm-open.json"))
	require.NoError(t, err)
	var lay struct{ Pieces []struct{ Name string } }
	require.NoError(t, json.Unmarshal(text, &lay))
	assert.Len(t, lay.Pieces, robes*(1+2+2+2+3), "front, backs, sleeves, cuffs, pockets")
}
