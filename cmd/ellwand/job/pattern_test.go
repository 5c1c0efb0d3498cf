package job

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/patternfile"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

// What is drafted is written so that it reads back to 0.001 mm, and the second time
// to the last byte.
func TestDraftsAreWrittenAndReadBack(t *testing.T) {
	jobs, err := filepath.Glob("../../../testdata/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, jobs)
	for _, path := range jobs {
		file, err := Read(path)
		if err != nil {
			continue // a file of pieces
		}
		work, err := file.Resolve()
		require.NoError(t, err)
		for _, made := range work.Garments {
			var first, second bytes.Buffer
			require.NoError(t, patternfile.Write(&first, made.Name, made.Pieces))
			again, err := patternfile.Parse("x.yaml", first.Bytes())
			require.NoError(t, err, path)
			got, _, err := again.OfSize("", patternfile.Alone())
			require.NoError(t, err, path)
			require.Len(t, got, len(made.Pieces), "%s: %s", path, made.Name)
			for i, p := range made.Pieces {
				compareCut(t, p, got[i])
			}
			require.NoError(t, patternfile.Write(&second, made.Name, got))
			assert.Equal(t, first.String(), second.String(), path)
		}
	}
}

func compareCut(t *testing.T, want, got pieces.Piece) {
	t.Helper()
	require.Len(t, got.Edges, len(want.Edges), want.Name)
	for i, e := range want.Edges {
		require.Equal(t, e.Name, got.Edges[i].Name)
		require.InDelta(t, e.Path.Length(), got.Edges[i].Path.Length(), 0.001, "%s %s", want.Name, e.Name)
		require.Equal(t, e.Hem, got.Edges[i].Hem, "%s %s", want.Name, e.Name)
	}
	a, err := want.CuttingOutline(0.05)
	require.NoError(t, err)
	b, err := got.CuttingOutline(0.05)
	require.NoError(t, err)
	for k := range 2 {
		assert.InDelta(t, a.Bound().Min[k], b.Bound().Min[k], 0.01, want.Name)
		assert.InDelta(t, a.Bound().Max[k], b.Bound().Max[k], 0.01, want.Name)
	}
	assert.Equal(t, []any{want.Name, want.Cloth, want.Cut, want.Pair, want.Fold, want.Kind},
		[]any{got.Name, got.Cloth, got.Cut, got.Pair, got.Fold, got.Kind})
}

const paperSkirt = `pieces_file: 1
units: cm
allowance: unknown
pieces:
  - {name: waistband, width: 8, height: 74, cut: {shell: 1, interfacing: 1}, allowance: 1}
  - {name: panel, size: 38, width: 40, height: 60, cut: 2}
  - {name: panel, size: 40, width: 42, height: 61, cut: 2}
seams:
  - {name: waist, of: {panel: bottom}, to: {waistband: right}, ease: -34}
`

// jobWith writes a file of pieces and a job beside it.
func jobWith(t *testing.T, pieces, text string) (*Work, error) {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "skirt.yaml"), []byte(pieces), 0o600))
	file, err := Parse(filepath.Join(dir, "job.yaml"), []byte(text))
	require.NoError(t, err)
	return file.Resolve()
}

const skirtCloths = "cloths: [{name: shell, width: 140}, {name: interfacing, width: 90}]\n"

func TestPatternOfAJob(t *testing.T) {
	work, err := jobWith(t, paperSkirt, "job: a\nunits: cm\nsize: 40\ngarments: [{name: skirt, quantity: 2, pattern: "+
		"skirt.yaml}]\n"+skirtCloths)
	require.NoError(t, err)
	all := work.PiecesOf("shell")
	require.Len(t, all, 4)
	assert.Equal(t, "skirt 2", all[3].Garment)
	assert.Equal(t, "40", all[1].Size)
	assert.InDelta(t, 420, all[1].Edges[0].Path.Length(), 1e-9)
	assert.Len(t, work.PiecesOf("interfacing"), 2)
	require.Len(t, work.Garments[0].Truing.Rows, 1)
	assert.InDelta(t, -320, work.Garments[0].Truing.Rows[0].Difference, 1e-9)

	sized, err := jobWith(t, paperSkirt,
		"job: a\nunits: cm\ngarments: [{name: skirt, pattern: {file: skirt.yaml, size: 38}}]\n"+skirtCloths)
	require.NoError(t, err)
	assert.InDelta(t, 400, sized.PiecesOf("shell")[1].Edges[0].Path.Length(), 1e-9)
}

func TestPatternRefused(t *testing.T) {
	tests := []struct{ name, garment, cloths, want string }{
		{"no file", "pattern: coat.yaml", skirtCloths, "job.yaml:3: there is no file"},
		{"no size", "pattern: skirt.yaml", skirtCloths, "has the sizes 38, 40; say which one"},
		{"a wrong size", "pattern: {file: skirt.yaml, size: 44}", skirtCloths, `has no size "44"; it has 38, 40`},
		{"no such cloth", "pattern: {file: skirt.yaml, size: 38}", "cloths: [{name: shell, width: 140}]\n",
			`skirt.yaml:5: piece "waistband": there is no cloth "interfacing" under cloths: of`},
		{"not even a list", "pattern: [a]", skirtCloths, "garments, entry 1: pattern should"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			text := "job: a\nunits: cm\ngarments: [{name: skirt, " + tt.garment + "}]\n" + tt.cloths
			_, err := Parse("job.yaml", []byte(text))
			if err == nil {
				_, err = jobWith(t, paperSkirt, text)
			}
			assert.ErrorContains(t, err, tt.want)
		})
	}
	_, err := jobWith(t, strings.Replace(paperSkirt, "width: 8", "wdith: 8", 1),
		"job: a\nunits: cm\ngarments: [{name: skirt, pattern: {file: skirt.yaml, size: 38}}]\n"+skirtCloths)
	assert.ErrorContains(t, err, "skirt.yaml:5: unknown key \"wdith\"")
}

// A drafted piece that was written out and altered takes its place; what it differs
// in is told.
func TestAlteredPieceInPlaceOfTheDrafted(t *testing.T) {
	const draft = "job: a\nunits: cm\nsize: 12\ntable: women\ngarments: [{name: skirt, skirt: {}%s}]\ncloths: [{name: " +
		"shell, width: 140}]\n"
	plain, err := Parse("job.yaml", []byte(strings.Replace(draft, "%s", "", 1)))
	require.NoError(t, err)
	work, err := plain.Resolve()
	require.NoError(t, err)
	front := work.Garments[0].Pieces[0]
	var text bytes.Buffer
	require.NoError(t, patternfile.Write(&text, "front", []pieces.Piece{front.Map(pieces.Scale(1.1))}))

	altered, err := jobWith(t, text.String(), strings.Replace(draft, "%s", ", pattern: skirt.yaml", 1))
	require.NoError(t, err)
	made := altered.Garments[0]
	require.Len(t, made.Pieces, len(work.Garments[0].Pieces))
	assert.Equal(t, []string{front.Name}, made.Replaced)
	assert.Contains(t, strings.Join(language.Texts(altered.Notes, language.English), "\n"),
		"the front skirt is that of the pattern, in place of the drafted one")
	rows := made.Truing.Rows
	assert.Equal(t, "front skirt, altered", rows[len(rows)-1].Of)
	for _, p := range made.Pieces {
		if p.Name == front.Name {
			assert.Equal(t, front.Role, p.Role)
			assert.InDelta(t, 1.1*front.Edges[0].Path.Length(), p.Edges[0].Path.Length(), 0.001)
		}
	}
	assert.Empty(t, altered.Shortenings, "only one of two pieces could be shortened")

	same, err := jobWith(t, writtenOf(t, front), strings.Replace(draft, "%s", ", pattern: skirt.yaml", 1))
	require.NoError(t, err)
	assert.Len(t, same.Garments[0].Truing.Rows, len(work.Garments[0].Truing.Rows), "nothing was altered")
}

func writtenOf(t *testing.T, p pieces.Piece) string {
	var text bytes.Buffer
	require.NoError(t, patternfile.Write(&text, "", []pieces.Piece{p}))
	return text.String()
}
