package layoutfile_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
)

// What was written is read again: the lay, and where each piece lies.
func TestReadAgain(t *testing.T) {
	for _, p := range required(t, cloth.Cloth{Name: "shell", Width: 900, Selvedge: 10}, lay.Open, lay.FoldedAlong) {
		var file bytes.Buffer
		require.NoError(t, layoutfile.Write(&file, p))
		got, err := layoutfile.Read(&file)
		require.NoError(t, err)
		assert.Equal(t, "shell", got.Cloth.Name)
		assert.Equal(t, p.Lay, got.Lay)
		require.Len(t, got.Pieces, len(p.Pieces))
		for i, l := range p.Pieces {
			assert.Equal(t, []any{l.Name, l.Garment, l.OnFold, l.Mirrored, l.Bed},
				[]any{got.Pieces[i].Name, got.Pieces[i].Garment, got.Pieces[i].OnFold, got.Pieces[i].Mirrored, got.Pieces[i].Bed})
			assert.InDeltaSlice(t, []float64{l.X, l.Y, l.Turn},
				[]float64{got.Pieces[i].X, got.Pieces[i].Y, got.Pieces[i].Turn}, 1e-6)
		}
	}
}

func TestNoLayoutIsRefused(t *testing.T) {
	for text, want := range map[string]string{
		"no layout":                              "this is no layout",
		`{"format_version": 99}`:                 "the form of this layout is",
		`{"format_version": 1, "lay": "rolled"}`: "no way to lay cloth",
		`{"format_version": 1, "lay": "open"}`:   "there is no piece",
		`{"format_version": 1, "lay": "open", "pieces": [{"name": "yoke", "x_mm": 1e9}]}`: "does not lie on the cloth",
	} {
		_, err := layoutfile.Read(strings.NewReader(text))
		assert.ErrorContains(t, err, want, text)
	}
}
