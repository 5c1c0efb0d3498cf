package fabric_test

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
)

func TestWriteJSON(t *testing.T) {
	got := required(t, fabric.Cloth{Name: "shell", Width: 1020, Selvedge: 10}, blouse()...)
	for _, plan := range got.Lays {
		var file bytes.Buffer
		require.NoError(t, plan.WriteJSON(&file))
		var read map[string]any
		require.NoError(t, json.Unmarshal(file.Bytes(), &read))
		assert.Equal(t, "shell", read["cloth"])
		assert.Equal(t, plan.Lay.String(), read["lay"])
		assert.EqualValues(t, plan.Plies, read["plies"])
		assert.EqualValues(t, plan.Width, read["width_mm"])
		assert.EqualValues(t, plan.Length, read["length_mm"])
		assert.Contains(t, read, "bound_mm")
		assert.Nil(t, read["cloth_outline"])
		assert.Equal(t, []any{}, read["flaws"])
		require.Len(t, read["pieces"], len(plan.Pieces))
		first := read["pieces"].([]any)[0].(map[string]any)
		for _, key := range []string{"name", "garment", "size", "copy", "mirrored", "turn_deg", "on_fold", "x_mm", "y_mm", "outline"} {
			assert.Contains(t, first, key)
		}
		checkOutside(t, file.Bytes())
	}
	impossible := fabric.LayPlan{Lay: fabric.FoldedAlong, Impossible: "yoke: a single piece"}
	assert.ErrorContains(t, impossible.WriteJSON(&bytes.Buffer{}), "yoke: a single piece")
}

// checkOutside runs the shared checker, which judges with shapely (GEOS).
func checkOutside(t *testing.T, layout []byte) {
	t.Helper()
	checker := filepath.Join("..", "..", "shared", "tools", "check_layout.py")
	const python = "/usr/bin/python3"
	if _, err := os.Stat(checker); err != nil {
		t.Skip("the shared layout checker is not here")
	}
	if exec.Command(python, "-c", "import shapely").Run() != nil {
		t.Skip("python3 with shapely is not installed")
	}
	file := filepath.Join(t.TempDir(), "layout.json")
	require.NoError(t, os.WriteFile(file, layout, 0o600))
	out, err := exec.Command(python, checker, "lay", file).CombinedOutput()
	assert.NoError(t, err, string(out))
}
