package app

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/testdata/sketch"
)

// The trousers as drafted go out in each format, and come in again without the draft:
// their cutting outlines within 0.05 mm, the same amount to buy, and the lengths that are
// found within 0.5 %.
func TestOutAndIn(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/trousers.yaml")
	require.NoError(t, err)
	// The shorts would take a long search to come so near to the shortest lay.
	before, after, _ := strings.Cut(string(text), "  - name: shorts")
	_, cloths, _ := strings.Cut(after, "cloths:")
	folder := t.TempDir()
	drafted := filepath.Join(folder, "drafted.yaml")
	require.NoError(t, os.WriteFile(drafted, []byte(before+"cloths:"+cloths), 0o600))
	all, err := ReadCollection(t.Context(), drafted)
	require.NoError(t, err)
	wanted := laid(t, drafted)
	for format, write := range map[string]func(io.Writer) error{
		"yaml": all.WriteFile, "dxf": all.WriteDXF, "svg": all.WriteSVG, "pdf": all.WritePDF,
	} {
		t.Run(format, func(t *testing.T) {
			out := filepath.Join(folder, "out."+format)
			writeTo(t, out, write)
			if format != "yaml" {
				imported := filepath.Join(folder, format+".yaml")
				writeTo(t, imported, importedFrom(t, out).WriteFile)
				out = imported
			}
			back, err := ReadCollection(t.Context(), out)
			require.NoError(t, err)
			require.Len(t, back.Pieces, len(all.Pieces))
			for i, want := range all.Pieces {
				got := back.Pieces[i]
				assert.Equal(t, want.Cut, got.Cut, want.Name)
				assert.Equal(t, want.Pair, got.Pair, want.Name)
				a, b := cuttingOf(t, want), cuttingOf(t, got)
				assert.Less(t, sketch.Apart(a, b), 0.05, want.Name)
			}
			again := filepath.Join(folder, "job-"+format+".yaml")
			work := "job: Again\nunits: cm\ngarments:\n  - {name: trousers, pattern: " + filepath.Base(out) + "}\ncloths:" +
				cloths
			require.NoError(t, os.WriteFile(again, []byte(work), 0o600))
			for i, got := range laid(t, again) {
				assert.InEpsilon(t, wanted[i].Length, got.Length, 0.005)
				assert.InDelta(t, wanted[i].Buy, got.Buy, 1e-9)
			}
		})
	}
}

func writeTo(t *testing.T, path string, write func(io.Writer) error) {
	t.Helper()
	var file bytes.Buffer
	require.NoError(t, write(&file))
	require.NoError(t, os.WriteFile(path, file.Bytes(), 0o600))
}

// importedFrom a drawing, told what only that of a PDF does not say.
func importedFrom(t *testing.T, path string) Collection {
	t.Helper()
	all, err := ReadDrawings([]string{path}, found.Options{})
	require.NoError(t, err)
	out, _, err := all.Collection(Answers{Grain: []string{"up"}, Cloth: []string{"shell", "3=lining"}}, found.Options{})
	require.NoError(t, err)
	return out
}

// laid are the lays of a job on each of its cloths.
func laid(t *testing.T, path string) []plan.Requirement {
	t.Helper()
	work, err := ReadJob(t.Context(), path)
	require.NoError(t, err)
	cloths, err := Cloths(work, nil)
	require.NoError(t, err)
	estimates, err := Estimate(t.Context(), work, cloths, Search{Passes: 200, Seed: 1, Anew: true}, Watch{})
	require.NoError(t, err)
	var out []plan.Requirement
	for _, e := range estimates {
		out = append(out, e.Requirement)
	}
	return out
}

// cuttingOf a piece, its lower left corner at (0, 0).
func cuttingOf(t *testing.T, p pieces.Piece) orb.Ring {
	t.Helper()
	ring, err := p.CuttingOutline(0.005)
	require.NoError(t, err)
	corner := ring.Bound().Min
	return orb.Ring(geometry.Moved(ring, orb.Point{-corner[0], -corner[1]}))
}
