package job

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
)

const changedPattern = `pieces_file: 1
units: cm
allowance: unknown
pieces:
  - {name: back, cut: 1, outline: [[0, 0], [18, 0], [15, 40], [0, 40]]}
  - {name: pocket, cut: 2, width: 15, height: 16}
`

func changedJob(t *testing.T, changes string) *Faults {
	t.Helper()
	_, err := changedWork(t, changes)
	var faults *Faults
	require.ErrorAs(t, err, &faults)
	return faults
}

func changedWork(t *testing.T, changes string) (*Work, error) {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "p.yaml"), []byte(changedPattern), 0o600))
	file, err := Parse(filepath.Join(dir, "job.yaml"), []byte("job: Wren\nunits: cm\ngarments:\n  - name: skirt\n"+
		"    pattern: p.yaml\n    changes:\n"+changes+"cloths:\n  - {name: shell, width: 140}\n"))
	require.NoError(t, err)
	return file.Resolve()
}

// What was said of the pieces of a pattern can be said anew in the job.
func TestPiecesOfAPatternAreChanged(t *testing.T) {
	for changes, check := range map[string]func(t *testing.T, p pieces.Piece){
		"{of: back, name: rear}": func(t *testing.T, p pieces.Piece) { assert.Equal(t, "rear", p.Name) },
		"{of: back, cut: 2}": func(t *testing.T, p pieces.Piece) {
			assert.Equal(t, 2, p.Cut)
			assert.True(t, p.Pair, "it is not its own mirror image")
		},
		"{of: back, cut: 2, pair: no}": func(t *testing.T, p pieces.Piece) { assert.False(t, p.Pair) },
		"{of: back, fold: left, allowance: 1.5}": func(t *testing.T, p pieces.Piece) {
			fold, ok := p.Edge(p.Fold)
			require.True(t, ok)
			assert.Equal(t, 0., fold.Path.Start()[0])
			assert.Equal(t, 0., fold.Allowance)
			assert.Equal(t, 15., p.Edges[0].Allowance)
			assert.False(t, p.Edges[0].Unknown)
		},
		"{of: back, grain: across}": func(t *testing.T, p pieces.Piece) {
			assert.Equal(t, p.Grain.From[1], p.Grain.To[1])
		},
		"{of: back, allowance: included 1 cm}": func(t *testing.T, p pieces.Piece) {
			assert.Equal(t, 10., p.Edges[1].Included)
		},
	} {
		t.Run(changes, func(t *testing.T) {
			work, err := changedWork(t, "      - "+changes+"\n")
			require.NoError(t, err)
			check(t, work.Garments[0].Pieces[0])
			assert.Equal(t, "back", work.Garments[0].FromPattern[work.Garments[0].Pieces[0].Name])
		})
	}
}

func TestChangesThatCannotBeMeant(t *testing.T) {
	for changes, want := range map[string]string{
		"{of: bakc}":                            "the pattern has no piece \"bakc\" to change",
		"{of: back, fold: right}":               "has no straight edge on that side",
		"{of: back, fold: bottom}":              "runs along the warp, and that side does not",
		"{of: back, pair: yes}":                 "is a pair, but 1 are cut",
		"{of: pocket, fold: left, pair: yes}":   "cannot be a pair and lie on the fold",
		"{of: back, cut: x}":                    "cut",
		"{of: back, allowance: wide}":           "allowance",
		"{of: back, grain: sideways}":           "grain",
		"{of: back, fold: left, grain: across}": "runs along the warp",
	} {
		t.Run(changes, func(t *testing.T) {
			faults := changedJob(t, "      - "+changes+"\n")
			assert.Contains(t, faults.List[0].Said.String(), want)
			assert.Equal(t, 7, faults.List[0].Line)
		})
	}
}
