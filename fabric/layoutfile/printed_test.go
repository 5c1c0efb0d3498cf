package layoutfile_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	outside "ellwand/testdata/check"
)

// printed is the layout of panels on a print.
func printed(t *testing.T, c cloth.Cloth) layoutfile.File {
	t.Helper()
	panel := pieces.Rectangle("panel", 240, 300)
	panel.Cut, panel.Edges[0].Name = 2, seams.Hem
	got, err := plan.Require(t.Context(), c, []pieces.Piece{panel},
		plan.Options{Passes: 20, Seed: 1, Workers: 1, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	file, err := layoutfile.Of(got.Lays[got.Chosen])
	require.NoError(t, err)
	require.NotEmpty(t, file.Fixed)
	text, err := os.Open(saved(t, file))
	require.NoError(t, err)
	defer text.Close()
	value, err := jsonschema.UnmarshalJSON(text)
	require.NoError(t, err)
	require.NoError(t, schema(t).Validate(value))
	return file
}

// The outside checker finds what a print fixes right, and each of it wrong when it
// alone is spoiled.
func TestPrintsFromOutside(t *testing.T) {
	near := cloth.Cloth{Name: "shell", Width: 1020, Selvedge: 10,
		Border: cloth.Border{Line: 80, Pieces: []string{"panel"}}}
	far := near
	far.Border.Selvedge, far.Shrinkage = cloth.Far, cloth.Shrinkage{Warp: 0.05, Weft: 0.02, CutFirst: true}
	motif := cloth.Cloth{Name: "shell", Width: 1020, Selvedge: 10, Repeat: cloth.Repeat{Along: 320, Across: 350},
		Motif: cloth.Motif{Along: 150, Across: 200, Pieces: []string{"panel"}}}
	hem := func(dx, dy float64) func(*layoutfile.File) {
		return func(f *layoutfile.File) { shifted(&f.Pieces[0], dx, dy) }
	}
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		spoil func(*layoutfile.File)
		want  string
	}{
		{"near border", near, hem(0, 1.5), "1.5 across off where the print has its place"},
		{"far border", far, hem(0, -1.5), "1.5 across off where the print has its place"},
		{"border inwards", near, func(f *layoutfile.File) { f.Fixed[2].To = f.Fixed[2].From + 1 },
			"across off where the print has its place"},
		{"motif along", motif, hem(1.5, 0), "1.5 along off where the print has its place"},
		{"motif across", motif, hem(0, -1.5), "1.5 across off where the print has its place"},
		{"motif across again", motif, func(f *layoutfile.File) { f.Fixed[1].Period += 40 },
			"across off where the print has its place"},
	} {
		t.Run(c.name, func(t *testing.T) {
			file := printed(t, c.cloth)
			outside.Lays(t, saved(t, file))
			c.spoil(&file)
			said, ok := outside.Run(t, "lay", saved(t, file))
			assert.False(t, ok)
			assert.Contains(t, said, c.want)
		})
	}
}

func shifted(l *layoutfile.Laid, dx, dy float64) {
	l.X, l.Y = l.X+dx, l.Y+dy
	l.Outline = l.Outline.Clone()
	for i := range l.Outline {
		l.Outline[i][0], l.Outline[i][1] = l.Outline[i][0]+dx, l.Outline[i][1]+dy
	}
}

func saved(t *testing.T, file layoutfile.File) string {
	t.Helper()
	text, err := json.Marshal(file)
	require.NoError(t, err)
	path := filepath.Join(t.TempDir(), "layout.json")
	require.NoError(t, os.WriteFile(path, text, 0o600))
	return path
}
