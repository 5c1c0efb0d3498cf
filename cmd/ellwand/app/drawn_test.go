package app

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/testdata/sketch"
)

// The trousers as drafted go out as SVG and as PDF, and come in again without the draft:
// their cutting outlines within 0.05 mm.
func TestDrawnAndImported(t *testing.T) {
	drafted, err := ReadCollection(t.Context(), "../../../testdata/trousers.yaml")
	require.NoError(t, err)
	for name, write := range map[string]func(io.Writer) error{"trousers.svg": drafted.WriteSVG, "trousers.pdf": drafted.WritePDF} {
		var file bytes.Buffer
		require.NoError(t, write(&file))
		path := filepath.Join(t.TempDir(), name)
		require.NoError(t, os.WriteFile(path, file.Bytes(), 0o600))
		all, err := ReadDrawings([]string{path}, found.Options{})
		require.NoError(t, err)
		back, _, err := all.Collection(Answers{Grain: []string{"up"}}, found.Options{})
		require.NoError(t, err)
		require.Len(t, back.Pieces, len(drafted.Pieces), name)
		for i, want := range drafted.Pieces {
			got := back.Pieces[i]
			assert.Equal(t, want.Cut, got.Cut, name)
			assert.Equal(t, want.Pair, got.Pair, name)
			a, b := cuttingOf(t, want), cuttingOf(t, got)
			assert.Less(t, sketch.Apart(a, b), 0.05, "%s: %s", name, want.Name)
		}
	}
}

// cuttingOf a piece, its lower left corner at (0, 0).
func cuttingOf(t *testing.T, p pieces.Piece) orb.Ring {
	t.Helper()
	ring, err := p.CuttingOutline(0.005)
	require.NoError(t, err)
	corner := ring.Bound().Min
	return orb.Ring(geometry.Moved(ring, orb.Point{-corner[0], -corner[1]}))
}
