package job

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
)

// repeated joins n texts made of their number.
func repeated(n int, format string) string {
	var out strings.Builder
	for i := range n {
		fmt.Fprintf(&out, format, i)
	}
	return out.String()
}

func TestLimits(t *testing.T) {
	const begin = "job: a\nunits: cm\n"
	const cloth = "cloths: [{name: shell, width: 140}]\n"
	tests := []struct{ name, text, want string }{
		{"indentation", indentedBy(101), "x.yaml:101: the file is nested more than 100 deep"},
		{"dashes", strings.Repeat("- ", 100_000) + "a", "x.yaml:1: the file is nested more than 100 deep"},
		{"questions", strings.Repeat("? ", 100_000) + "a", "x.yaml:1: the file is nested more than 100 deep"},
		{"brackets", "a:\n" + strings.Repeat("[", 100_000), "x.yaml:2: the file is nested more than 100 deep"},
		{"braces of several lines", strings.Repeat("{a:\n", 5000), "x.yaml:101: the file is nested more than 100 deep"},
		{"a name", "job: " + strings.Repeat("ä", 201), "x.yaml:1: job is longer than 200 characters"},
		{"a paragraph", "quote:\n  terms: [" + strings.Repeat("a", 2001) + "]", "quote: terms, entry 1 is longer than 2000"},
		{"garments", "garments: [" + repeated(201, "{name: g%d}, ") + "]", "garments has more than 200 entries"},
		{"measurements", "body: {" + repeated(1001, "m%d: 1, ") + "}", "body has more than 1000 entries"},
		{"corners", "cloths: [{flaws: [{outline: [" + repeated(501, "[%d, 1], ") + "]}]}]",
			"flaws, entry 1: outline has more than 500 corners"},
		{"pieces", begin + cloth + "garments: [{name: g, quantity: 2, pieces: [{name: p, width: 1, height: 1, cut: 5001}]}]",
			`x.yaml:4: cloth "shell" has more than 10000 pieces`},
		{"garments by wearer", begin + cloth + "wearers: [" + repeated(2, "{name: w%d}, ") +
			"]\ngarments: [{name: g, quantity: 5001, pieces: [{name: p, width: 1, height: 1}]}]",
			"x.yaml:5: the job makes more than 10000 garments in all"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			file, err := Parse("x.yaml", []byte(tt.text))
			if err == nil {
				_, err = file.Resolve()
			}
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

// The largest lay that is allowed resolves.
func TestLimitsAllow(t *testing.T) {
	file, err := Parse("x.yaml", []byte(`job: a
units: cm
garments: [{name: g, pieces: [{name: p, width: 1, height: 1, cut: 10000}]}]
cloths: [{name: shell, width: 140}]
`))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	assert.Len(t, work.PiecesOf("shell"), 1)
}

// The corners of all that is cut from a cloth are counted, each copy by itself.
func TestCornersOfLay(t *testing.T) {
	const corners = 400
	piece := pieces.Rectangle("round", 1, 1)
	piece.Cloth, piece.Cut = "shell", 10
	at := func(i int) orb.Point {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		return orb.Point{1000 * cos, 1000 * sin}
	}
	for side := range 4 {
		piece.Edges[side].Path = nil
		for i := range corners / 4 {
			from := side*corners/4 + i
			piece.Edges[side].Path = append(piece.Edges[side].Path, pieces.Line{From: at(from), To: at(from + 1)})
		}
	}
	for quantity, want := range map[int]bool{400: true, 600: false} {
		file, err := Parse("x.yaml", []byte("job: a\nunits: cm\n"))
		require.NoError(t, err)
		r := newResolver(file)
		assert.Equal(t, want, r.withinLays(strict.Top("garments"), Made{Quantity: quantity, Pieces: []pieces.Piece{piece}}),
			"%d", quantity)
	}
}

// A device that never ends is read to the limit and no further.
func TestReadEnds(t *testing.T) {
	if _, err := os.Stat("/dev/zero"); err == nil {
		_, err := Read("/dev/zero")
		assert.ErrorContains(t, err, "is too large for a job file")
	}
	path := filepath.Join(t.TempDir(), "large.yaml")
	require.NoError(t, os.WriteFile(path, make([]byte, limit.JobSize.Most()+1), 0o600))
	_, err := Read(path)
	assert.ErrorContains(t, err, "is too large for a job file")
}

// indentedBy is a text of so many levels.
func indentedBy(levels int) string {
	var out strings.Builder
	for i := range levels {
		out.WriteString(strings.Repeat(" ", i) + "a:\n")
	}
	return out.String()
}
