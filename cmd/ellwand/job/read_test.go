package job

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

const plainJob = `job: cuffs
units: cm
garments:
  - name: blouse
    pieces:
      - {name: cuff, width: 24, height: 010, cut: 2, pair: yes}
cloths:
  - {name: shell, width: 1.50 m}
`

// The reader keeps what is written: 010 is ten, not eight, and 1.50 m stays.
func TestParseKeepsTheText(t *testing.T) {
	file, err := Parse("cuffs.yaml", []byte(plainJob))
	require.NoError(t, err)
	cuff := file.Garments[0].Pieces[0]
	assert.Equal(t, Measure("010"), cuff.Height)
	assert.Equal(t, Count("2"), cuff.Cut.One)
	assert.Equal(t, YesNo("yes"), cuff.Pair)
	assert.Equal(t, Measure("1.50 m"), file.Cloths[0].Width)

	work, err := file.Resolve()
	require.NoError(t, err)
	assert.Equal(t, []float64{1500}, work.Cloths[0].Widths)
	piece := work.Garments[0].Pieces[0]
	assert.Equal(t, 2, piece.Cut)
	assert.True(t, piece.Pair)
	outline, err := piece.CuttingOutline(0.1)
	require.NoError(t, err)
	box := outline.Bound()
	assert.InDelta(t, 240+2*usualSeam, box.Max[0]-box.Min[0], 1e-9, "the usual seam allowance on both sides")
	assert.InDelta(t, 100+2*usualSeam, box.Max[1]-box.Min[1], 1e-9)
}

func TestParseRefuses(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"nothing", "", "x.yaml:1: the file is empty"},
		{"a list", "- a", "x.yaml:1: the job should hold keys with values, but is a list"},
		{"a word", "blouse", `x.yaml:1: the job should hold keys with values, but is the single value "blouse"; write ` +
			`each key`},
		{"a list for a text", "job: [1]", "x.yaml:1: job should be a single value, but is a list"},
		{"keys for a list", "cloths: {name: a}",
			"x.yaml:1: cloths should be a list, each entry after a dash (or [a, b]), but is a set of keys"},
		{"a word for a part", "garments:\n  - name: a\n    parts: [collar]",
			`x.yaml:3: garments, entry 1: parts, entry 1 should hold keys with values, but is the single value "collar"; ` +
				`write {kind: collar}`},
		{"an unknown key", "cloth: a", `x.yaml:1: unknown key "cloth" in the job; did you mean cloths?`},
		{"no value", "job:\nunits: cm", "x.yaml:1: job has no value"},
		{"no options", "garments:\n  - name: a\n    sleeve:\n", "x.yaml:3: garments, entry 1: sleeve has no value: write {}"},
		{"twice", "job: a\njob: b", "x.yaml:2: this key stands twice"},
		{"tabs", "job: a\n\tunits: cm", "x.yaml:2: lines are indented with spaces, not tabs"},
		{"open quotation", `job: "a`, "x.yaml:1: a quotation mark is opened and never closed"},
		{"open brace", "body: {a: 1", "x.yaml:1: a { is opened"},
		{"two colons", "job: a: b", "x.yaml:1: a colon stands where none may be"},
		{"two jobs", "job: a\n---\njob: b", "x.yaml:3: a file holds one job"},
		{"an alias", "job: &a b\nclient: *a", "x.yaml:2: client should be a single value, but is a YAML anchor"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Parse("x.yaml", []byte(tt.text))
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

func TestFaultsAreInTheOrderOfTheLines(t *testing.T) {
	_, err := Parse("x.yaml", []byte("jbo: a\nunits: cm\nclothes: []\n"))
	require.Error(t, err)
	lines := strings.Split(err.Error(), "\n")
	require.Len(t, lines, 2)
	assert.True(t, strings.HasPrefix(lines[0], "x.yaml:1:"), lines[0])
	assert.True(t, strings.HasPrefix(lines[1], "x.yaml:3:"), lines[1])
}

// Whatever is typed, a job is read or refused with a sentence, and a job that
// resolves has something to cut from every cloth.
func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add([]byte(plainJob))
	for _, path := range []string{"../starter.yaml", "../../../testdata/blouse.yaml"} {
		text, err := os.ReadFile(path)
		require.NoError(f, err)
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		file, err := Parse("x.yaml", text)
		if err != nil {
			assert.NotEmpty(t, err.Error())
			return
		}
		work, err := file.Resolve()
		if err != nil {
			assert.NotContains(t, err.Error(), "job.")
			return
		}
		for _, offer := range work.Cloths {
			assert.NotEmpty(t, offer.Widths)
			assert.NotEmpty(t, work.PiecesOf(offer.Cloth.Name))
		}
	})
}
