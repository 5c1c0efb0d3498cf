package answers

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/testdata/program"
	"ellwand/testdata/sketch"
)

// Trousers are drafted, written as DXF, read without the draft and laid: their cutting
// lines lie within 0.05 mm, as much is to be bought, and the lays are as long within
// half a percent. Written again, they are the same to the last byte.
func TestTrousersThroughDXF(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	whole, err := os.ReadFile("../../../testdata/trousers.yaml")
	require.NoError(t, err)
	before, rest, _ := strings.Cut(string(whole), "  - name: shorts")
	_, cloths, _ := strings.Cut(rest, "cloths:")
	drafted := filepath.Join(folder, "drafted.yaml")
	require.NoError(t, os.WriteFile(drafted, []byte(before+"cloths:"+cloths), 0o600))
	once, read, again := filepath.Join(folder, "once.dxf"), filepath.Join(folder, "read.yaml"),
		filepath.Join(folder, "again.dxf")
	program.Output(t, "export", drafted, "-o", once)
	program.Output(t, "import", once, "-o", read)
	program.Output(t, "export", read, "-o", again)
	first, err := os.ReadFile(once)
	require.NoError(t, err)
	second, err := os.ReadFile(again)
	require.NoError(t, err)
	assert.Equal(t, string(first), string(second))

	want, err := app.ReadCollection(t.Context(), drafted)
	require.NoError(t, err)
	got, err := app.ReadCollection(t.Context(), read)
	require.NoError(t, err)
	require.Len(t, got.Pieces, len(want.Pieces))
	for i, p := range want.Pieces {
		was, err := p.CuttingOutline(0.001)
		require.NoError(t, err)
		is, err := got.Pieces[i].CuttingOutline(0.001)
		require.NoError(t, err)
		assert.LessOrEqual(t, sketch.Apart(was, is), 0.05, p.Name)
		assert.Equal(t, p.Cloth, got.Pieces[i].Cloth, p.Name)
	}

	imported := filepath.Join(folder, "imported.yaml")
	require.NoError(t, os.WriteFile(imported, []byte("job: Imported\nunits: cm\ngarments:\n  - {name: trousers, "+
		"pattern: read.yaml}\n"+
		"cloths:"+cloths), 0o600))
	a, b := laid(t, drafted), laid(t, imported)
	require.Len(t, b, len(a))
	for i := range a {
		assert.Equal(t, a[i].Buy, b[i].Buy)
		assert.InEpsilon(t, a[i].Length, b[i].Length, 0.005)
	}
}

type laidCloth struct {
	Length float64 `json:"length_mm"`
	Buy    float64 `json:"buy_mm"`
}

func laid(t *testing.T, job string) []laidCloth {
	t.Helper()
	var out struct{ Cloths []laidCloth }
	require.NoError(t, json.Unmarshal([]byte(program.Output(t, "estimate", job, "--passes", "200", "--json")), &out))
	return out.Cloths
}
